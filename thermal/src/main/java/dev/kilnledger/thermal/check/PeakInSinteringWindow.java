package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.CELSIUS;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.units.Amount;
import java.util.List;
import javax.measure.quantity.Temperature;

/** The peak must lie in the metal's sintering window. */
final class PeakInSinteringWindow implements FiringRule {
  @Override
  public List<Finding> check(FiringForecast forecast) {
    FiringSetup setup = forecast.setup();
    Alloy alloy = setup.alloy();
    Span<Temperature> window = alloy.sinteringWindow().value();
    Amount<Temperature> peak = setup.route().peak();
    Finding.Builder finding =
        FiringFinding.PEAK_IN_SINTERING_WINDOW
            .about(alloy.name())
            .measured(peak)
            .basis(alloy.sinteringWindow().source());
    String told =
        "the peak of "
            + peak.format(CELSIUS, 0)
            + " and the sintering window of "
            + window.format(CELSIUS, 0);
    if (peak.isLessThan(window.low())) {
      return List.of(
          finding
              .severity(STOP)
              .limit(window.low())
              .message(told + ": " + alloy.name() + " will not sinter")
              .build());
    }
    if (peak.isGreaterThan(window.high())) {
      boolean melts = !peak.isLessThan(alloy.solidus().value());
      return List.of(
          finding
              .severity(melts ? STOP : WARNING)
              .limit(window.high())
              .message(told + ": over-fired, the grain coarsens and the part slumps")
              .build());
    }
    return List.of(finding.severity(PASSED).limit(window.low()).message(told + " agree").build());
  }
}
