package dev.kilnledger.thermal.kinetics;

import static dev.kilnledger.thermal.Workbench.thawed;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvin;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kelvinPerMinute;
import static dev.kilnledger.units.Amounts.kilojoulesPerMole;
import static dev.kilnledger.units.Amounts.minutes;
import static dev.kilnledger.units.Amounts.seconds;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.kilnledger.thermal.profile.Profile;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ArrheniusIntegralTest {
  private static final double R = ArrheniusIntegral.GAS_CONSTANT;
  private static final TemperatureHistory SINTERING =
      TemperatureHistory.of(
          Profile.from(celsius(20))
              .rampTo(celsius(600), kelvinPerHour(150))
              .hold(hours(1))
              .rampTo(celsius(1300), kelvinPerHour(300))
              .hold(hours(2))
              .coolTo(celsius(100), kelvinPerHour(200))
              .build());

  private static double theta(double kilojoules, TemperatureHistory history) {
    return Math.exp(logTheta(kilojoules, history));
  }

  private static double logTheta(double kilojoules, TemperatureHistory history) {
    return new ArrheniusIntegral(kilojoulesPerMole(kilojoules)).workAlong(history).logAtEnd();
  }

  private static double logJ(double kilojoules, TemperatureHistory history) {
    return new ArrheniusIntegral(kilojoulesPerMole(kilojoules))
        .reducedTimeAlong(history)
        .logAtEnd();
  }

  private static TemperatureHistory points(double... timesAndKelvins) {
    List<TemperaturePoint> points = new ArrayList<>();
    for (int i = 0; i < timesAndKelvins.length; i += 2) {
      points.add(TemperaturePoint.of(seconds(timesAndKelvins[i]), kelvin(timesAndKelvins[i + 1])));
    }
    return TemperatureHistory.of(points);
  }

  // E1(x): Abramowitz and Stegun, table 5.1 (0.5, 1, 2) and 5.2; 50 computed with SciPy exp1.
  @ParameterizedTest
  @CsvSource({
    "0.5, 0.559773594776160",
    "1, 0.219383934395520",
    "2, 0.0489005107080611",
    "10, 4.15696892968532e-6",
    "50, 3.78326402955046e-24"
  })
  void theExponentialIntegralAgreesWithTables(double x, double expected) {
    double value = new ScaledExponentialIntegral(x).value * Math.exp(-x);
    assertThat(value / expected).isCloseTo(1, within(3e-14)); // the digits tabulated
    assertThat(new ScaledExponentialIntegral(x).gap)
        .isCloseTo(1 - x * new ScaledExponentialIntegral(x).value, within(1e-14));
  }

  // p(x) = exp(-x)/x - E1(x), so that J r = (E/R) p(x): computed with mpmath to 30 digits.
  @ParameterizedTest
  @CsvSource({
    "5, 1.9929380854177e-4",
    "10, 3.8302404656316e-7",
    "20, 4.7024282154291e-12",
    "30, 9.7655645591246e-17",
    "40, 2.531530237124e-21",
    "60, 2.3550894768163e-30"
  })
  void theTemperatureIntegralAgreesWithExactValues(double x, double expected) {
    double activation = 20_000; // E / R in K
    double top = activation / x;
    double start = top / 100; // exp(-100 x) is nothing beside exp(-x)
    ArrheniusIntegral integral = new ArrheniusIntegral(kilojoulesPerMole(activation * R / 1000));
    double p = Math.exp(integral.logMean(start, top)) * (top - start) / activation;
    assertThat(p / expected).isCloseTo(1, within(2e-13)); // the digits given
  }

  // Computed with mpmath; agrees with adaptive quadrature to 1e-15.
  @Test
  void aRampTo700KelvinAt150KilojoulesPerMoleIsKnownToFourteenDigits() {
    ArrheniusIntegral integral = new ArrheniusIntegral(kilojoulesPerMole(150));
    assertThat(Math.exp(integral.logMean(1, 700)) * 699 / 1.6203942467302e-10)
        .isCloseTo(1, within(1e-13));
  }

  // Computed with mpmath; seven digits are given.
  @Test
  void theWorkOfSinteringOfRampAndHoldIsAsComputedElsewhere() {
    TemperatureHistory ramp =
        TemperatureHistory.of(
            Profile.from(kelvin(300)).rampTo(kelvin(1123), kelvinPerHour(150)).build());
    TemperatureHistory hold =
        TemperatureHistory.of(Profile.from(kelvin(1123)).hold(hours(4)).build());
    TemperatureHistory both =
        TemperatureHistory.of(
            Profile.from(kelvin(300))
                .rampTo(kelvin(1123), kelvinPerHour(150))
                .hold(hours(4))
                .build());
    assertThat(theta(210, ramp)).isCloseTo(1.747442e-10, within(5e-17));
    assertThat(theta(210, hold)).isCloseTo(2.189487e-9, within(5e-16));
    assertThat(logTheta(210, both) / Math.log(10)).isCloseTo(-8.626310, within(5e-7));
  }

  // Computed with mpmath to fifteen digits, Q = 300 kJ/mol.
  @Test
  void aSlowRampToAThousandDegreesGivesNextToNoWork() {
    TemperatureHistory ramp =
        TemperatureHistory.of(
            Profile.from(celsius(20)).rampTo(celsius(1000), kelvinPerMinute(5)).build());
    // The exponent of 28 carries the rounding of T and R into Theta 28-fold.
    assertThat(theta(300, ramp) / 2.01402902964055e-13).isCloseTo(1, within(1e-13));
  }

  @Test
  void aHistoryAddsUpOverItsParts() {
    ArrheniusIntegral integral = new ArrheniusIntegral(kilojoulesPerMole(300));
    RunningIntegral whole = integral.workAlong(points(0, 300, 3600, 1500, 9000, 1400));
    RunningIntegral cut = integral.workAlong(points(0, 300, 1800, 900, 3600, 1500, 9000, 1400));
    assertThat(cut.logAtEnd()).isCloseTo(whole.logAtEnd(), within(1e-13));
    double first = theta(300, points(0, 300, 3600, 1500));
    double second = theta(300, points(0, 1500, 5400, 1400));
    assertThat(whole.logAtEnd()).isCloseTo(Math.log(first + second), within(1e-13));
    assertThat(whole.logAt(1800))
        .isCloseTo(logTheta(300, points(0, 300, 1800, 900)), within(1e-13));
    assertThat(whole.logAt(3600)).isCloseTo(Math.log(first), within(1e-13));
    assertThat(whole.logAt(0)).isEqualTo(Double.NEGATIVE_INFINITY);
  }

  @Test
  void tenThousandShortLinesAreOneLongOne() {
    double[] fine = new double[20_002];
    for (int i = 0; i <= 10_000; i++) {
      fine[2 * i] = i;
      fine[2 * i + 1] = 300 + 0.1 * i;
    }
    TemperatureHistory one = points(0, 300, 10_000, 1300);
    // Rounding of ten thousand temperatures near 1e-16, times an exponent of 30, adds up at random.
    assertThat(logTheta(300, points(fine))).isCloseTo(logTheta(300, one), within(1e-12));
    assertThat(logJ(300, points(fine))).isCloseTo(logJ(300, one), within(1e-12));
  }

  @Test
  void runBackwardsItIsTheSame() {
    double end = SINTERING.end().time().si();
    List<TemperaturePoint> reversed = new ArrayList<>();
    for (TemperaturePoint point : SINTERING.points()) {
      reversed.add(TemperaturePoint.of(seconds(end - point.time().si()), point.temperature()));
    }
    Collections.reverse(reversed);
    assertThat(logTheta(250, TemperatureHistory.of(reversed)))
        .isCloseTo(logTheta(250, SINTERING), within(1e-13));
  }

  @Test
  void itFallsWithTheEnergyAndRisesWithTemperatureAndTime() {
    Random random = new Random(7);
    for (int i = 0; i < 200; i++) {
      double from = 300 + 1000 * random.nextDouble();
      double to = from + 300 * random.nextDouble() - 150;
      double energy = 50 + 600 * random.nextDouble();
      double theta = logTheta(energy, points(0, from, 100, to));
      assertThat(logTheta(energy * 1.01, points(0, from, 100, to))).isLessThan(theta);
      assertThat(logTheta(energy, points(0, from + 1, 100, to + 1))).isGreaterThan(theta);
      assertThat(logTheta(energy, points(0, from, 101, to))).isGreaterThan(theta);
    }
  }

  // Independent: Gauss-Legendre quadrature of Hipparchus, line by line.
  @ParameterizedTest
  @CsvSource({"3", "30", "150", "300", "623"})
  void quadratureGivesTheSame(double kilojoules) {
    double activation = kilojoules * 1000 / R;
    double time = 0;
    double work = 0;
    List<TemperaturePoint> all = SINTERING.points();
    for (int i = 1; i < all.size(); i++) {
      double t0 = all.get(i - 1).time().si();
      double t1 = all.get(i).time().si();
      double from = all.get(i - 1).temperature().si();
      double slope = (all.get(i).temperature().si() - from) / (t1 - t0);
      IterativeLegendreGaussIntegrator gauss =
          new IterativeLegendreGaussIntegrator(16, 1e-13, 1e-300);
      time +=
          gauss.integrate(
              1_000_000, t -> Math.exp(-activation / (from + slope * (t - t0))), t0, t1);
      work +=
          gauss.integrate(
              1_000_000,
              t -> {
                double kelvin = from + slope * (t - t0);
                return Math.exp(-activation / kelvin) / kelvin;
              },
              t0,
              t1);
    }
    assertThat(Math.exp(logJ(kilojoules, SINTERING)) / time).isCloseTo(1, within(1e-12));
    assertThat(theta(kilojoules, SINTERING) / work).isCloseTo(1, within(1e-12));
  }

  /**
   * A line of 1 % of its temperature along which exp(-x) changes tenfold, x being 240: the same
   * Gauss-Legendre quadrature. The rounding of x carries into exp(-x) 240-fold: 1e-13.
   */
  @Test
  void narrowLinesOfLargeEnergiesAreAsExact() {
    double activation = 240 * 300;
    ArrheniusIntegral integral = new ArrheniusIntegral(kilojoulesPerMole(activation * R / 1000));
    IterativeLegendreGaussIntegrator gauss =
        new IterativeLegendreGaussIntegrator(16, 1e-13, 1e-300);
    double mean = gauss.integrate(1_000_000, t -> Math.exp(240 - activation / t) / 2.9, 300, 302.9);
    double perKelvin =
        gauss.integrate(1_000_000, t -> Math.exp(240 - activation / t) / t / 2.9, 300, 302.9);
    assertThat(Math.exp(integral.logMean(300, 302.9) + 240) / mean).isCloseTo(1, within(1e-12));
    assertThat(Math.exp(integral.logMeanPerKelvin(300, 302.9) + 240) / perKelvin)
        .isCloseTo(1, within(1e-12));
  }

  @Test
  void nothingUnderflows() {
    // At 25 K exp(-x) is 1e-1253; a hold is t exp(-x) and its logarithm exact.
    double x = 600_000 / R / 25;
    assertThat(logJ(600, points(0, 25, 100, 25))).isCloseTo(Math.log(100) - x, within(1e-9));
    assertThat(logJ(600, points(0, 25, 100, 26))).isBetween(Math.log(100) - x, 0.0);
    assertThat(
            new ArrheniusIntegral(kilojoulesPerMole(600)).reducedTime(points(0, 25, 100, 26)).si())
        .isZero();
  }

  @Test
  void aProfileIsAHistory() throws Exception {
    assertThat(SINTERING.points()).hasSize(6);
    assertThat(SINTERING.hottest().temperature()).isEqualTo(celsius(1300));
    assertThat(SINTERING.temperatureAt(hours(2)).si()).isCloseTo(593.15, within(1e-9));
    assertThat(SINTERING.duration().si())
        .isCloseTo((580 / 150.0 + 1 + 700 / 300.0 + 2 + 6) * 3600, withinPercentage(1e-12));
    assertThat(thawed(SINTERING)).isEqualTo(SINTERING);
  }

  @Test
  void badHistoriesAreRefused() {
    assertThatThrownBy(() -> points(0, 300))
        .hasMessage("temperature history: points are 1; accepted is 2 or more");
    assertThatThrownBy(() -> points(0, 300, 5, 400, 5, 500))
        .hasMessageContaining("point 3 is at 5 s after one at 5 s; accepted are later");
    assertThatThrownBy(() -> TemperaturePoint.of(minutes(1), kelvin(0)))
        .hasMessage("point at 1 min: temperature is 0 K; accepted is above absolute zero");
    assertThatThrownBy(() -> new ArrheniusIntegral(kilojoulesPerMole(0)))
        .hasMessageContaining("activation energy is 0 kJ/mol; accepted is more than zero");
    assertThatThrownBy(() -> SINTERING.temperatureAt(hours(99)))
        .hasMessageContaining("accepted is from 0 s to");
    RunningIntegral work = new ArrheniusIntegral(kilojoulesPerMole(1)).workAlong(SINTERING);
    assertThatThrownBy(() -> work.logAt(-1)).hasMessageContaining("time is -1.0 s; accepted is");
  }
}
