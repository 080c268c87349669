package dev.kilnledger.examples.report;

import java.awt.Paint;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.DefaultExtensionHandler;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.apache.batik.svggen.SVGPaintDescriptor;
import org.apache.batik.svggen.SVGSyntax;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Draws the panels of a figure as one SVG element, whose words stay words. */
final class SvgPicture {
  static final String NAMESPACE = "http://www.w3.org/2000/svg";
  private static final int DIGITS = 2; // of a pixel

  private SvgPicture() {}

  /** The picture as markup, its ids beginning with the figure's and the format's. */
  static String of(Figure figure, Format format) {
    String prefix = figure.id() + "-" + format.word();
    List<Panel> panels = figure.drawing().apply(format);
    int height = panels.stream().mapToInt(Panel::height).sum();
    Document document = document();
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
    context.setIDGenerator(new PrefixedIds(prefix));
    context.setPrecision(DIGITS);
    context.setComment(null);
    context.setExtensionHandler(new Patterns(prefix));
    SVGGraphics2D graphics = new SVGGraphics2D(context, false);
    int top = 0;
    for (Panel panel : panels) {
      panel.chart().draw(graphics, new Rectangle2D.Double(0, top, format.width(), panel.height()));
      top += panel.height();
    }
    Element root = graphics.getRoot();
    root.setAttribute("viewBox", "0 0 " + format.width() + " " + height);
    root.setAttribute("width", Integer.toString(format.width()));
    root.setAttribute("height", Integer.toString(height));
    root.setAttribute("class", format.word());
    root.setAttribute("role", "img");
    root.setAttribute("aria-labelledby", prefix + "-title " + prefix + "-desc");
    nameApart(root.getElementsByTagNameNS(NAMESPACE, "defs"));
    Element desc = words(document, "desc", prefix, figure.description());
    root.insertBefore(desc, root.getFirstChild());
    root.insertBefore(words(document, "title", prefix, figure.title()), desc);
    return markup(graphics, root);
  }

  /** One element of definitions has the same name in every picture, and nothing refers to it. */
  private static void nameApart(NodeList definitions) {
    for (int i = 0; i < definitions.getLength(); i++) {
      Element each = (Element) definitions.item(i);
      if (each.getAttribute("id").equals(SVGSyntax.ID_PREFIX_GENERIC_DEFS)) {
        each.removeAttribute("id");
      }
    }
  }

  private static Element words(Document document, String name, String prefix, String text) {
    Element element = document.createElementNS(NAMESPACE, name);
    element.setAttribute("id", prefix + "-" + name);
    element.setTextContent(text);
    return element;
  }

  private static String markup(SVGGraphics2D graphics, Element root) {
    StringWriter writer = new StringWriter();
    try {
      graphics.stream(root, writer, true, false);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    String markup = writer.toString();
    return markup.substring(markup.indexOf("<svg")); // what is before it is for files of their own
  }

  private static Document document() {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .getDOMImplementation()
          .createDocument(NAMESPACE, "svg", null);
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Several pictures stand in one page, where no id may be there twice. */
  private static final class PrefixedIds extends SVGIDGenerator {
    private final String prefix;
    private int last;

    PrefixedIds(String prefix) {
      this.prefix = prefix;
    }

    @Override
    public String generateID(String what) {
      last++;
      return prefix + "-" + what + last;
    }
  }

  /** Writes a {@link Hatch} as a pattern. */
  private static final class Patterns extends DefaultExtensionHandler {
    private final String prefix;
    private final Map<Hatch, SVGPaintDescriptor> known = new LinkedHashMap<>();

    Patterns(String prefix) {
      this.prefix = prefix;
    }

    @Override
    public SVGPaintDescriptor handlePaint(Paint paint, SVGGeneratorContext context) {
      return paint instanceof Hatch hatch
          ? known.computeIfAbsent(hatch, any -> pattern(hatch, context.getDOMFactory()))
          : super.handlePaint(paint, context);
    }

    private SVGPaintDescriptor pattern(Hatch hatch, Document document) {
      if (hatch.marks().isEmpty()) {
        return new SVGPaintDescriptor(hatch.hex(), "1");
      }
      String id = prefix + "-hatch" + (known.size() + 1);
      Element pattern = document.createElementNS(NAMESPACE, "pattern");
      pattern.setAttribute("id", id);
      pattern.setAttribute("width", "8");
      pattern.setAttribute("height", "8");
      pattern.setAttribute("patternUnits", "userSpaceOnUse");
      Element ground = document.createElementNS(NAMESPACE, "rect");
      ground.setAttribute("width", "8");
      ground.setAttribute("height", "8");
      ground.setAttribute("fill", hatch.hex());
      ground.setAttribute("stroke", "none");
      Element lines = document.createElementNS(NAMESPACE, "path");
      lines.setAttribute("d", hatch.marks());
      lines.setAttribute("stroke", "#000000");
      lines.setAttribute("stroke-width", "1");
      lines.setAttribute("fill", "none");
      pattern.appendChild(ground);
      pattern.appendChild(lines);
      return new SVGPaintDescriptor("url(#" + id + ")", "1", pattern);
    }
  }
}
