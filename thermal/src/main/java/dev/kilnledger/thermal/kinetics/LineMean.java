package dev.kilnledger.thermal.kinetics;

/**
 * The mean of {@code exp(-A / T)}, or of that over T, on a straight line between two temperatures
 * in K, as a multiple of exp(-A / T) at the hot end. A is an activation energy over the gas
 * constant.
 *
 * <p>On lines so short that the closed form would subtract nearly equal numbers a Gauss-Legendre
 * rule of five points takes over.
 */
final class LineMean {
  // Abramowitz and Stegun, table 25.4, n = 5.
  private static final double[] NODES = {
    -0.906179845938664, -0.538469310105683, 0, 0.538469310105683, 0.906179845938664
  };
  private static final double[] WEIGHTS = {
    0.236926885056189, 0.478628670499366, 0.568888888888889, 0.478628670499366, 0.236926885056189
  };
  private static final double SHORT_IN_X = 0.25;
  private static final double SHORT_IN_T = 0.01;

  private final double activation; // A, in K
  private final boolean perKelvin;

  /** Of the exponential over T if {@code perKelvin}, else of the exponential itself. */
  LineMean(double activation, boolean perKelvin) {
    this.activation = activation;
    this.perKelvin = perKelvin;
  }

  /** {@return the natural logarithm of the mean itself on a line, by its ends in either order} */
  double log(double from, double to) {
    double hot = Math.max(from, to);
    double cold = Math.min(from, to);
    double overHot =
        isShort(cold, hot)
            ? ofShort(cold, hot)
            : ofLong(cold, antiderivative(cold), hot, antiderivative(hot), exponential(cold, hot));
    return Math.log(overHot) - exponent(hot);
  }

  /** {@return A / T} */
  double exponent(double kelvin) {
    return activation / kelvin;
  }

  /** {@return exp(-A / T) as a multiple of its value at a temperature as hot or hotter} */
  double exponential(double kelvin, double hot) {
    return kelvin == hot ? 1 : Math.exp(activation * (kelvin - hot) / (kelvin * hot));
  }

  boolean isShort(double cold, double hot) {
    return hot - cold < SHORT_IN_T * cold && activation / cold - activation / hot < SHORT_IN_X;
  }

  /**
   * {@return the antiderivative over T at a temperature, as a multiple of the exponential there}
   */
  double antiderivative(double kelvin) {
    ScaledExponentialIntegral integral = new ScaledExponentialIntegral(activation / kelvin);
    return perKelvin ? integral.value : kelvin * integral.gap;
  }

  /**
   * {@return the mean on a line that is not short, by its ends, the antiderivatives there and the
   * exponential at the cold end over that at the hot one}
   */
  double ofLong(double cold, double atCold, double hot, double atHot, double exponential) {
    return (atHot - atCold * exponential) / (hot - cold);
  }

  /** {@return the mean on a short line, by its two ends} */
  double ofShort(double cold, double hot) {
    if (hot == cold) {
      return perKelvin ? 1 / hot : 1;
    }
    double middle = (hot + cold) / 2;
    double half = (hot - cold) / 2;
    double sum = 0;
    for (int i = 0; i < NODES.length; i++) {
      double at = middle + half * NODES[i];
      double value = exponential(at, hot);
      sum += WEIGHTS[i] * (perKelvin ? value / at : value);
    }
    return sum / 2;
  }
}
