package dev.kilnledger.thermal.conduction;

import dev.kilnledger.units.Amount;
import javax.measure.Quantity;

/**
 * A function of temperature in K whose slope is linear between points and constant beyond them: the
 * integral of a property over temperature, or a property whose slope is asked for. Value and slope
 * are exact.
 */
final class Antiderivative {
  private final double[] t;
  private final double[] value; // at each point
  private final double[] first; // slope at the start of the piece after each point
  private final double[] last; // slope at the end of that piece
  private final double before; // slope below the first point

  private Antiderivative(double[] t, double[] value, double[] first, double[] last, double before) {
    this.t = t;
    this.value = value;
    this.first = first;
    this.last = last;
    this.before = before;
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
    return new Antiderivative(t, value, slope, end, slope[0]);
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
    return new Antiderivative(t, value, slope, slope, slope[0]);
  }

  private static double[] kelvin(PropertyCurve<?> curve) {
    return curve.temperatures().stream().mapToDouble(Amount::si).toArray();
  }

  double at(double temperature) {
    int i = piece(temperature);
    if (i < 0) {
      return value[0] + before * (temperature - t[0]);
    }
    double passed = temperature - t[i];
    return value[i] + passed * (first[i] + bend(i) * passed / 2);
  }

  double slope(double temperature) {
    int i = piece(temperature);
    return i < 0 ? before : first[i] + bend(i) * (temperature - t[i]);
  }

  private double bend(int i) {
    return i == t.length - 1 ? 0 : (last[i] - first[i]) / (t[i + 1] - t[i]);
  }

  private int piece(double temperature) {
    int i = t.length - 1;
    while (i >= 0 && temperature < t[i]) {
      i--;
    }
    return i;
  }
}
