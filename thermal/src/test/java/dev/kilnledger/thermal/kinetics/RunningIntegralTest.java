package dev.kilnledger.thermal.kinetics;

import static dev.kilnledger.units.Amounts.kelvin;
import static dev.kilnledger.units.Amounts.kilojoulesPerMole;
import static dev.kilnledger.units.Amounts.seconds;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Expected temperatures are plain arithmetic on the points given. */
class RunningIntegralTest {
  /** E / R in K. */
  private static final double ACTIVATION = 20_000;

  private static final ArrheniusIntegral INTEGRAL =
      new ArrheniusIntegral(kilojoulesPerMole(ACTIVATION * ArrheniusIntegral.GAS_CONSTANT / 1000));

  /** Starts at 100 s: 100 K up in 1000 s, 3000 s at 900 K, 200 K down in 1000 s. */
  private static final TemperatureHistory HISTORY =
      TemperatureHistory.of(
          List.of(point(100, 800), point(1100, 900), point(4100, 900), point(5100, 700)));

  private static final RunningIntegral TIME = INTEGRAL.reducedTimeAlong(HISTORY);

  private static TemperaturePoint point(double time, double kelvin) {
    return TemperaturePoint.of(seconds(time), kelvin(kelvin));
  }

  @ParameterizedTest
  @CsvSource({
    "100, 800",
    "600, 850",
    "1100, 900",
    "2600, 900",
    "4100, 900",
    "4350, 850",
    "5100, 700"
  })
  void tellsTheTemperatureOnEveryLine(double time, double kelvin) {
    assertThat(TIME.kelvinAt(time)).isCloseTo(kelvin, within(1e-9));
    assertThat(HISTORY.temperatureAt(seconds(time)).si()).isCloseTo(kelvin, within(1e-9));
  }

  /** Against Simpson's rule over 20,000 steps, whose error here is below 1e-13 of the value. */
  @ParameterizedTest
  @ValueSource(doubles = {350, 1100, 2600, 4100, 4600, 5100})
  void addsUpTheRateToAnyTime(double time) {
    int steps = 20_000;
    double sum = 0;
    double step = (time - 100) / steps;
    for (int i = 0; i <= steps; i++) {
      double rate = Math.exp(-ACTIVATION / plainly(100 + i * step));
      sum += rate * (i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2);
    }
    // Where a corner falls within a step, Simpson's rule errs by the square of the step: 1e-7.
    assertThat(Math.exp(TIME.logAt(time)) / (sum * step / 3)).isCloseTo(1, within(1e-6));
  }

  private static double plainly(double time) {
    if (time <= 1100) {
      return 800 + (time - 100) / 10;
    }
    return time <= 4100 ? 900 : 900 - (time - 4100) / 5;
  }

  @Test
  void beginsAndEndsWithItsHistory() {
    assertThat(TIME.start()).isEqualTo(100);
    assertThat(TIME.end()).isEqualTo(5100);
    assertThat(TIME.logAt(100)).isEqualTo(Double.NEGATIVE_INFINITY);
    assertThat(TIME.logAt(5100)).isEqualTo(TIME.logAtEnd());
    assertThatThrownBy(() -> TIME.logAt(99))
        .hasMessage(
            "running integral: time is 99.0 s; accepted is from 100.0 s to 5100.0 s, where the"
                + " history is");
    assertThatThrownBy(() -> TIME.kelvinAt(5101)).hasMessageContaining("time is 5101.0 s;");
    assertThatThrownBy(() -> TIME.logAt(Double.NaN)).hasMessageContaining("time is NaN s;");
  }

  /** 100 K by 1 K, 3000 s by 300 s, 200 K by 1 K. */
  @Test
  void isSampledAtEveryCornerByKelvinAndByFiveMinutes() {
    double[] samples = TIME.samples(100, 5100);
    assertThat(samples).hasSize(1 + 100 + 10 + 200).contains(1100, 4100).doesNotHaveDuplicates();
    assertThat(samples[0]).isEqualTo(100);
    assertThat(samples[310]).isEqualTo(5100);
    for (int i = 1; i < samples.length; i++) {
      assertThat(samples[i] - samples[i - 1]).isBetween(4.999999, 300.000001);
    }
    assertThat(TIME.samples(1100, 4100)).hasSize(11).startsWith(1100, 1400, 1700).endsWith(4100);
    assertThat(TIME.samples(600, 640)).hasSize(5).startsWith(600, 610).endsWith(640);
    RunningIntegral steep =
        INTEGRAL.workAlong(TemperatureHistory.of(List.of(point(0, 300), point(10, 1800))));
    assertThat(steep.samples(0, 10)).as("a thousand at most to a line").hasSize(1001);
  }

  /**
   * The mean over so short a line is its middle, corrected by the second derivative: for f =
   * exp(-x), x = E / (R T), f'' / f = (x^2 - 2 x) / T^2, and for f / T (x^2 - 4 x + 2) / T^2. The
   * closed form would lose ten digits by cancellation.
   */
  @Test
  void keepsItsDigitsOnTheShortestLines() {
    double width = 1e-4;
    double middle = 1000 + width / 2;
    double x = ACTIVATION / middle;
    double square = width * width / 24 / (middle * middle);
    assertThat(INTEGRAL.logMean(1000, 1000 + width) / (-x + (x * x - 2 * x) * square))
        .isCloseTo(1, within(1e-14));
    assertThat(
            INTEGRAL.logMeanPerKelvin(1000, 1000 + width)
                / (-x - Math.log(middle) + (x * x - 4 * x + 2) * square))
        .isCloseTo(1, within(1e-14));
    assertThat(INTEGRAL.exponent(1000)).isCloseTo(20, within(1e-13));
  }

  @Test
  void sumsLogarithmsOfAnySize() {
    assertThat(RunningIntegral.logSum(Math.log(2), Math.log(3)))
        .isCloseTo(Math.log(5), within(1e-15));
    assertThat(RunningIntegral.logSum(-1e6, -1e6)).isCloseTo(-1e6 + Math.log(2), within(1e-9));
    double nothing = Double.NEGATIVE_INFINITY;
    assertThat(RunningIntegral.logSum(nothing, 4)).isEqualTo(4);
    assertThat(RunningIntegral.logSum(nothing, nothing)).isEqualTo(nothing);
  }

  /** By definition: 3600 in an hour are one in a second, and 1/s is 360,000 % in an hour. */
  @Test
  void tellsFrequenciesForPeople() {
    assertThat(Frequencies.perHour(3600)).isEqualTo(Frequencies.perSecond(1));
    assertThat(Frequencies.perSecond(2).si()).isEqualTo(2);
    assertThat(
            Arrays.stream(new double[] {0.125, 0.0999, 0.05, 12, -0.0999})
                .mapToObj(share -> Frequencies.percentPerHour(Frequencies.perHour(share))))
        .containsExactly("12.5 %/h", "9.99 %/h", "5.00 %/h", "1200.0 %/h", "-9.99 %/h");
  }
}
