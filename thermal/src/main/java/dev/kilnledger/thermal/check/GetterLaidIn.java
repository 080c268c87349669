package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.core.material.CarbonProtection.Suitability.PARTLY;
import static dev.kilnledger.core.material.CarbonProtection.Suitability.PROTECTS;
import static dev.kilnledger.units.TradeUnits.GRAM;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.material.CarbonProtection.Suitability;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.profile.FiringStage;
import java.util.List;

/**
 * Every sintering stage needs a getter where carbon protects the metal; {@link CarbonLasts} tells
 * whether it is enough.
 */
final class GetterLaidIn implements FiringRule {
  @Override
  public List<Finding> check(FiringForecast forecast) {
    FiringSetup setup = forecast.setup();
    return setup.route().sintering().stream().map(stage -> check(setup.alloy(), stage)).toList();
  }

  private static Finding check(Alloy alloy, FiringStage stage) {
    Suitability suitability = alloy.carbonProtection().suitability();
    boolean wanted = suitability == PROTECTS || suitability == PARTLY;
    Finding.Builder finding =
        FiringFinding.GETTER_LAID_IN.about(alloy.name()).basis(alloy.carbonProtection().source());
    if (stage.getter().isPresent()) {
      return finding
          .severity(PASSED)
          .measured(stage.getter().get().mass())
          .message(
              "the "
                  + stage.name()
                  + " stage has "
                  + stage.getter().get().mass().format(GRAM, 0)
                  + " of "
                  + stage.getter().get().getter().name())
          .build();
    }
    return finding
        .severity(wanted ? WARNING : PASSED)
        .message(
            wanted
                ? "the "
                    + stage.name()
                    + " stage has no getter: without carbon or another protection "
                    + alloy.name()
                    + " oxidises"
                : "the " + stage.name() + " stage has no getter, and none is wanted")
        .build();
  }
}
