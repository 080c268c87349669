package dev.kilnledger.thermal.kinetics;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.Segment;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.Relations;
import dev.kilnledger.units.TradeUnits;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/**
 * The temperature that something has felt, as straight lines between points in time: the programme
 * of a kiln, the computed core of a charge, or a logged thermocouple.
 *
 * <p>Integrals along it are exact on each line. Where the points sample a curve, the error is that
 * of the lines: of second order in their spacing.
 */
@Value.Immutable
@ValueStyle
public interface TemperatureHistory extends Serializable {
  /** {@return the points, two or more, their times strictly ascending} */
  @Value.Parameter
  List<TemperaturePoint> points();

  /**
   * The history through given points.
   *
   * @param points two or more, their times strictly ascending
   * @return the history
   * @throws IllegalArgumentException if there are fewer, or a time does not ascend
   */
  static TemperatureHistory of(List<TemperaturePoint> points) {
    return ImmutableTemperatureHistory.of(points);
  }

  /**
   * The history of something that follows a programme without lag; its points are the ends of the
   * segments.
   *
   * @param profile the programme
   * @return the history, from time zero
   */
  static TemperatureHistory of(Profile profile) {
    List<TemperaturePoint> points = new ArrayList<>();
    points.add(TemperaturePoint.of(Amounts.seconds(0), profile.start()));
    double seconds = 0;
    for (Segment segment : profile.segments()) {
      seconds += segment.duration().si();
      points.add(TemperaturePoint.of(Amounts.seconds(seconds).to(TradeUnits.HOUR), segment.end()));
    }
    return of(points);
  }

  /** {@return the first point} */
  default TemperaturePoint start() {
    return points().get(0);
  }

  /** {@return the last point} */
  default TemperaturePoint end() {
    return points().get(points().size() - 1);
  }

  /** {@return how long it lasts} */
  default Amount<Time> duration() {
    return end().time().subtract(start().time());
  }

  /** {@return the first of its hottest points} */
  default TemperaturePoint hottest() {
    TemperaturePoint hottest = start();
    for (TemperaturePoint point : points()) {
      if (point.temperature().isGreaterThan(hottest.temperature())) {
        hottest = point;
      }
    }
    return hottest;
  }

  /**
   * The temperature at a time.
   *
   * @param time from the first point's time to the last one's
   * @return the temperature on the line between the points around it
   * @throws IllegalArgumentException if the time lies outside
   */
  default Amount<Temperature> temperatureAt(Amount<Time> time) {
    new Problems("temperature history")
        .within("time", time, start().time(), end().time())
        .refuseIfAny();
    int index = 1;
    while (points().get(index).time().isLessThan(time)) {
      index++;
    }
    TemperaturePoint from = points().get(index - 1);
    TemperaturePoint to = points().get(index);
    double share = time.subtract(from.time()).ratio(to.time().subtract(from.time()));
    return Relations.shifted(
        from.temperature(),
        Relations.difference(from.temperature(), to.temperature()).multiply(share));
  }

  /**
   * Refuses fewer than two points and times that do not ascend.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("temperature history")
            .require(
                points().size() > 1, "points are " + points().size() + "; accepted is 2 or more");
    for (int i = 1; i < points().size(); i++) {
      Amount<Time> before = points().get(i - 1).time();
      Amount<Time> time = points().get(i).time();
      if (!time.isGreaterThan(before)) {
        problems.require(
            false,
            "point "
                + (i + 1)
                + " is at "
                + time
                + " after one at "
                + before
                + "; accepted are later and later times");
      }
    }
    problems.refuseIfAny();
  }
}
