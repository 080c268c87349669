package dev.kilnledger.examples.report;

import dev.kilnledger.costing.uncertainty.CashBand;
import dev.kilnledger.costing.uncertainty.HistogramBar;
import dev.kilnledger.costing.uncertainty.Tornado;
import dev.kilnledger.costing.uncertainty.TornadoBar;
import dev.kilnledger.costing.uncertainty.UncertainStatement;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;
import org.joda.money.Money;

/** How far the cost may lie from what is expected, and which inputs move it. */
final class UncertaintyFigures {
  private static final int BARS = 30;
  private static final int MOST_INPUTS = 12;

  private UncertaintyFigures() {}

  /** The draws of the average cost of a part. */
  static Figure spread(UncertainStatement statement) {
    CashBand average = statement.average();
    return new Figure(
        "uncertainty",
        "The average cost of a part in all trials",
        "In nine of ten trials a part costs "
            + average.interval().low()
            + " to "
            + average.interval().high()
            + " on average over "
            + Words.count(statement.parts(), "part")
            + ", in half of them no more than "
            + average.median()
            + " ("
            + statement.trials().text()
            + ").",
        "A histogram of the average cost of a part over all trials, with lines at the 5 %, 50 % and"
            + " 95 % quantiles.",
        format -> List.of(histogram(average)));
  }

  private static Panel histogram(CashBand band) {
    XYIntervalSeries series = new XYIntervalSeries("trials");
    double trials = band.outcome().size();
    double highest = 0;
    for (HistogramBar bar : band.outcome().histogram(BARS)) {
      double share = 100 * bar.count() / trials;
      highest = Math.max(highest, share);
      series.add((bar.low() + bar.high()) / 2, bar.low(), bar.high(), share, 0, share);
    }
    XYPlot plot = bars(series);
    NumberAxis money = Chart.axis("average per part, " + band.currency().getCode());
    money.setAutoRangeIncludesZero(false);
    NumberAxis percent = Chart.axis("share of trials, %");
    plot.setDomainAxis(money);
    plot.setRangeAxis(percent);
    percent.setRange(0, 1.4 * highest);
    mark(plot, band.interval().low(), "5 %", 1.1 * highest, TextAnchor.CENTER_LEFT);
    mark(plot, band.median(), "median", 1.22 * highest, TextAnchor.CENTER_LEFT);
    mark(plot, band.interval().high(), "95 %", 1.34 * highest, TextAnchor.CENTER_RIGHT);
    return new Panel(Chart.of(plot), 280);
  }

  private static void mark(XYPlot plot, Money at, String name, double height, TextAnchor anchor) {
    double place = at.getAmount().doubleValue();
    ValueMarker marker = new ValueMarker(place);
    marker.setPaint(Chart.INK);
    marker.setStroke(Chart.dashed(1.4f, 5, 3));
    plot.addDomainMarker(marker);
    plot.addAnnotation(Chart.words(" " + name + " " + at.getAmount() + " ", place, height, anchor));
  }

  /** How far each input alone moves the cost. */
  static Figure inputs(Tornado tornado, String currency) {
    List<TornadoBar> bars = tornado.bars().subList(0, Math.min(MOST_INPUTS, tornado.bars().size()));
    TornadoBar widest = bars.get(0);
    return new Figure(
        "inputs",
        "Which inputs matter",
        "With every input at its median it is "
            + currency
            + " "
            + Words.decimals(tornado.middle(), 2)
            + " ("
            + tornado.figure()
            + "). Most is moved by the "
            + widest.input().name()
            + ": its "
            + Words.percent(tornado.low().si())
            + " and "
            + Words.percent(tornado.high().si())
            + " quantiles alone take it from "
            + Words.decimals(Math.min(widest.atLow(), widest.atHigh()), 2)
            + " to "
            + Words.decimals(Math.max(widest.atLow(), widest.atHigh()), 2)
            + ".",
        "Two bars for each input, the input that moves most first: from the cost with every input"
            + " at its median to that with its low value, and to that with its high value.",
        format -> List.of(tornado(tornado, bars, currency, format)));
  }

