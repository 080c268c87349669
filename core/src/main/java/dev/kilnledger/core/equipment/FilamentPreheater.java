package dev.kilnledger.core.equipment;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import org.immutables.value.Value;

/** A device that warms filament on its way to the feeder, since filled filament is brittle cold. */
@Value.Immutable
@ValueStyle
public interface FilamentPreheater extends Serializable {
  /** {@return the name} */
  @Value.Parameter
  String name();

  /** {@return the temperature it holds} */
  @Value.Parameter
  Amount<Temperature> temperature();

  /** {@return its power} */
  @Value.Parameter
  Amount<Power> power();

  /**
   * A preheater.
   *
   * @param name the name
   * @param temperature the temperature it holds
   * @param power its power
   * @return the preheater
   * @throws IllegalArgumentException if the name is blank or the power negative
   */
  static FilamentPreheater of(String name, Amount<Temperature> temperature, Amount<Power> power) {
    return ImmutableFilamentPreheater.of(name, temperature, power);
  }

  /**
   * Refuses a blank name and negative power.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("preheater").text("name", name()).notNegative("power", power()).refuseIfAny();
  }
}
