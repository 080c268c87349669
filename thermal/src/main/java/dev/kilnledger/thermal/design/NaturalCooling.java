package dev.kilnledger.thermal.design;

import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.thermal.energy.ChargeItem;
import dev.kilnledger.thermal.energy.EnergyFinding;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.kiln.TransientKiln;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.util.List;
import javax.measure.quantity.Temperature;

/** How fast a straight ramp down may be for a kiln to follow it by itself. */
final class NaturalCooling {
  private static final double WIDER = 1.25;
  private static final double WITHIN = 1.02;

  private final FiringSetup setup;
  private final TransientKiln model;

  NaturalCooling(FiringSetup setup) {
    this.setup = setup;
    this.model = TransientKiln.withSoak(setup.soakControl());
  }

  /** The shortest such ramp after a programme, in minutes, at most 2 % longer than need be. */
  double minutes(FiringStage stage, Programme before, int target) {
    List<ChargeItem> charge =
        ChargeItem.chargeOf(
            stage,
            setup.crucible(),
            setup.alloy(),
            setup.metal().orElseGet(() -> Amounts.grams(0)));
    Amount<Temperature> to = before.form().scale().degrees(target);
    // A straight line keeps the wall hotter than falling freely would, so it takes longer.
    double low =
        model.coolingTime(setup.kiln(), before.profile(), charge, to).in(TradeUnits.MINUTE);
    double high = low * WIDER;
    while (!follows(before.then(target, high), charge)) {
      low = high;
      high *= WIDER;
    }
    while (high > low * WITHIN) {
      double middle = (low + high) / 2;
      if (follows(before.then(target, middle), charge)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }

  private boolean follows(Programme programme, List<ChargeItem> charge) {
    return model.run(setup.kiln(), programme.profile(), charge).findings().stream()
        .filter(finding -> finding.code() == EnergyFinding.COOLS_AS_PROGRAMMED)
        .allMatch(finding -> finding.severity() == Severity.PASSED);
  }
}
