package dev.kilnledger.thermal.conduction;

import dev.kilnledger.units.Amount;
import java.util.Arrays;
import javax.measure.Quantity;

/**
 * A function of temperature in K whose slope is linear between points and constant beyond them: the
 * integral of a property over temperature, or a property whose slope is asked for. Value and slope
 * are exact.
 *
 * <p>It is kept as pieces, of which the first lies below the first point. Who asks again and again
 * at temperatures that move little tells the piece that it found before.
 */
final class Antiderivative {
  private final double[] end; // of each piece, K; infinity for the last
  private final double[] origin; // K, from where the piece is told
  private final double[] value; // there
  private final double[] slope; // there
  private final double[] halfBend; // half of how much the slope changes per kelvin

  private Antiderivative(double[] t, double[] value, double[] first, double[] last) {
    if (t.length == 1) { // the same on both sides of its point
      end = new double[] {Double.POSITIVE_INFINITY};
      origin = t;
      this.value = value;
      slope = first;
      halfBend = new double[1];
      return;
    }
    int n = t.length;
    end = Arrays.copyOf(t, n + 1);
    end[n] = Double.POSITIVE_INFINITY;
    origin = new double[n + 1];
    this.value = new double[n + 1];
    slope = new double[n + 1];
    halfBend = new double[n + 1];
    for (int i = 0; i <= n; i++) {
      int from = Math.max(0, i - 1);
      origin[i] = t[from];
      this.value[i] = value[from];
      slope[i] = first[from];
      if (i > 0 && i < n) {
        halfBend[i] = (last[from] - first[from]) / (t[i] - t[from]) / 2;
      }
    }
  }

  /** The integral of a curve times a factor, zero at its first point. */
  static <Q extends Quantity<Q>> Antiderivative ofSlope(PropertyCurve<Q> curve, double factor) {
    int n = curve.values().size();
    double[] slope = curve.values().stream().mapToDouble(v -> factor * v.si()).toArray();
    double[] t = kelvin(curve);
    double[] value = new double[n];
    double[] end = new double[n];
    for (int i = 0; i < n; i++) {
      end[i] = slope[Math.min(i + 1, n - 1)];
      if (i > 0) {
        value[i] = value[i - 1] + (slope[i - 1] + slope[i]) / 2 * (t[i] - t[i - 1]);
      }
    }
    return new Antiderivative(t, value, slope, end);
  }

  /** A curve of two points or more times a factor, going on as straight beyond its ends. */
  static <Q extends Quantity<Q>> Antiderivative ofValue(PropertyCurve<Q> curve, double factor) {
    int n = curve.values().size();
    double[] t = kelvin(curve);
    double[] value = curve.values().stream().mapToDouble(v -> factor * v.si()).toArray();
    double[] slope = new double[n];
    for (int i = 0; i < n; i++) {
      int from = Math.min(i, n - 2);
      slope[i] = (value[from + 1] - value[from]) / (t[from + 1] - t[from]);
    }
    return new Antiderivative(t, value, slope, slope);
  }

  private static double[] kelvin(PropertyCurve<?> curve) {
    return curve.temperatures().stream().mapToDouble(Amount::si).toArray();
  }

  /** The piece that a temperature lies in, looked for from a piece on. */
  int piece(double temperature, int near) {
    int i = near;
    while (i < end.length - 1 && temperature >= end[i]) {
      i++;
    }
    while (i > 0 && temperature < end[i - 1]) {
      i--;
    }
    return i;
  }

  double at(int piece, double temperature) {
    double passed = temperature - origin[piece];
    return value[piece] + passed * (slope[piece] + halfBend[piece] * passed);
  }

  double slope(int piece, double temperature) {
    return slope[piece] + 2 * halfBend[piece] * (temperature - origin[piece]);
  }

  /** Where a piece begins, K; minus infinity for the first. */
  double start(int piece) {
    return piece == 0 ? Double.NEGATIVE_INFINITY : end[piece - 1];
  }

  /** Where a piece ends, K; infinity for the last. */
  double end(int piece) {
    return end[piece];
  }

  /** The temperature in or beside a piece from which it is told, K. */
  double origin(int piece) {
    return origin[piece];
  }

  /** Half of how much the slope changes per kelvin on a piece. */
  double halfBend(int piece) {
    return halfBend[piece];
  }
}
