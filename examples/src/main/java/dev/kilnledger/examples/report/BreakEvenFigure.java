package dev.kilnledger.examples.report;

import dev.kilnledger.costing.breakeven.Crossing;
import dev.kilnledger.costing.ledger.ExactCash;
import dev.kilnledger.costing.ledger.LedgerPlan;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** The cash of two ways of having the parts, and from which number on one costs no more. */
final class BreakEvenFigure {
  private static final int POINTS = 400;

  private final Crossing crossing;
  private final String other;
  private final long last;

  private BreakEvenFigure(Crossing crossing, String other, long parts) {
    this.crossing = crossing;
    this.other = other;
    long far =
        Stream.of(crossing.first(), crossing.permanent())
            .flatMap(found -> found.stream())
            .max(Long::compare)
            .map(found -> found + Math.max(found / 2, 10))
            .orElse(Math.max(parts, 10));
    this.last = far;
  }

  /**
   * The figure.
   *
   * @param crossing the two ways
   * @param other what the other way is, in a word or two
   * @param parts the number of parts wanted
   */
  static Figure of(Crossing crossing, String other, long parts) {
    BreakEvenFigure figure = new BreakEvenFigure(crossing, other, parts);
    return new Figure(
        "break-even",
        "When making them pays",
        "Making costs no more than "
            + other
            + " "
            + words(crossing)
            + crossing
                .smooth()
                .map(smooth -> " Without whole packs it would be at " + smooth + ".")
                .orElse(""),
        "Two staircases of the cash paid so far over the number of parts, one for making them and"
            + " one for the other way, with a mark where they meet.",
        figure::panels);
  }

  private static String words(Crossing crossing) {
    return crossing.first().isPresent() && crossing.first().equals(crossing.permanent())
        ? "from " + crossing.first().get() + " parts on."
        : crossing.text() + (crossing.first().isPresent() ? " parts." : ".");
  }

  private List<Panel> panels(Format format) {
    String currency = crossing.plan().currency().getCode();
    NumberAxis parts = Chart.axis("number of parts");
    parts.setRange(0, (double) last);
    NumberAxis money = Chart.axis("paid so far, " + currency);
    XYSeriesCollection data = new XYSeriesCollection();
    data.addSeries(cash("making them", crossing.plan()));
    data.addSeries(cash(Chart.cut(other, 240), crossing.other()));
    XYPlot plot = Chart.lines(data, money);
    plot.setDomainAxis(parts);
    Chart.line(plot, 0, Chart.BLUE, Chart.solid(2));
    Chart.line(plot, 1, Chart.VERMILION, Chart.dashed(2, 3, 2));
    money.setRange(0, 1.08 * Math.max(data.getSeries(0).getMaxY(), data.getSeries(1).getMaxY()));
    boolean once = crossing.first().equals(crossing.permanent());
    crossing
        .first()
        .ifPresent(at -> mark(plot, at, once ? "from " + at + " on" : "first at " + at, 0.06));
    crossing
        .permanent()
        .filter(at -> !once)
        .ifPresent(at -> mark(plot, at, "for good from " + at, 0.14));
    return List.of(new Panel(Chart.withLegend(plot), 330));
  }

  private void mark(XYPlot plot, long at, String words, double height) {
    ValueMarker marker = new ValueMarker(at);
    marker.setPaint(Chart.INK);
    marker.setStroke(Chart.dashed(1, 2, 3));
    plot.addDomainMarker(marker);
    double bottom = plot.getRangeAxis().getUpperBound() * height;
    boolean before = at > last / 2;
    plot.addAnnotation(
        Chart.words(
            " " + words + " ",
            (double) at,
            bottom,
            before ? TextAnchor.CENTER_RIGHT : TextAnchor.CENTER_LEFT));
  }

  private XYSeries cash(String name, LedgerPlan plan) {
    ExactCash cash = ExactCash.of(plan);
    BigDecimal denominator = new BigDecimal(cash.denominator());
    XYSeries series = new XYSeries(name, false, true);
    double before = 0;
    for (long part : places()) {
      double sum =
          new BigDecimal(cash.through(part))
              .divide(denominator, MathContext.DECIMAL64)
              .doubleValue();
      if (sum != before || part == last) {
        series.add((double) part, before, false);
        series.add((double) part, sum, false);
        before = sum;
      }
    }
    return series;
  }

  private long[] places() {
    return last <= POINTS
        ? LongStream.rangeClosed(1, last).toArray()
        : LongStream.rangeClosed(1, POINTS).map(i -> i * last / POINTS).toArray();
  }
}
