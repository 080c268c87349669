package dev.kilnledger.thermal.firing;

import dev.kilnledger.thermal.kinetics.TemperatureHistory;
import dev.kilnledger.thermal.kinetics.TemperaturePoint;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.Segment;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/**
 * Stages joined to one course, for what is carried over from one to the next. Between two stages,
 * in which the charge is cold, there is a second.
 */
final class WholeRoute {
  private static final Amount<Time> BETWEEN = Amounts.seconds(1);

  private WholeRoute() {}

  /** What the core feels. */
  static TemperatureHistory felt(List<StageForecast> stages) {
    List<TemperaturePoint> points = new ArrayList<>();
    double hours = 0;
    for (StageForecast stage : stages) {
      for (TemperaturePoint point : TemperatureHistory.of(stage.felt()).points()) {
        points.add(
            TemperaturePoint.of(
                Amounts.hours(hours + point.time().si() / 3600), point.temperature()));
      }
      hours = (points.get(points.size() - 1).time().si() + BETWEEN.si()) / 3600;
    }
    return TemperatureHistory.of(points);
  }

  /** The segments as they ran, and after those of each stage its cooling, where it is known. */
  static Profile programme(List<StageForecast> stages) {
    List<Segment> segments = new ArrayList<>();
    for (StageForecast stage : stages) {
      if (!segments.isEmpty()) {
        Amount<Temperature> cold = segments.get(segments.size() - 1).end();
        segments.add(Segment.of(cold, stage.programme().start(), BETWEEN));
      }
      segments.addAll(stage.programme().segments());
      if (cools(stage)) {
        segments.add(
            Segment.of(
                stage.programme().end(),
                stage.course().end(),
                stage.course().duration().subtract(stage.programme().duration())));
      }
    }
    return Profile.of(segments);
  }

  private static boolean cools(StageForecast stage) {
    return stage.course().duration().si() - stage.programme().duration().si() > BETWEEN.si();
  }

  /** Where a segment of the joined programme, numbered from 1, stands: for people. */
  static String place(List<StageForecast> stages, int number) {
    int left = number;
    for (int i = 0; i < stages.size(); i++) {
      StageForecast stage = stages.get(i);
      int segments = stage.programme().segments().size();
      if (left >= 1 && left <= segments) {
        return "segment " + left + " of the " + stage.stage().name() + " stage";
      }
      left -= segments;
      int between = i + 1 < stages.size() ? 1 : 0;
      int cooling = (cools(stage) ? 1 : 0) + between;
      if (left >= 1 && left <= cooling) {
        return "cooling after the " + stage.stage().name() + " stage";
      }
      left -= cooling;
    }
    throw new IllegalArgumentException("segment " + number + " is none of the route's");
  }
}
