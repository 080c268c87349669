package dev.kilnledger.thermal.densification;

import static dev.kilnledger.thermal.Workbench.thawed;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kilojoulesPerMole;
import static dev.kilnledger.units.Amounts.minutes;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.volumeFraction;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.MINUTE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.Workbench;
import dev.kilnledger.thermal.kinetics.ArrheniusIntegral;
import dev.kilnledger.thermal.kinetics.TemperatureHistory;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.MolarEnergy;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DensificationTest {
  private static final Densification DENSIFICATION = Densification.standard();
  private static final SinteringCurve TRUTH =
      SinteringCurve.builder()
          .name("invented powder")
          .activationEnergy(kilojoulesPerMole(300))
          .base(SinteringCurve.Base.NATURAL)
          .location(ratio(-23.5))
          .width(ratio(1.3))
          .initialDensity(volumeFraction(0.6))
          .range(Span.of(celsius(800), celsius(1350)))
          .source(Source.user("invented for the tests"))
          .build();

  private static TemperatureHistory hold(double celsius, double hours) {
    return TemperatureHistory.of(Profile.from(celsius(celsius)).hold(hours(hours)).build());
  }

  private static Profile firing(double rate, double celsius, double hours) {
    return Profile.from(celsius(20))
        .rampTo(celsius(celsius), kelvinPerHour(rate))
        .hold(hours(hours))
        .coolTo(celsius(100), kelvinPerHour(300))
        .build();
  }

  // Computed with mpmath, Q = 300 kJ/mol; eight digits are given.
  @ParameterizedTest
  @CsvSource({"1250, 123.34154", "1350, 30.542131"})
  void anHourAt1300DegreesHasItsEquivalents(double celsius, double expected) {
    assertThat(
            DENSIFICATION
                .equivalentHold(kilojoulesPerMole(300), hold(1300, 1), celsius(celsius))
                .in(MINUTE))
        .isCloseTo(expected, within(5e-6));
  }

  // Su and Johnson's form by hand: half way at log Theta = a, and logit = 1 one width further.
  @Test
  void theSigmoidHasBaseAndFormAsStored() {
    assertThat(TRUTH.densityAt(-23.5).si()).isCloseTo(0.8, within(1e-15));
    assertThat(TRUTH.densityAt(-22.2).si())
        .isCloseTo(0.6 + 0.4 / (1 + Math.exp(-1)), within(1e-15));
    SinteringCurve decimal =
        SinteringCurve.builder()
            .from(TRUTH)
            .base(SinteringCurve.Base.DECIMAL)
            .location(ratio(-23.5 / Math.log(10)))
            .width(ratio(1.3 / Math.log(10)))
            .build();
    SinteringCurve notFull =
        SinteringCurve.builder().from(TRUTH).finalDensity(volumeFraction(0.98)).build();
    for (double log = -40; log < -10; log += 1.7) {
      assertThat(decimal.densityAt(log).si()).isCloseTo(TRUTH.densityAt(log).si(), within(1e-13));
    }
    assertThat(notFull.densityAt(100).si()).isCloseTo(0.98, within(1e-12));
    assertThat(notFull.densityAt(notFull.logWorkFor(volumeFraction(0.93))).si())
        .isCloseTo(0.93, within(1e-14));
    assertThat(TRUTH.densityAt(Double.NEGATIVE_INFINITY).si()).isEqualTo(0.6);
  }

  @Test
  void densityNeverFallsAndACurveWithoutUncertaintyGivesNoBand() {
    DensityForecast forecast =
        DENSIFICATION.along(TRUTH, TemperatureHistory.of(firing(200, 1300, 2)));
    double before = 0;
    for (DensityPoint point : forecast.points()) {
      assertThat(point.density().expected().si()).isGreaterThanOrEqualTo(before);
      before = point.density().expected().si();
    }
    assertThat(forecast.points().get(0).logWork()).isEmpty();
    assertThat(forecast.density().span().low()).isEqualTo(forecast.density().span().high());
    assertThat(forecast.findings().get(0).severity()).isEqualTo(Severity.NOTE);
    assertThat(
            DENSIFICATION
                .along(TRUTH, TemperatureHistory.of(firing(200, 1400, 2)))
                .findings()
                .get(0)
                .severity())
        .isEqualTo(Severity.UNDETERMINED);
  }

  @Test
  void firingsColderThanTheCurveWasObservedAreFound() {
    Finding cold =
        DENSIFICATION.along(TRUTH, TemperatureHistory.of(firing(200, 600, 1))).findings().get(0);
    assertThat(cold.severity()).isEqualTo(Severity.UNDETERMINED);
    assertThat(cold.message())
        .startsWith("the part gets no hotter than 600 °C, and the curve was observed from ")
        .endsWith(": below, another mechanism may set in");
  }

  // Shrinkage as in the passage of the part (German and Bose): phi 0.60, f 0.97 give 0.14796.
  @Test
  void shrinkageFollowsFromTheDensity() {
    SinteringCurve to97 =
        SinteringCurve.builder().from(TRUTH).finalDensity(volumeFraction(0.97)).build();
    DensityForecast forecast = DENSIFICATION.along(to97, hold(1340, 100_000));
    assertThat(forecast.shrinkage(volumeFraction(0.6)).x().expected().si())
        .isCloseTo(0.14796, within(5e-6));
    assertThatThrownBy(() -> forecast.shrinkage(volumeFraction(0)))
        .hasMessageContaining("the metal's share is 0");
    // full of metal it can only swell: 1 - (1 / 0.97)^(1/3)
    assertThat(forecast.shrinkage(volumeFraction(1)).x().expected().si())
        .isCloseTo(-0.010205, within(5e-6));
  }

  /** A run as a dilatometer would log it. */
  private static DensificationRun run(double rate, double noise, Random random) {
    return run(TRUTH, rate, noise, random);
  }

  private static DensificationRun run(
      SinteringCurve truth, double rate, double noise, Random random) {
    TemperatureHistory history = TemperatureHistory.of(firing(rate, 1300, 1));
    double end = 1280 / rate + 1;
    List<DensityReading> readings = new ArrayList<>();
    for (int i = 0; i < 80; i++) {
      double hours = end * (0.5 + 0.5 * i / 79);
      double density =
          truth
              .densityAt(
                  new ArrheniusIntegral(truth.activationEnergy())
                      .workAlong(history)
                      .logAt(hours(hours).si()))
              .si();
      readings.add(
          DensityReading.of(
              hours(hours), volumeFraction(Math.min(1, density + noise * random.nextGaussian()))));
    }
    return DensificationRun.of("run at some rate", history, readings);
  }

  private static FittedSinteringCurve fit(double noise, long seed) {
    Random random = new Random(seed);
    return SinteringCurveFit.standard()
        .fit(
            "invented powder",
            List.of(run(60, noise, random), run(200, noise, random), run(600, noise, random)));
  }

  @Test
  void exactRunsGiveTheCurveBack() {
    FittedSinteringCurve fitted = fit(0, 1);
    assertThat(fitted.activationEnergy().expected().si()).isCloseTo(300e3, within(1.0));
    assertThat(fitted.location().expected().si()).isCloseTo(-23.5, within(1e-4));
    assertThat(fitted.width().expected().si()).isCloseTo(1.3, within(1e-6));
    assertThat(fitted.initialDensity().expected().si()).isCloseTo(0.6, within(1e-6));
  }

  /**
   * Powders of any published energy, half densified at 1150 °C on a ramp of 200 K/h: least squares
   * have their minimum of zero at the truth.
   */
  @ParameterizedTest
  @ValueSource(doubles = {70, 140, 440, 700, 1100})
  void exactRunsOfAnyEnergyGiveItBack(double kilojoules) {
    Amount<MolarEnergy> energy = kilojoulesPerMole(kilojoules);
    TemperatureHistory half =
        TemperatureHistory.of(
            Profile.from(celsius(20)).rampTo(celsius(1150), kelvinPerHour(200)).build());
    SinteringCurve truth =
        SinteringCurve.builder()
            .from(TRUTH)
            .activationEnergy(energy)
            .location(ratio(DENSIFICATION.logWork(energy, half)))
            .build();
    Random random = new Random(1);
    FittedSinteringCurve fitted =
        SinteringCurveFit.standard()
            .fit(
                "invented powder",
                List.of(
                    run(truth, 60, 0, random),
                    run(truth, 200, 0, random),
                    run(truth, 600, 0, random)));
    assertThat(fitted.activationEnergy().expected().si() / energy.si()).isCloseTo(1, within(1e-5));
    assertThat(fitted.width().expected().si()).isCloseTo(1.3, within(1e-5));
    assertThat(fitted.initialDensity().expected().si()).isCloseTo(0.6, within(1e-5));
    assertThat(fitted.degreesOfFreedom()).isEqualTo(3 * 80 - 4);
  }

  /** Two runs and ten readings are the fewest there may be. */
  @Test
  void tenReadingsOfTwoRunsAreEnough() {
    Random random = new Random(1);
    List<DensificationRun> runs = new ArrayList<>();
    for (double rate : new double[] {60, 600}) {
      DensificationRun run = run(rate, 0, random);
      List<DensityReading> few = new ArrayList<>();
      for (int i = 0; i < 5; i++) {
        few.add(run.readings().get(19 + 15 * i));
      }
      runs.add(DensificationRun.of(run.name(), run.history(), few));
    }
    FittedSinteringCurve fitted = SinteringCurveFit.standard().fit("invented powder", runs);
    assertThat(fitted.activationEnergy().expected().si()).isCloseTo(300e3, within(10.0));
    assertThat(fitted.degreesOfFreedom()).isEqualTo(6);
    List<DensificationRun> nine =
        List.of(
            runs.get(0),
            DensificationRun.of(
                "four", runs.get(1).history(), runs.get(1).readings().subList(0, 4)));
    assertThatThrownBy(() -> SinteringCurveFit.standard().fit("invented powder", nine))
        .hasMessage("fit of invented powder: readings are 9; accepted are 10 or more");
  }

  @Test
  void noisyRunsAtThreeRatesGiveItBackWithinTheirIntervals() {
    int energy = 0;
    int location = 0;
    int width = 0;
    int initial = 0;
    int inBand = 0;
    for (int seed = 0; seed < 40; seed++) {
      FittedSinteringCurve fitted = fit(0.005, seed);
      energy += fitted.activationEnergy().span().contains(kilojoulesPerMole(300)) ? 1 : 0;
      location += fitted.location().span().contains(ratio(-23.5)) ? 1 : 0;
      width += fitted.width().span().contains(ratio(1.3)) ? 1 : 0;
      initial += fitted.initialDensity().span().contains(volumeFraction(0.6)) ? 1 : 0;
      assertThat(fitted.findings().get(0).severity()).isEqualTo(Severity.PASSED);
      assertThat(fitted.scatter().si()).isCloseTo(0.005, within(0.001)); // 240 readings: 4.6 %
      // A fourth run, that the fit has not seen: readings with their own noise, in the band.
      DensificationRun fourth = run(120, 0.005, new Random(1000 + seed));
      Band band = new Band(fitted);
      WorkOfSintering work =
          new WorkOfSintering(fitted.curve().activationEnergy(), fourth.history());
      for (DensityReading reading : fourth.readings()) {
        double time = reading.time().si();
        inBand +=
            band.density(work.logAt(time), work.byEnergyAt(time)).span().contains(reading.density())
                ? 1
                : 0;
      }
    }
    // 95 % of 40 is 38; fewer than 33 has a probability of 0.1 % (binomial).
    assertThat(energy).isGreaterThanOrEqualTo(33);
    assertThat(location).isGreaterThanOrEqualTo(33);
    assertThat(width).isGreaterThanOrEqualTo(33);
    assertThat(initial).isGreaterThanOrEqualTo(33);
    // 95 % of 3200 readings; their scatter is 0.4 %, and one fit moves 80 of them together.
    assertThat(inBand / 3200.0).isBetween(0.93, 0.97);
  }

  @Test
  void anUnseenFiringIsForecastWithinTheBand() {
    FittedSinteringCurve fitted = fit(0.005, 5);
    TemperatureHistory unseen = TemperatureHistory.of(firing(120, 1280, 3));
    DensityForecast forecast = DENSIFICATION.along(fitted, unseen);
    Amount<VolumeFraction> truth = DENSIFICATION.along(TRUTH, unseen).density().expected();
    assertThat(forecast.density().span().contains(truth)).isTrue();
    double width = forecast.density().span().high().si() - forecast.density().span().low().si();
    assertThat(width).isBetween(0.01, 0.03); // twice 1.97 times a scatter of 0.005, cut off at 1
    for (DensityPoint point : forecast.points()) {
      assertThat(point.density().span().low().si()).isNotNegative();
      assertThat(point.density().span().high().si()).isLessThanOrEqualTo(1);
    }
    assertThat(
            DENSIFICATION
                .along(fitted, TemperatureHistory.of(firing(120, 1340, 3)))
                .findings()
                .get(0)
                .severity())
        .isEqualTo(Severity.UNDETERMINED);
  }

  @Test
  void theHoldThatReachesADensityReachesIt() {
    FittedSinteringCurve fitted = fit(0.003, 3);
    Profile profile = firing(200, 1250, 1);
    HoldToDensity hold = DENSIFICATION.holdToReach(fitted, profile, 2, volumeFraction(0.96));
    double expected = hold.expected().in(HOUR);
    assertThat(
            DENSIFICATION
                .along(fitted, TemperatureHistory.of(firing(200, 1250, expected)))
                .density()
                .expected()
                .si())
        .isCloseTo(0.96, within(1e-12));
    double safe = hold.safe().orElseThrow().in(HOUR);
    assertThat(safe).isGreaterThan(expected);
    assertThat(
            DENSIFICATION
                .along(fitted, TemperatureHistory.of(firing(200, 1250, safe)))
                .density()
                .span()
                .low()
                .si())
        .isCloseTo(0.96, within(1e-7));
    // an hour at 1300 °C brings this powder to about 0.9
    assertThat(hold.finding().severity()).isEqualTo(Severity.WARNING);
    assertThat(hold.finding().message()).contains("96.0 % is forecast, and your runs went up to");
    assertThat(
            DENSIFICATION
                .holdToReach(fitted, profile, 2, volumeFraction(0.85))
                .finding()
                .severity())
        .isEqualTo(Severity.PASSED);
    assertThat(DENSIFICATION.holdToReach(fitted, profile, 2, volumeFraction(0.65)).expected().si())
        .isZero();
    HoldToDensity hot =
        DENSIFICATION.holdToReach(fitted, firing(200, 1350, 1), 2, volumeFraction(0.96));
    assertThat(hot.finding().severity()).isEqualTo(Severity.UNDETERMINED);
    assertThat(DENSIFICATION.holdToReach(fitted, profile, 2, volumeFraction(0.9999)).safe())
        .isEmpty();
    assertThatThrownBy(() -> DENSIFICATION.holdToReach(fitted, profile, 1, volumeFraction(0.9)))
        .hasMessageContaining("segment 1 of 3 is no hold; accepted is the number of a hold");
    assertThatThrownBy(() -> DENSIFICATION.holdToReach(fitted, profile, 2, volumeFraction(1)))
        .hasMessageContaining("accepted is above")
        .hasMessageContaining("and below 1");
  }

  @Test
  void runsThatTellTooLittleAreRefusedOrFound() {
    Random random = new Random(2);
    SinteringCurveFit fit = SinteringCurveFit.standard();
    assertThatThrownBy(() -> fit.fit("one run", List.of(run(100, 0.005, random))))
        .hasMessageContaining("runs are 1; accepted are 2 or more, of unlike course");
    DensificationRun single =
        DensificationRun.of(
            "coupon", hold(1200, 2), List.of(DensityReading.of(hours(1), volumeFraction(0.8))));
    assertThatThrownBy(() -> fit.fit("two coupons", List.of(single, single)))
        .hasMessageContaining("readings are 2; accepted are 10 or more");
    assertThatThrownBy(
            () ->
                DensificationRun.of(
                    "", hold(1200, 1), List.of(DensityReading.of(hours(2), volumeFraction(0.8)))))
        .hasMessageContaining("name is blank")
        .hasMessageContaining("a reading is at 2 h; accepted is after 0 s and up to 1 h");
    for (double density : new double[] {0, 1.1}) {
      assertThatThrownBy(() -> DensityReading.of(minutes(1), volumeFraction(density)))
          .hasMessageMatching(
              "reading at 1 min: relative density is (0|1\\.1) m³/m³; accepted is above 0 and up to"
                  + " 1");
    }
    assertThat(DensityReading.of(minutes(1), volumeFraction(1)).density().si()).isEqualTo(1);
    List<DensityReading> swelling = new ArrayList<>();
    for (int i = 1; i <= 20; i++) {
      swelling.add(DensityReading.of(minutes(i), volumeFraction(0.7 - 0.005 * i)));
    }
    DensificationRun swells = DensificationRun.of("swells", hold(1200, 1), swelling);
    assertThatThrownBy(() -> fit.fit("swelling", List.of(swells, swells)))
        .hasMessageContaining("accepted are runs that densify");
    // Two rates hardly apart, coarse readings: an energy, but hardly known.
    FittedSinteringCurve alike =
        fit.fit("alike", List.of(run(100, 0.03, random), run(104, 0.03, random)));
    assertThat(alike.findings().get(0).severity()).isEqualTo(Severity.WARNING);
  }

  @Test
  void withoutACurveTheDensityIsUndeterminedAndAnInterval() {
    DensificationLimits limits = DensificationLimits.standard();
    Amount<VolumeFraction> green = volumeFraction(0.55);
    // Usual for the workbench's copper: 950 to 1050 °C, 1 to 4 h, 0.90 to 0.96.
    LiteratureForecast usual =
        limits.forecast(Workbench.copper(), TemperatureHistory.of(firing(200, 1000, 3)), green);
    assertThat(usual.density().low().si()).isEqualTo(0.9);
    assertThat(usual.density().high().si()).isEqualTo(0.96);
    assertThat(usual.equivalentHold().orElseThrow().low().in(HOUR)).isBetween(3.0, 3.6);
    assertThat(usual.findings().get(0).severity()).isEqualTo(Severity.UNDETERMINED);
    assertThat(usual.findings().get(0).message())
        .contains("published from 104 to 230 kJ/mol", "fire coupons and fit one");
    LiteratureForecast cold =
        limits.forecast(Workbench.copper(), TemperatureHistory.of(firing(200, 850, 1)), green);
    assertThat(cold.density().low().si()).isEqualTo(0.55);
    assertThat(cold.density().high().si()).isEqualTo(0.96);
    LiteratureForecast unknown =
        limits.forecast(Workbench.silver(), TemperatureHistory.of(firing(200, 900, 2)), green);
    assertThat(unknown.equivalentHold()).isEmpty();
    assertThat(unknown.density().high().si()).isEqualTo(1);
    assertThat(unknown.findings().get(0).message())
        .startsWith("no activation energy is published for silver");
  }

  @ParameterizedTest
  @CsvSource({
    "1000, 2, PASSED, PASSED",
    "1070, 1, WARNING, PASSED",
    "1040, 30, PASSED, WARNING",
    "1084.62, 1, STOP, PASSED"
  })
  void meltingAndOverFiringOfCopperAreFound(
      double celsius, double hours, Severity solidus, Severity overFired) {
    List<Finding> findings =
        DensificationLimits.standard()
            .check(Workbench.copper(), TemperatureHistory.of(firing(200, celsius, hours)));
    assertThat(findings).extracting(Finding::severity).containsExactly(solidus, overFired);
  }

  @Test
  void saysWhyMeltingIsNearOrThere() {
    DensificationLimits limits = DensificationLimits.standard();
    Finding melts = limits.check(Workbench.copper(), hold(1084.62, 1)).get(0);
    assertThat(melts.message()).endsWith(": it melts");
    Finding near = limits.check(Workbench.copper(), hold(1070, 1)).get(0);
    assertThat(near.message()).endsWith(": an error of thermocouple or kiln may melt it");
    assertThat(near.basis()).isNotEqualTo(Workbench.copper().solidus().source());
    Finding begins = limits.check(Workbench.bronze(), hold(845, 1)).get(0); // just its solidus
    assertThat(begins.message())
        .endsWith(
            ": part of it melts, as is meant there, and a curve for the solid no longer holds");
    assertThat(begins.basis()).isEqualTo(Workbench.bronze().solidus().source());
    Finding meant = limits.check(Workbench.bronze(), hold(860, 1)).get(0);
    assertThat(meant.basis()).isEqualTo(Workbench.bronze().solidus().source());
    assertThat(limits.check(Workbench.copper(), hold(1000, 1)).get(0).basis())
        .isEqualTo(Workbench.copper().solidus().source());
  }

  /**
   * By hand: 3 h at 1080 °C are worth 3.7 h at 1050 °C with 104 kJ/mol and 4.8 h with 230, and
   * usual is up to 4 h there; 30 h are more with either.
   */
  @Test
  void isUnsureOfOverFiringWherePublishedEnergiesDisagree() {
    DensificationLimits limits = DensificationLimits.standard();
    Finding unsure = limits.check(Workbench.copper(), hold(1080, 3)).get(1);
    assertThat(unsure.severity()).isEqualTo(Severity.NOTE);
    assertThat(unsure.message()).contains(", by some of the published activation energies: grains");
    Finding sure = limits.check(Workbench.copper(), hold(1080, 30)).get(1);
    assertThat(sure.severity()).isEqualTo(Severity.WARNING);
    assertThat(sure.message())
        .startsWith("it gets more heat than the hottest and longest usual firing, 4.0 h at 1050 °C")
        .endsWith("1050 °C: grains grow, and pores may swell again");
  }

  @Test
  void bronzeIsMeantToMeltALittle() {
    List<Finding> findings =
        DensificationLimits.standard()
            .check(Workbench.bronze(), TemperatureHistory.of(firing(200, 860, 1)));
    assertThat(findings.get(0).severity()).isEqualTo(Severity.WARNING);
    assertThat(findings.get(0).message()).contains("as is meant there");
    assertThat(
            DensificationLimits.standard()
                .check(Workbench.silver(), TemperatureHistory.of(firing(200, 900, 1)))
                .get(1)
                .severity())
        .isEqualTo(Severity.UNDETERMINED);
  }

  @Test
  void badCurvesAreRefusedAndValuesSurviveSerialization() throws Exception {
    assertThatThrownBy(
            () ->
                SinteringCurve.builder()
                    .from(TRUTH)
                    .width(ratio(0))
                    .activationEnergy(kilojoulesPerMole(-1))
                    .finalDensity(volumeFraction(0.5))
                    .build())
        .hasMessageContaining("activation energy is -1 kJ/mol")
        .hasMessageContaining("width is 0")
        .hasMessageContaining("the relative density goes from 0.6 m³/m³ to 0.5 m³/m³");
    assertThatThrownBy(() -> new SinteringCurveFit(ratio(0)))
        .hasMessageContaining("confidence is 0");
    FittedSinteringCurve fitted = fit(0.005, 9);
    assertThat(thawed(fitted)).isEqualTo(fitted);
    DensityForecast forecast = DENSIFICATION.along(fitted, hold(1200, 0.1));
    assertThat(thawed(forecast)).isEqualTo(forecast);
  }
}
