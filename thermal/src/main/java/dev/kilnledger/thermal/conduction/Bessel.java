package dev.kilnledger.thermal.conduction;

/**
 * Bessel functions J0 and J1 of arguments from zero up, absolute error about 1e-15.
 *
 * <p>Below 25 by the trapezoidal rule on Bessel's integral, which converges faster than any power
 * for a periodic integrand (the error is about J32(x) with 16 nodes, which do below 8, and J64(x)
 * with 32); from 25 on by Hankel's asymptotic series (Abramowitz and Stegun 9.1.18, 9.2.5 to
 * 9.2.10).
 */
final class Bessel {
  private static final double ASYMPTOTIC_FROM = 25;
  private static final double MORE_NODES_FROM = 8;
  private static final double[] FEW = cosines(16);
  private static final double[] MANY = cosines(32);

  private Bessel() {}

  /**
   * Of the nodes in the first half of the interval; those of the other half are their opposites.
   */
  private static double[] cosines(int nodes) {
    double[] cosines = new double[nodes / 2];
    for (int k = 0; k < cosines.length; k++) {
      cosines[k] = Math.cos((k + 0.5) * Math.PI / nodes);
    }
    return cosines;
  }

  static double j0(double x) {
    if (x >= ASYMPTOTIC_FROM) {
      return asymptotic(0, x);
    }
    double[] cosines = x < MORE_NODES_FROM ? FEW : MANY;
    double sum = 0;
    for (double cosine : cosines) {
      sum += Math.cos(x * cosine);
    }
    return sum / cosines.length;
  }

  static double j1(double x) {
    if (x >= ASYMPTOTIC_FROM) {
      return asymptotic(1, x);
    }
    double[] cosines = x < MORE_NODES_FROM ? FEW : MANY;
    double sum = 0;
    for (double cosine : cosines) {
      sum += cosine * Math.sin(x * cosine);
    }
    return sum / cosines.length;
  }

  private static double asymptotic(int order, double x) {
    double even = 0;
    double odd = 0;
    double term = 1;
    // The terms fall until about k = 2x, far beyond the 17th digit.
    for (int k = 0; Math.abs(term) > 1e-17; k++) {
      double signed = k % 4 < 2 ? term : -term;
      if (k % 2 == 0) {
        even += signed;
      } else {
        odd += signed;
      }
      double factor = 2 * k + 1;
      term *= (4 * order * order - factor * factor) / ((k + 1) * 8 * x);
    }
    double phase = x - (order + 0.5) * Math.PI / 2;
    return Math.sqrt(2 / (Math.PI * x)) * (even * Math.cos(phase) - odd * Math.sin(phase));
  }
}
