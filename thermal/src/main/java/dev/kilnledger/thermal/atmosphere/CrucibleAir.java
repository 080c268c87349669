package dev.kilnledger.thermal.atmosphere;

import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.immutables.value.Value;
import si.uom.quantity.MassFlowRate;

/** The air that the getter has to deal with: what the crucible holds, and what gets in. */
@Value.Immutable
@ValueStyle
public interface CrucibleAir extends Serializable {
  /** {@return the volume of gas in the closed crucible, above zero} */
  Amount<Volume> voidVolume();

  /**
   * {@return how much oxygen gets in through lid and packing while it is hot, with its range; empty
   * where it is not known, and then nothing can be said for sure}
   */
  Optional<Sourced<Span<MassFlowRate>>> oxygenInflow();

  /**
   * Starts one.
   *
   * @return a builder; the void volume is required
   */
  static Builder builder() {
    return new Builder();
  }

  /**
   * The volume that crucible, packing grains and metal leave to the gas. The carbon's grains, which
   * are porous, are left out: a little more gas, the safe side.
   *
   * @param crucible the crucible
   * @param stage the stage with its packing
   * @param alloy the metal
   * @param metal the mass of metal in all parts
   * @return the volume
   * @throws IllegalArgumentException if nothing is left
   */
  static Amount<Volume> voidVolume(
      Crucible crucible, FiringStage stage, Alloy alloy, Amount<Mass> metal) {
    double litres =
        1000
            * (crucible.cavity().volume().si()
                - stage.packingMass().si() / stage.packing().skeletalDensity().value().si()
                - metal.si() / alloy.fullDensity().value().si());
    new Problems("crucible " + crucible.name())
        .require(
            litres > 0,
            "packing of "
                + stage.packingMass()
                + " and metal of "
                + metal
                + " leave no room in "
                + crucible.cavity().volume().format(TradeUnits.LITRE, 3)
                + "; accepted is less of them")
        .refuseIfAny();
    return Amounts.litres(litres);
  }

  /** Builds {@link CrucibleAir} values. */
  final class Builder extends ImmutableCrucibleAir.Builder {
    Builder() {}
  }

  /**
   * Refuses impossible air.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems = new Problems("crucible air").positive("void volume", voidVolume());
    oxygenInflow()
        .ifPresent(inflow -> problems.notNegative("lowest oxygen inflow", inflow.value().low()));
    problems.refuseIfAny();
  }
}
