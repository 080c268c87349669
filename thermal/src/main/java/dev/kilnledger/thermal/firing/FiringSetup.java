package dev.kilnledger.thermal.firing;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.Relations;
import dev.kilnledger.units.quantity.ThermalConductivity;
import java.util.Optional;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.immutables.value.Value;

/**
 * All that decides whether a firing can come out: its inputs, and the parts of one charge.
 *
 * <pre>{@code
 * FiringSetup.builder()
 *     .feedstock(MaterialLibrary.standard().feedstock("copper in polylactide, generic"))
 *     .thickestSection(millimetres(4))
 *     .greenMass(grams(60))
 *     .route(route).kiln(kiln).crucible(crucible)
 *     .thermocouple(Thermocouple.S)
 *     .build();
 * }</pre>
 */
@Value.Immutable
@ValueStyle
public interface FiringSetup extends FiringInputs {
  /** More than any solid has at these temperatures, let alone a powder. */
  Amount<ThermalConductivity> HIGHEST_CONDUCTIVITY = Amounts.wattsPerMetreKelvin(1000);

  /** {@return the thickest section of the green part, above zero} */
  Amount<Length> thickestSection();

  /** {@return the volume of all green parts of a charge; empty where it is not known} */
  Optional<Amount<Volume>> partsVolume();

  /**
   * {@return the mass of all green parts of a charge; where empty, their volume times the density
   * of the feedstock, voids left out, if the volume is known}
   */
  Optional<Amount<Mass>> greenMass();

  /** {@return the volume of all green parts, as stated or by their mass} */
  default Optional<Amount<Volume>> greenVolume() {
    return partsVolume()
        .or(() -> greenMass().map(mass -> Relations.volumeOf(mass, feedstock().density())));
  }

  /** {@return the metal in all parts of a charge; empty where neither mass nor volume is known} */
  default Optional<Amount<Mass>> metal() {
    return allParts().map(mass -> mass.multiply(feedstock().metalMassFraction().si()));
  }

  /** {@return the binder in all parts of a charge; empty where neither is known} */
  default Optional<Amount<Mass>> binderMass() {
    return allParts().map(mass -> mass.multiply(feedstock().binderMassFraction().si()));
  }

  private Optional<Amount<Mass>> allParts() {
    return greenMass()
        .or(() -> partsVolume().map(volume -> Relations.massOf(feedstock().density(), volume)));
  }

  /**
   * Starts one.
   *
   * @return a builder; feedstock, thickest section, route, kiln and crucible are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link FiringSetup} values. */
  final class Builder extends ImmutableFiringSetup.Builder {
    Builder() {}
  }

  /**
   * Refuses what no charge can be.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("firing setup").positive("thickest section", thickestSection());
    partsVolume().ifPresent(volume -> problems.positive("parts volume", volume));
    greenMass().ifPresent(mass -> problems.positive("green mass", mass));
    soak().ifPresent(soak -> problems.positive("soak", soak));
    targetDensity()
        .ifPresent(
            target ->
                problems.require(
                    target.si() > 0 && target.si() < 1,
                    "target density is " + target + "; accepted is above 0 and below 1"));
    packingConductivity()
        .ifPresent(
            stated ->
                stated
                    .value()
                    .values()
                    .forEach(
                        value ->
                            problems.require(
                                !value.isGreaterThan(HIGHEST_CONDUCTIVITY),
                                () ->
                                    "packing conductivity is "
                                        + value
                                        + "; accepted is up to "
                                        + HIGHEST_CONDUCTIVITY)));
    oxygenInflow()
        .ifPresent(inflow -> problems.notNegative("lowest oxygen inflow", inflow.value().low()));
    problems.refuseIfAny();
  }
}
