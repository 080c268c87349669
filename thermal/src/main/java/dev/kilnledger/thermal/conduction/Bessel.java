package dev.kilnledger.thermal.conduction;

/**
 * Bessel functions J0 and J1 of arguments from zero up, absolute error about 1e-15.
 *
 * <p>Below 25 by the trapezoidal rule on Bessel's integral, which converges faster than any power
 * for a periodic integrand (here the error is about J64(x)); from 25 on by Hankel's asymptotic
 * series (Abramowitz and Stegun 9.1.18, 9.2.5 to 9.2.10).
 */
final class Bessel {
  private static final int NODES = 32;
  private static final double ASYMPTOTIC_FROM = 25;

  private Bessel() {}

  static double j0(double x) {
    if (x >= ASYMPTOTIC_FROM) {
      return asymptotic(0, x);
    }
    double sum = 0;
    for (int k = 0; k < NODES / 2; k++) {
      sum += Math.cos(x * Math.cos((k + 0.5) * Math.PI / NODES));
    }
    return 2 * sum / NODES;
  }

  static double j1(double x) {
    if (x >= ASYMPTOTIC_FROM) {
      return asymptotic(1, x);
    }
    double sum = 0;
    for (int k = 0; k < NODES / 2; k++) {
      double cosine = Math.cos((k + 0.5) * Math.PI / NODES);
      sum += cosine * Math.sin(x * cosine);
    }
    return 2 * sum / NODES;
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
