package dev.kilnledger.thermal.chance;

import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.thermal.Workbench.bronze;
import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.thermal.Workbench.informed;
import static dev.kilnledger.thermal.Workbench.setup;
import static dev.kilnledger.thermal.Workbench.sinteringCurve;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvinDifference;
import static dev.kilnledger.units.Amounts.kelvinPerMinute;
import static dev.kilnledger.units.Amounts.minutes;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.volumeFraction;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.FindingCode;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.densification.FittedSinteringCurve;
import dev.kilnledger.thermal.densification.SinteringCurve;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.TemperatureDifference;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Twenty outcomes made up so that everything can be counted on the fingers: the i-th has a soak of
 * i hours, i / 1000 of the binder left, a density of 90 % + i x 0.4 %, and is hottest at 1340 K +
 * i.
 */
class ChanceTallyTest {
  private static final Source SAID = Source.user("made for the tests");

  private static double density(int i) {
    return 0.9 + 0.004 * i;
  }

  /** At 18 just the melting point of copper, 1084.62 °C. */
  private static double hottest(int i) {
    return i == 18 ? celsius(1084.62).si() : 1340 + i;
  }

  private static DrawnBlock block(int from, int to, double more) {
    DrawnBlock block = new DrawnBlock();
    for (int i = from; i <= to; i++) {
      block.outcomes.add(
          new Outcome(3600.0 * i, hottest(i), i / 1000.0, density(i), density(i) + more));
      block.curves.add(List.of(felt(20 - i), felt(i)));
    }
    return block;
  }

  private static Felt felt(double more) {
    return new Felt(new double[] {0, 7200}, new double[] {293.15, 1273.15 + more});
  }

  private static FiringSetup.Builder asked() {
    return informed(copper(), 1000)
        .soakTemperature(celsius(990))
        .soak(hours(12))
        .targetDensity(volumeFraction(density(18)));
  }

  private static FiringChances count(
      FiringSetup setup, int asked, double more, Optional<ShortcutCheck> check) {
    UncertainFiring firing =
        UncertainFiring.builder()
            .setup(setup)
            .kilnOffset(Spread.exactly(kelvinDifference(0), SAID))
            .thermocoupleError(Spread.exactly(ratio(0), SAID))
            .packingConductivity(Spread.exactly(ratio(1), SAID))
            .binderEnergy(Spread.exactly(ratio(1), SAID))
            .build();
    FiringForecast forecast = FiringForecast.of(setup);
    StageResponse stage =
        new StageResponse(new double[] {0, 7200}, new double[] {293.15, 1273.15}, 1273, List.of());
    FiringResponse response =
        new FiringResponse(
            List.of(stage, stage),
            1,
            1,
            1263.15,
            forecast.candidates().isEmpty()
                ? Optional.empty()
                : Optional.of(new BinderModel(forecast.candidates(), kelvinPerMinute(10))),
            new LiteratureDensity(copper(), volumeFraction(0.6), false));
    return new ChanceTally(firing, forecast, new Inputs(firing, forecast), 7, asked)
        .chances(response, List.of(block(1, 11, more), block(12, 20, more)), check);
  }

  private static FiringChances count(FiringSetup setup) {
    return count(setup, 20, 0, Optional.empty());
  }

  private static Finding finding(FiringChances chances, FindingCode code) {
    return chances.findings().stream().filter(f -> f.code() == code).findFirst().orElseThrow();
  }