  private static Panel tornado(
      Tornado tornado, List<TornadoBar> bars, String currency, Format format) {
    XYIntervalSeries atLow = new XYIntervalSeries("with its low value");
    XYIntervalSeries atHigh = new XYIntervalSeries("with its high value");
    double middle = tornado.middle();
    double low = middle;
    double high = middle;
    for (int i = 0; i < bars.size(); i++) {
      TornadoBar bar = bars.get(i);
      low = Math.min(low, Math.min(bar.atLow(), bar.atHigh()));
      high = Math.max(high, Math.max(bar.atLow(), bar.atHigh()));
      add(atLow, -i - 0.15, middle, bar.atLow());
      add(atHigh, -i - 0.35, middle, bar.atHigh());
    }
    double span = Math.max(high - low, 0.01);
    XYPlot plot = bars(atLow, atHigh);
    NumberAxis rows = Chart.axis("");
    rows.setTickLabelsVisible(false);
    rows.setTickMarksVisible(false);
    rows.setRange(-bars.size() + 0.4, 0.5);
    NumberAxis money = Chart.axis(tornado.figure() + ", " + currency);
    double margin = (format == Format.WIDE ? 0.12 : 0.28) * span;
    money.setRange(low - margin, high + margin);
    plot.setDomainAxis(rows);
    plot.setRangeAxis(money);
    plot.setOrientation(PlotOrientation.HORIZONTAL);
    plot.setDomainGridlinesVisible(false);
    ValueMarker line = new ValueMarker(middle);
    line.setPaint(Chart.INK);
    line.setStroke(Chart.solid(1.2f));
    plot.addRangeMarker(line, Layer.BACKGROUND);
    for (int i = 0; i < bars.size(); i++) {
      TornadoBar bar = bars.get(i);
      double from = Math.min(bar.atLow(), bar.atHigh());
      double to = Math.max(bar.atLow(), bar.atHigh());
      String name = " " + Chart.cut(bar.input().name(), format.width() - 60);
      plot.addAnnotation(Chart.words(name, 0.2 - i, low - margin, TextAnchor.CENTER_LEFT));
      plot.addAnnotation(
          Chart.words(Words.decimals(from, 2) + " ", -i - 0.25, from, TextAnchor.CENTER_RIGHT));
      plot.addAnnotation(
          Chart.words(" " + Words.decimals(to, 2), -i - 0.25, to, TextAnchor.CENTER_LEFT));
    }
    return new Panel(Chart.withLegend(plot), 90 + 40 * bars.size());
  }

  private static void add(XYIntervalSeries series, double row, double middle, double moved) {
    series.add(row, row - 0.1, row + 0.1, moved, Math.min(middle, moved), Math.max(middle, moved));
  }

  private static XYPlot bars(XYIntervalSeries... all) {
    XYIntervalSeriesCollection data = new XYIntervalSeriesCollection();
    XYBarRenderer renderer = new XYBarRenderer();
    renderer.setUseYInterval(true);
    renderer.setBarPainter(new StandardXYBarPainter());
    renderer.setShadowVisible(false);
    renderer.setDrawBarOutline(true);
    renderer.setLegendBar(new Rectangle2D.Double(-7, -6, 14, 12));
    for (XYIntervalSeries series : all) {
      int number = data.getSeriesCount();
      data.addSeries(series);
      renderer.setSeriesPaint(number, Chart.FILLS.get(number));
      renderer.setSeriesOutlinePaint(number, Chart.INK);
      renderer.setSeriesOutlineStroke(number, Chart.solid(0.8f));
    }
    XYPlot plot = Chart.lines(data, Chart.axis(""));
    plot.setRenderer(renderer);
    return plot;
  }
}
