package dev.kilnledger.thermal.burnout;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.HeatingRate;
import java.io.Serializable;
import javax.measure.quantity.Temperature;
import org.immutables.value.Value;

/** Where a run at one heating rate shows its fastest loss. */
@Value.Immutable
@ValueStyle
public interface LossPeak extends Serializable {
  /** {@return the heating rate, above zero} */
  @Value.Parameter
  Amount<HeatingRate> heatingRate();

  /** {@return the temperature of the fastest loss, above 0 K} */
  @Value.Parameter
  Amount<Temperature> temperature();

  /**
   * A peak.
   *
   * @param heatingRate the heating rate, above zero
   * @param temperature the temperature of the fastest loss
   * @return the peak
   * @throws IllegalArgumentException if either is not above zero
   */
  static LossPeak of(Amount<HeatingRate> heatingRate, Amount<Temperature> temperature) {
    return ImmutableLossPeak.of(heatingRate, temperature);
  }

  /**
   * Refuses a rate or temperature that is not above zero.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("peak")
        .positive("heating rate", heatingRate())
        .positive("temperature", temperature())
        .refuseIfAny();
  }
}
