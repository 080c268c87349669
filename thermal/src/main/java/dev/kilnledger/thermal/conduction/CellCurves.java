package dev.kilnledger.thermal.conduction;

import java.util.Arrays;

/**
 * One {@link Antiderivative} for each cell of a grid, times a factor for each, evaluated at once.
 * The coefficients of the piece that each cell is on lie side by side, so that a cell that stays on
 * its piece is not looked up. Holds the last evaluation: not for several threads.
 */
final class CellCurves {
  private final Antiderivative[] curves;
  private final double[] factors;
  private final int[] pieces;
  private final double[] from; // K, where the piece begins
  private final double[] to;
  private final double[] origin;
  private final double[] valueThere;
  private final double[] slopeThere;
  private final double[] halfBend;

  /** The last values. */
  final double[] value;

  /** The last slopes. */
  final double[] slope;

  CellCurves(Antiderivative[] curves, double[] factors) {
    this.curves = curves;
    this.factors = factors;
    int n = curves.length;
    pieces = new int[n];
    from = new double[n];
    to = new double[n];
    origin = new double[n];
    valueThere = new double[n];
    slopeThere = new double[n];
    halfBend = new double[n];
    value = new double[n];
    slope = new double[n];
    Arrays.fill(from, Double.POSITIVE_INFINITY);
  }

  void evaluate(double[] t) {
    for (int i = 0; i < t.length; i++) {
      if (t[i] < from[i] || t[i] >= to[i]) {
        look(i, t[i]);
      }
    }
    for (int i = 0; i < t.length; i++) {
      double passed = t[i] - origin[i];
      double bent = halfBend[i] * passed;
      value[i] = valueThere[i] + passed * (slopeThere[i] + bent);
      slope[i] = slopeThere[i] + 2 * bent;
    }
  }

  private void look(int cell, double temperature) {
    Antiderivative curve = curves[cell];
    double factor = factors[cell];
    int piece = curve.piece(temperature, pieces[cell]);
    pieces[cell] = piece;
    from[cell] = curve.start(piece);
    to[cell] = curve.end(piece);
    origin[cell] = curve.origin(piece);
    valueThere[cell] = factor * curve.at(piece, origin[cell]);
    slopeThere[cell] = factor * curve.slope(piece, origin[cell]);
    halfBend[cell] = factor * curve.halfBend(piece);
  }
}
