package dev.kilnledger.thermal.firing;

import dev.kilnledger.thermal.conduction.Charge;
import dev.kilnledger.thermal.conduction.ChargeLayer;
import dev.kilnledger.thermal.conduction.Conduction;
import dev.kilnledger.thermal.conduction.CoreHistory;
import dev.kilnledger.thermal.conduction.EigenmodeConduction;
import dev.kilnledger.thermal.conduction.EnthalpyConduction;
import dev.kilnledger.thermal.conduction.PackedCharge;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Mass;

/** What is in the crucible, as a body that conducts, and the model that takes it. */
final class ChargeInCrucible {
  /** Of the charge, where the mass of metal is not known or more than fits: next to nothing. */
  private static final double LEAST_SHARE = 1e-6;

  private ChargeInCrucible() {}

  static Charge of(FiringSetup setup, FiringStage stage) {
    double green = setup.feedstock().solidsLoading().si();
    double full =
        setup.crucible().cavity().volume().si() * setup.alloy().fullDensity().value().si() * green;
    Optional<Amount<Mass>> metal = setup.metal().filter(mass -> mass.si() < full);
    PackedCharge.Builder packed =
        PackedCharge.builder()
            .crucible(setup.crucible())
            .powder(stage.packing())
            .alloy(setup.alloy())
            .metal(metal.orElseGet(() -> Amounts.kilograms(LEAST_SHARE * full)))
            .relativeDensity(setup.feedstock().solidsLoading())
            .contact(setup.contact());
    setup
        .packingConductivity()
        .ifPresent(
            stated ->
                packed
                    .packingConductivity(stated.value())
                    .packingConductivityFactor(Amounts.ratio(1))
                    .packingConductivitySource(stated.source()));
    Charge charge = packed.build().charge();
    if (metal.isPresent()) {
      return charge;
    }
    // without metal it is packing to the centre, one body
    return Charge.builder()
        .from(charge)
        .layers(
            List.of(
                ChargeLayer.of(
                    charge.layers().get(1).material(), charge.halfSize())))
        .build();
  }

  static Conduction modelFor(Charge charge) {
    boolean exact =
        charge.layers().size() == 1
            && charge.layers().get(0).material().isConstant()
            && charge.contact().emissivity().si() == 0;
    return exact ? EigenmodeConduction.standard() : EnthalpyConduction.standard();
  }

  static CoreHistory history(Charge charge, Profile course) {
    return modelFor(charge).forecast(charge, course);
  }
}
