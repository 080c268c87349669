package dev.kilnledger.thermal.check;

import dev.kilnledger.thermal.firing.FiringSetup;
import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.HOUR;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.material.CarbonProtection.Suitability;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.util.List;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/**
 * How long each sintering stage is programmed to be too cool for carbon to protect the metal: below
 * about 650 °C, where carbon takes up oxygen too slowly, and below the temperature at which it
 * reduces the metal's oxide.
 */
final class UnprotectedInterval implements FiringRule {
  private static final Amount<Temperature> CARBON_ACTS_FROM = Amounts.celsius(650);
  private static final Source BASIS =
      Source.commonPractice("below about 650 °C carbon takes up oxygen too slowly to protect");

  @Override
  public List<Finding> check(FiringSetup setup) {
    return setup.route().stages().stream().map(stage -> check(setup.alloy(), stage)).toList();
  }

  private static Finding check(Alloy alloy, FiringStage stage) {
    Suitability suitability = alloy.carbonProtection().suitability();
    Profile profile = stage.profile();
    Finding.Builder finding = FiringFinding.UNPROTECTED_INTERVAL.about(alloy.name()).basis(BASIS);
    if (suitability == Suitability.NOT_NEEDED) {
      return finding
          .severity(PASSED)
          .message(alloy.name() + " needs no protection from oxygen")
          .build();
    }
    boolean undone = suitability == Suitability.PROTECTS;
    if (stage.purpose() == FiringStage.Purpose.DEBINDING && stage.getter().isEmpty()) {
      return finding
          .severity(undone ? NOTE : WARNING)
          .measured(profile.duration())
          .message(
              alloy.name()
                  + " oxidises in the "
                  + profile.duration().format(HOUR, 1)
                  + " of the "
                  + stage.name()
                  + " stage, which has no getter"
                  + (undone
                      ? "; carbon takes the oxygen back in sintering"
                      : ", and carbon does not take that oxygen back"))
          .build();
    }
    if (suitability == Suitability.WRONG || stage.getter().isEmpty()) {
      return finding
          .severity(WARNING)
          .measured(profile.duration())
          .message(
              "no carbon protects "
                  + alloy.name()
                  + " in the "
                  + profile.duration().format(HOUR, 1)
                  + " of the "
                  + stage.name()
                  + " stage")
          .build();
    }
    Amount<Temperature> reduces =
        alloy.carbonProtection().reducesAbove().map(Sourced::value).orElse(CARBON_ACTS_FROM);
    Amount<Temperature> from = reduces.isGreaterThan(CARBON_ACTS_FROM) ? reduces : CARBON_ACTS_FROM;
    Amount<Time> below = profile.duration().subtract(profile.timeAbove(from));
    boolean never = profile.timeAbove(from).si() == 0;
    return finding
        .severity(never ? WARNING : NOTE)
        .measured(below)
        .limit(from)
        .message(
            "carbon protects "
                + alloy.name()
                + " from "
                + from.format(CELSIUS, 0)
                + " up: the "
                + stage.name()
                + " stage is programmed to be cooler for "
                + below.format(HOUR, 1)
                + " of "
                + profile.duration().format(HOUR, 1)
                + "; cooling draws in air, open only when cold")
        .build();
  }
}
