package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.CarbonProtection.Suitability;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.atmosphere.AtmosphereFinding;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.StageForecast;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The carbon laid in must outlast the cooling, against the oxygen that comes to it; how long it is
 * too slow to protect; and that its gas can burn at the lid.
 */
final class CarbonLasts implements FiringRule {
  private static final Set<AtmosphereFinding> ASKED =
      Set.of(
          AtmosphereFinding.CARBON_LASTS,
          AtmosphereFinding.CARBON_TOO_SLOW,
          AtmosphereFinding.FLAMMABLE_AT_LID);
  private static final Source ROOM = Source.recomputed("mass over density of grains and metal");

  @Override
  public List<Finding> check(FiringForecast forecast) {
    return forecast.stages().stream()
        .filter(stage -> stage.stage().getter().isPresent())
        .flatMap(CarbonLasts::check)
        .toList();
  }

  private static Stream<Finding> check(StageForecast stage) {
    String alloy = stage.setup().alloy().name();
    if (stage.oxygen().isEmpty()) {
      return Stream.of(
          stage.tell(
              lasts(stage, UNDETERMINED, "packing and metal leave no room for gas in it", ROOM)));
    }
    Stream<Finding> findings =
        stage.oxygen().get().findings().stream().filter(finding -> asked(finding));
    boolean needed =
        stage.setup().alloy().carbonProtection().suitability() != Suitability.NOT_NEEDED;
    Stream<Finding> told =
        needed
            ? findings
            : Stream.concat(
                Stream.of(
                    lasts(
                        stage,
                        PASSED,
                        alloy + " needs no protection from oxygen, however long the carbon lasts",
                        stage.setup().alloy().carbonProtection().source())),
                findings.filter(f -> f.code() == AtmosphereFinding.FLAMMABLE_AT_LID));
    return told.map(stage::tell);
  }

  private static boolean asked(Finding finding) {
    return finding.code() instanceof AtmosphereFinding code && ASKED.contains(code);
  }

  private static Finding lasts(
      StageForecast stage, Severity severity, String message, Source basis) {
    return Finding.builder()
        .code(AtmosphereFinding.CARBON_LASTS)
        .subject(stage.setup().crucible().name())
        .severity(severity)
        .message(message)
        .basis(basis)
        .build();
  }
}
