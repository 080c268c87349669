package dev.kilnledger.thermal.profile;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.Relations;
import dev.kilnledger.units.TradeUnits;
import dev.kilnledger.units.quantity.HeatingRate;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/**
 * Builds a {@link Profile} segment by segment, in any mix of units. What is wrong with a segment is
 * told by {@link #build()}, for all segments together. Not safe for use by several threads.
 */
public final class ProfileBuilder {
  private final List<Segment> segments = new ArrayList<>();
  private final Problems problems = new Problems("profile");
  private Amount<Temperature> current;
  private int number;
  private boolean sound;

  ProfileBuilder(Amount<Temperature> start) {
    current = start;
  }

  /**
   * Heats or cools at a rate.
   *
   * @param target the temperature to reach, other than the current one
   * @param rate the size of the rate, above zero; its direction follows from the target
   * @return this
   */
  public ProfileBuilder rampTo(Amount<Temperature> target, Amount<HeatingRate> rate) {
    begin();
    requireMove(target);
    requireRate(target, rate);
    return ramp(target, rate);
  }

  /**
   * Heats or cools over a time.
   *
   * @param target the temperature to reach, other than the current one
   * @param duration how long it takes, above zero
   * @return this
   */
  public ProfileBuilder rampOver(Amount<Temperature> target, Amount<Time> duration) {
    begin();
    requireMove(target);
    requireDuration("a ramp to " + target, duration);
    return end(target, duration);
  }

  /**
   * Cools at a rate, the kiln's controller holding it back.
   *
   * @param target the temperature to reach, below the current one
   * @param rate the size of the rate, above zero
   * @return this
   */
  public ProfileBuilder coolTo(Amount<Temperature> target, Amount<HeatingRate> rate) {
    begin();
    require(
        target.isLessThan(current),
        "cools from " + current + " to " + target + "; accepted is a lower temperature");
    requireRate(target, rate);
    return ramp(target, rate);
  }

  /**
   * Keeps the temperature.
   *
   * @param duration for how long, above zero
   * @return this
   */
  public ProfileBuilder hold(Amount<Time> duration) {
    begin();
    requireDuration("a hold at " + current, duration);
    return end(current, duration);
  }

  /**
   * The profile.
   *
   * @return a profile of the segments so far
   * @throws IllegalArgumentException if there is no segment or one is wrong, naming the number of
   *     each wrong segment, its values, and what is accepted
   */
  public Profile build() {
    problems.refuseIfAny();
    return Profile.of(segments);
  }

  private void begin() {
    number++;
    sound = true;
  }

  private void requireMove(Amount<Temperature> target) {
    require(
        !target.equals(current),
        "is a ramp from " + current + " to " + target + "; accepted is another target, or a hold");
  }

  private void requireRate(Amount<Temperature> target, Amount<HeatingRate> rate) {
    require(
        rate.si() > 0,
        "is a ramp to "
            + target
            + " at "
            + rate
            + "; accepted is more than zero, as the direction follows from the target");
  }

  private void requireDuration(String what, Amount<Time> duration) {
    require(duration.si() > 0, "is " + what + " over " + duration + "; accepted is more than zero");
  }

  private void require(boolean holds, String message) {
    problems.require(holds, "segment " + number + " " + message);
    sound &= holds;
  }

  private ProfileBuilder ramp(Amount<Temperature> target, Amount<HeatingRate> rate) {
    // In kelvin and hours, so that 230 K at 60 K/h is the same number however it is given.
    double kelvin = Relations.difference(current, target).in(TradeUnits.KELVIN_DIFFERENCE);
    double perHour = rate.in(TradeUnits.KELVIN_PER_HOUR);
    return end(target, Amounts.hours(sound ? Math.abs(kelvin) / perHour : 0));
  }

  private ProfileBuilder end(Amount<Temperature> target, Amount<Time> duration) {
    if (sound) {
      segments.add(Segment.of(current, target, duration));
    }
    current = target;
    return this;
  }
}
