package dev.kilnledger.examples.report;

import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.KELVIN_DIFFERENCE;
import static dev.kilnledger.units.TradeUnits.MASS_PERCENT;
import static dev.kilnledger.units.TradeUnits.VOLUME_PERCENT;

import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.burnout.BurnOutCurve;
import dev.kilnledger.thermal.burnout.BurnOutForecast;
import dev.kilnledger.thermal.firing.CoreSoak;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.SegmentRow;
import java.awt.BasicStroke;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Temperature;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.SeriesRenderingOrder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** The firing over time: kiln and core, the binder that is left, and how dense the part gets. */
final class FiringFigures {
  private static final double DEGREE = 0.5; // less than half a pixel
  private static final double PERCENT = 0.1;
  private static final List<BasicStroke> DASHES =
      List.of(
          Chart.solid(2),
          Chart.dashed(2, 8, 4),
          Chart.dashed(2, 2, 3),
          Chart.dashed(2, 10, 3, 2, 3),
          Chart.solid(1));

  private final FiringForecast forecast;
  private final FiringTime time;

  private FiringFigures(FiringForecast forecast) {
    this.forecast = forecast;
    this.time = new FiringTime(forecast);
  }

  static Figure of(FiringForecast forecast) {
    FiringFigures figures = new FiringFigures(forecast);
    return new Figure(
        "firing",
        "What kiln, core, binder and metal do",
        figures.caption(),
        "Lines over the hours in the kiln. The upper panel has the temperature that is programmed,"
            + " that of the kiln and that of the core of the charge; below it how far the core is"
            + " behind the kiln and, where they are known, the share of the binder that is left and"
            + " the relative density.",
        figures::panels);
  }

  private String caption() {
    CoreSoak soak = forecast.coreSoak();
    String core =
        "The core gets to "
            + forecast.hottest().core().corePeak().format(CELSIUS, 0)
            + " and is at or above "
            + soak.temperature().format(CELSIUS, 0)
            + " for "
            + Words.span(soak.had().span(), HOUR, 1)
            + " at a stretch, where "
            + soak.asked().format(HOUR, 1)
            + " are asked; it is up to "
            + forecast.hottest().core().greatestLag().lag().format(KELVIN_DIFFERENCE, 0)
            + " behind the kiln. ";
    String binder =
        forecast
            .afterDebinding()
            .map(
                left ->
                    "Of the binder "
                        + Words.span(left.remaining(), MASS_PERCENT, 1)
                        + " are left after debinding. ")
            .orElse("How the binder leaves is not drawn: its kinetics are not known. ");
    return core + binder + density();
  }

  private String density() {
    return forecast
        .density()
        .map(
            known ->
                "The relative density comes to "
                    + Words.band(known.density(), VOLUME_PERCENT, 0)
                    + ".")
        .orElseGet(
            () ->
                "Of the relative density only an interval is known, "
                    + forecast.literatureDensity().density().format(VOLUME_PERCENT, 0)
                    + ", for lack of a sintering curve of this powder.");
  }

  private List<Panel> panels(Format format) {
    List<XYPlot> plots = new ArrayList<>();
    plots.add(temperatures());
    plots.add(lags());
    forecast.burnOut().ifPresent(binder -> plots.add(binder(binder)));
    plots.add(DensityPlot.of(forecast, time));
    CombinedDomainXYPlot combined = time.over(plots);
    for (int i = 0; i < plots.size(); i++) {
      combined.add(plots.get(i), i == 0 ? 5 : 2);
    }
    int lower = plots.size() - 1;
    return List.of(new Panel(Chart.withLegend(combined), 290 + 105 * lower));
  }

  private XYPlot temperatures() {
    XYSeries programme = new XYSeries("programme", false, true);
    XYSeries kiln = new XYSeries("kiln", false, true);
    XYSeries core = new XYSeries("core of the charge", false, true);
    for (FiringTime.Placed placed : time.stages()) {
      add(programme, placed.stage().stage().profile(), placed.start());
      add(kiln, placed.stage().course(), placed.start());
      add(core, placed.stage().felt(), placed.start());
    }
    XYSeriesCollection data = new XYSeriesCollection();
    data.addSeries(kiln);
    data.addSeries(core);
    data.addSeries(programme);
    NumberAxis degrees = Chart.axis("temperature, °C");
    XYPlot plot = Chart.lines(data, degrees);
    Chart.line(plot, 0, Chart.SKY, Chart.solid(5)); // broad, as it mostly lies below the programme
    Chart.line(plot, 1, Chart.VERMILION, Chart.solid(2));
    Chart.line(plot, 2, Chart.INK, Chart.dashed(1.5f, 2, 3));
    plot.setSeriesRenderingOrder(SeriesRenderingOrder.FORWARD);
    Span<Temperature> window = forecast.setup().alloy().sinteringWindow().value();
    double top = Math.max(programme.getMaxY(), window.high().in(CELSIUS));
    degrees.setRange(0, top * 1.15);
    shadeWindow(plot, window);
    time.name(plot);
    return plot;
  }

  private XYPlot lags() {
    XYSeries lag = new XYSeries("core behind the kiln", false, true);
    for (FiringTime.Placed placed : time.stages()) {
      lag.add(placed.start(), null, false);
      Curve.of(
              placed.stage().core().points(),
              point -> placed.start() + point.time().in(HOUR),
              point -> point.lag().in(KELVIN_DIFFERENCE))
          .thinned(DEGREE / 5)
          .addTo(lag);
    }
    XYPlot plot = Chart.lines(new XYSeriesCollection(lag), Chart.axis("lag, K"));
    Chart.line(plot, 0, Chart.VERMILION, Chart.solid(1.5f));
    plot.getRenderer().setSeriesVisibleInLegend(0, false);
    plot.setRangeZeroBaselineVisible(true);
    return plot;
  }

  private static void shadeWindow(XYPlot plot, Span<Temperature> window) {
    double low = window.low().in(CELSIUS);
    double high = window.high().in(CELSIUS);
    IntervalMarker shade = new IntervalMarker(low, high, Chart.SHADE);
    shade.setAlpha(1);
    plot.addRangeMarker(shade, Layer.BACKGROUND);
    var words = Chart.words(" sintering window", 0, (low + high) / 2, TextAnchor.CENTER_LEFT);
    words.setBackgroundPaint(null);
    plot.addAnnotation(words);
  }

  private static void add(XYSeries series, Profile profile, double start) {
    series.add(start, null, false); // lifts the pen between stages
    series.add(start, profile.start().in(CELSIUS), false);
    List<SegmentRow> rows = profile.rows();
    Curve.of(rows, row -> start + row.elapsed().in(HOUR), row -> row.end().in(CELSIUS))
        .thinned(DEGREE)
        .addTo(series);
  }

  private XYPlot binder(BurnOutForecast forecast) {
    XYSeriesCollection data = new XYSeriesCollection();
    for (BurnOutCurve curve : forecast.curves()) {
      data.addSeries(
          Curve.of(curve.points(), p -> p.time().in(HOUR), p -> p.remaining().in(MASS_PERCENT))
              .thinned(PERCENT)
              .series("binder: " + Chart.cut(curve.kinetics().name(), 220)));
    }
    NumberAxis percent = Chart.axis("binder, %");
    percent.setRange(0, 105);
    XYPlot plot = Chart.lines(data, percent);
    for (int i = 0; i < data.getSeriesCount(); i++) {
      Chart.line(plot, i, Chart.GREEN, DASHES.get(i % DASHES.size()));
      plot.getRenderer().setSeriesVisibleInLegend(i, data.getSeriesCount() > 1);
    }
    return plot;
  }
}
