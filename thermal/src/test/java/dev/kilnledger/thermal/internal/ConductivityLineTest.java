package dev.kilnledger.thermal.internal;

import static dev.kilnledger.thermal.Workbench.kiln;
import static dev.kilnledger.thermal.Workbench.layer;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.wattsPerMetreKelvinSquared;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.equipment.WallLayer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A layer of 0.2 W/(m K) at 0 °C and 0.3 at the 1000 °C of its kiln, and one that falls. */
class ConductivityLineTest {
  private static final double ZERO = 273.15;
  private final ConductivityLine increasing = line(0.25, 1e-4);
  private final ConductivityLine decreasing = line(0.3, -2e-4);

  /** A line through a conductivity at 500 °C. */
  private static ConductivityLine line(double middle, double slope) {
    WallLayer layer =
        WallLayer.builder()
            .from(layer("invented", 100, middle, 800))
            .conductivityStatedAt(celsius(500))
            .conductivitySlope(wattsPerMetreKelvinSquared(slope))
            .build();
    return new ConductivityLine(layer, kiln(1000).addWall(layer).build());
  }

  @ParameterizedTest
  @CsvSource({
    "-50, 0.2, 0.4",
    "0, 0.2, 0.4",
    "100, 0.21, 0.38",
    "900, 0.29, 0.22",
    "1000, 0.3, 0.2",
    "1300, 0.3, 0.2"
  })
  void isStraightFromFreezingToThePeakAndConstantBeyond(
      double celsius, double rising, double falling) {
    assertThat(increasing.at(ZERO + celsius)).isCloseTo(rising, within(1e-12));
    assertThat(decreasing.at(ZERO + celsius)).isCloseTo(falling, within(1e-12));
  }

  @Test
  void isLeastAndGreatestAtItsEnds() {
    assertThat(increasing.least()).isCloseTo(0.2, within(1e-12));
    assertThat(increasing.greatest()).isCloseTo(0.3, within(1e-12));
    assertThat(decreasing.least()).isCloseTo(0.2, within(1e-12));
    assertThat(decreasing.greatest()).isCloseTo(0.4, within(1e-12));
  }

  /** Areas of trapezia, by hand: 500 K at a mean of 0.225, 1000 K at 0.25, 200 K more at 0.3. */
  @ParameterizedTest
  @CsvSource({"-50, -10, -20", "0, 0, 0", "500, 112.5, 175", "1000, 250, 300", "1200, 310, 340"})
  void addsUpTheConductivityAndFindsTheTemperatureBack(
      double celsius, double rising, double falling) {
    assertThat(increasing.integral(ZERO + celsius)).isCloseTo(rising, within(1e-9));
    assertThat(decreasing.integral(ZERO + celsius)).isCloseTo(falling, within(1e-9));
    assertThat(increasing.temperatureOf(rising)).isCloseTo(ZERO + celsius, within(1e-9));
    assertThat(decreasing.temperatureOf(falling)).isCloseTo(ZERO + celsius, within(1e-9));
  }

  /**
   * By hand, with t in °C: the integral of t (0.2 + 1e-4 t) from 0 to 1000 is 1e5 + 1e5 / 3, over
   * 250; from 800 to 1200 it is 36000 + 48800 / 3 + 66000, over 118; from -100 to 100 it is -1000 +
   * 1000 + 100 / 3, over 40.5. Where nothing changes it is the middle.
   */
  @Test
  void hasItsMiddleNearerToTheFaceThatConductsBetter() {
    assertThat(meanCelsius(0, 1000)).isCloseTo(4e5 / 3 / 250, within(1e-9));
    assertThat(meanCelsius(800, 1200)).isCloseTo((102_000 + 48_800 / 3.0) / 118, within(1e-9));
    assertThat(meanCelsius(-100, 100)).isCloseTo(100 / 3.0 / 40.5, within(1e-9));
    assertThat(meanCelsius(1000, 1200)).isCloseTo(1100, within(1e-9));
    assertThat(meanCelsius(-40, 0)).isCloseTo(-20, within(1e-9));
    assertThat(meanCelsius(700, 700)).isCloseTo(700, within(1e-9));
  }

  /** Simpson's rule is exact for the square that t times the line is, piece by piece. */
  @ParameterizedTest
  @ValueSource(doubles = {-200, 20, 640, 1100})
  void isTheSameFromEitherFaceAndTheMeanOfItsPieces(double other) {
    double from = ZERO - 100;
    double to = ZERO + other;
    double moment = 0;
    double whole = 0;
    double[] corners = {from, ZERO, ZERO + 1000, to};
    for (int i = 1; i < corners.length; i++) {
      double a = Math.min(Math.max(corners[i - 1], Math.min(from, to)), Math.max(from, to));
      double b = Math.min(Math.max(corners[i], Math.min(from, to)), Math.max(from, to));
      double middle = (a + b) / 2;
      moment +=
          (b - a)
              / 6
              * (a * decreasing.at(a) + 4 * middle * decreasing.at(middle) + b * decreasing.at(b));
      whole += (b - a) * decreasing.at(middle);
    }
    assertThat(decreasing.meanTemperature(from, to)).isCloseTo(moment / whole, within(1e-9));
    assertThat(decreasing.meanTemperature(to, from)).isCloseTo(moment / whole, within(1e-9));
  }

  private double meanCelsius(double one, double other) {
    return increasing.meanTemperature(ZERO + one, ZERO + other) - ZERO;
  }
}
