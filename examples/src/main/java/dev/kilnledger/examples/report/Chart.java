package dev.kilnledger.examples.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Paint;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnitSource;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.text.TextUtils;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYDataset;

/**
 * What all charts have in common. Colours are of the palette of Okabe and Ito (jfly.uni-koeln.de,
 * "Color Universal Design", 2008; from memory), which eyes of every kind tell apart; lines differ
 * in dashes and width as well, areas in hatching, and words are black.
 */
final class Chart {
  static final Color INK = new Color(0x1a1a1a);
  static final Color GRID = new Color(0xdddddd);
  static final Color SHADE = new Color(0xeeeeee);
  static final Color SKY = new Color(0x56b4e9);
  static final Color BLUE = new Color(0x0072b2);
  static final Color VERMILION = new Color(0xd55e00);
  static final Color GREEN = new Color(0x009e73);
  static final Font FONT = new Font(Font.SANS_SERIF, Font.PLAIN, 12);

  /** Fills in an order in which neighbours differ in lightness and hatching. */
  static final List<Hatch> FILLS =
      List.of(
          new Hatch(new Color(0x56b4e9), ""),
          new Hatch(new Color(0xe69f00), "M0,8 L8,0"),
          new Hatch(new Color(0xffffff), "M4,2.5 L4,5.5 M2.5,4 L5.5,4"),
          new Hatch(new Color(0x009e73), ""),
          new Hatch(new Color(0xf0e442), "M0,0 L8,8"),
          new Hatch(new Color(0xcc79a7), "M4,0 L4,8"),
          new Hatch(new Color(0xbbbbbb), "M0,4 L8,4"),
          new Hatch(new Color(0x0072b2), ""));

  static {
    // else words along an axis are drawn as shapes, which no one can read aloud or search
    TextUtils.setUseDrawRotatedStringWorkaround(false);
  }

  private Chart() {}

  static BasicStroke solid(float width) {
    return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
  }

  static BasicStroke dashed(float width, float... dashes) {
    return new BasicStroke(
        width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dashes.clone(), 0);
  }

  static Shape dot(double radius) {
    return new Ellipse2D.Double(-radius, -radius, 2 * radius, 2 * radius);
  }

  static JFreeChart of(Plot plot) {
    plot.setBackgroundPaint(null);
    plot.setOutlineVisible(false);
    plot.setInsets(RectangleInsets.ZERO_INSETS);
    JFreeChart chart = new JFreeChart(null, FONT, plot, false);
    chart.setBackgroundPaint(null);
    chart.setBorderVisible(false);
    chart.setPadding(new RectangleInsets(4, 2, 4, 14));
    return chart;
  }

  /** The same with what its lines or areas are, above them. */
  static JFreeChart withLegend(Plot plot) {
    JFreeChart chart = of(plot);
    LegendTitle legend = new LegendTitle(plot);
    legend.setPosition(RectangleEdge.TOP);
    legend.setHorizontalAlignment(HorizontalAlignment.LEFT);
    legend.setItemFont(FONT);
    legend.setItemPaint(INK);
    legend.setFrame(BlockBorder.NONE);
    legend.setLegendItemGraphicPadding(new RectangleInsets(2, 4, 2, 4));
    chart.addSubtitle(legend);
    return chart;
  }

  /** An axis of numbers, the name standing along it. */
  static NumberAxis axis(String name) {
    NumberAxis axis = new NumberAxis(name);
    // the tick units that come with the axis speak the language of the machine
    axis.setStandardTickUnits(new NumberTickUnitSource());
    axis.setNumberFormatOverride(
        new DecimalFormat("0.###", DecimalFormatSymbols.getInstance(Locale.ROOT)));
    axis.setAutoRangeIncludesZero(true);
    return plain(axis);
  }

  static <A extends ValueAxis> A plain(A axis) {
    axis.setLabelFont(FONT);
    axis.setLabelPaint(INK);
    axis.setTickLabelFont(FONT);
    axis.setTickLabelPaint(INK);
    axis.setAxisLinePaint(INK);
    axis.setTickMarkPaint(INK);
    return axis;
  }

  /** A plot of lines with faint rules; an axis across is still to be set, or shared. */
  static XYPlot lines(XYDataset data, ValueAxis up) {
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
    renderer.setDrawSeriesLineAsPath(true); // else each piece begins its dashes anew
    renderer.setLegendLine(new Line2D.Double(-16, 0, 16, 0));
    renderer.setAutoPopulateSeriesShape(false);
    renderer.setDefaultLegendTextFont(FONT);
    XYPlot plot = new XYPlot(data, null, up, renderer);
    plot.setBackgroundPaint(null);
    plot.setOutlineVisible(false);
    plot.setDomainGridlinePaint(GRID);
    plot.setRangeGridlinePaint(GRID);
    plot.setDomainGridlineStroke(solid(1));
    plot.setRangeGridlineStroke(solid(1));
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    return plot;
  }

  static void line(XYPlot plot, int series, Paint paint, BasicStroke stroke) {
    plot.getRenderer().setSeriesPaint(series, paint);
    plot.getRenderer().setSeriesStroke(series, stroke);
  }

  /** Words in a plot, on white where they cross a line. */
  static XYTextAnnotation words(String words, double x, double y, TextAnchor anchor) {
    XYTextAnnotation annotation = new XYTextAnnotation(words, x, y);
    annotation.setFont(FONT);
    annotation.setPaint(INK);
    annotation.setTextAnchor(anchor);
    annotation.setBackgroundPaint(Color.WHITE);
    return annotation;
  }

  static double widthOf(String words) {
    return FONT.getStringBounds(words, new FontRenderContext(null, true, true)).getWidth();
  }

  /** A name cut to a width, for tables tell it whole. */
  static String cut(String name, double width) {
    if (widthOf(name) <= width) {
      return name;
    }
    int end = name.length();
    while (end > 1 && widthOf(name.substring(0, end) + "…") > width) {
      end = name.offsetByCodePoints(end, -1);
    }
    return name.substring(0, end).stripTrailing() + "…";
  }
}
