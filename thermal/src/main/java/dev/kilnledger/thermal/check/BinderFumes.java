package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.units.TradeUnits.GRAM;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.material.Binder;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.firing.FiringForecast;
import java.util.List;

/** Names what the binder gives off as it burns out. */
final class BinderFumes implements FiringRule {
  private static final Source BASIS =
      Source.commonPractice("as listed with the binder; its safety data sheet decides");

  @Override
  public List<Finding> check(FiringForecast forecast) {
    Binder binder = forecast.setup().binder();
    boolean known = !binder.hazardousProducts().isEmpty();
    return List.of(
        FiringFinding.BINDER_FUMES
            .about(binder.name())
            .severity(known ? NOTE : UNDETERMINED)
            .message(
                known
                    ? binder.name()
                        + " gives off as it leaves: "
                        + String.join(", ", binder.hazardousProducts())
                        + forecast
                            .setup()
                            .binderMass()
                            .map(mass -> "; " + mass.format(GRAM, 1) + " of binder in the charge")
                            .orElse("")
                    : "what "
                        + binder.name()
                        + " gives off as it leaves is not stated: see the safety data sheet")
            .basis(BASIS)
            .build());
  }
}
