package dev.kilnledger.thermal.conduction;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.SpecificEnergy;
import dev.kilnledger.units.quantity.SpecificHeatCapacity;
import dev.kilnledger.units.quantity.ThermalConductivity;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;
import si.uom.quantity.Density;

/**
 * What conducts and stores heat in a charge. Its heat is told either by a heat capacity or by an
 * enthalpy over temperature; the second can hold a transition, as a steep piece.
 */
@Value.Immutable
@ValueStyle
public interface ChargeMaterial extends Serializable {
  /** {@return the name, such as {@code "alumina, tapped"}} */
  String name();

  /** {@return the bulk density, above zero, the same at all temperatures} */
  Amount<Density> density();

  /** {@return the conductivity, above zero everywhere} */
  PropertyCurve<ThermalConductivity> conductivity();

  /**
   * {@return the factor by which the conductivity may well be higher or lower, 1 or more; 1 unless
   * stated}
   */
  @Value.Default
  default Amount<Dimensionless> conductivityFactor() {
    return Amounts.ratio(1);
  }

  /**
   * {@return whether the conductivity is known; true unless stated. One that is not stands for no
   * resistance of its own, and a finding says so}
   */
  @Value.Default
  default boolean conductivityKnown() {
    return true;
  }

  /** {@return the specific heat capacity, above zero everywhere; empty if the enthalpy is given} */
  Optional<PropertyCurve<SpecificHeatCapacity>> heatCapacity();

  /**
   * {@return the specific enthalpy over any reference, rising with temperature, of two points or
   * more, beyond which it goes on as straight; empty if the heat capacity is given}
   */
  Optional<PropertyCurve<SpecificEnergy>> enthalpy();

  /** {@return where the figures come from} */
  Source source();

  /** {@return whether neither property depends on temperature} */
  default boolean isConstant() {
    return conductivity().isConstant()
        && heatCapacity().map(PropertyCurve::isConstant).orElse(false);
  }

  /**
   * This material with all conductivities multiplied, taken as certain.
   *
   * @param factor above zero
   * @return the other material
   */
  default ChargeMaterial conducting(double factor) {
    return builder()
        .from(this)
        .conductivity(
            PropertyCurve.<ThermalConductivity>builder()
                .addAllTemperatures(conductivity().temperatures())
                .addAllValues(
                    conductivity().values().stream().map(value -> value.multiply(factor)).toList())
                .build())
        .conductivityFactor(Amounts.ratio(1))
        .build();
  }

  /**
   * Starts one.
   *
   * @return a builder; name, density, conductivity, source and one of heat capacity and enthalpy
   *     are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link ChargeMaterial} values. */
  final class Builder extends ImmutableChargeMaterial.Builder {
    Builder() {}
  }

  /**
   * Refuses what cannot conduct or store heat.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("charge material " + name())
            .text("name", name())
            .positive("density", density())
            .require(
                conductivityFactor().si() >= 1,
                "conductivity factor is " + conductivityFactor() + "; accepted is 1 or more")
            .require(
                heatCapacity().isPresent() != enthalpy().isPresent(),
                "heat capacity and enthalpy are "
                    + (enthalpy().isPresent() ? "both" : "neither")
                    + " given; accepted is one of them");
    conductivity().values().forEach(value -> problems.positive("conductivity", value));
    heatCapacity()
        .ifPresent(curve -> curve.values().forEach(c -> problems.positive("heat capacity", c)));
    enthalpy().ifPresent(curve -> requireRising(problems, curve.values()));
    problems.refuseIfAny();
  }

  private static void requireRising(Problems problems, List<Amount<SpecificEnergy>> enthalpies) {
    problems.require(
        enthalpies.size() > 1, "the enthalpy has one point; accepted are two points or more");
    for (int i = 1; i < enthalpies.size(); i++) {
      problems.require(
          enthalpies.get(i).isGreaterThan(enthalpies.get(i - 1)),
          "enthalpy falls or stays from "
              + enthalpies.get(i - 1)
              + " to "
              + enthalpies.get(i)
              + "; accepted is an enthalpy that rises with temperature");
    }
  }
}
