package dev.kilnledger.thermal.burnout;

import static dev.kilnledger.units.Amounts.kelvin;
import static dev.kilnledger.units.Amounts.kelvinDifference;
import static dev.kilnledger.units.Amounts.milligrams;
import static dev.kilnledger.units.Amounts.seconds;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Smoothing against the weights that Savitzky and Golay, Anal. Chem. 36 (1964) 1627, publish for
 * parabolas through evenly spaced readings, and the heating rate against the slope of least squares
 * over the readings that count, {@code cov / var}.
 */
class SmoothedLossTest {
  /** Readings every 10 s of 10 mg of which 8 mg are lost. */
  private static Thermogravimetry run(
      int readings, double smoothing, IntToDoubleFunction kelvin, IntToDoubleFunction conversion) {
    List<MassReading> all = new ArrayList<>();
    for (int i = 0; i < readings; i++) {
      all.add(
          MassReading.of(
              seconds(10 * i),
              kelvin(kelvin.applyAsDouble(i)),
              milligrams(10 - 8 * conversion.applyAsDouble(i))));
    }
    return Thermogravimetry.builder()
        .name("by hand")
        .readings(all)
        .smoothing(kelvinDifference(smoothing))
        .build();
  }

  private static double slope(List<double[]> points) {
    double meanX = points.stream().mapToDouble(point -> point[0]).average().orElseThrow();
    double meanY = points.stream().mapToDouble(point -> point[1]).average().orElseThrow();
    double covariance = 0;
    double variance = 0;
    for (double[] point : points) {
      covariance += (point[0] - meanX) * (point[1] - meanY);
      variance += (point[0] - meanX) * (point[0] - meanX);
    }
    return covariance / variance;
  }

  /** A loss that goes on unevenly; 0 at first and 1 at last. */
  private static double uneven(int i) {
    double share = i / 40.0;
    return share * share * (3 - 2 * share) + 0.004 * Math.sin(2.3 * i) * share * (1 - share);
  }

  /**
   * Readings 1 K apart; a window of 2.5 K either way holds five, one of 3.5 K seven, and five are
   * taken where the window holds fewer. Tables I and III: values (-3, 12, 17, 12, -3) / 35 and (-2,
   * 3, 6, 7, 6, 3, -2) / 21; slopes (-2 ... 2) / 10 and (-3 ... 3) / 28 a spacing.
   */
  @ParameterizedTest
  @CsvSource({"2.5, 2", "3.5, 3", "0.1, 2"})
  void smoothesByThePublishedWeights(double smoothing, int aside) {
    double[] values = aside == 2 ? new double[] {17, 12, -3} : new double[] {7, 6, 3, -2};
    SmoothedLoss loss =
        new SmoothedLoss(run(41, smoothing, i -> 600 + i, SmoothedLossTest::uneven));
    assertThat(loss.kelvinPerSecond()).isCloseTo(0.1, within(1e-12));
    for (int at = 8; at <= 32; at++) {
      double value = values[0] * uneven(at);
      double slope = 0;
      double weights = values[0];
      double squares = 0;
      for (int k = 1; k <= aside; k++) {
        value += values[k] * (uneven(at - k) + uneven(at + k));
        slope += k * (uneven(at + k) - uneven(at - k));
        weights += 2 * values[k];
        squares += 2 * k * k;
      }
      double smoothed = value / weights;
      // Cramer's rule on sums of a handful of numbers below 1: some 1e-13 of a kelvin and a rate.
      assertThat(loss.kelvinAt(smoothed)).isCloseTo(600 + at, within(1e-9));
      assertThat(loss.rateAt(smoothed)).isCloseTo(slope / squares / 10, within(1e-12));
    }
  }

