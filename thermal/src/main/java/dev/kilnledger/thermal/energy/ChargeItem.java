package dev.kilnledger.thermal.energy;

import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.source.Input;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.SpecificHeatCapacity;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Mass;
import org.immutables.value.Value;

/** Something that a firing heats along with the kiln. */
@Value.Immutable
@ValueStyle
public interface ChargeItem extends Serializable {
  /** {@return what it is, such as {@code "alumina"}} */
  @Value.Parameter
  String what();

  /** {@return its mass, zero or more} */
  @Value.Parameter
  Amount<Mass> mass();

  /** {@return the mean specific heat capacity between room and firing temperature, above zero} */
  @Value.Parameter
  Sourced<Amount<SpecificHeatCapacity>> heatCapacity();

  /**
   * An item.
   *
   * @param what what it is
   * @param mass its mass
   * @param heatCapacity the mean specific heat capacity between room and firing temperature
   * @return the item
   * @throws IllegalArgumentException with all problems, if the name is blank, the mass negative or
   *     the heat capacity not above zero
   */
  static ChargeItem of(
      String what, Amount<Mass> mass, Sourced<Amount<SpecificHeatCapacity>> heatCapacity) {
    return ImmutableChargeItem.of(what, mass, heatCapacity);
  }

  /** {@return the mass as an input of a formula, m} */
  default Input massInput() {
    return Input.of("m", mass(), Source.user("the charge as planned"));
  }

  /** {@return the heat capacity as an input of a formula, c} */
  default Input heatCapacityInput() {
    return Input.of("c", heatCapacity().value(), heatCapacity().source());
  }

  /**
   * The charge of a stage: crucible, packing, getter if there is one, and the metal of all parts.
   * The binder is left out: it takes 0.6 to 1.0 MJ/kg to leave (MaCFP data of PMMA), a few
   * hundredths of a kilowatt hour, and what it gives in burning is never counted as a gain.
   *
   * @param stage the stage
   * @param crucible the crucible
   * @param alloy the metal
   * @param metal the mass of metal in all parts of the charge
   * @return the items
   * @throws IllegalArgumentException if the mass is negative
   */
  static List<ChargeItem> chargeOf(
      FiringStage stage, Crucible crucible, Alloy alloy, Amount<Mass> metal) {
    List<ChargeItem> charge = new ArrayList<>();
    charge.add(of(crucible.name(), crucible.mass(), crucible.heatCapacity()));
    charge.add(of(stage.packing().name(), stage.packingMass(), stage.packing().heatCapacity()));
    stage
        .getter()
        .map(fill -> of(fill.getter().name(), fill.mass(), fill.getter().heatCapacity()))
        .ifPresent(charge::add);
    charge.add(of(alloy.name(), metal, alloy.hotHeatCapacity()));
    return List.copyOf(charge);
  }

  /**
   * Refuses impossible items.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("charge item " + what())
        .text("what", what())
        .notNegative("mass", mass())
        .positive("heat capacity", heatCapacity().value())
        .refuseIfAny();
  }
}
