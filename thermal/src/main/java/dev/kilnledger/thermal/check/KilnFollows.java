package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.UNDETERMINED;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.energy.EnergyFinding;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.StageForecast;
import dev.kilnledger.thermal.kiln.KilnFinding;
import java.util.List;
import java.util.stream.Stream;

/**
 * What the kiln really does with each programme under the limit of its power: whether it follows
 * and gets to the peak, and how long it cools. That it is at full power at times is not told apart:
 * what comes of it is.
 */
final class KilnFollows implements FiringRule {
  private static final Source BASIS =
      Source.user("the layers of the kiln's wall, as entered with the kiln");

  @Override
  public List<Finding> check(FiringForecast forecast) {
    return forecast.stages().stream().flatMap(KilnFollows::check).toList();
  }

  private static Stream<Finding> check(StageForecast stage) {
    if (stage.kiln().isEmpty()) {
      return Stream.of(
          Finding.builder()
              .code(KilnFinding.FOLLOWS_PROGRAMME)
              .severity(UNDETERMINED)
              .subject(stage.setup().kiln().name())
              .message(
                  stage.stage().name()
                      + ": the layers of the kiln's wall are not known, so it is taken to follow"
                      + " the programme, and nothing is known of its cooling")
              .basis(BASIS)
              .build());
    }
    return stage.kiln().get().findings().stream()
        .filter(finding -> finding.code() != EnergyFinding.POWER_WITHIN_RATING)
        .map(stage::tell);
  }
}
