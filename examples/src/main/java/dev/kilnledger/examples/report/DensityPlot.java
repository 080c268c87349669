package dev.kilnledger.examples.report;

import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.VOLUME_PERCENT;

import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.densification.DensityForecast;
import dev.kilnledger.thermal.densification.DensityPoint;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.awt.Color;
import java.util.Optional;
import java.util.function.Function;
import org.jfree.chart.annotations.XYPolygonAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeriesCollection;

/**
 * The relative density over time with its band, by the user's own sintering curve; without one the
 * interval that the literature leaves, from when the hold is done.
 */
final class DensityPlot {
  private static final double TOLERANCE = 0.1; // percent, a fifth of a pixel
  private static final Color BAND = new Color(0xcccccc);

  private final FiringForecast forecast;
  private final FiringTime time;
  private final double start;
  private final double wanted;
  private final XYSeriesCollection lines = new XYSeriesCollection();
  private final NumberAxis percent = Chart.axis("density, %");
  private final XYPlot plot = Chart.lines(lines, percent);

  private DensityPlot(FiringForecast forecast, FiringTime time) {
    this.forecast = forecast;
    this.time = time;
    this.start = time.placed(forecast.sintering().get(0)).start();
    this.wanted = forecast.targetDensity().in(VOLUME_PERCENT);
  }

  static XYPlot of(FiringForecast forecast, FiringTime time) {
    DensityPlot plot = new DensityPlot(forecast, time);
    Optional<DensityForecast> known = forecast.density();
    known.ifPresentOrElse(plot::known, plot::interval);
    plot.wanted();
    return plot.plot;
  }

  private void known(DensityForecast density) {
    lines.addSeries(curve(density, p -> p.density().expected()).series("relative density"));
    Chart.line(plot, 0, Chart.INK, Chart.solid(2));
    plot.getRenderer().setSeriesVisibleInLegend(0, false);
    Curve low = curve(density, p -> p.density().span().low());
    Curve high = curve(density, p -> p.density().span().high());
    shade(low.around(high));
    range(density.points().get(0).density().span().low().in(VOLUME_PERCENT));
  }

  private Curve curve(
      DensityForecast density, Function<DensityPoint, Amount<VolumeFraction>> which) {
    return Curve.of(
            density.points(),
            point -> start + point.time().in(HOUR),
            point -> which.apply(point).in(VOLUME_PERCENT))
        .thinned(TOLERANCE);
  }

  private void interval() {
    Span<VolumeFraction> span = forecast.literatureDensity().density();
    double low = span.low().in(VOLUME_PERCENT);
    double high = span.high().in(VOLUME_PERCENT);
    double from = time.sintered(forecast);
    shade(new double[] {from, low, time.end(), low, time.end(), high, from, high});
    String words = Words.decimals(low, 0) + " to " + Words.decimals(high, 0) + " % ";
    plot.addAnnotation(Chart.words(words, from, high, TextAnchor.TOP_RIGHT));
    range(low);
  }

  private void shade(double[] around) {
    plot.getRenderer()
        .addAnnotation(new XYPolygonAnnotation(around, null, null, BAND), Layer.BACKGROUND);
  }

  private void range(double lowest) {
    percent.setRange(Math.max(0, Math.min(lowest, wanted) - 8), 102);
  }

  private void wanted() {
    ValueMarker line = new ValueMarker(wanted);
    line.setPaint(Chart.INK);
    line.setStroke(Chart.dashed(1, 5, 4));
    plot.addRangeMarker(line);
    String words = " wanted " + Words.decimals(wanted, 0) + " %";
    plot.addAnnotation(Chart.words(words, 0, wanted, TextAnchor.CENTER_LEFT));
  }
}
