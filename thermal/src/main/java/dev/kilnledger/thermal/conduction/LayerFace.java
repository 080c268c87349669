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
  private int innerPiece;
  private int outerPiece;
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

  /**
   * Finds the temperature of the face.
   *
   * @param innerCell the temperature of the inner cell, K
   * @param fromInner the integral of its conductivity up to there
   * @param innerCellSlope that conductivity
   * @param outerCell the temperature of the outer cell, K
   * @param toOuter the integral of its conductivity up to there
   * @param outerCellSlope that conductivity
   */
  void settle(
      double innerCell,
      double fromInner,
      double innerCellSlope,
      double outerCell,
      double toOuter,
      double outerCellSlope) {
    double low = Math.min(innerCell, outerCell);
    double high = Math.max(innerCell, outerCell);
    double t = Math.min(Math.max(temperature, low), high);
    double innerSlope = 1;
    double outerSlope = 1;
    for (int i = 0; i < 100; i++) {
      innerPiece = innerConductivity.piece(t, innerPiece);
      outerPiece = outerConductivity.piece(t, outerPiece);
      flux = inner * (fromInner - innerConductivity.at(innerPiece, t));
      innerSlope = inner * innerConductivity.slope(innerPiece, t);
      outerSlope = outer * outerConductivity.slope(outerPiece, t);
      double open = flux - outer * (outerConductivity.at(outerPiece, t) - toOuter);
      if (open > 0) {
        low = t;
      } else {
        high = t;
      }
      double next = t + open / (innerSlope + outerSlope);
      boolean inside = next >= low && next <= high;
      if (!inside) {
        next = (low + high) / 2;
      }
      double change = next - t;
      t = next;
      if (Math.abs(change) <= HeatedSurface.SETTLED * Math.abs(t)) {
        flux -= inside ? innerSlope * change : 0;
        break;
      }
    }
    temperature = t;
    double sum = innerSlope + outerSlope;
    fluxPerInner = inner * innerCellSlope * outerSlope / sum;
    fluxPerOuter = -outer * outerCellSlope * innerSlope / sum;
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
