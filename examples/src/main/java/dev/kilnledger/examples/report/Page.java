package dev.kilnledger.examples.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.nodes.DataNode;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.DocumentType;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;

/**
 * A page of HTML as it grows. Words enter as words, so that whatever a name holds is shown and
 * never obeyed.
 */
final class Page {
  private final Document document = Document.createShell("");
  private final Element header;
  private final Element main;
  private final List<String[]> contents = new ArrayList<>();
  private final Element navigation;

  Page(String title) {
    document
        .outputSettings()
        .syntax(Document.OutputSettings.Syntax.xml)
        .charset(StandardCharsets.UTF_8)
        .prettyPrint(false);
    document.prependChild(new DocumentType("html", "", ""));
    Element html = document.expectFirst("html");
    html.attr("lang", "en").attr("xmlns", "http://www.w3.org/1999/xhtml");
    Element head = document.head();
    head.appendElement("meta").attr("charset", "utf-8");
    head.appendElement("meta")
        .attr("http-equiv", "Content-Security-Policy")
        .attr("content", "default-src 'none'; style-src 'unsafe-inline'; img-src data:");
    head.appendElement("meta")
        .attr("name", "viewport")
        .attr("content", "width=device-width, initial-scale=1");
    head.appendElement("meta").attr("name", "color-scheme").attr("content", "light");
    head.appendElement("title").text(title);
    head.appendElement("style").appendChild(new DataNode(style()));
    header = document.body().appendElement("header");
    header.appendElement("h1").text(title);
    navigation = document.body().appendElement("nav").attr("aria-label", "Contents");
    main = document.body().appendElement("main");
  }

  private static String style() {
    try (InputStream style = Page.class.getResourceAsStream("report.css")) {
      return new String(style.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What stands above everything else. */
  Element header() {
    return header;
  }

  /** A section that the contents lead to. */
  Element section(String id, String heading) {
    contents.add(new String[] {id, heading});
    Element section = main.appendElement("section").attr("id", id);
    section.appendElement("h2").text(heading);
    return section;
  }

  /** A picture, drawn once for each format, with its caption. */
  static void figure(Element section, Figure figure) {
    Element element = section.appendElement("figure").attr("id", "figure-" + figure.id());
    element.appendElement("h3").text(figure.title());
    for (Format format : Format.values()) {
      Document picture = Parser.xmlParser().parseInput(SvgPicture.of(figure, format), "");
      element.appendChild(picture.expectFirst("svg"));
    }
    element.appendElement("figcaption").text(Words.kept(figure.caption()));
  }

  /** A row of a list of terms. */
  static void fact(Element list, String term, String words) {
    Element pair = list.appendElement("div");
    pair.appendElement("dt").text(term);
    pair.appendElement("dd").text(words);
  }

  String html() {
    Element list = navigation.appendElement("ul");
    for (String[] each : contents) {
      list.appendElement("li").appendElement("a").attr("href", "#" + each[0]).text(each[1]);
    }
    return document.outerHtml() + "\n";
  }
}
