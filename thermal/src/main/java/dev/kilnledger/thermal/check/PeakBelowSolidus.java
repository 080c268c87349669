package dev.kilnledger.thermal.check;

import dev.kilnledger.thermal.firing.FiringSetup;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.KELVIN_DIFFERENCE;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.Relations;
import dev.kilnledger.units.quantity.TemperatureDifference;
import java.util.List;
import javax.measure.quantity.Temperature;

/**
 * The peak must stay below the solidus, by more than what handbooks and thermocouples disagree by,
 * except where the metal's sintering window itself reaches above it: then a share of melt is meant
 * (supersolidus sintering) and only warned of.
 */
final class PeakBelowSolidus implements FiringRule {
  private static final Amount<TemperatureDifference> MARGIN = Amounts.kelvinDifference(15);
  private static final Source MARGIN_BASIS =
      Source.commonPractice(
          "handbook values of one alloy's solidus lie up to about 20 K apart; a thermocouple of"
              + " type K, class 2, may be 0.75 % wrong (IEC 60584-1)");

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
    if (Excess.exceeds(Relations.difference(peak, solidus), MARGIN)) {
      return List.of(
          finding.severity(PASSED).message(told + ": " + alloy.name() + " stays solid").build());
    }
    if (peak.isLessThan(solidus)) {
      return List.of(
          finding
              .severity(WARNING)
              .basis(MARGIN_BASIS)
              .message(
                  told
                      + " lie less than "
                      + MARGIN.format(KELVIN_DIFFERENCE, 0)
                      + " apart, within what handbooks and a thermocouple may be wrong by")
              .build());
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
