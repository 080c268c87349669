package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.HOUR;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.CarbonProtection.Suitability;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.thermal.atmosphere.ElementProtection;
import dev.kilnledger.thermal.atmosphere.ElementProtection.Bright;
import dev.kilnledger.thermal.atmosphere.GetterBalance;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.StageForecast;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.units.Amount;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/**
 * How long the core is hot enough to oxidise in each stage without a getter, and whether carbon
 * takes that oxygen back in sintering.
 */
final class UnprotectedInterval implements FiringRule {
  private static final Sourced<Amount<Temperature>> LIMIT =
      GetterBalance.standard().oxidationLimit();

  @Override
  public List<Finding> check(FiringForecast forecast) {
    return forecast.stages().stream()
        .filter(stage -> stage.stage().getter().isEmpty())
        .map(stage -> check(forecast, stage))
        .toList();
  }

  private static Finding check(FiringForecast forecast, StageForecast stage) {
    String alloy = forecast.setup().alloy().name();
    Finding.Builder finding =
        FiringFinding.UNPROTECTED_INTERVAL.about(alloy).basis(LIMIT.source()).limit(LIMIT.value());
    if (forecast.setup().alloy().carbonProtection().suitability() == Suitability.NOT_NEEDED) {
      return finding.severity(PASSED).message(alloy + " needs no protection from oxygen").build();
    }
    Amount<Time> hot = stage.felt().timeAbove(LIMIT.value());
    boolean sinters = stage.stage().purpose() == FiringStage.Purpose.SINTERING;
    Bright later = sinters ? Bright.NO : later(forecast);
    return finding
        .severity(severity(later))
        .measured(hot)
        .message(
            alloy
                + " oxidises in the "
                + hot.format(HOUR, 1)
                + " above "
                + LIMIT.value().format(CELSIUS, 0)
                + " of the "
                + stage.stage().name()
                + " stage, which has no getter"
                + (stage.coolingKnown() ? "" : ", its cooling after the programme not counted")
                + (sinters ? "" : words(later)))
        .build();
  }

  /** Whether all elements are bright again in the stages of sintering that have carbon. */
  private static Bright later(FiringForecast forecast) {
    Set<Bright> answers =
        forecast.sintering().stream()
            .flatMap(stage -> stage.protection().stream())
            .flatMap(protection -> protection.elements().stream())
            .map(ElementProtection::bright)
            .collect(Collectors.toSet());
    if (answers.isEmpty() || answers.contains(Bright.NO)) {
      return Bright.NO;
    }
    return answers.equals(Set.of(Bright.YES)) ? Bright.YES : Bright.UNCERTAIN;
  }

  private static Severity severity(Bright later) {
    return switch (later) {
      case YES -> NOTE;
      case NO -> WARNING;
      case UNCERTAIN, UNKNOWN -> UNDETERMINED;
    };
  }

  private static String words(Bright later) {
    return switch (later) {
      case YES -> "; carbon takes the oxygen back in sintering";
      case NO -> ", and nothing takes back all of that oxygen in sintering";
      case UNCERTAIN, UNKNOWN ->
          "; whether carbon takes all of the oxygen back in sintering cannot be told";
    };
  }
}