  /**
   * The loss 3 s2 - 2 s3 is fastest half way, between two of a hundred readings from 500 to 700 K;
   * its rate is a parabola, and smoothed one that is lower by the same everywhere.
   */
  @Test
  void findsTheTopBetweenTwoReadings() {
    Thermogravimetry run =
        run(
            100,
            10,
            i -> 500 + 200 * i / 99.0,
            i -> {
              double share = i / 99.0;
              return share * share * (3 - 2 * share);
            });
    assertThat(run.peak().temperature().si()).isCloseTo(600, within(1e-6));
  }

  /** A loss that speeds up to the end, as s3, has no top before; readings are 2 K apart. */
  @Test
  void takesTheEndForTheTopOfALossThatSpeedsUpToIt() {
    Thermogravimetry run = run(101, 10, i -> 500 + 2 * i, i -> Math.pow(i / 100.0, 3));
    assertThat(run.peak().temperature().si()).isCloseTo(700, within(2.0));
  }

  /** The smoothed loss of a run that ends with a fall of its half stays below 1. */
  @Test
  void endsWithTheLastReadingWhereTheSmoothedLossStaysBelow() {
    SmoothedLoss loss = new SmoothedLoss(run(41, 4, i -> 600 + i, i -> i == 40 ? 1 : 0.5 * i / 40));
    assertThat(loss.kelvinAt(0.999)).isCloseTo(640, within(1e-9));
  }

  /**
   * Dried for 200 s, then heated faster and faster while from a fiftieth to 49 fiftieths are lost,
   * then kept: only the heating in between counts.
   */
  @Test
  void heatsAsFastAsWhereTheMassIsLost() {
    IntToDoubleFunction kelvin =
        i -> 500 + (i < 20 ? 0 : i > 60 ? 40 + 16 : (i - 20) + 0.01 * (i - 20) * (i - 20));
    IntToDoubleFunction conversion =
        i -> i < 20 ? 0.0005 * i : i > 60 ? 0.99 + 0.0005 * (i - 60) : 0.01 + 0.0245 * (i - 20);
    List<double[]> counted = new ArrayList<>();
    for (int i = 0; i <= 80; i++) {
      if (conversion.applyAsDouble(i) >= 0.02 && conversion.applyAsDouble(i) <= 0.98) {
        counted.add(new double[] {10 * i, kelvin.applyAsDouble(i)});
      }
    }
    assertThat(counted).hasSize(39);
    assertThat(new SmoothedLoss(run(81, 4, kelvin, conversion)).kelvinPerSecond())
        .isCloseTo(slope(counted), within(1e-12));
  }

  /** Lost over three readings those tell the heating, over fewer all readings do. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3})
  void takesAllReadingsWhereTooFewSeeTheLoss(int seeing) {
    IntToDoubleFunction kelvin = i -> 500 + i + 0.01 * i * i;
    IntToDoubleFunction conversion =
        i -> i < 20 ? 0 : i >= 20 + seeing ? 1 : (i - 19.0) / (seeing + 1);
    List<double[]> counted = new ArrayList<>();
    for (int i = 0; i <= 40; i++) {
      if (seeing < 3 || (i >= 20 && i < 23)) {
        counted.add(new double[] {10 * i, kelvin.applyAsDouble(i)});
      }
    }
    assertThat(new SmoothedLoss(run(41, 4, kelvin, conversion)).kelvinPerSecond())
        .isCloseTo(slope(counted), within(1e-12));
  }

  /** Hotter at the end than at the start, but cooling or kept while the mass is lost. */
  @ParameterizedTest
  @ValueSource(doubles = {0, -1})
  void refusesARunThatDoesNotHeatWhereItLoses(double rise) {
    Thermogravimetry run =
        run(
            41,
            4,
            i -> i < 10 ? 500 + 10 * i : i <= 30 ? 600 + rise * (i - 10) : 600 + 10 * (i - 30),
            i -> Math.max(0, Math.min(1, (i - 10) / 20.0)));
    assertThatThrownBy(run::heatingRate)
        .hasMessageStartingWith("thermogravimetry: the temperature rises by ")
        .hasMessageEndingWith(" K/s where the mass is lost; accepted is a run that heats");
  }
}
