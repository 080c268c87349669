package dev.kilnledger.thermal.conduction;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.Segment;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Relations;
import dev.kilnledger.units.quantity.TemperatureDifference;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/**
 * What a charge felt of a profile, ready for a chart. Between two points straight lines are meant:
 * they lie so close that the lines are within 0.002 K of the model's own curve, or within a tenth
 * of the error that a coarse model allows in a step.
 */
@Value.Immutable
@ValueStyle
public interface CoreHistory extends Serializable {
  /** {@return the charge} */
  Charge charge();

  /** {@return the profile of the kiln} */
  Profile profile();

  /** {@return the model it was computed by} */
  Source model();

  /** {@return the points in order of time, from the start to the end of the profile} */
  List<CorePoint> points();

  /** {@return the heat balance, empty where the model is exact and needs none} */
  Optional<HeatBalance> heat();

  /** {@return what the model found about the core and about its own range} */
  List<Finding> findings();

  /**
   * {@return the core's temperature as a profile of many short segments: for every question that a
   * profile answers, and for whatever is integrated along what the part feels}
   */
  default Profile core() {
    List<Segment> segments = new ArrayList<>(points().size());
    for (int i = 1; i < points().size(); i++) {
      CorePoint from = points().get(i - 1);
      CorePoint to = points().get(i);
      segments.add(Segment.of(from.core(), to.core(), to.time().subtract(from.time())));
    }
    return Profile.of(segments);
  }

  /** {@return the highest temperature of the core} */
  default Amount<Temperature> corePeak() {
    Amount<Temperature> peak = points().get(0).core();
    for (CorePoint point : points()) {
      peak = point.core().isGreaterThan(peak) ? point.core() : peak;
    }
    return peak;
  }

  /**
   * The temperature of the core at a time.
   *
   * @param time since the start, from zero to the duration
   * @return the temperature
   * @throws IllegalArgumentException if the time lies outside the profile
   */
  default Amount<Temperature> coreAt(Amount<Time> time) {
    return core().temperatureAt(time);
  }

  /**
   * The time that the core is at or above a temperature.
   *
   * @param temperature the temperature
   * @return the time, zero if the core stays below
   */
  default Amount<Time> coreTimeAbove(Amount<Temperature> temperature) {
    return core().timeAbove(temperature);
  }

  /** {@return the point at which the core is farthest behind the kiln} */
  default CorePoint greatestLag() {
    CorePoint greatest = points().get(0);
    double lag = Double.NEGATIVE_INFINITY;
    for (CorePoint point : points()) {
      double behind = point.kiln().si() - point.core().si();
      if (behind > lag) {
        lag = behind;
        greatest = point;
      }
    }
    return greatest;
  }

  /** {@return how much cooler the core stays at its hottest than the kiln at its own} */
  default Amount<TemperatureDifference> peakShortfall() {
    return Relations.difference(corePeak(), profile().peak());
  }

  /**
   * Starts a history.
   *
   * @return a builder; charge, profile, model and points are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link CoreHistory} values. */
  final class Builder extends ImmutableCoreHistory.Builder {
    Builder() {}
  }
}
