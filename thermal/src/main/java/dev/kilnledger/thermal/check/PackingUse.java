package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.WARNING;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.profile.FiringStage;
import java.util.List;

/** The packing powder of each stage must be good for its purpose. */
final class PackingUse implements FiringRule {
  private static final Source BASIS =
      Source.commonPractice("the uses entered with the packing powder");

  @Override
  public List<Finding> check(FiringForecast forecast) {
    return forecast.setup().route().stages().stream().map(PackingUse::check).toList();
  }

  private static Finding check(FiringStage stage) {
    boolean fits = stage.packing().uses().contains(stage.purpose().packingUse());
    return FiringFinding.PACKING_USE
        .about(stage.packing().name())
        .severity(fits ? PASSED : WARNING)
        .message(
            stage.packing().name()
                + (fits ? " is" : " is not")
                + " meant for "
                + stage.purpose().words()
                + ", where the "
                + stage.name()
                + " stage has it")
        .basis(BASIS)
        .build();
  }
}
