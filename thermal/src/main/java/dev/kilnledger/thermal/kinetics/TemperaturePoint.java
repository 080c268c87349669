package dev.kilnledger.thermal.kinetics;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** A temperature at a time. */
@Value.Immutable
@ValueStyle
public interface TemperaturePoint extends Serializable {
  /** {@return the time, in any zero} */
  @Value.Parameter
  Amount<Time> time();

  /** {@return the temperature, above 0 K} */
  @Value.Parameter
  Amount<Temperature> temperature();

  /**
   * A temperature at a time.
   *
   * @param time the time
   * @param temperature the temperature
   * @return the point
   * @throws IllegalArgumentException if the temperature is 0 K
   */
  static TemperaturePoint of(Amount<Time> time, Amount<Temperature> temperature) {
    return ImmutableTemperaturePoint.of(time, temperature);
  }

  /**
   * Refuses absolute zero, where nothing reacts.
   *
   * @throws IllegalArgumentException if the temperature is 0 K
   */
  @Value.Check
  default void check() {
    new Problems(() -> "point at " + time())
        .require(
            temperature().si() > 0,
            () -> "temperature is " + temperature() + "; accepted is above absolute zero")
        .refuseIfAny();
  }
}
