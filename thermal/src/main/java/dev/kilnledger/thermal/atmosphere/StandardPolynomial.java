package dev.kilnledger.thermal.atmosphere;

/**
 * The standard state of one phase over one range of temperature: Cp/R as a polynomial with the
 * powers -2 to 4 of T, its integrals as enthalpy and entropy (McBride, Zehe and Gordon,
 * NASA/TP-2002-211556, equations 4 to 6; the older NASA TM-4513 has the same form).
 */
final class StandardPolynomial {
  /** The gas constant that the coefficients were made with, J/(mol K). */
  static final double R = 8.314510;

  final double from;
  final double to;
  private final double[] a;
  private final double enthalpyConstant;
  private final double entropyConstant;

  StandardPolynomial(
      double from, double to, double[] a, double enthalpyConstant, double entropyConstant) {
    this.from = from;
    this.to = to;
    this.a = a.clone();
    this.enthalpyConstant = enthalpyConstant;
    this.entropyConstant = entropyConstant;
  }

  /** Cp, J/(mol K). */
  double heatCapacity(double t) {
    double series = ((a[6] * t + a[5]) * t + a[4]) * t + a[3];
    return R * (a[0] / (t * t) + a[1] / t + a[2] + series * t);
  }

  /** H, zero for the elements at 298.15 K, J/mol. */
  double enthalpy(double t) {
    double series = ((a[6] / 5 * t + a[5] / 4) * t + a[4] / 3) * t + a[3] / 2;
    return R * (-a[0] / t + a[1] * Math.log(t) + (a[2] + series * t) * t + enthalpyConstant);
  }

  /** S, J/(mol K). */
  double entropy(double t) {
    double series = ((a[6] / 4 * t + a[5] / 3) * t + a[4] / 2) * t + a[3];
    return R * (-a[0] / (2 * t * t) - a[1] / t + a[2] * Math.log(t) + series * t + entropyConstant);
  }

  /** H - T S, J/mol. */
  double gibbs(double t) {
    return enthalpy(t) - t * entropy(t);
  }
}
