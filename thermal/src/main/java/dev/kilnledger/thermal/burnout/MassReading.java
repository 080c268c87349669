package dev.kilnledger.thermal.burnout;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** One row of a thermogravimetric run. */
@Value.Immutable
@ValueStyle
public interface MassReading extends Serializable {
  /** {@return the time} */
  @Value.Parameter
  Amount<Time> time();

  /** {@return the temperature of the sample} */
  @Value.Parameter
  Amount<Temperature> temperature();

  /** {@return the mass of the sample} */
  @Value.Parameter
  Amount<Mass> mass();

  /**
   * A row.
   *
   * @param time the time
   * @param temperature the temperature of the sample
   * @param mass the mass of the sample
   * @return the row
   */
  static MassReading of(Amount<Time> time, Amount<Temperature> temperature, Amount<Mass> mass) {
    return ImmutableMassReading.of(time, temperature, mass);
  }
}
