package dev.kilnledger.thermal.check;

import dev.kilnledger.thermal.firing.FiringSetup;
import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.HOUR;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import java.util.List;
import javax.measure.quantity.Time;

/**
 * The hold at the peak, at a stretch, against the metal's usual one. The kiln's time is taken: the
 * core of a packed charge lags behind and has less of it.
 */
final class HoldAtPeak implements FiringRule {
  @Override
  public List<Finding> check(FiringSetup setup) {
    Alloy alloy = setup.alloy();
    Span<Time> usual = alloy.sinteringHold().value();
    Amount<Time> hold = setup.route().hottest().profile().holdAtPeak();
    Finding.Builder finding =
        FiringFinding.HOLD_AT_PEAK
            .about(alloy.name())
            .measured(hold)
            .basis(alloy.sinteringHold().source());
    String told =
        "a hold at the peak of "
            + hold.format(HOUR, 2)
            + ", where "
            + usual.format(HOUR, 2)
            + " is usual for "
            + alloy.name();
    if (Excess.exceeds(usual.low(), hold)) {
      return List.of(
          finding
              .severity(WARNING)
              .limit(usual.low())
              .message(told + ": the metal may stay porous")
              .build());
    }
    if (Excess.exceeds(hold, usual.high())) {
      return List.of(
          finding
              .severity(NOTE)
              .limit(usual.high())
              .message(told + ": the grain may coarsen, a packed charge may need it")
              .build());
    }
    return List.of(finding.severity(PASSED).limit(usual.low()).message(told).build());
  }
}
