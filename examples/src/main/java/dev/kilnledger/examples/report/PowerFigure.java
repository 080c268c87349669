package dev.kilnledger.examples.report;

import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.KILOWATT;
import static dev.kilnledger.units.TradeUnits.KILOWATT_HOUR;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.thermal.energy.RouteEnergy;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.kiln.KilnPoint;
import dev.kilnledger.thermal.kiln.KilnRun;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** What the elements of the kiln give over time, and the energy that has gone in. */
final class PowerFigure {
  private final FiringForecast forecast;
  private final FiringTime time;
  private final double rating;

  private PowerFigure(FiringForecast forecast) {
    this.forecast = forecast;
    this.time = new FiringTime(forecast);
    this.rating = forecast.setup().kiln().power().in(KILOWATT);
  }

  /** The figure; empty where the wall of the kiln is not known, and with it the power. */
  static Optional<Figure> of(FiringForecast forecast) {
    return forecast.energy().map(energy -> new PowerFigure(forecast).figure(energy));
  }

  private Figure figure(RouteEnergy energy) {
    Kiln kiln = forecast.setup().kiln();
    double peak =
        forecast.stages().stream()
            .flatMap(stage -> stage.kiln().orElseThrow().points().stream())
            .mapToDouble(point -> point.power().in(KILOWATT))
            .max()
            .orElse(0);
    return new Figure(
        "power",
        "What the kiln draws",
        "The elements of "
            + kiln.name()
            + " give up to "
            + Words.decimals(peak, 2)
            + " kW of their "
            + kiln.power().format(KILOWATT, 2)
            + "; by the end "
            + energy.total().format(KILOWATT_HOUR, 2)
            + " have gone in.",
        "Two panels over the hours in the kiln: the power of the elements against their rating,"
            + " and the energy that has gone in since the start.",
        this::panels);
  }

  private List<Panel> panels(Format format) {
    XYPlot power = power();
    List<XYPlot> plots = List.of(power, energy());
    CombinedDomainXYPlot combined = time.over(plots);
    combined.add(power, 3);
    combined.add(plots.get(1), 2);
    return List.of(new Panel(Chart.of(combined), 340));
  }

  private XYPlot power() {
    XYSeries series = new XYSeries("power", false, true);
    for (FiringTime.Placed placed : time.stages()) {
      Curve.of(
              points(placed),
              point -> placed.start() + point.time().in(HOUR),
              point -> point.power().in(KILOWATT))
          .thinned(0.004 * rating)
          .addTo(series);
    }
    NumberAxis kilowatts = Chart.axis("power, kW");
    XYPlot plot = Chart.lines(new XYSeriesCollection(series), kilowatts);
    Chart.line(plot, 0, Chart.BLUE, Chart.solid(1.6f));
    kilowatts.setRange(0, 1.3 * rating);
    ValueMarker full = new ValueMarker(rating);
    full.setPaint(Chart.INK);
    full.setStroke(Chart.dashed(1, 5, 4));
    plot.addRangeMarker(full);
    plot.addAnnotation(Chart.words("rating ", time.end(), rating, TextAnchor.CENTER_RIGHT));
    time.name(plot);
    return plot;
  }

  private XYPlot energy() {
    List<double[]> sums = new ArrayList<>();
    double sum = 0;
    for (FiringTime.Placed placed : time.stages()) {
      double before = 0;
      for (KilnPoint point : points(placed)) {
        double hours = point.time().in(HOUR);
        sum += point.power().in(KILOWATT) * (hours - before); // the mean since the point before
        before = hours;
        sums.add(new double[] {placed.start() + hours, sum});
      }
    }
    XYSeries series =
        Curve.of(sums, each -> each[0], each -> each[1]).thinned(0.003 * sum).series("energy");
    NumberAxis kilowattHours = Chart.axis("energy, kWh");
    kilowattHours.setRange(0, 1.15 * sum);
    XYPlot plot = Chart.lines(new XYSeriesCollection(series), kilowattHours);
    Chart.line(plot, 0, Chart.VERMILION, Chart.solid(2));
    return plot;
  }

  private static List<KilnPoint> points(FiringTime.Placed placed) {
    KilnRun run = placed.stage().kiln().orElseThrow();
    List<KilnPoint> points = new ArrayList<>(run.points());
    points.addAll(run.coolingPoints().subList(1, run.coolingPoints().size()));
    return points;
  }
}
