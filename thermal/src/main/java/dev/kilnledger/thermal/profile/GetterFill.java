package dev.kilnledger.thermal.profile;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.material.Getter;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Mass;
import org.immutables.value.Value;

/** The getter laid into the crucible for one stage. */
@Value.Immutable
@ValueStyle
public interface GetterFill extends Serializable {
  /** {@return the getter} */
  @Value.Parameter
  Getter getter();

  /** {@return how much of it, above zero} */
  @Value.Parameter
  Amount<Mass> mass();

  /**
   * A mass of a getter.
   *
   * @param getter the getter
   * @param mass how much of it
   * @return the fill
   * @throws IllegalArgumentException if the mass is not above zero
   */
  static GetterFill of(Getter getter, Amount<Mass> mass) {
    return ImmutableGetterFill.of(getter, mass);
  }

  /**
   * Refuses a mass that is not above zero.
   *
   * @throws IllegalArgumentException if the mass is not above zero
   */
  @Value.Check
  default void check() {
    new Problems("fill of " + getter().name()).positive("mass", mass()).refuseIfAny();
  }
}
