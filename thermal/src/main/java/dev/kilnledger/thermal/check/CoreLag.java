package dev.kilnledger.thermal.check;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.thermal.conduction.ConductionFinding;
import dev.kilnledger.thermal.firing.FiringForecast;
import java.util.List;

/** How far the core of each charge is behind the kiln, and whether that is known so far. */
final class CoreLag implements FiringRule {
  @Override
  public List<Finding> check(FiringForecast forecast) {
    return forecast.stages().stream()
        .flatMap(
            stage -> stage.core().findings().stream().filter(CoreLag::matters).map(stage::tell))
        .toList();
  }

  private static boolean matters(Finding finding) {
    return finding.code() == ConductionFinding.CORE_LAG
        || (finding.code() == ConductionFinding.PROPERTIES_STATED
            && finding.severity() != Severity.PASSED);
  }
}