  /**
   * 12 to 20 h are nine of twenty, sqrt(0.45 x 0.55 / 20) = 0.111; 0.001 to 0.010 ten, 0.112; 18 to
   * 20 three, sqrt(0.15 x 0.85 / 20) = 0.080; 1 to 17 lie below the melting point.
   */
  @Test
  void tellsHowManyOfTheDraws() {
    FiringChances chances = count(asked().build());
    assertThat(chances.chances())
        .extracting(Chance::event, chance -> chance.probability().low().si())
        .containsExactly(
            tuple(FiringEvent.CORE_SOAKED, 0.45),
            tuple(FiringEvent.BINDER_GONE, 0.5),
            tuple(FiringEvent.DENSITY_REACHED, 0.15),
            tuple(FiringEvent.METAL_SOLID, 0.85));
    assertThat(chances.chances()).allMatch(Chance::isDetermined);
    assertThat(chances.chances().get(0).standardError().si())
        .isCloseTo(Math.sqrt(0.45 * 0.55 / 20), within(1e-12));
    assertThat(chances.draws()).isEqualTo(20);
    assertThat(chances.seed()).isEqualTo(7);

    assertThat(chances.findings())
        .extracting(Finding::severity, Finding::subject, Finding::message)
        .containsExactly(
            tuple(
                STOP,
                "round, 160 mm",
                "the core gets its soak with a probability of 45.0 % (standard error of the draws"
                    + " 11.1 %): 5, 50 and 95 % of the draws have up to 1.00 h, 10.00 h and 19.00 h"
                    + " at or above 990 °C at a stretch, asked are 12.00 h"),
            tuple(
                WARNING,
                "polylactide",
                "the binder is gone by the end of debinding with a probability of 50.0 % (standard"
                    + " error of the draws 11.2 %): 5, 50 and 95 % of the draws have up to 0.10 % by"
                    + " mass, 1.00 % by mass and 1.90 % by mass of the binder"),
            tuple(
                STOP,
                "copper",
                "the density wanted is reached with a probability of 15.0 % (standard error of the"
                    + " draws 8.0 %): 5, 50 and 95 % of the draws have up to 90.4 % by volume,"
                    + " 94.0 % by volume and 97.6 % by volume; wanted are 97.2 % by volume"),
            tuple(
                WARNING,
                "copper",
                "the metal stays solid with a probability of 85.0 % (standard error of the draws"
                    + " 8.0 %), below 1085 °C everywhere"));
    assertThat(chances.findings())
        .allSatisfy(f -> assertThat(f.limit().orElseThrow().si()).isEqualTo(0.95));
  }

  /** At 7200 s the i-th core is i K above 1000 °C in sintering, and 20 - i K in debinding. */
  @Test
  void bandsTheCoreStageByStage() {
    List<CoreBand> bands = count(asked().build()).coreBands();
    assertThat(bands).extracting(CoreBand::stage).containsExactly("debinding", "sintering");
    assertThat(bands.get(0).points()).hasSize(2);
    assertThat(bands.get(0).points().get(1).time().in(HOUR)).isCloseTo(2, within(1e-12));
    for (int stage = 0; stage < 2; stage++) {
      Quantiles<?> start = bands.get(stage).points().get(0).core();
      assertThat(start.low().si()).isCloseTo(293.15, within(1e-9));
      assertThat(start.high().si()).isCloseTo(293.15, within(1e-9));
      Quantiles<?> end = bands.get(stage).points().get(1).core();
      // ranks 1, 10 and 19 of twenty
      int less = stage == 0 ? 1 : 0;
      assertThat(end.low().si()).isCloseTo(1273.15 + 1 - less, within(1e-9));
      assertThat(end.median().si()).isCloseTo(1273.15 + 10 - less, within(1e-9));
      assertThat(end.high().si()).isCloseTo(1273.15 + 19 - less, within(1e-9));
    }
  }

  /** Half of the least tolerance of any thermocouple, 1.5 K, is 0.75 K. */
  @Test
  void saysWhetherTheQuickModelIsNearEnough() {
    Finding near = shortcut(0.75);
    assertThat(near.severity()).isEqualTo(PASSED);
    assertThat(near.message())
        .isEqualTo(
            "in 3 draws computed in full as well its core peaks within 0.75 K, is within 4.00 K at"
                + " all times, and its soak within 2.5 min");
    Finding far = shortcut(0.76);
    assertThat(far.severity()).isEqualTo(UNDETERMINED);
    assertThat(far.message()).endsWith("2.5 min: too far for the probabilities to be relied on");
    assertThat(far.measured()).contains(kelvinDifference(0.76));
  }

  private static Finding shortcut(double kelvin) {
    Amount<TemperatureDifference> atPeak = kelvinDifference(kelvin);
    return finding(
        count(
            asked().build(),
            20,
            0,
            Optional.of(ImmutableShortcutCheck.of(3, kelvinDifference(4), atPeak, minutes(2.5)))),
        ChanceFinding.SHORTCUT);
  }

  @Test
  void saysThatNotAllWereMade() {
    FiringChances chances = count(asked().build(), 40, 0, Optional.empty());
    assertThat(chances.drawsAsked()).isEqualTo(40);
    Finding made = finding(chances, ChanceFinding.DRAWS_MADE);
    assertThat(made.severity()).isEqualTo(UNDETERMINED);
    assertThat(made.message()).isEqualTo("interrupted after 20 of 40 draws");
    assertThat(count(asked().build()).findings())
        .extracting(Finding::code)
        .doesNotContain(ChanceFinding.DRAWS_MADE);
  }

