package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.VOLUME_PERCENT;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.densification.DensificationFinding;
import dev.kilnledger.thermal.densification.DensityForecast;
import dev.kilnledger.thermal.densification.LiteratureForecast;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.util.ArrayList;
import java.util.List;

/**
 * The part must get as dense as wanted: by the user's own curve with its band, or by an interval
 * over what is published, which at best says that the firing is no less than a usual one.
 */
final class DensityReached implements FiringRule {
  @Override
  public List<Finding> check(FiringForecast forecast) {
    return forecast.density().isPresent()
        ? byCurve(forecast, forecast.density().get())
        : List.of(byLiterature(forecast, forecast.literatureDensity()));
  }

  private static List<Finding> byCurve(FiringForecast forecast, DensityForecast curve) {
    Amount<VolumeFraction> target = forecast.targetDensity();
    Estimate<VolumeFraction> density = curve.density();
    boolean holds = curve.findings().stream().noneMatch(f -> f.severity() == UNDETERMINED);
    Severity severity;
    if (!holds) {
      severity = UNDETERMINED;
    } else if (!density.span().low().isLessThan(target)) {
      severity = PASSED;
    } else {
      severity = density.expected().isLessThan(target) ? WARNING : UNDETERMINED;
    }
    List<Finding> findings = new ArrayList<>();
    findings.add(
        finding(forecast, severity)
            .measured(density.expected())
            .message(
                "a relative density of "
                    + density.expected().format(VOLUME_PERCENT, 1)
                    + " ("
                    + density.span().format(VOLUME_PERCENT, 1)
                    + ") is forecast, wanted are "
                    + target.format(VOLUME_PERCENT, 1))
            .basis(forecast.setup().sinteringCurve().orElseThrow().curve().source())
            .build());
    findings.addAll(curve.findings());
    return findings;
  }

  private static Finding byLiterature(FiringForecast forecast, LiteratureForecast literature) {
    Amount<VolumeFraction> target = forecast.targetDensity();
    Span<VolumeFraction> density = literature.density();
    Severity severity =
        !density.low().isLessThan(target)
            ? NOTE
            : density.high().isLessThan(target) ? WARNING : UNDETERMINED;
    Finding undetermined = literature.findings().get(0);
    return finding(forecast, severity)
        .measured(density.low())
        .message(
            "wanted is a relative density of "
                + target.format(VOLUME_PERCENT, 0)
                + "; "
                + undetermined.message())
        .basis(undetermined.basis())
        .build();
  }

  private static Finding.Builder finding(FiringForecast forecast, Severity severity) {
    return Finding.builder()
        .code(DensificationFinding.DENSITY_TARGET)
        .subject(forecast.setup().alloy().name())
        .severity(severity)
        .limit(forecast.targetDensity());
  }
}
