package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.units.TradeUnits.GRAM;

import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.thermal.atmosphere.AtmosphereFinding;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.units.Amounts;
import java.util.ArrayList;
import java.util.List;

/**
 * Carbon monoxide of the getter and the products of the binder must stay below each cited limit in
 * the room. Each product is taken to be all of the binder, which is far too much: what stays below
 * its limit even so passes, and what does not is left open.
 */
final class GasInRoom implements FiringRule {
  @Override
  public List<Finding> check(FiringForecast forecast) {
    if (forecast.setup().room().isEmpty()) {
      return List.of(noRoom(forecast));
    }
    List<Finding> findings = new ArrayList<>();
    forecast.carbonMonoxideInRoom().forEach(answer -> findings.addAll(answer.findings()));
    // products without a known limit are named with the fumes of the binder
    forecast.binderGasInRoom().stream()
        .filter(answer -> !answer.limits().isEmpty())
        .flatMap(answer -> answer.findings().stream())
        .map(GasInRoom::atMost)
        .forEach(findings::add);
    if (forecast.binderGasInRoom().isEmpty()) {
      findings.add(binderUnknown(forecast));
    }
    return findings;
  }

  private static Finding atMost(Finding finding) {
    return Finding.builder()
        .from(finding)
        .severity(finding.severity() == PASSED ? PASSED : UNDETERMINED)
        .message("if all of the binder left as it: " + finding.message())
        .build();
  }

  private static Finding binderUnknown(FiringForecast forecast) {
    return finding(
        forecast.setup().binder().name(),
        "how fast the binder leaves is not known, for lack of its "
            + (forecast.candidates().isEmpty() ? "kinetics" : "mass")
            + ": lead its gases outside");
  }

  private static Finding noRoom(FiringForecast forecast) {
    double monoxide =
        forecast.stages().stream()
            .flatMap(stage -> stage.oxygen().stream())
            .mapToDouble(budget -> budget.carbonMonoxide().mass().si())
            .sum();
    boolean known = forecast.setup().oxygenInflow().isPresent();
    return finding(
        forecast.setup().kiln().name(),
        "the room is not stated, into which up to "
            + Amounts.kilograms(monoxide).format(GRAM, 1)
            + " of carbon monoxide come from the carbon"
            + (known ? "" : ", exchange through lid and packing not counted,")
            + forecast
                .setup()
                .binderMass()
                .map(mass -> " and " + mass.format(GRAM, 1) + " of binder as gas")
                .orElse(" besides the gas of the binder")
            + ": lead both outside and use an alarm");
  }

  private static Finding finding(String subject, String message) {
    return Finding.builder()
        .code(AtmosphereFinding.ROOM_CONCENTRATION)
        .subject(subject)
        .severity(UNDETERMINED)
        .message(message)
        .basis(Caution.CARBON_MONOXIDE.source())
        .build();
  }
}
