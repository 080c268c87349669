package dev.kilnledger.thermal.energy;

import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import java.util.List;
import javax.measure.quantity.Mass;

/** A model of what a firing takes in energy; the caller chooses which. */
public interface FiringEnergy {
  /**
   * The energy of one firing.
   *
   * @param kiln the kiln
   * @param profile its programme
   * @param charge what it heats
   * @return the balance
   * @throws IllegalArgumentException if the kiln lacks a fact that the model needs
   */
  EnergyBalance balance(Kiln kiln, Profile profile, List<ChargeItem> charge);

  /**
   * The energy of all stages of a route.
   *
   * @param kiln the kiln
   * @param crucible the crucible
   * @param route the stages with packing and getter
   * @param alloy the metal
   * @param metal the mass of metal in all parts of the charge
   * @return a balance for each stage
   * @throws IllegalArgumentException if the kiln lacks a fact that the model needs, or the mass is
   *     negative
   */
  default RouteEnergy forRoute(
      Kiln kiln, Crucible crucible, FiringRoute route, Alloy alloy, Amount<Mass> metal) {
    return RouteEnergy.of(
        route,
        route.stages().stream()
            .map(
                stage ->
                    balance(
                        kiln, stage.profile(), ChargeItem.chargeOf(stage, crucible, alloy, metal)))
            .toList());
  }
}