  /** Least densities up to 98 %, most up to 103 %: from 3 of 20 to all from 94.8 % up, 15 of 20. */
  @Test
  void tellsAnIntervalWithoutACurve() {
    FiringSetup setup = asked().sinteringCurve(Optional.empty()).build();
    FiringChances chances = count(setup, 20, 0.05, Optional.empty());
    Chance dense = chances.chance(FiringEvent.DENSITY_REACHED).orElseThrow();
    assertThat(dense.isDetermined()).isFalse();
    assertThat(dense.probability().low().si()).isEqualTo(0.15);
    assertThat(dense.probability().high().si()).isEqualTo(0.75);
    // of 15 % and 75 % the latter has the larger error
    assertThat(dense.standardError().si()).isCloseTo(Math.sqrt(0.75 * 0.25 / 20), within(1e-12));
    Finding finding = finding(chances, ChanceFinding.DENSITY_CHANCE);
    assertThat(finding.severity()).isEqualTo(UNDETERMINED);
    assertThat(finding.message())
        .isEqualTo(
            "the density wanted is reached with a probability of 15.0 to 75.0 %; wanted are 97.2 % by"
                + " volume; without a sintering curve of your powder only what is published speaks: fire"
                + " coupons and fit one");
    assertThat(chances.density()).isEmpty();
    assertThat(chances.densitySwings()).isEmpty();
  }

  /** A curve that was observed up to 990 °C says nothing of 1000 °C; up to 1000 °C it does. */
  @Test
  void leavesTheDensityOpenBeyondWhatTheCurveHasSeen() {
    Finding beyond = finding(count(observedUpTo(990)), ChanceFinding.DENSITY_CHANCE);
    assertThat(beyond.severity()).isEqualTo(UNDETERMINED);
    assertThat(beyond.message())
        .endsWith("; the curve was observed up to 990 °C, and the firing gets hotter");
    assertThat(finding(count(observedUpTo(1000)), ChanceFinding.DENSITY_CHANCE).severity())
        .isEqualTo(STOP);
  }

  private static FiringSetup observedUpTo(double celsius) {
    return asked()
        .sinteringCurve(
            FittedSinteringCurve.builder()
                .from(sinteringCurve())
                .curve(
                    SinteringCurve.builder()
                        .from(sinteringCurve().curve())
                        .range(Span.of(celsius(600), celsius(celsius)))
                        .build())
                .build())
        .build();
  }

  @Test
  void saysThatNothingIsKnownOfABinderWithoutKinetics() {
    FiringChances chances = count(setup(copper(), 1000).build());
    assertThat(chances.chance(FiringEvent.BINDER_GONE)).isEmpty();
    assertThat(chances.binderLeft()).isEmpty();
    assertThat(chances.binderSwings()).isEmpty();
    Finding gone = finding(chances, ChanceFinding.BINDER_GONE_CHANCE);
    assertThat(gone.severity()).isEqualTo(UNDETERMINED);
    assertThat(gone.subject()).isEqualTo("polylactide");
    assertThat(gone.message())
        .isEqualTo(
            "no kinetics of the binder are given or published, so nothing can be said of how likely"
                + " it is gone: have thermogravimetry made of your feedstock");
  }

  /** Bronze is sintered up to 870 °C, above its solidus of 845 °C, so its liquidus counts. */
  @Test
  void allowsMeltWhereItIsMeant() {
    assertThat(ChanceTally.meltingLimit(copper())).isEqualTo(celsius(1084.62));
    assertThat(ChanceTally.meltingLimit(bronze())).isEqualTo(celsius(1000));
  }

  @Test
  void tellsThatNothingWasDrawn() {
    FiringSetup setup = asked().build();
    UncertainFiring firing = UncertainFiring.builder().setup(setup).build();
    FiringForecast forecast = FiringForecast.of(setup);
    FiringChances none =
        new ChanceTally(firing, forecast, new Inputs(firing, forecast), 7, 100).interrupted();
    assertThat(none.chances()).isEmpty();
    assertThat(none.draws()).isZero();
    assertThat(none.findings())
        .extracting(Finding::message)
        .containsExactly("interrupted after 0 of 100 draws");
    FiringResponse unasked =
        new FiringResponse(
            List.of(),
            0,
            0,
            0,
            Optional.empty(),
            new LiteratureDensity(copper(), volumeFraction(0.6), false));
    assertThat(
            new ChanceTally(firing, forecast, new Inputs(firing, forecast), 7, 100)
                .chances(unasked, List.of(new DrawnBlock()), Optional.empty()))
        .isEqualTo(none);
  }

  @Test
  void formatsQuantiles() {
    assertThat(ImmutableQuantiles.of(hours(1), hours(2.5), hours(3)).format(HOUR, 1))
        .isEqualTo("1.0 h, 2.5 h and 3.0 h");
  }
}
