package dev.kilnledger.thermal.conduction;

/**
 * The face between two layers: as much heat is conducted up to it as on from it, {@code g1 (K1(T1)
 * - K1(T)) = g2 (K2(T) - K2(T2))}. Solved for T, which lies between the two.
 */
final class LayerFace {
  private final double inner; // 1 / half cell, 1/m
  private final double outer;
  private final Antiderivative innerConductivity;
  private final Antiderivative outerConductivity;
  private double temperature;
  private double flux;
  private double fluxPerInner;
  private double fluxPerOuter;

  LayerFace(
      double innerHalfCell,
      Antiderivative innerConductivity,
      double outerHalfCell,
      Antiderivative outerConductivity) {
    inner = 1 / innerHalfCell;
    outer = 1 / outerHalfCell;
    this.innerConductivity = innerConductivity;
    this.outerConductivity = outerConductivity;
  }

  void settle(double innerCell, double outerCell) {
    double fromInner = innerConductivity.at(innerCell);
    double toOuter = outerConductivity.at(outerCell);
    double low = Math.min(innerCell, outerCell);
    double high = Math.max(innerCell, outerCell);
    double t = Math.min(Math.max(temperature, low), high);
    double innerSlope = 1;
    double outerSlope = 1;
    for (int i = 0; i < 100; i++) {
      flux = inner * (fromInner - innerConductivity.at(t));
      innerSlope = inner * innerConductivity.slope(t);
      outerSlope = outer * outerConductivity.slope(t);
      double open = flux - outer * (outerConductivity.at(t) - toOuter);
      if (open > 0) {
        low = t;
      } else {
        high = t;
      }
      double next = t + open / (innerSlope + outerSlope);
      if (!(next >= low && next <= high)) {
        next = (low + high) / 2;
      }
      boolean settled = Math.abs(next - t) <= 1e-14 * Math.abs(t);
      t = next;
      if (settled) {
        break;
      }
    }
    temperature = t;
    double sum = innerSlope + outerSlope;
    fluxPerInner = inner * innerConductivity.slope(innerCell) * outerSlope / sum;
    fluxPerOuter = -outer * outerConductivity.slope(outerCell) * innerSlope / sum;
  }

  /** The temperature of the face, K. */
  double temperature() {
    return temperature;
  }

  /** The heat that goes outwards, W/m2. */
  double flux() {
    return flux;
  }

  /** How that changes with the temperature of the inner cell, W/(m2 K). */
  double fluxPerInner() {
    return fluxPerInner;
  }

  /** How that changes with the temperature of the outer cell, W/(m2 K). */
  double fluxPerOuter() {
    return fluxPerOuter;
  }
}
