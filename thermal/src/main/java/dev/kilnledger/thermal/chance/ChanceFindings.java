package dev.kilnledger.thermal.chance;

import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.KELVIN_DIFFERENCE;
import static dev.kilnledger.units.TradeUnits.MASS_PERCENT;
import static dev.kilnledger.units.TradeUnits.MINUTE;
import static dev.kilnledger.units.TradeUnits.PERCENT;
import static dev.kilnledger.units.TradeUnits.VOLUME_PERCENT;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.units.Amount;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;

/** Tells the chances of a firing, against the limits asked for. */
final class ChanceFindings {
  /** Half of the least tolerance of any thermocouple: 1.5 K, class 2. */
  private static final double SHORTCUT_WITHIN = 0.75;

  private static final Source SHORTCUT =
      Source.recomputed("draws computed by the full model as well");

  private final FiringChances chances;
  private final FiringForecast forecast;
  private final FiringSetup setup;
  private final List<Finding> assumed;

  ChanceFindings(FiringChances chances, FiringForecast forecast, List<Finding> assumed) {
    this.chances = chances;
    this.forecast = forecast;
    this.setup = forecast.setup();
    this.assumed = assumed;
  }

  List<Finding> all() {
    List<Finding> findings = new ArrayList<>();
    for (Chance chance : chances.chances()) {
      findings.add(on(chance));
    }
    if (chances.chance(FiringEvent.BINDER_GONE).isEmpty()) {
      findings.add(
          ChanceFinding.BINDER_GONE_CHANCE
              .about(setup.binder().name())
              .severity(UNDETERMINED)
              .message(
                  "no kinetics of the binder are given or published, so nothing can be said of how"
                      + " likely it is gone: have thermogravimetry made of your feedstock")
              .basis(Source.user("the kinetics, as entered with the firing"))
              .build());
    }
    findings.addAll(assumed);
    chances.shortcut().ifPresent(check -> findings.add(on(check)));
    if (chances.draws() < chances.drawsAsked()) {
      findings.add(drawsMade(chances.draws(), chances.drawsAsked(), forecast));
    }
    return findings;
  }

  static Finding drawsMade(int made, int asked, FiringForecast forecast) {
    return ChanceFinding.DRAWS_MADE
        .about(forecast.setup().kiln().name())
        .severity(UNDETERMINED)
        .message("interrupted after " + made + " of " + asked + " draws")
        .basis(Source.user("the interruption"))
        .build();
  }

  private Finding on(Chance chance) {
    Optional<String> open = open(chance.event());
    // only without a sintering curve is it an interval, and then it is open
    Severity severity = open.isPresent() ? UNDETERMINED : severity(chance.probability().low());
    return chance
        .event()
        .code()
        .about(subject(chance.event()))
        .severity(severity)
        .message(
            chance.event().words()
                + " with a probability of "
                + told(chance)
                + quantiles(chance.event())
                + open.map(why -> "; " + why).orElse(""))
        .measured(chance.probability().low())
        .limit(chances.firing().limits().sureFrom())
        .basis(chances.firing().limits().source())
        .build();
  }

  private Severity severity(Amount<Dimensionless> probability) {
    ChanceLimits limits = chances.firing().limits();
    if (!probability.isLessThan(limits.sureFrom())) {
      return PASSED;
    }
    return probability.isLessThan(limits.stopBelow()) ? STOP : WARNING;
  }

  private String subject(FiringEvent event) {
    return switch (event) {
      case CORE_SOAKED -> setup.crucible().name();
      case BINDER_GONE -> setup.binder().name();
      case DENSITY_REACHED, METAL_SOLID -> setup.alloy().name();
    };
  }

  private static String told(Chance chance) {
    return chance.isDetermined()
        ? chance.probability().low().format(PERCENT, 1)
            + " (standard error of the draws "
            + chance.standardError().format(PERCENT, 1)
            + ")"
        : chance.probability().format(PERCENT, 1);
  }

  private String quantiles(FiringEvent event) {
    return switch (event) {
      case CORE_SOAKED ->
          told(chances.soak(), HOUR, 2)
              + " at or above "
              + forecast.coreSoak().temperature().format(CELSIUS, 0)
              + " at a stretch, asked are "
              + forecast.coreSoak().asked().format(HOUR, 2);
      case BINDER_GONE -> told(chances.binderLeft(), MASS_PERCENT, 2) + " of the binder";
      case DENSITY_REACHED ->
          (chances.density().isPresent() ? told(chances.density(), VOLUME_PERCENT, 1) : "")
              + "; wanted are "
              + forecast.targetDensity().format(VOLUME_PERCENT, 1);
      case METAL_SOLID ->
          ", below " + ChanceTally.meltingLimit(setup.alloy()).format(CELSIUS, 0) + " everywhere";
    };
  }

  private static <Q extends Quantity<Q>> String told(
      Optional<Quantiles<Q>> quantiles, Unit<Q> unit, int decimals) {
    return ": 5, 50 and 95 % of the draws have up to "
        + quantiles.orElseThrow().format(unit, decimals);
  }

  /** Why the answer to an event stays open whatever the draws say. */
  private Optional<String> open(FiringEvent event) {
    if (event == FiringEvent.BINDER_GONE && setup.kinetics().isEmpty()) {
      return Optional.of(
          "by published kinetics, which need not be those of this feedstock: thermogravimetry of"
              + " your own decides");
    }
    if (event == FiringEvent.DENSITY_REACHED) {
      if (setup.sinteringCurve().isEmpty()) {
        return Optional.of(
            "without a sintering curve of your powder only what is published speaks: fire coupons and"
                + " fit one");
      }
      Amount<Temperature> seen = setup.sinteringCurve().get().curve().range().high();
      if (setup.route().peak().isGreaterThan(seen)) {
        return Optional.of(
            "the curve was observed up to "
                + seen.format(CELSIUS, 0)
                + ", and the firing gets hotter");
      }
    }
    return Optional.empty();
  }

  private static Finding on(ShortcutCheck check) {
    boolean good = check.corePeak().si() <= SHORTCUT_WITHIN;
    return ChanceFinding.SHORTCUT
        .about("the quick model of kiln and charge")
        .severity(good ? PASSED : UNDETERMINED)
        .message(
            "in "
                + check.draws()
                + " draws computed in full as well its core peaks within "
                + check.corePeak().format(KELVIN_DIFFERENCE, 2)
                + ", is within "
                + check.core().format(KELVIN_DIFFERENCE, 2)
                + " at all times, and its soak within "
                + check.soak().format(MINUTE, 1)
                + (good ? "" : ": too far for the probabilities to be relied on"))
        .measured(check.corePeak())
        .basis(SHORTCUT)
        .build();
  }
}
