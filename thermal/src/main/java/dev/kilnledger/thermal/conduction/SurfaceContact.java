package dev.kilnledger.thermal.conduction;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.HeatTransferCoefficient;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;

/**
 * How a surface takes up heat from what surrounds it at T_g: either it has that temperature, or
 *
 * <pre>q = h (T_g - T) + e s (T_g^4 - T^4)</pre>
 *
 * with h the coefficient of convection, e the emissivity between surface and surroundings, and s =
 * 5.670374419e-8 W/(m2 K4) (Stefan and Boltzmann; CODATA 2018).
 */
@Value.Immutable
@ValueStyle
public interface SurfaceContact extends Serializable {
  /** {@return the coefficient of convection; empty where the surface has the temperature around} */
  @Value.Parameter
  Optional<Amount<HeatTransferCoefficient>> convection();

  /** {@return the emissivity, from 0 to 1} */
  @Value.Parameter
  Amount<Dimensionless> emissivity();

  /** {@return contact without resistance: the surface is as hot as what surrounds it} */
  static SurfaceContact perfect() {
    return ImmutableSurfaceContact.of(Optional.empty(), Amounts.ratio(0));
  }

  /**
   * Convection alone.
   *
   * @param convection the coefficient, above zero
   * @return the contact
   */
  static SurfaceContact of(Amount<HeatTransferCoefficient> convection) {
    return of(convection, Amounts.ratio(0));
  }

  /**
   * Convection and radiation, from gas and walls of one temperature.
   *
   * @param convection the coefficient, zero or more
   * @param emissivity from 0 to 1, not zero if there is no convection
   * @return the contact
   * @throws IllegalArgumentException with all problems
   */
  static SurfaceContact of(
      Amount<HeatTransferCoefficient> convection, Amount<Dimensionless> emissivity) {
    return ImmutableSurfaceContact.of(Optional.of(convection), emissivity);
  }

  /** {@return whether the surface has the temperature of what surrounds it} */
  default boolean isPerfect() {
    return convection().isEmpty();
  }

  /**
   * Refuses a contact that passes no heat.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("surface contact")
            .within("emissivity", emissivity(), Amounts.ratio(0), Amounts.ratio(1));
    convection()
        .ifPresent(
            h ->
                problems
                    .notNegative("convection", h)
                    .require(
                        h.si() > 0 || emissivity().si() > 0,
                        "neither convection nor radiation; accepted is one of them above zero"));
    problems.refuseIfAny();
  }
}
