package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.WARNING;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.material.CarbonProtection;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import java.util.List;

/**
 * Carbon as getter must not harm the metal. How far it protects it {@link CarbonKeepsBright}
 * computes.
 */
final class CarbonSuitsAlloy implements FiringRule {
  @Override
  public List<Finding> check(FiringForecast forecast) {
    FiringSetup setup = forecast.setup();
    CarbonProtection carbon = setup.alloy().carbonProtection();
    boolean laidIn = setup.route().stages().stream().anyMatch(s -> s.getter().isPresent());
    return List.of(
        FiringFinding.CARBON_SUITS_ALLOY
            .about(setup.alloy().name())
            .severity(laidIn ? withCarbon(carbon) : withoutCarbon(carbon))
            .message(
                "carbon, which "
                    + (laidIn ? "is" : "is not")
                    + " laid in, "
                    + verdict(setup.alloy())
                    + ": "
                    + carbon.remark())
            .basis(carbon.source())
            .build());
  }

  private static String verdict(Alloy alloy) {
    return switch (alloy.carbonProtection().suitability()) {
      case PROTECTS -> "protects " + alloy.name();
      case PARTLY -> "protects " + alloy.name() + " only partly";
      case NOT_NEEDED -> "is not needed for " + alloy.name();
      case WRONG -> "is the wrong protection for " + alloy.name();
    };
  }

  private static Severity withCarbon(CarbonProtection carbon) {
    return switch (carbon.suitability()) {
      case PROTECTS -> PASSED;
      case PARTLY -> NOTE;
      case NOT_NEEDED -> NOTE;
      case WRONG -> STOP;
    };
  }

  private static Severity withoutCarbon(CarbonProtection carbon) {
    // Such a metal asks for vacuum or a noble gas, of which this check knows nothing.
    return carbon.suitability() == CarbonProtection.Suitability.WRONG ? WARNING : PASSED;
  }
}
