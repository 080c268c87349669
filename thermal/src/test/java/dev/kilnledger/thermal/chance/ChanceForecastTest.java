package dev.kilnledger.thermal.chance;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.thermal.Workbench.informed;
import static dev.kilnledger.thermal.Workbench.kiln;
import static dev.kilnledger.thermal.Workbench.setup;
import static dev.kilnledger.thermal.Workbench.stainless;
import static dev.kilnledger.thermal.Workbench.thawed;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvinDifference;
import static dev.kilnledger.units.Amounts.kilojoulesPerMole;
import static dev.kilnledger.units.Amounts.massFraction;
import static dev.kilnledger.units.Amounts.minutes;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.volumeFraction;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.FindingCode;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Standing;
import dev.kilnledger.thermal.densification.FittedSinteringCurve;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.kiln.Thermocouple;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.TemperatureDifference;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Time;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChanceForecastTest {
  private static final Source SAID = Source.user("made for the tests");
  private static final ChanceForecast FEW = new ChanceForecast(500, 7, 1);

  /** A kiln that follows its programme exactly, and no thermocouple to be wrong. */
  private static FiringSetup.Builder following(double peakCelsius) {
    return setup(copper(), peakCelsius).kiln(kiln(1300).wall(List.of()).build());
  }

  /** Nothing in doubt but what a test adds. */
  private static UncertainFiring.Builder certain(FiringSetup setup) {
    return UncertainFiring.builder()
        .setup(setup)
        .kilnOffset(Spread.exactly(kelvinDifference(0), SAID))
        .thermocoupleError(Spread.exactly(ratio(0), SAID))
        .packingConductivity(Spread.exactly(ratio(1), SAID))
        .binderEnergy(Spread.exactly(ratio(1), SAID))
        .sinteringEnergy(Spread.exactly(kilojoulesPerMole(200), SAID));
  }

  private static Spread<TemperatureDifference> evenly(double kelvin) {
    return Spread.rectangular(kelvinDifference(-kelvin), kelvinDifference(kelvin), SAID);
  }

  private static double probability(FiringChances chances, FiringEvent event) {
    Chance chance = chances.chance(event).orElseThrow();
    assertThat(chance.isDetermined()).isTrue();
    return chance.probability().low().si();
  }

  private static Finding finding(FiringChances chances, FindingCode code) {
    return chances.findings().stream().filter(f -> f.code() == code).findFirst().orElseThrow();
  }

  /**
   * The worked example of the type: 95 % of a normal law of 4 K lie below 1.644854 x 4 = 6.58 K.
   * The core of a charge of constant properties is as much hotter as the kiln. 2048 draws tell a
   * quantile to sqrt(0.05 x 0.95 / 2048) / 0.1031 x 4 = 0.19 K (density of the normal law there
   * 0.1031 over the standard deviation); three times that are allowed.
   */
  @Test
  void bandsOfTheCoreFollowTheNormalLaw() {
    FiringChances chances =
        ChanceForecast.standard()
            .forecast(
                certain(following(1000).build())
                    .kilnOffset(Spread.normal(kelvinDifference(0), kelvinDifference(4), SAID))
                    .build());
    CoreBandPoint hottest =
        chances.coreBands().get(1).points().stream()
            .max((a, b) -> a.core().median().compareTo(b.core().median()))
            .orElseThrow();
    double high = hottest.core().high().si() - hottest.core().median().si();
    double low = hottest.core().median().si() - hottest.core().low().si();
    assertThat(high).isCloseTo(6.58, within(0.6));
    assertThat(low).isCloseTo(6.58, within(0.6));
  }

  /**
   * Copper melts at 1084.62 °C. At 1075 °C with a normal offset of mean 1 and 6 K it stays solid
   * with the probability Phi(8.62 / 6) = Phi(1.43667) = 0.92459 (textbook: a linear response to a
   * normal input; tables of the normal law). Four standard errors, 4 x 0.0026.
   */
  @Test
  void staysSolidWithTheProbabilityOfTheNormalLaw() {
    FiringChances chances =
        ChanceForecast.standard()
            .forecast(
                certain(following(1075).build())
                    .kilnOffset(Spread.normal(kelvinDifference(1), kelvinDifference(6), SAID))
                    .build());
    Chance solid = chances.chance(FiringEvent.METAL_SOLID).orElseThrow();
    assertThat(solid.probability().low().si()).isCloseTo(0.92459, within(0.0106));
    assertThat(solid.standardError().si())
        .isCloseTo(Math.sqrt(0.92459 * 0.07541 / 10_000), within(1e-4));
    assertThat(finding(chances, ChanceFinding.SOLID_CHANCE).severity()).isEqualTo(WARNING);
  }

  /**
   * The sum of three rectangular laws of the same half width a, as in the example of JCGM 101:2008,
   * 9.2.3, from memory, which has four: the share above t is (3 - y)^3 / 6 with y = (t / a + 3) / 2
   * from 2 to 3 (Irwin and Hall). Here a is the tolerance of type S, class 2, at the peak, 0.25 %
   * of the degrees Celsius (IEC 60584-1): 2.70 K at 1081 °C. From there to the melting point of
   * copper t = 3.62 K, y = 2.16975, and the share 0.83025^3 / 6 = 0.09538.
   */
  @Test
  void addsRectangularLaws() {
    double a = 0.0025 * 1081;
    FiringChances chances =
        ChanceForecast.standard()
            .forecast(
                certain(following(1081).thermocouple(Thermocouple.S).build())
                    .thermocoupleError(Spread.rectangular(ratio(-1), ratio(1), SAID))
                    .kilnOffset(evenly(a))
                    .drift(evenly(a))
                    .build());
    double y = (3.62 / a + 3) / 2;
    double expected = 1 - Math.pow(3 - y, 3) / 6;
    assertThat(expected).isCloseTo(1 - 0.09538, within(1e-5));
    assertThat(probability(chances, FiringEvent.METAL_SOLID)).isCloseTo(expected, within(0.0118));
  }

  /**
   * Type N, class 2: 0.75 % of 1080 °C are 8.1 K either way, and anything in between is as likely
   * (IEC 60584-1 through the existing table). 4.62 K below its melting point copper stays solid in
   * (8.1 + 4.62) / 16.2 = 78.5 % of the firings.
   */
  @Test
  void takesTheToleranceOfTheThermocoupleAtThePeak() {
    FiringChances chances =
        ChanceForecast.standard()
            .forecast(
                certain(following(1080).thermocouple(Thermocouple.N).build())
                    .thermocoupleError(Spread.rectangular(ratio(-1), ratio(1), SAID))
                    .build());
    assertThat(probability(chances, FiringEvent.METAL_SOLID)).isCloseTo(0.7852, within(0.0164));
  }

  /** A wire that reads 8 K too high leaves the kiln 8 K too cold: the sign is the safe one. */
  @Test
  void aReadingTooHighMakesTheKilnTooCold() {
    UncertainFiring drifted =
        certain(following(1000).build()).drift(Spread.exactly(kelvinDifference(8), SAID)).build();
    CoreBand band = FEW.forecast(drifted).coreBands().get(1);
    double hottest =
        band.points().stream().mapToDouble(p -> p.core().median().in(CELSIUS)).max().orElseThrow();
    double nominal = FiringForecast.of(following(1000).build()).hottest().felt().peak().in(CELSIUS);
    assertThat(hottest).isCloseTo(nominal - 8, within(0.02));
  }

  /** Nothing in doubt: probability 0 or 1, as the forecast of the same firing says. */
  @Test
  void agreesWithTheForecastWhereNothingIsInDoubt() {
    FiringSetup.Builder setup = informed(copper(), 1000);
    FiringForecast forecast = FiringForecast.of(setup.build());
    double had = forecast.coreSoak().had().expected().si();
    double density = forecast.density().orElseThrow().density().expected().si();
    for (double more : new double[] {-0.01, 0.01}) {
      FiringChances chances =
          FEW.forecast(
              certain(
                      setup
                          .soak(hours(had * (1 + more) / 3600))
                          .targetDensity(volumeFraction(density + more))
                          .sinteringCurve(
                              FittedSinteringCurve.builder()
                                  .from(setup.build().sinteringCurve().orElseThrow())
                                  .scatter(volumeFraction(0))
                                  .build())
                          .build())
                  .build());
      double expected = more < 0 ? 1 : 0;
      assertThat(probability(chances, FiringEvent.CORE_SOAKED)).isEqualTo(expected);
      assertThat(probability(chances, FiringEvent.DENSITY_REACHED)).isEqualTo(expected);
      assertThat(chances.soak().orElseThrow().low().si()).isCloseTo(had, within(1e-6 * had));
      assertThat(chances.density().orElseThrow().high().si()).isCloseTo(density, within(1e-6));
      assertThat(chances.binderLeft().orElseThrow().median().si())
          .isCloseTo(forecast.afterDebinding().orElseThrow().remaining().low().si(), within(1e-9));
      assertThat(chances.soakSwings()).isEmpty();
      assertThat(finding(chances, ChanceFinding.CORE_SOAK_CHANCE).severity())
          .isEqualTo(more < 0 ? PASSED : STOP);
    }
  }

  @Test
  void isTheSameOnAnyNumberOfThreads() throws Exception {
    UncertainFiring firing =
        UncertainFiring.builder().setup(CurveInDoubt.setup(following(1000))).build();
    FiringChances one = new ChanceForecast(1000, 42, 1).forecast(firing);
    assertThat(new ChanceForecast(1000, 42, 2).forecast(firing)).isEqualTo(one);
    assertThat(new ChanceForecast(1000, 42, 8).forecast(firing)).isEqualTo(one);
    assertThat(new ChanceForecast(1000, 43, 1).forecast(firing)).isNotEqualTo(one);
    assertThat(thawed(one)).isEqualTo(one);
    assertThat(one.seed()).isEqualTo(42);
    assertThat(one.draws()).isEqualTo(1000);
  }

  /** A wide spread first, a narrow one after it, and none that does not matter. */
  @Test
  void sortsWhatMatters() {
    FiringChances chances =
        FEW.forecast(
            certain(following(1000).build())
                .kilnOffset(evenly(2))
                .drift(evenly(12))
                .metalShare(Spread.rectangular(massFraction(0.88), massFraction(0.92), SAID))
                .build());
    assertThat(chances.soakSwings())
        .extracting(Swing::input)
        .containsExactly(FiringInput.DRIFT, FiringInput.KILN_OFFSET, FiringInput.METAL_SHARE);
    Swing<Time> drift = chances.soakSwings().get(0);
    assertThat(drift.atHigh().isLessThan(drift.atLow())).isTrue();
    assertThat(drift.width()).isEqualTo(drift.atLow().si() - drift.atHigh().si());
    Swing<Time> offset = chances.soakSwings().get(1);
    assertThat(offset.atHigh().isGreaterThan(offset.atLow())).isTrue();
    assertThat(offset.width()).isBetween(1.0, drift.width());
  }

  /**
   * The hold that 95 % of the firings need: with it on the same draws 95 % have their soak, with
   * five minutes less they have not (the answer is good to a minute).
   */
  @Test
  void findsTheHoldForAProbability() {
    FiringSetup setup = following(1000).soakTemperature(celsius(990)).soak(hours(2)).build();
    UncertainFiring.Builder firing = certain(setup).kilnOffset(evenly(8));
    Amount<Dimensionless> wanted = percent(95);
    assertThat(probability(FEW.forecast(firing.build()), FiringEvent.CORE_SOAKED)).isLessThan(0.95);
    Amount<Time> hold = FEW.holdFor(firing.build(), wanted).orElseThrow();
    assertThat(hold.in(HOUR)).isGreaterThan(3);
    DrawnFiring drawn = new DrawnFiring(FiringForecast.of(setup));
    double with =
        probability(
            FEW.forecast(firing.setup(drawn.withHold(hold.si()).nominal()).build()),
            FiringEvent.CORE_SOAKED);
    double without =
        probability(
            FEW.forecast(firing.setup(drawn.withHold(hold.si() - 300).nominal()).build()),
            FiringEvent.CORE_SOAKED);
    assertThat(with).isGreaterThanOrEqualTo(0.95);
    assertThat(without).isLessThan(0.95);
  }

  /** An offset of 12 K either way: 8.3 % of the firings never reach 10 K below the peak. */
  @Test
  void findsNoHoldWhereTooManyNeverGetThere() {
    FiringSetup setup = following(1000).soakTemperature(celsius(990)).soak(hours(1)).build();
    UncertainFiring firing = certain(setup).kilnOffset(evenly(12)).build();
    assertThat(FEW.holdFor(firing, percent(95))).isEmpty();
    assertThatThrownBy(() -> FEW.holdFor(firing, percent(100)))
        .hasMessage(
            "hold for a probability: probability is 100 %; accepted is more than 0 and less than"
                + " 1");
  }

  /**
   * No more than 10 K below the peak for a minute, with an offset of 12 K either way: 90 % of the
   * firings have one above -9.6 K, 95 % above -10.8 K, 97.5 % above -11.4 K. In a hold of 3 h the
   * core gets to 0.1 K of the kiln, so they lack nothing, 0.9 K and 1.5 K: in whole kelvin 0, 1, 2.
   */
  @Tag("sampled")
  @Test
  void findsTheCorrectionForAProbability() {
    FiringSetup setup = following(1000).soakTemperature(celsius(990)).soak(minutes(1)).build();
    UncertainFiring firing = certain(setup).kilnOffset(evenly(12)).build();
    ChanceForecast many = ChanceForecast.standard();
    assertThat(many.correctionFor(firing, percent(90))).contains(kelvinDifference(0));
    assertThat(many.correctionFor(firing, percent(95))).contains(kelvinDifference(1));
    assertThat(many.correctionFor(firing, percent(97.5))).contains(kelvinDifference(2));
    UncertainFiring cold =
        certain(setup).kilnOffset(Spread.exactly(kelvinDifference(-80), SAID)).build();
    assertThat(FEW.correctionFor(cold, percent(95))).isEmpty();
  }

  /** Lacking 0.5, 2.5 and 63.5 K of the 990 °C that are asked for, and more than 64 K. */
  @ParameterizedTest
  @CsvSource({"-9, 0", "-10.5, 1", "-12.5, 3", "-73.5, 64", "-74.5, -1"})
  void findsTheCorrectionOfAKilnThatIsOffForCertain(double offset, int expected) {
    FiringSetup setup = following(1000).soakTemperature(celsius(990)).soak(minutes(1)).build();
    UncertainFiring off =
        certain(setup).kilnOffset(Spread.exactly(kelvinDifference(offset), SAID)).build();
    Optional<Amount<TemperatureDifference>> correction =
        new ChanceForecast(64, 7, 1).correctionFor(off, percent(95));
    assertThat(correction.map(kelvin -> (int) kelvin.si()).orElse(-1)).isEqualTo(expected);
  }

  @Test
  void findsNothingWhereInterrupted() {
    UncertainFiring firing = certain(following(1000).build()).kilnOffset(evenly(5)).build();
    Thread.currentThread().interrupt();
    assertThat(FEW.holdFor(firing, percent(50))).isEmpty();
    assertThat(FEW.correctionFor(firing, percent(50))).isEmpty();
    assertThat(Thread.interrupted()).as("the thread stays interrupted").isTrue();
  }

  /** Where nothing varies there is nothing to compute in full as well. */
  @Test
  void checksTheQuickModelWhereSomethingVaries() {
    UncertainFiring.Builder nothing = certain(following(1000).build());
    assertThat(new ChanceForecast(64, 7, 1).forecast(nothing.build()).shortcut()).isEmpty();
    UncertainFiring something = nothing.kilnOffset(evenly(5)).build();
    assertThat(new ChanceForecast(64, 7, 1).forecast(something).shortcut()).isPresent();
  }

  @Test
  void tellsItsProgress() {
    List<Double> heard = new ArrayList<>();
    FEW.forecast(certain(following(1000).build()).kilnOffset(evenly(5)).build(), heard::add);
    assertThat(heard).isSorted().allMatch(f -> f >= 0 && f <= 1).last().isEqualTo(1.0);
  }

  @Test
  void stopsWithWhatWasDrawnWhereInterrupted() {
    UncertainFiring firing = certain(following(1000).build()).kilnOffset(evenly(5)).build();
    for (int threads : new int[] {1, 2}) {
      FiringChances chances =
          new ChanceForecast(64_000, 7, threads)
              .forecast(
                  firing,
                  fraction -> {
                    if (fraction > 0.55) {
                      Thread.currentThread().interrupt();
                    }
                  });
      assertThat(Thread.interrupted()).isTrue();
      assertThat(chances.draws()).isBetween(1000, 63_999);
      assertThat(finding(chances, ChanceFinding.DRAWS_MADE).message())
          .isEqualTo("interrupted after " + chances.draws() + " of 64000 draws");
    }
  }

  @Test
  void tellsThatNothingWasDrawnWhereInterruptedAtOnce() {
    Thread.currentThread().interrupt();
    FiringChances chances =
        FEW.forecast(certain(following(1000).build()).kilnOffset(evenly(5)).build());
    assertThat(Thread.interrupted()).isTrue();
    assertThat(chances.draws()).isZero();
    assertThat(chances.chances()).isEmpty();
    assertThat(chances.soak()).isEmpty();
    assertThat(finding(chances, ChanceFinding.DRAWS_MADE).severity()).isEqualTo(UNDETERMINED);
  }

  @Test
  void saysWhatItAssumes() {
    FiringChances chances =
        FEW.forecast(UncertainFiring.builder().setup(following(1000).build()).build());
    assertThat(chances.findings())
        .filteredOn(f -> f.code() == ChanceFinding.INPUT_ASSUMED)
        .extracting(Finding::severity, Finding::message)
        .containsExactly(
            Tuple.tuple(
                NOTE,
                "the offset of the kiln is not stated: taken as rectangular from -10 K to 10 K"),
            Tuple.tuple(
                UNDETERMINED,
                "the type of the thermocouple is not stated: it is taken to read right"));
    FiringChances hot =
        FEW.forecast(
            UncertainFiring.builder()
                .setup(
                    setup(stainless(), 1280)
                        .kiln(kiln(1300).wall(List.of()).build())
                        .thermocouple(Thermocouple.K)
                        .build())
                .build());
    assertThat(hot.findings())
        .extracting(Finding::message)
        .contains(
            "no tolerance is stated for type K so hot: that at the end of its range stands in, and"
                + " it may be worse");
  }

  /** The limits are the caller's: 30 % sure enough, nothing a stop. */
  @Test
  void judgesByTheLimitsOfTheCaller() {
    UncertainFiring.Builder firing =
        certain(following(1080).build())
            .kilnOffset(Spread.normal(kelvinDifference(4.62), kelvinDifference(6), SAID));
    Finding usual = finding(FEW.forecast(firing.build()), ChanceFinding.SOLID_CHANCE);
    assertThat(usual.severity()).isIn(WARNING, STOP);
    assertThat(usual.basis().standing()).isEqualTo(Standing.COMMON_PRACTICE);
    Finding mild =
        finding(
            FEW.forecast(firing.limits(ChanceLimits.of(percent(30), percent(0), SAID)).build()),
            ChanceFinding.SOLID_CHANCE);
    assertThat(mild.severity()).isEqualTo(PASSED);
    assertThat(mild.basis()).isEqualTo(SAID);
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatThrownBy(() -> new ChanceForecast(0, 1, 0))
        .hasMessage(
            "forecast of chances: 0 draws; accepted is one or more; and 0 threads; accepted is one"
                + " or more");
    assertThatThrownBy(() -> ChanceLimits.of(percent(50), percent(95), SAID))
        .hasMessageContaining("accepted is 0 <= stop <= sure <= 1");
    assertThatThrownBy(
            () ->
                certain(following(1000).build())
                    .packingConductivity(Spread.normal(ratio(1), ratio(0.5), SAID))
                    .metalShare(Spread.rectangular(massFraction(0.9), massFraction(1.1), SAID))
                    .binderEnergy(Spread.normal(ratio(1), ratio(0.5), SAID))
                    .sinteringEnergy(
                        Spread.normal(kilojoulesPerMole(200), kilojoulesPerMole(100), SAID))
                    .build())
        .hasMessageContaining("packing conductivity goes down to -1.1")
        .hasMessageContaining("binder energy goes down to -1.1")
        .hasMessageContaining("sintering energy goes down to -226")
        .hasMessageContaining("metal share goes up to 1.0");
    assertThatThrownBy(
            () ->
                certain(following(1000).build())
                    .metalShare(Spread.normal(massFraction(0.5), massFraction(0.2), SAID))
                    .build())
        .hasMessageContaining("metal share goes down to -0.35")
        .hasMessageContaining("metal share goes up to 1.35");
  }

  /** Asked for what the draws have now and then, the quantiles lie on either side of it. */
  @Test
  void countsTheSoakOfTheSameDraws() {
    FiringSetup setup = following(1000).soakTemperature(celsius(994)).soak(minutes(90)).build();
    FiringChances chances = FEW.forecast(certain(setup).kilnOffset(evenly(8)).build());
    Quantiles<Time> soak = chances.soak().orElseThrow();
    double share = probability(chances, FiringEvent.CORE_SOAKED);
    assertThat(share).isStrictlyBetween(0.05, 0.95);
    assertThat(soak.low().in(HOUR)).isLessThan(1.5);
    assertThat(soak.high().in(HOUR)).isGreaterThan(1.5);
  }
}
