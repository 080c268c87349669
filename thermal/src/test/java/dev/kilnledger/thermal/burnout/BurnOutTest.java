package dev.kilnledger.thermal.burnout;

import static dev.kilnledger.thermal.Workbench.thawed;
import static dev.kilnledger.thermal.kinetics.Frequencies.perHour;
import static dev.kilnledger.thermal.kinetics.Frequencies.perSecond;
import static dev.kilnledger.units.Amounts.bars;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.gramsPerMole;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvin;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kelvinPerMinute;
import static dev.kilnledger.units.Amounts.kilogramsPerCubicMetre;
import static dev.kilnledger.units.Amounts.kilojoulesPerMole;
import static dev.kilnledger.units.Amounts.massFraction;
import static dev.kilnledger.units.Amounts.metres;
import static dev.kilnledger.units.Amounts.micrometres;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.pascals;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.squareMetres;
import static dev.kilnledger.units.Amounts.volumeFraction;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.KELVIN_PER_HOUR;
import static dev.kilnledger.units.TradeUnits.KELVIN_PER_MINUTE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.Binder;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.kinetics.TemperatureHistory;
import dev.kilnledger.thermal.kinetics.TemperaturePoint;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.HeatingRate;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BurnOutTest {
  private static final BurnOut BURN_OUT = BurnOut.standard();
  private static final Source INVENTED = Source.user("invented for the tests");
  static final BinderKinetics FIRST_ORDER =
      kinetics(DecompositionStep.of(kilojoulesPerMole(150), ReactionOrder.first(perSecond(1e9))));
  private static final BinderKinetics PMMA = PublishedKinetics.polyMethylMethacrylate().get(0);

  static BinderKinetics kinetics(DecompositionStep... steps) {
    return BinderKinetics.builder()
        .name("invented binder")
        .addSteps(steps)
        .range(Span.of(kelvin(500), kelvin(800)))
        .condition("invented")
        .source(INVENTED)
        .build();
  }

  static TemperatureHistory ramp(double from, double to, Amount<HeatingRate> rate) {
    return TemperatureHistory.of(Profile.from(kelvin(from)).rampTo(kelvin(to), rate).build());
  }

  private static double kelvinAt(
      BinderKinetics kinetics, TemperatureHistory history, double conversion) {
    return BURN_OUT
        .reaching(kinetics, history, massFraction(conversion))
        .orElseThrow()
        .temperature()
        .si();
  }

  // Computed with mpmath and SciPy from the closed form; all digits given.
  @ParameterizedTest
  @CsvSource({
    "30, 630.710, 0.60802, 588.522, 624.554, 665.349",
    "60, 645.314, 0.60749, 601.300, 638.911, 681.600",
    "300, 681.881, 0.60619, 633.151, 674.844, 722.459"
  })
  void aFirstOrderRampIsAsComputedElsewhere(
      double rate, double peak, double there, double ten, double half, double last) {
    TemperatureHistory history = ramp(300, 900, kelvinPerHour(rate));
    BurnOutCurve curve = BURN_OUT.along(FIRST_ORDER, history);
    assertThat(curve.peak().temperature().si()).isCloseTo(peak, within(5e-4));
    assertThat(curve.peak().conversion().si()).isCloseTo(there, within(5e-6));
    assertThat(kelvinAt(FIRST_ORDER, history, 0.1)).isCloseTo(ten, within(5e-4));
    assertThat(kelvinAt(FIRST_ORDER, history, 0.5)).isCloseTo(half, within(5e-4));
    assertThat(kelvinAt(FIRST_ORDER, history, 0.99)).isCloseTo(last, within(5e-4));
  }

  @Test
  void aHoldAt650KelvinIsDoneAsComputedElsewhere() {
    TemperatureHistory hold =
        TemperatureHistory.of(Profile.from(kelvin(650)).hold(hours(3)).build());
    assertThat(
            BURN_OUT.reaching(FIRST_ORDER, hold, massFraction(0.99)).orElseThrow().time().in(HOUR))
        .isCloseTo(1.448290, within(5e-7));
  }

  // Published set of one laboratory in the MaCFP database; peaks and conversions by mpmath. That
  // laboratory's own simulation at 10 K/min has 608.07, 638.75, 660.07 K and its peak at 643.7 K.
  @ParameterizedTest
  @CsvSource({
    "1, 606.921975, 0.61363, 4.01594e-4, 575.09268, 602.13712, 620.70531",
    "10, 644.081869, 0.61255, 3.575841e-3, 608.48896, 638.76057, 659.63128"
  })
  void aPublishedSetPeaksWhereItShould(
      double rate, double peak, double there, double height, double ten, double half, double most) {
    TemperatureHistory history = ramp(300, 900, kelvinPerMinute(rate));
    BurnOutPoint fastest = BURN_OUT.along(PMMA, history).peak();
    // Golden section on a flat top: the last of 1e-16 moves it by the root of that, times its
    // width.
    assertThat(fastest.temperature().si()).isCloseTo(peak, within(2e-6));
    assertThat(fastest.conversion().si()).isCloseTo(there, within(5e-6));
    assertThat(fastest.rate().si() / height).isCloseTo(1, within(2e-6));
    assertThat(kelvinAt(PMMA, history, 0.1)).isCloseTo(ten, within(5e-6));
    assertThat(kelvinAt(PMMA, history, 0.5)).isCloseTo(half, within(5e-6));
    assertThat(kelvinAt(PMMA, history, 0.9)).isCloseTo(most, within(5e-6));
    if (rate == 10) {
      assertThat(kelvinAt(PMMA, history, 0.5)).isCloseTo(638.75, within(0.5));
      assertThat(fastest.temperature().si()).isCloseTo(643.7, within(0.5));
    }
  }

  @Test
  void aProfileBurnsOutAsComputedElsewhere() {
    Profile profile =
        Profile.from(celsius(20))
            .rampTo(celsius(250), kelvinPerHour(50))
            .hold(hours(2))
            .rampTo(celsius(400), kelvinPerHour(30))
            .build();
    TemperatureHistory history = TemperatureHistory.of(profile);
    // mpmath, twelve digits; A J carries the rounding of T and R some 40-fold.
    assertThat(BURN_OUT.at(PMMA, history, hours(4.6)).conversion().si())
        .isCloseTo(.00198866911565, within(1e-14));
    assertThat(BURN_OUT.at(PMMA, history, hours(6.6)).conversion().si())
        .isCloseTo(.0192565792201, within(1e-13));
    BurnOutPoint end = BURN_OUT.along(PMMA, history).end();
    assertThat(end.conversion().si()).isEqualTo(1);
    assertThat(-Math.log(end.remaining().si())).isCloseTo(96.4323110156, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"30, 323.391", "60, 333.772"})
  void theFastestLossOnSlowRampsIsAsComputedElsewhere(double rate, double peak) {
    assertThat(
            BURN_OUT
                .along(PMMA, ramp(300, 900, kelvinPerHour(rate)))
                .peak()
                .temperature()
                .in(CELSIUS))
        .isCloseTo(peak, within(5e-4));
  }

  // Each set published by one laboratory; the times by mpmath. The last set goes through peaks
  // rounded to 0.1 K, which move its time by 1 %.
  @ParameterizedTest
  @CsvSource({
    "0, 11.45, 0.005",
    "1, 2.79, 0.005",
    "2, 8.37, 0.005",
    "3, 7.15, 0.005",
    "4, 14.23, 0.15"
  })
  void fiveSetsOfOnePolymerDisagreeByAFactorOfFive(int set, double time, double tolerance) {
    TemperatureHistory hold =
        TemperatureHistory.of(Profile.from(celsius(300)).hold(hours(20)).build());
    BinderKinetics kinetics = PublishedKinetics.polyMethylMethacrylate().get(set);
    assertThat(BURN_OUT.reaching(kinetics, hold, massFraction(0.99)).orElseThrow().time().in(HOUR))
        .isCloseTo(time, within(tolerance));
    assertThat(
            BURN_OUT.along(kinetics, ramp(300, 900, kelvinPerMinute(10))).peak().temperature().si())
        .isBetween(632.5, 647.5);
  }

  @Test
  void aForecastByPublishedSetsIsAnIntervalAndSaysSo() {
    TemperatureHistory hold =
        TemperatureHistory.of(
            Profile.from(celsius(20))
                .rampTo(celsius(300), kelvinPerHour(100))
                .hold(hours(5))
                .build());
    BurnOutForecast forecast = BURN_OUT.forecast(PublishedKinetics.polyMethylMethacrylate(), hold);
    assertThat(forecast.remaining().low().si()).isLessThan(0.001);
    assertThat(forecast.remaining().high().si()).isGreaterThan(0.15);
    assertThat(forecast.findings().get(0).severity()).isEqualTo(Severity.UNDETERMINED);
    assertThat(forecast.findings().get(0).message())
        .contains("by 5 kinetics from elsewhere 0.0 % to", "they do not agree");
    assertThat(forecast.findings()).as("one of all, and two of each").hasSize(1 + 2 * 5);
    for (double celsius : new double[] {200, 500}) {
      // nothing is gone after an hour at 200 °C, and all long before 500 °C
      Finding agreed =
          BURN_OUT
              .forecast(
                  PublishedKinetics.polyMethylMethacrylate(),
                  TemperatureHistory.of(
                      Profile.from(celsius(20))
                          .rampTo(celsius(celsius), kelvinPerHour(100))
                          .hold(hours(1))
                          .build()))
              .findings()
              .get(0);
      assertThat(agreed.severity()).isEqualTo(Severity.NOTE);
      assertThat(agreed.message())
          .endsWith(
              " of the binder is left at the end; thermogravimetry of your own feedstock decides");
    }
  }

  /** The time of a history has any zero: an hour later all is an hour later. */
  @Test
  void aHistoryMayBeginAtAnyTime() {
    TemperatureHistory history = ramp(300, 900, kelvinPerHour(60));
    List<TemperaturePoint> later = new ArrayList<>();
    for (TemperaturePoint point : history.points()) {
      later.add(TemperaturePoint.of(point.time().add(hours(1)), point.temperature()));
    }
    BurnOutCurve curve = BURN_OUT.along(FIRST_ORDER, TemperatureHistory.of(later));
    assertThat(curve.points().get(0).time().in(HOUR)).isCloseTo(1, within(1e-12));
    assertThat(curve.peak().temperature().si()).isCloseTo(645.314, within(5e-4));
    assertThat(
            BURN_OUT
                .reaching(FIRST_ORDER, TemperatureHistory.of(later), massFraction(0.5))
                .orElseThrow()
                .time()
                .in(HOUR))
        .isCloseTo(1 + (638.911 - 300) / 60, within(1e-5));
  }

  /** 1 % and 99 % of the ramp of 60 K/h, the latter at 681.600 K; 10 % are gone at 601.3 K. */
  @Test
  void tellsFromWhereToWhereMostOfTheBinderLeaves() {
    TemperatureHistory history = ramp(300, 750, kelvinPerHour(60));
    Finding within = BURN_OUT.along(FIRST_ORDER, history).findings().get(1);
    double first = kelvinAt(FIRST_ORDER, history, 0.01);
    assertThat(first).isBetween(500.0, 601.3);
    assertThat(within.message())
        .isEqualTo(
            "most of the binder leaves from "
                + Math.round(first - 273.15)
                + " to 408 °C, and its kinetics were observed from 227 to 527 °C");
    // cooled from 650 K the binder leaves down to the end of the history
    TemperatureHistory cooled =
        TemperatureHistory.of(
            Profile.from(kelvin(650)).coolTo(kelvin(580), kelvinPerHour(60)).build());
    BinderKinetics above =
        BinderKinetics.builder().from(FIRST_ORDER).range(Span.of(kelvin(590), kelvin(800))).build();
    assertThat(BURN_OUT.along(above, cooled).findings().get(1).severity())
        .isEqualTo(Severity.UNDETERMINED);
    // half an hour at 610 K and then cold: what stays asks nothing of the kinetics
    TemperatureHistory halfway =
        TemperatureHistory.of(
            Profile.from(kelvin(300))
                .rampTo(kelvin(610), kelvinPerHour(60))
                .hold(hours(0.5))
                .coolTo(kelvin(300), kelvinPerHour(600))
                .build());
    BurnOutCurve half = BURN_OUT.along(FIRST_ORDER, halfway);
    assertThat(half.end().remaining().si()).isBetween(0.3, 0.9);
    assertThat(half.findings().get(1).severity()).isEqualTo(Severity.PASSED);
    assertThat(half.findings().get(1).message()).contains(" to 337 °C, and its kinetics");
    BinderKinetics fromHot =
        BinderKinetics.builder().from(FIRST_ORDER).range(Span.of(kelvin(601), kelvin(800))).build();
    assertThat(BURN_OUT.along(fromHot, history).findings().get(1).severity())
        .isEqualTo(Severity.UNDETERMINED);
  }

  @Test
  void aBinderOfTheLibraryHasAnIntervalOrNothing() {
    MaterialLibrary library = MaterialLibrary.standard();
    assertThat(PublishedKinetics.activationEnergies(library.binder("polylactide")).get(0).value())
        .isEqualTo(Span.of(kilojoulesPerMole(96), kilojoulesPerMole(183.6)));
    assertThat(PublishedKinetics.activationEnergies(library.binder("polyoxymethylene"))).isEmpty();
    assertThat(PublishedKinetics.activationEnergies(library.binder("wax and polyolefin, generic")))
        .hasSize(2);
    assertThat(PublishedKinetics.of(library.binder("polylactide"))).isEmpty();
    assertThat(
            PublishedKinetics.of(
                Binder.builder()
                    .from(library.binder("polylactide"))
                    .name("poly(methyl methacrylate)")
                    .build()))
        .isEqualTo(PublishedKinetics.polyMethylMethacrylate());
    List<BinderKinetics> bracket =
        PublishedKinetics.bracket(library.binder("polylactide"), celsius(360), kelvinPerMinute(10));
    for (BinderKinetics end : bracket) {
      // Both go through the run they were told of; A from the peak is exact for first order.
      assertThat(BURN_OUT.along(end, ramp(300, 900, kelvinPerMinute(10))).peak().temperature().si())
          .isCloseTo(633.15, within(1e-5));
    }
    TemperatureHistory slow =
        TemperatureHistory.of(
            Profile.from(celsius(20))
                .rampTo(celsius(280), kelvinPerHour(30))
                .hold(hours(4))
                .build());
    assertThat(BURN_OUT.forecast(bracket, slow).findings().get(0).severity())
        .isIn(Severity.UNDETERMINED, Severity.NOTE);
    assertThatThrownBy(
            () ->
                PublishedKinetics.bracket(
                    library.binder("polyoxymethylene"), celsius(300), kelvinPerMinute(10)))
        .hasMessageContaining("no activation energy was found for polyoxymethylene; accepted are");
  }

  // Independent: Dormand-Prince 8(5,3) of Hipparchus on d alpha/dt itself.
  @Test
  void anIntegratorOfDifferentialEquationsGivesTheSame() {
    DecompositionStep wax =
        DecompositionStep.of(
            kilojoulesPerMole(90),
            ReactionOrder.of(perSecond(2e5), ratio(0.55)),
            massFraction(0.6));
    DecompositionStep polymer =
        DecompositionStep.of(
            kilojoulesPerMole(220),
            ReactionOrder.of(perSecond(1e14), ratio(1.5)),
            massFraction(0.4));
    TemperatureHistory ramp = ramp(400, 680, kelvinPerHour(60));
    double[] alpha =
        new DormandPrince853Integrator(1e-9, 60, 1e-12, 1e-12)
            .integrate(
                new OrdinaryDifferentialEquation() {
                  @Override
                  public int getDimension() {
                    return 2;
                  }

                  @Override
                  public double[] computeDerivatives(double t, double[] y) {
                    double rt = 8.314462618 * (400 + t / 60);
                    return new double[] {
                      2e5 * Math.exp(-90e3 / rt) * Math.pow(Math.max(0, 1 - y[0]), 0.55),
                      1e14 * Math.exp(-220e3 / rt) * Math.pow(Math.max(0, 1 - y[1]), 1.5)
                    };
                  }
                },
                new ODEState(0, new double[2]),
                280 * 60 * 0.75)
            .getPrimaryState();
    BurnOutPoint point = BURN_OUT.at(kinetics(wax, polymer), ramp, hours(280 / 60.0 * 0.75));
    // The step of order below 1 ends with infinite bend, which costs the integrator digits.
    assertThat(point.conversion().si()).isCloseTo(0.6 * alpha[0] + 0.4 * alpha[1], within(1e-8));
  }

  @Test
  void anOrderBelowOneEndsInFiniteTime() {
    // n = 1/2: alpha = 1 - (1 - A J / 2)^2, done at A J = 2 (by hand).
    ReactionOrder half = ReactionOrder.of(perSecond(1), ratio(0.5));
    assertThat(half.unconverted(0)).isCloseTo(0.25, within(1e-15));
    assertThat(half.unconverted(Math.log(2.001))).isZero();
    assertThat(half.conversionPerReducedTime(Math.log(2.001))).isZero();
    // n = 2: alpha = 1 - 1 / (1 + A J); n = 0: alpha = A J.
    assertThat(ReactionOrder.of(perSecond(1), ratio(2)).unconverted(Math.log(3)))
        .isCloseTo(0.25, within(1e-15));
    ReactionOrder none = ReactionOrder.of(perSecond(1), ratio(0));
    assertThat(none.unconverted(Math.log(0.7))).isCloseTo(0.3, within(1e-15));
    assertThat(none.conversionPerReducedTime(Math.log(0.7))).isCloseTo(1, within(1e-15));
    assertThat(none.conversionPerReducedTime(Math.log(1.1))).as("nothing is left").isZero();
  }

  @Test
  void aTabulatedCurveStandsInForAnOrder() {
    List<CurvePoint> rows = new ArrayList<>();
    rows.add(CurvePoint.of(ratio(-30), ratio(0)));
    for (double logJ = -29.95; logJ < -16; logJ += 0.05) {
      rows.add(CurvePoint.of(ratio(logJ), ratio(-Math.expm1(-1e9 * Math.exp(logJ)))));
    }
    rows.add(CurvePoint.of(ratio(-16), ratio(1)));
    BinderKinetics table =
        kinetics(DecompositionStep.of(kilojoulesPerMole(150), MasterDecompositionCurve.of(rows)));
    TemperatureHistory history = ramp(300, 900, kelvinPerHour(60));
    for (int minute = 0; minute <= 600; minute += 20) {
      Amount<Time> time = Amounts.minutes(minute);
      // Linear interpolation over 0.05 with a second derivative of at most 0.3: 0.3 * 0.05² / 8.
      assertThat(BURN_OUT.at(table, history, time).remaining().si())
          .isCloseTo(BURN_OUT.at(FIRST_ORDER, history, time).remaining().si(), within(1e-4));
    }
    assertThat(BURN_OUT.along(table, history).peak().temperature().si())
        .isCloseTo(645.314, within(2.0)); // a row is 1.4 K wide there
    MasterDecompositionCurve two =
        MasterDecompositionCurve.of(
            List.of(CurvePoint.of(ratio(-20), ratio(0)), CurvePoint.of(ratio(-18), ratio(1))));
    // da/dJ = da/d ln J / J; where nothing is left nothing leaves
    assertThat(two.conversionPerReducedTime(-19)).isCloseTo(0.5 * Math.exp(19), within(1e-5));
    assertThat(two.unconverted(-18)).isZero();
    assertThat(two.conversionPerReducedTime(-18)).isZero();
  }

  @Test
  void conversionNeverFallsAndCuttingASegmentChangesNothing() {
    Profile profile =
        Profile.from(celsius(20))
            .rampTo(celsius(350), kelvinPerHour(100))
            .coolTo(celsius(300), kelvinPerHour(50))
            .hold(hours(3))
            .rampTo(celsius(450), kelvinPerHour(40))
            .build();
    BurnOutCurve curve = BURN_OUT.along(FIRST_ORDER, TemperatureHistory.of(profile));
    double before = 1;
    for (BurnOutPoint point : curve.points()) {
      assertThat(point.remaining().si()).isBetween(0.0, before);
      assertThat(point.rate().si()).isNotNegative().isLessThanOrEqualTo(curve.peak().rate().si());
      before = point.remaining().si();
    }
    List<TemperaturePoint> cut = new ArrayList<>();
    for (BurnOutPoint point : curve.points()) {
      cut.add(TemperaturePoint.of(point.time(), point.temperature()));
    }
    assertThat(
            BURN_OUT.along(FIRST_ORDER, TemperatureHistory.of(cut)).end().remaining().si()
                / curve.end().remaining().si())
        .isCloseTo(1, within(1e-9)); // 1e-16 of time and temperature, times A J of 40 and x of 25
  }

  @Test
  void whatRemainsAndTheRangeAreFound() {
    BurnOutCurve cold = BURN_OUT.along(FIRST_ORDER, ramp(300, 620, kelvinPerHour(60)));
    assertThat(cold.findings().get(0).severity()).isEqualTo(Severity.WARNING);
    assertThat(cold.findings().get(0).message()).contains("% of the binder is left at the end: it");
    assertThat(BURN_OUT.reaching(FIRST_ORDER, ramp(300, 620, kelvinPerHour(60)), massFraction(.9)))
        .isEmpty();
    BurnOutCurve done = BURN_OUT.along(FIRST_ORDER, ramp(300, 750, kelvinPerHour(60)));
    assertThat(done.findings()).extracting(f -> f.severity()).containsOnly(Severity.PASSED);
    assertThat(done.findings().get(0).message())
        .isEqualTo("0.0 % of the binder is left at the end");
    BurnOutCurve hot = BURN_OUT.along(FIRST_ORDER, ramp(300, 1200, kelvinPerMinute(100)));
    assertThat(hot.findings().get(1).severity()).isEqualTo(Severity.UNDETERMINED);
    assertThat(hot.findings().get(1).message()).contains("outside they are a guess");
    BurnOutCurve nothing = BURN_OUT.along(FIRST_ORDER, ramp(300, 400, kelvinPerHour(60)));
    assertThat(nothing.findings().get(1).severity()).isEqualTo(Severity.NOTE);
  }

  private static PorePressureLimit.Builder pores(double permeability, double highest) {
    return PorePressureLimit.builder()
        .permeability(squareMetres(permeability))
        .viscosity(PorePressureLimit.pascalSeconds(3e-5))
        .molarMass(gramsPerMole(44))
        .binderPerVolume(kilogramsPerCubicMetre(450))
        .ambient(bars(1))
        .highest(bars(highest))
        .source(INVENTED);
  }

  // Lombardo and co-workers' formula, as quoted in public research notes; computed elsewhere.
  @Test
  void thePressureLimitGoesRoundAndScalesWithTheSquareOfTheSection() {
    PorePressureLimit limit = pores(1e-15, 2).halfSection(millimetres(2.5)).build();
    Amount<Temperature> peak = kelvin(650);
    assertThat(limit.criticalHeatingRate(kilojoulesPerMole(191), peak).in(KELVIN_PER_MINUTE))
        .isCloseTo(8.683321, within(5e-7));
    // S in kg/(m³ s), and back to the pressure.
    assertThat(450 * limit.allowedAt(peak).si()).isCloseTo(1.302642, within(5e-7));
    assertThat(limit.pressureAt(perSecond(1.302642 / 450), peak).si())
        .isCloseTo(200_000, within(0.05));
    assertThat(limit.pressureAt(limit.allowedAt(peak), peak).si()).isCloseTo(200_000, within(1e-6));
    double[] sections = {2.5, 5, 10};
    double[] expected = {514.5, 128.6, 32.2};
    for (int i = 0; i < sections.length; i++) {
      assertThat(
              pores(2.37e-15, 1.5)
                  .halfSection(millimetres(sections[i]))
                  .build()
                  .criticalHeatingRate(kilojoulesPerMole(191), peak)
                  .in(KELVIN_PER_HOUR))
          .isCloseTo(expected[i], within(0.05));
    }
  }

  // Kozeny and Carman; computed elsewhere, five digits.
  @Test
  void thePermeabilityOfEvenGrainsIsThatOfKozenyAndCarman() {
    assertThat(PorePressureLimit.kozenyCarman(micrometres(16), volumeFraction(0.4)).si())
        .isCloseTo(2.5284e-13, within(5e-18));
  }

  private static WallRateLimit wall(double millimetres) {
    return WallRateLimit.builder()
        .wall(millimetres(millimetres))
        .knownWall(millimetres(3))
        .knownRate(perHour(0.2))
        .source(INVENTED)
        .build();
  }

  @Test
  void theAllowedRateFallsWithTheSquareOfTheWallOrWithTheWall() {
    assertThat(wall(6).allowedAt(kelvin(600)).si() * 3600).isCloseTo(0.05, within(1e-15));
    assertThat(
            WallRateLimit.builder()
                    .from(wall(6))
                    .scaling(WallRateLimit.Scaling.LINEAR)
                    .build()
                    .allowedAt(kelvin(600))
                    .si()
                * 3600)
        .isCloseTo(0.1, within(1e-15));
  }

  /** Three times the known wall, and 2 bar: what each limit says of its range. */
  @Test
  void aLimitSaysWhereItIsNotKnownToHold() {
    assertThat(wall(9).range("x").severity()).isEqualTo(Severity.PASSED);
    assertThat(wall(1).range("x").severity()).isEqualTo(Severity.PASSED);
    assertThat(wall(10).range("x").severity()).isEqualTo(Severity.UNDETERMINED);
    assertThat(wall(10).range("x").message())
        .isEqualTo(
            "the allowed rate is carried over from a wall of 3.0 mm to one of 10.0 mm: too far, try"
                + " a part of your own");
    assertThat(wall(0.9).range("x").severity()).isEqualTo(Severity.UNDETERMINED);
    assertThat(wall(3).range("x").message())
        .isEqualTo("the allowed rate is carried over from a wall of 3.0 mm to one of 3.0 mm");
    assertThat(wall(3).range("x").limit().orElseThrow().si()).isEqualTo(3);
    assertThat(wall(0.9).range("x").limit().orElseThrow().si()).isEqualTo(1 / 3.0);
    for (double known : new double[] {1, 3}) {
      // metres, so that one is three times the other to the last bit
      assertThat(
              WallRateLimit.builder()
                  .from(wall(3))
                  .knownWall(metres(known))
                  .wall(metres(4 - known))
                  .build()
                  .range("x")
                  .severity())
          .isEqualTo(Severity.PASSED);
    }
    PorePressureLimit.Builder pores = pores(1e-15, 2).halfSection(millimetres(2));
    assertThat(pores.build().range("x").severity()).isEqualTo(Severity.PASSED);
    assertThat(pores.build().range("x").message())
        .isEqualTo(
            "parts are taken to stand 2.00 bar in their pores, published are up to 2.00 bar");
    assertThat(pores.highest(bars(2.1)).build().range("x").severity())
        .isEqualTo(Severity.UNDETERMINED);
    Profile hot = Profile.from(kelvin(300)).rampTo(kelvin(1200), kelvinPerMinute(100)).build();
    assertThat(BURN_OUT.check(FIRST_ORDER, hot, wall(3)).findings())
        .filteredOn(finding -> finding.code() == BurnOutFinding.KINETICS_RANGE)
        .extracting(finding -> finding.severity())
        .containsExactly(Severity.UNDETERMINED);
  }

  @Test
  void theSegmentThatIsTooFastAndTheSlowestAreNamed() {
    Profile profile =
        Profile.from(celsius(20))
            .rampTo(celsius(300), kelvinPerHour(100))
            .rampTo(celsius(340), kelvinPerHour(4))
            .rampTo(celsius(450), kelvinPerHour(120))
            .build();
    LossCheck thin = BURN_OUT.check(FIRST_ORDER, profile, wall(3));
    assertThat(thin.exceeding()).isEmpty();
    assertThat(thin.findings().get(0).severity()).isEqualTo(Severity.PASSED);
    assertThat(thin.findings().get(0).message()).endsWith(" in segment 3");
    assertThat(thin.slowest().orElseThrow().row().number()).isEqualTo(2);
    LossCheck thick = BURN_OUT.check(FIRST_ORDER, profile, wall(12));
    assertThat(thick.exceeding()).extracting(s -> s.row().number()).contains(2, 3);
    assertThat(thick.findings().get(0).severity()).isEqualTo(Severity.STOP);
    assertThat(thick.findings().get(0).code().code()).isEqualTo("loss-rate");
    assertThat(thick.findings().get(0).message())
        .contains("is allowed for a wall of 12.0 mm", "in segment 3: the part may blister");
    assertThat(thick.segments().stream().mapToDouble(s -> s.converted().si()).sum())
        .isCloseTo(1, within(1e-6));
    LossCheck pressure =
        BURN_OUT.check(FIRST_ORDER, profile, pores(1e-15, 2).halfSection(millimetres(2.5)).build());
    assertThat(pressure.findings())
        .extracting(f -> f.code().code())
        .containsExactly(
            "pore-pressure", "closed-pores", "powder-bed", "limit-range", "kinetics-range");
    assertThat(pressure.findings().get(0).message()).contains("the gas in the pores reaches 1.0");
  }

  /** Fifty hours at 100 °C take no part in the burn-out, and nothing else happens at all there. */
  @Test
  void aLongSegmentIsNotBlamedWhereNothingLeaves() {
    Profile dried =
        Profile.from(celsius(20))
            .rampTo(celsius(100), kelvinPerHour(100))
            .hold(hours(50))
            .rampTo(celsius(450), kelvinPerHour(60))
            .build();
    assertThat(BURN_OUT.check(FIRST_ORDER, dried, wall(3)).slowest().orElseThrow().row().number())
        .isEqualTo(3);
    Profile cold = Profile.from(celsius(20)).rampTo(celsius(100), kelvinPerHour(100)).build();
    assertThat(BURN_OUT.check(FIRST_ORDER, cold, wall(3)).slowest()).isEmpty();
  }

  @Test
  void aPartThatLagsIsBlamedOnTheSegmentsOfTheProgramme() {
    Profile profile =
        Profile.from(celsius(20)).rampTo(celsius(400), kelvinPerHour(60)).hold(hours(3)).build();
    // Felt: the same ramp 30 K behind, caught up in the hold.
    TemperatureHistory felt =
        TemperatureHistory.of(
            List.of(
                TemperaturePoint.of(hours(0), celsius(20)),
                TemperaturePoint.of(hours(0.5), celsius(20)),
                TemperaturePoint.of(hours(380 / 60.0), celsius(370)),
                TemperaturePoint.of(hours(7), celsius(400)),
                TemperaturePoint.of(hours(380 / 60.0 + 3), celsius(400))));
    LossCheck programme = BURN_OUT.check(FIRST_ORDER, profile, wall(3));
    LossCheck core = BURN_OUT.check(FIRST_ORDER, profile, felt, wall(3));
    assertThat(core.segments().get(1).converted().si())
        .isGreaterThan(5 * programme.segments().get(1).converted().si());
    assertThatThrownBy(
            () -> BURN_OUT.check(FIRST_ORDER, profile, ramp(300, 600, kelvinPerHour(300)), wall(3)))
        .hasMessageContaining("accepted is from zero to the end of the programme at");
  }

  @Test
  void badInputIsRefusedWithAllProblems() {
    assertThatThrownBy(() -> ReactionOrder.of(perSecond(0), ratio(-1)))
        .hasMessageContaining("pre-exponential factor is 0")
        .hasMessageContaining("order is -1; accepted is zero or more");
    assertThatThrownBy(
            () ->
                kinetics(
                    DecompositionStep.of(
                        kilojoulesPerMole(150),
                        ReactionOrder.first(perSecond(1e9)),
                        massFraction(0.5))))
        .hasMessageContaining("the mass shares of 1 steps add up to 0.5; accepted are");
    assertThatThrownBy(
            () ->
                MasterDecompositionCurve.of(
                    List.of(
                        CurvePoint.of(ratio(-20), ratio(0.1)),
                        CurvePoint.of(ratio(-21), ratio(0.9)))))
        .hasMessageContaining("it begins at a conversion of 0.1; accepted is 0")
        .hasMessageContaining("it ends at a conversion of 0.9; accepted is 1")
        .hasMessageContaining("row 2 has ln J -21");
    assertThatThrownBy(
            () ->
                DecompositionStep.of(
                    kilojoulesPerMole(0), ReactionOrder.first(perSecond(1)), massFraction(0)))
        .hasMessage(
            "decomposition step: activation energy is 0 kJ/mol; accepted is more than zero; and"
                + " mass share is 0 kg/kg; accepted is above 0 and up to 1");
    assertThatThrownBy(
            () -> DecompositionStep.ofPeak(kilojoulesPerMole(-1), kelvin(600), kelvinPerHour(0)))
        .hasMessage(
            "decomposition step: activation energy is -1 kJ/mol; accepted is more than zero; and"
                + " heating rate is 0 K/h; accepted is more than zero");
    assertThatThrownBy(() -> LossPeak.of(kelvinPerHour(0), kelvin(0)))
        .hasMessage(
            "peak: heating rate is 0 K/h; accepted is more than zero; and temperature is 0 K;"
                + " accepted is more than zero");
    assertThatThrownBy(() -> wall(0))
        .hasMessage("wall rate limit: wall is 0 mm; accepted is more than zero");
    assertThatThrownBy(() -> pores(0, 1).halfSection(millimetres(2)).build())
        .hasMessageContaining("permeability is 0 m²; accepted is more than zero")
        .hasMessageContaining("the highest pressure is 1 bar around which there is 1 bar");
    assertThatThrownBy(() -> PorePressureLimit.kozenyCarman(micrometres(0), volumeFraction(1)))
        .hasMessageContaining("grain is 0 µm")
        .hasMessageContaining("porosity is 1");
    assertThatThrownBy(() -> PorePressureLimit.kozenyCarman(micrometres(9), volumeFraction(0)))
        .hasMessage("permeability: porosity is 0 m³/m³; accepted is above 0 and below 1");
    for (int conversion : new int[] {0, 1}) {
      assertThatThrownBy(
              () ->
                  BURN_OUT.reaching(
                      FIRST_ORDER, ramp(300, 400, kelvinPerHour(60)), massFraction(conversion)))
          .hasMessage(
              "burn-out: conversion is " + conversion + " kg/kg; accepted is above 0 and below 1");
    }
    for (int rows = 0; rows < 2; rows++) {
      List<CurvePoint> few = List.of(CurvePoint.of(ratio(-20), ratio(0))).subList(0, rows);
      assertThatThrownBy(() -> MasterDecompositionCurve.of(few))
          .hasMessage(
              "master decomposition curve: rows are " + few.size() + "; accepted is 2 or more");
    }
    assertThatThrownBy(() -> BURN_OUT.forecast(List.of(), ramp(300, 400, kelvinPerHour(60))))
        .hasMessageContaining("candidates are none");
  }

  @Test
  void valuesSurviveSerialization() throws Exception {
    BurnOutCurve curve = BURN_OUT.along(FIRST_ORDER, ramp(500, 520, kelvinPerHour(60)));
    assertThat(thawed(curve)).isEqualTo(curve);
    PorePressureLimit limit = pores(1e-15, 2).halfSection(millimetres(2)).build();
    assertThat(thawed(limit)).isEqualTo(limit);
    assertThat(limit.ambient()).isEqualTo(pascals(100_000));
    assertThat(thawed(wall(3))).isEqualTo(wall(3));
  }
}
