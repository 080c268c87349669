package dev.kilnledger.examples.report;

import static dev.kilnledger.units.TradeUnits.HOUR;

import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.StageForecast;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.TextAnchor;

/**
 * The axis of time that all pictures of a firing share: hours of kiln time, one stage after the
 * other, each from its start until the kiln may be opened.
 */
final class FiringTime {
  /** A stage with the hour at which it begins. */
  record Placed(StageForecast stage, double start) {
    double end() {
      return start + stage.course().duration().in(HOUR);
    }
  }

  private final List<Placed> stages = new ArrayList<>();

  FiringTime(FiringForecast forecast) {
    double start = 0;
    for (StageForecast stage : forecast.stages()) {
      Placed placed = new Placed(stage, start);
      stages.add(placed);
      start = placed.end();
    }
  }

  List<Placed> stages() {
    return stages;
  }

  double end() {
    return stages.get(stages.size() - 1).end();
  }

  Placed placed(StageForecast stage) {
    Optional<Placed> found = stages.stream().filter(each -> each.stage().equals(stage)).findFirst();
    return found.orElseThrow();
  }

  /** Plots one above the other over this time, the first with the names of the stages. */
  CombinedDomainXYPlot over(List<XYPlot> plots) {
    NumberAxis hours = Chart.axis("hours in the kiln, stage after stage");
    hours.setRange(0, end());
    CombinedDomainXYPlot combined = new CombinedDomainXYPlot(hours);
    combined.setGap(14);
    for (XYPlot plot : plots) {
      for (Placed placed : stages.subList(1, stages.size())) {
        plot.addDomainMarker(new ValueMarker(placed.start(), Chart.INK, Chart.dashed(1, 1, 3)));
      }
    }
    return combined;
  }

  /** Writes the names of the stages along the top of a plot whose axis has its range. */
  void name(XYPlot plot) {
    double top = plot.getRangeAxis().getUpperBound();
    for (Placed placed : stages) {
      plot.addAnnotation(
          Chart.words(
              " " + placed.stage().stage().name(), placed.start(), top, TextAnchor.TOP_LEFT));
    }
  }

  /** The hour at which the hottest stage is done but for its cooling. */
  double sintered(FiringForecast forecast) {
    Placed hottest = placed(forecast.hottest());
    return hottest.start() + hottest.stage().programme().durationBeforeFinalCooling().in(HOUR);
  }
}
