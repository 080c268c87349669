package dev.kilnledger.thermal.profile;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Relations;
import dev.kilnledger.units.TradeUnits;
import dev.kilnledger.units.quantity.HeatingRate;
import java.io.Serializable;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** One straight piece of a profile: a ramp from one temperature to another, or a hold. */
@Value.Immutable
@ValueStyle
public interface Segment extends Serializable {
  /** {@return the temperature at its start} */
  @Value.Parameter
  Amount<Temperature> start();

  /** {@return the temperature at its end; the same for a hold} */
  @Value.Parameter
  Amount<Temperature> end();

  /** {@return how long it takes, above zero} */
  @Value.Parameter
  Amount<Time> duration();

  /**
   * A segment between two temperatures.
   *
   * @param start the temperature at its start
   * @param end the temperature at its end
   * @param duration how long it takes
   * @return the segment
   * @throws IllegalArgumentException if the duration is not above zero
   */
  static Segment of(Amount<Temperature> start, Amount<Temperature> end, Amount<Time> duration) {
    return ImmutableSegment.of(start, end, duration);
  }

  /** {@return whether the temperature stays as it is} */
  default boolean isHold() {
    return start().equals(end());
  }

  /** {@return whether the temperature rises} */
  default boolean isHeating() {
    return end().isGreaterThan(start());
  }

  /** {@return whether the temperature falls} */
  default boolean isCooling() {
    return end().isLessThan(start());
  }

  /** {@return the rate of change, in K/h: above zero when heating, zero for a hold} */
  default Amount<HeatingRate> rate() {
    return Relations.rateOf(Relations.difference(start(), end()), duration())
        .to(TradeUnits.KELVIN_PER_HOUR);
  }

  /**
   * The temperature some time after the segment's start.
   *
   * @param time from zero to the duration
   * @return the temperature, on the straight line from start to end
   * @throws IllegalArgumentException if the time lies outside the segment
   */
  default Amount<Temperature> temperatureAt(Amount<Time> time) {
    new Problems("segment").within("time", time, duration().multiply(0), duration()).refuseIfAny();
    return time.equals(duration())
        ? end()
        : Relations.shifted(
            start(), Relations.difference(start(), end()).multiply(time.ratio(duration())));
  }

  /**
   * Refuses a segment that takes no time.
   *
   * @throws IllegalArgumentException if the duration is not above zero
   */
  @Value.Check
  default void check() {
    new Problems(() -> "segment from " + start() + " to " + end())
        .positive("duration", duration())
        .refuseIfAny();
  }
}
