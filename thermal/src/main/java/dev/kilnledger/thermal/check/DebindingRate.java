package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.KELVIN_PER_HOUR;
import static dev.kilnledger.units.TradeUnits.MILLIMETRE;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.HeatingRate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;

/**
 * The heating rate in the binder's range against the thickest section s: up to 3 mm 60 K/h is
 * allowed, above that 60 K/h (3 mm / s)^2, not below 5 K/h. Faster is a warning, four times as fast
 * (the rate for half the section) a stop. Beyond 10.4 mm, where the floor is met, the rule has no
 * answer but for rates that are too fast.
 *
 * <p>The range is looked at in every stage up to the one that first reaches its end: until then
 * there is binder left.
 */
final class DebindingRate implements FiringRule {
  private static final Amount<HeatingRate> BASE = Amounts.kelvinPerHour(60);
  private static final Amount<Length> BASE_SECTION = Amounts.millimetres(3);
  private static final Amount<HeatingRate> FLOOR = Amounts.kelvinPerHour(5);
  private static final double STOP_FROM = 4;
  private static final Source BASIS =
      Source.commonPractice(
          "10 to 60 K/h through the binder's range; that the time grows with the square of the"
              + " section: German 1987, from memory");

  @Override
  public List<Finding> check(FiringForecast forecast) {
    FiringSetup setup = forecast.setup();
    Span<Temperature> range = setup.binder().decomposition().value();
    Amount<Length> section = setup.thickestSection();
    double thicker = Math.max(1, section.ratio(BASE_SECTION));
    Amount<HeatingRate> bySection = BASE.divide(thicker * thicker);
    boolean atFloor = bySection.isLessThan(FLOOR);
    Amount<HeatingRate> allowed = atFloor ? FLOOR : bySection;
    Finding.Builder finding =
        FiringFinding.DEBINDING_RATE.about(setup.binder().name()).limit(allowed).basis(BASIS);
    Optional<Amount<HeatingRate>> fastest =
        withBinder(setup)
            .flatMap(stage -> stage.profile().fastestHeating(range).stream())
            .max(Comparator.naturalOrder());
    if (fastest.isEmpty()) {
      return List.of(
          finding
              .severity(UNDETERMINED)
              .message(
                  "no stage heats through the range of "
                      + range.format(CELSIUS, 0)
                      + " in which "
                      + setup.binder().name()
                      + " leaves")
              .build());
    }
    finding.measured(fastest.get());
    String told =
        "heated at up to "
            + fastest.get().format(KELVIN_PER_HOUR, 1)
            + " between "
            + range.low().format(CELSIUS, 0)
            + " and "
            + range.high().format(CELSIUS, 0)
            + ", where "
            + allowed.format(KELVIN_PER_HOUR, 1)
            + " is allowed for a section of "
            + section.format(MILLIMETRE, 1);
    if (Excess.exceeds(fastest.get(), allowed)) {
      boolean far = Excess.exceeds(fastest.get(), allowed.multiply(STOP_FROM));
      return List.of(
          finding
              .severity(far ? STOP : WARNING)
              .message(told + ": " + setup.binder().name() + " may blister or crack the part")
              .build());
    }
    if (atFloor) {
      return List.of(
          finding
              .severity(UNDETERMINED)
              .message(told + " at the least: the rule does not reach so thick, fire a test piece")
              .build());
    }
    return List.of(finding.severity(PASSED).message(told).build());
  }

  private static Stream<FiringStage> withBinder(FiringSetup setup) {
    Amount<Temperature> end = setup.binder().decomposition().value().high();
    List<FiringStage> stages = setup.route().stages();
    long before =
        stages.stream().takeWhile(stage -> stage.profile().peak().isLessThan(end)).count();
    return stages.stream().limit(before + 1);
  }
}
