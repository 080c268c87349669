package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.CELSIUS;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.units.Amount;
import java.util.List;
import javax.measure.quantity.Temperature;

/**
 * The peak must stay below the solidus, except where the metal's sintering window itself reaches
 * above it: then a share of melt is meant (supersolidus sintering) and only warned of.
 */
final class PeakBelowSolidus implements FiringRule {
  @Override
  public List<Finding> check(FiringSetup setup) {
    Alloy alloy = setup.alloy();
    Amount<Temperature> peak = setup.route().peak();
    Amount<Temperature> solidus = alloy.solidus().value();
    boolean meltIsMeant = alloy.sinteringWindow().value().high().isGreaterThan(solidus);
    Finding.Builder finding =
        FiringFinding.PEAK_BELOW_SOLIDUS
            .about(alloy.name())
            .measured(peak)
            .limit(solidus)
            .basis(alloy.solidus().source());
    String told =
        "the peak of "
            + peak.format(CELSIUS, 0)
            + " and the solidus of "
            + solidus.format(CELSIUS, 0);
    if (peak.isLessThan(solidus)) {
      return List.of(
          finding.severity(PASSED).message(told + ": " + alloy.name() + " stays solid").build());
    }
    if (meltIsMeant && !peak.isGreaterThan(alloy.sinteringWindow().value().high())) {
      return List.of(
          finding
              .severity(WARNING)
              .message(
                  told
                      + ": part of "
                      + alloy.name()
                      + " melts, as is meant when it is sintered there; a few kelvin more and the"
                      + " part slumps")
              .build());
    }
    return List.of(finding.severity(STOP).message(told + ": " + alloy.name() + " melts").build());
  }
}
