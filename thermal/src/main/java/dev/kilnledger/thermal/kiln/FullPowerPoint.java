package dev.kilnledger.thermal.kiln;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.HeatingRate;
import java.io.Serializable;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** One point of a kiln heated from cold at full power. */
@Value.Immutable
@ValueStyle
public interface FullPowerPoint extends Serializable {
  /** {@return the temperature of chamber and charge} */
  @Value.Parameter
  Amount<Temperature> temperature();

  /** {@return how fast it rises there: the most the kiln can follow} */
  @Value.Parameter
  Amount<HeatingRate> rate();

  /** {@return when it gets there} */
  @Value.Parameter
  Amount<Time> time();

  /**
   * A point.
   *
   * @param temperature the temperature of chamber and charge
   * @param rate how fast it rises
   * @param time since the start
   * @return the point
   */
  static FullPowerPoint of(
      Amount<Temperature> temperature, Amount<HeatingRate> rate, Amount<Time> time) {
    return ImmutableFullPowerPoint.of(temperature, rate, time);
  }
}
