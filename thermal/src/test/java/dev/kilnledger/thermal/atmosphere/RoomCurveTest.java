package dev.kilnledger.thermal.atmosphere;

import static dev.kilnledger.units.Amounts.gramsPerHour;
import static dev.kilnledger.units.Amounts.seconds;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The curve of a well-mixed room against its own balance and against the closed form by hand. */
class RoomCurveTest {
  private static final double TAIL = 8 * 3600;

  /**
   * What was given off is in the room or has left with its air. A piece is the 1000th of 9 h, 32.4
   * s, so that the air changes from 1e-8 to 1 fold in it: all ways of working out its means. The
   * mean over all of the time has no end between two points.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-8, 5e-7, 5e-6, 5e-4, 5e-3, 0.05, 1})
  void keepsTheMass(double changesInAPiece) {
    double flow = 1000 * changesInAPiece / 32.4; // m3/s of a room of 1000 m3
    RoomCurve curve =
        new RoomCurve(List.of(ReleaseStep.of(seconds(3600), gramsPerHour(36))), 1000, flow);
    int last = curve.size() - 1;
    assertThat(curve.time(0)).isZero();
    assertThat(curve.time(last)).isCloseTo(3600 + TAIL, within(1e-6));
    double inRoom = 1000 * curve.concentration(last);
    double left = flow * curve.highest(3600 + TAIL) * (3600 + TAIL);
    // a thousand pieces, each rounded
    assertThat(inRoom + left).isCloseTo(0.036, within(1e-12 * 0.036));
  }

  /**
   * An even release into air that changes at a rate k, from start to end c = S (1 - exp(-k t)),
   * then exp(-k t): the highest quarter of an hour by the integrals of that, every second. The
   * curve is drawn every 29 to 36 s; what a chord misses of it at either end of the quarter is up
   * to k S / 8 x 36 s x 36 s, of 900 s.
   */
  @ParameterizedTest
  @CsvSource({"7200, 1800", "7200, 300", "300, 60", "300, 1800", "900, 600"})
  void findsTheHighestMean(double release, double change) {
    double k = 1 / change;
    RoomCurve curve =
        new RoomCurve(List.of(ReleaseStep.of(seconds(release), gramsPerHour(36))), 10, 10 * k);
    double steady = 36 / 3.6e6 / (10 * k);
    double highest = 0;
    double peak = steady * -Math.expm1(-k * release);
    for (double t = 1; t < release + 3 * 3600; t++) {
      double mean = integral(release, k, t) - integral(release, k, t - 900);
      highest = Math.max(highest, steady * mean / 900);
    }
    double missed = 2 * k * steady * 36 * 36 / 8 / 900;
    assertThat(curve.highest(900)).isCloseTo(highest, within(missed));
    assertThat(curve.highest(0)).isCloseTo(peak, withPercentage(1e-9));
  }

  /** Of c / S from the start. */
  private static double integral(double release, double k, double time) {
    if (time <= 0) {
      return 0;
    }
    double rising = Math.min(time, release);
    double falling = Math.max(0, time - release);
    return rising
        + Math.expm1(-k * rising) / k
        + Math.expm1(-k * rising) * Math.expm1(-k * falling) / k;
  }

  /** Before the start the air is clean: half an hour's release is a quarter of two hours' mean. */
  @Test
  void countsTheTimeBeforeTheStartAsClean() {
    RoomCurve curve =
        new RoomCurve(List.of(ReleaseStep.of(seconds(1800), gramsPerHour(36))), 1e-3, 1);
    // a room of a litre and a cubic metre a second: it follows the release at once
    assertThat(curve.highest(7200)).isCloseTo(36 / 3.6e6 / 4, withPercentage(0.01));
    assertThat(curve.highest(900)).isCloseTo(36 / 3.6e6, withPercentage(0.01));
  }
}
