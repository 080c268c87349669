package dev.kilnledger.thermal.kinetics;

/**
 * The exponential integral E1 times e^x, which neither under- nor overflows, and the small number
 * {@code 1 - x e^x E1(x)} without cancellation.
 *
 * <p>From x = 1 up by the continued fraction {@code e^x E1(x) = 1/(x+1-1/(x+3-4/(x+5-...)))}, below
 * by the power series (Abramowitz and Stegun, Handbook of Mathematical Functions, 5.1.22 in its
 * contracted form and 5.1.11). Relative error some 1e-15. The fraction is cut off after 7 + 95 / x
 * terms, which leaves less than 1e-16 of either number (compared with 40 digits from x = 1 to
 * 10,000), and is evaluated as one quotient, as divisions are what takes the time.
 */
final class ScaledExponentialIntegral {
  private static final double EULER_GAMMA = 0.5772156649015329;
  private static final double SERIES_BELOW = 1;
  private static final double TOLERANCE = 1e-16;

  /** {@code e^x E1(x)}. */
  final double value;

  /** {@code 1 - x e^x E1(x)}. */
  final double gap;

  /** At x above zero. */
  ScaledExponentialIntegral(double x) {
    if (x < SERIES_BELOW) {
      value = Math.exp(x) * series(x);
      gap = 1 - x * value;
    } else {
      // 1/(x+3-4/(x+5-9/(x+7-...))) as a quotient p / q: numerators and denominators of its
      // convergents, each from the two before.
      int terms = 7 + (int) (95 / x);
      double b = x + 3;
      double pBefore = 0;
      double qBefore = 1;
      double p = 1;
      double q = b;
      for (int k = 2; k <= terms; k++) {
        double a = (double) k * k;
        b += 2;
        double pNext = b * p - a * pBefore;
        double qNext = b * q - a * qBefore;
        pBefore = p;
        qBefore = q;
        p = pNext;
        q = qNext;
      }
      double scale = 1 / ((x + 1) * q - p);
      value = q * scale;
      gap = (q - p) * scale;
    }
  }

  private static double series(double x) {
    double sum = -EULER_GAMMA - Math.log(x);
    double power = 1;
    for (int k = 1; Math.abs(power) > TOLERANCE; k++) {
      power *= -x / k;
      sum -= power / k;
    }
    return sum;
  }
}
