package dev.kilnledger.thermal.design;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.FindingCode;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.check.FiringCheck;
import dev.kilnledger.thermal.check.FiringReport;
import dev.kilnledger.thermal.energy.EnergyFinding;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.StageForecast;
import dev.kilnledger.thermal.kiln.KilnFinding;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import dev.kilnledger.units.quantity.HeatingRate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.measure.quantity.Temperature;

/**
 * What a route must keep to beside the check: the kiln follows it, up and down, where the check
 * does not ask that; it heats no faster than is assumed where the maker of the kiln states nothing;
 * and its peak is where the task wants it.
 */
final class Demands {
  /** Where the maker of a kiln states nothing. */
  static final Amount<HeatingRate> ASSUMED = Amounts.kelvinPerHour(300);

  private static final Source ASSUMED_BASIS =
      Source.commonPractice("faster heating than 300 K/h cracks bricks, crucibles and green parts");
  private static final Set<FindingCode> OF_THE_KILN =
      Set.of(
          KilnFinding.REACHES_PEAK,
          KilnFinding.FOLLOWS_PROGRAMME,
          EnergyFinding.COOLS_AS_PROGRAMMED);

  private final DesignTask task;

  Demands(DesignTask task) {
    this.task = task;
  }

  /** What the check answers, and then what is asked beside it. */
  FiringReport report(FiringCheck check, FiringForecast forecast) {
    FiringReport report = check.check(forecast);
    Set<FindingCode> answered = new HashSet<>();
    report.findings().forEach(finding -> answered.add(finding.code()));
    List<Finding> findings = new ArrayList<>(report.findings());
    for (StageForecast stage : forecast.stages()) {
      stage.kiln().stream()
          .flatMap(run -> run.findings().stream())
          .filter(finding -> OF_THE_KILN.contains(finding.code()))
          .filter(finding -> !answered.contains(finding.code()))
          .map(finding -> told(stage, finding))
          .forEach(findings::add);
    }
    FiringRoute route = forecast.setup().route();
    task.peak().ifPresent(span -> findings.add(peak(route, span)));
    if (task.setup().kiln().fastestHeating().isEmpty()) {
      findings.add(heating(route));
    }
    return FiringReport.of(findings, report.cautions());
  }

  private static Finding told(StageForecast stage, Finding finding) {
    return Finding.builder()
        .from(finding)
        .message(stage.stage().name() + ": " + finding.message())
        .build();
  }

  private static Finding peak(FiringRoute route, Span<Temperature> span) {
    boolean kept = span.contains(route.peak());
    Amount<Temperature> nearer = route.peak().isLessThan(span.low()) ? span.low() : span.high();
    return DesignFinding.PEAK_AS_ASKED
        .about(route.hottest().name())
        .severity(kept ? Severity.PASSED : Severity.STOP)
        .measured(route.peak())
        .limit(nearer)
        .message(
            "the peak of "
                + route.peak().format(TradeUnits.CELSIUS, 0)
                + (kept ? " lies in" : " does not lie in")
                + " the span asked for, "
                + span.format(TradeUnits.CELSIUS, 0))
        .basis(Source.user("as asked of the design"))
        .build();
  }

  private Finding heating(FiringRoute route) {
    Amount<HeatingRate> fastest =
        route.stages().stream()
            .flatMap(stage -> stage.profile().fastestHeating().stream())
            .max(Comparator.naturalOrder())
            .orElseGet(() -> Amounts.kelvinPerHour(0));
    boolean kept = fastest.si() <= ASSUMED.si() * (1 + 1e-9); // rounding of a quotient
    return DesignFinding.HEATING_ASSUMED
        .about(task.setup().kiln().name())
        .severity(kept ? Severity.PASSED : Severity.WARNING)
        .measured(fastest)
        .limit(ASSUMED)
        .message(
            "heated at up to "
                + fastest.format(TradeUnits.KELVIN_PER_HOUR, 0)
                + ", and up to "
                + ASSUMED.format(TradeUnits.KELVIN_PER_HOUR, 0)
                + " are assumed as the kiln's maker states nothing")
        .basis(ASSUMED_BASIS)
        .build();
  }
}
