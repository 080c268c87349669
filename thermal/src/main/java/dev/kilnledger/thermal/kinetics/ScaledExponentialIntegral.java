package dev.kilnledger.thermal.kinetics;

/**
 * The exponential integral E1 times e^x, which neither under- nor overflows, and the small number
 * {@code 1 - x e^x E1(x)} without cancellation.
 *
 * <p>From x = 1 up by the continued fraction {@code e^x E1(x) = 1/(x+1-1/(x+3-4/(x+5-...)))}, below
 * by the power series (Abramowitz and Stegun, Handbook of Mathematical Functions, 5.1.22 in its
 * contracted form and 5.1.11). Relative error some 1e-15.
 */
final class ScaledExponentialIntegral {
  private static final double EULER_GAMMA = 0.5772156649015329;
  private static final double SERIES_BELOW = 1;
  private static final double TOLERANCE = 1e-15;

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
      double tail = tail(x);
      value = 1 / (x + 1 - tail);
      gap = (1 - tail) * value;
    }
  }

  private static double series(double x) {
    double sum = -EULER_GAMMA - Math.log(x);
    double power = 1;
    for (int k = 1; Math.abs(power) > TOLERANCE / 10; k++) {
      power *= -x / k;
      sum -= power / k;
    }
    return sum;
  }

  /** {@code 1/(x+3-4/(x+5-9/(x+7-...)))} by the modified method of Lentz. */
  private static double tail(double x) {
    double b = x + 3;
    double c = b;
    double d = 0;
    double fraction = b;
    double change;
    int n = 2;
    do {
      double a = -(double) n * n;
      b += 2;
      d = 1 / (b + a * d);
      c = b + a / c;
      change = c * d;
      fraction *= change;
      n++;
    } while (Math.abs(change - 1) > TOLERANCE);
    return 1 / fraction;
  }
}
