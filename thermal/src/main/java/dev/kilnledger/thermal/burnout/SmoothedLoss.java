package dev.kilnledger.thermal.burnout;

import java.util.Arrays;
import java.util.List;

/**
 * The loss of a run smoothed at every reading by a parabola fitted to the readings around (Savitzky
 * and Golay, Anal. Chem. 36 (1964) 1627, for readings at any spacing); s, K, 1/s.
 */
final class SmoothedLoss {
  private static final double FIRST = 0.02;
  private static final double LAST = 0.98;

  private final double[] seconds;
  private final double[] kelvin;
  private final double[] conversion;
  private final double[] rate;
  private final double kelvinPerSecond;
  private final double halfWindow;

  SmoothedLoss(Thermogravimetry run) {
    List<MassReading> readings = run.readings();
    int n = readings.size();
    seconds = readings.stream().mapToDouble(reading -> reading.time().si()).toArray();
    kelvin = readings.stream().mapToDouble(reading -> reading.temperature().si()).toArray();
    double first = readings.get(0).mass().si();
    double last = readings.get(n - 1).mass().si();
    double[] raw =
        readings.stream()
            .mapToDouble(reading -> (first - reading.mass().si()) / (first - last))
            .toArray();
    kelvinPerSecond = heating(raw);
    halfWindow = run.smoothing().si() / kelvinPerSecond;
    conversion = new double[n];
    rate = new double[n];
    for (int i = 0; i < n; i++) {
      Parabola around = parabola(raw, i, halfWindow);
      conversion[i] = around.value;
      rate[i] = around.slope;
    }
  }

  double kelvinPerSecond() {
    return kelvinPerSecond;
  }

  /** The top of a parabola through the rates around the highest. */
  double peakKelvin() {
    int best = 0;
    for (int i = 0; i < rate.length; i++) {
      if (rate[i] > rate[best]) {
        best = i;
      }
    }
    Parabola top = parabola(rate, best, halfWindow);
    double shift = top.bend < 0 ? -top.slope / (2 * top.bend) : 0;
    double limited = Math.max(-halfWindow, Math.min(halfWindow, shift));
    return kelvinAround(best) + limited * kelvinPerSecond;
  }

  /** Where the smoothed conversion first passes a value. */
  double kelvinAt(double value) {
    int i = after(value);
    return kelvinAround(i - 1) + share(value, i) * (kelvinAround(i) - kelvinAround(i - 1));
  }

  /** How fast the conversion rises there, 1/s. */
  double rateAt(double value) {
    int i = after(value);
    return rate[i - 1] + share(value, i) * (rate[i] - rate[i - 1]);
  }

  /** The first reading at or above a conversion, not the first of all. */
  private int after(double value) {
    int i = 1;
    while (i < conversion.length - 1 && conversion[i] < value) {
      i++;
    }
    return i;
  }

  private double share(double value, int i) {
    double share = (value - conversion[i - 1]) / (conversion[i] - conversion[i - 1]);
    return Math.max(0, Math.min(1, share));
  }

  private double kelvinAround(int index) {
    return parabola(kelvin, index, halfWindow).value;
  }

  private double heating(double[] raw) {
    int from = 0;
    while (from < raw.length - 1 && raw[from] < FIRST) {
      from++;
    }
    int to = raw.length - 1;
    while (to > from && raw[to] > LAST) {
      to--;
    }
    if (to - from < 2) {
      from = 0;
      to = raw.length - 1;
    }
    double[] times = Arrays.copyOfRange(seconds, from, to + 1);
    double[] temperatures = Arrays.copyOfRange(kelvin, from, to + 1);
    double slope = new StraightLine(times, temperatures).slope();
    if (!(slope > 0)) {
      throw new IllegalArgumentException(
          "thermogravimetry: the temperature rises by "
              + slope
              + " K/s where the mass is lost; accepted is a run that heats");
    }
    return slope;
  }

  /** The least-squares parabola in time around one reading. */
  private Parabola parabola(double[] values, int centre, double half) {
    int from = centre;
    while (from > 0 && seconds[centre] - seconds[from - 1] <= half) {
      from--;
    }
    int to = centre;
    while (to < seconds.length - 1 && seconds[to + 1] - seconds[centre] <= half) {
      to++;
    }
    // A parabola needs three readings; a wider window than asked for beats none.
    while (to - from < 4) {
      from = Math.max(0, from - 1);
      to = Math.min(seconds.length - 1, to + 1);
    }
    double[] s = new double[5];
    double[] y = new double[3];
    double scale = Math.max(seconds[to] - seconds[centre], seconds[centre] - seconds[from]);
    for (int i = from; i <= to; i++) {
      double u = (seconds[i] - seconds[centre]) / scale;
      double power = 1;
      for (int k = 0; k < 5; k++) {
        s[k] += power;
        if (k < 3) {
          y[k] += power * values[i];
        }
        power *= u;
      }
    }
    // Cramer's rule on the normal equations of 1, u, u².
    double determinant = determinant(s[0], s[1], s[2], s[1], s[2], s[3], s[2], s[3], s[4]);
    double value = determinant(y[0], s[1], s[2], y[1], s[2], s[3], y[2], s[3], s[4]);
    double slope = determinant(s[0], y[0], s[2], s[1], y[1], s[3], s[2], y[2], s[4]);
    double bend = determinant(s[0], s[1], y[0], s[1], s[2], y[1], s[2], s[3], y[2]);
    return new Parabola(
        value / determinant, slope / determinant / scale, bend / determinant / (scale * scale));
  }

  private static double determinant(
      double a, double b, double c, double d, double e, double f, double g, double h, double i) {
    return a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
  }

  private static final class Parabola {
    private final double value;
    private final double slope;
    private final double bend;

    Parabola(double value, double slope, double bend) {
      this.value = value;
      this.slope = slope;
      this.bend = bend;
    }
  }
}
