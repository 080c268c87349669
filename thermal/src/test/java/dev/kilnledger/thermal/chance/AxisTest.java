package dev.kilnledger.thermal.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Interpolation against what it is between, by hand; rounding of a handful of products. */
class AxisTest {
  private static final Draw ANY = Draw.of(input -> 0);

  private static Axis axis(double at, boolean curved, double[] places, double... changes) {
    double[][] atTwoTimes = new double[places.length][];
    double[] peaks = new double[places.length];
    for (int k = 0; k < places.length; k++) {
      atTwoTimes[k] = new double[] {changes[k], -2 * changes[k]};
      peaks[k] = changes[k] / 2;
    }
    return new Axis(draw -> at, curved, places, atTwoTimes, peaks);
  }

  private static void changes(Axis axis, double expected) {
    double[] weights = axis.weights(ANY);
    double[] kelvin = {1000, 2000};
    axis.add(weights, kelvin);
    assertThat(kelvin[0]).isCloseTo(1000 + expected, within(1e-9));
    assertThat(kelvin[1]).isCloseTo(2000 - 2 * expected, within(1e-9));
    assertThat(axis.peakChange(weights)).isCloseTo(expected / 2, within(1e-9));
  }

  /**
   * No change at 0; -7 K at -2, -3 K at -1, 4 K at 1 and 10 K at 3: straight between neighbours, 4
   * K a step below -1, 3 K about 0, 4 K up to 1 and 3 K from there, and on beyond the ends.
   */
  @ParameterizedTest
  @CsvSource({
    "-3, -11",
    "-2, -7",
    "-1.5, -5",
    "-1, -3",
    "-0.5, -1.5",
    "0, 0",
    "0.25, 1",
    "1, 4",
    "2, 7",
    "3, 10",
    "4, 13"
  })
  void goesStraightFromPlaceToPlace(double at, double expected) {
    changes(axis(at, false, new double[] {-2, -1, 1, 3}, -7, -3, 4, 10), expected);
  }

  /** All places on one side of the middle, which then is an end. */
  @ParameterizedTest
  @CsvSource({"0.5, 1", "2, 5", "4, 11", "-1, -2"})
  void goesStraightFromTheMiddleWhereThatIsAnEnd(double at, double expected) {
    changes(axis(at, false, new double[] {1, 3}, 2, 8), expected);
    changes(axis(-at, false, new double[] {-3, -1}, 8, 2), expected);
  }

  /** A parabola and a cubic without a constant are their own interpolation. */
  @ParameterizedTest
  @ValueSource(doubles = {-2, -1.3, -1, 0, 0.4, 1, 2.9, 3})
  void followsTheCurveThroughItsPlaces(double at) {
    changes(axis(at, true, new double[] {-2, 3}, 2 * -2 + 4, 2 * 3 + 9), 2 * at + at * at);
    changes(
        axis(at, true, new double[] {-2, 1, 3}, -8 - 2 + 4, 1 + 1 + 1, 27 + 3 + 9),
        at * at * at + at + at * at);
  }

  /** Beyond its places, among which is the middle, a curve tells nothing: the end is held. */
  @ParameterizedTest
  @CsvSource({"-5, 0", "7, 15"})
  void holdsTheEndOfACurve(double at, double expected) {
    changes(axis(at, true, new double[] {-2, 3}, 2 * -2 + 4, 2 * 3 + 9), expected);
    // all places above the middle: below it there is no change
    changes(axis(-at * at, true, new double[] {1, 3}, 3, 15), 0);
    changes(axis(at * at, true, new double[] {-3, -1}, 3, -1), 0);
  }
}
