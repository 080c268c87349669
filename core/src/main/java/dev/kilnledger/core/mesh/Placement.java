package dev.kilnledger.core.mesh;

import org.jspecify.annotations.Nullable;

/**
 * Where a copy of an object lies: the twelve numbers of a 3MF transform, rows first, by which a
 * point (x, y, z, 1) is multiplied from the left.
 */
final class Placement {
  static final Placement HERE = new Placement(new double[] {1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0});

  private final double[] m;

  private Placement(double[] m) {
    this.m = m;
  }

  /** Reads twelve numbers; null where the text is something else. */
  static @Nullable Placement parse(String text) {
    String[] words = text.trim().split("\\s+", 13);
    double[] m = new double[12];
    if (words.length != 12) {
      return null;
    }
    for (int i = 0; i < 12; i++) {
      m[i] = Decimals.parse(words[i]);
      if (Double.isNaN(m[i])) {
        return null;
      }
    }
    return new Placement(m);
  }

  /** This placement within something that is itself placed. */
  Placement within(Placement outer) {
    double[] o = outer.m;
    double[] product = new double[12];
    for (int row = 0; row < 4; row++) {
      for (int column = 0; column < 3; column++) {
        product[3 * row + column] =
            m[3 * row] * o[column]
                + m[3 * row + 1] * o[3 + column]
                + m[3 * row + 2] * o[6 + column]
                + (row == 3 ? o[9 + column] : 0);
      }
    }
    return new Placement(product);
  }

  double x(double x, double y, double z) {
    return x * m[0] + y * m[3] + z * m[6] + m[9];
  }

  double y(double x, double y, double z) {
    return x * m[1] + y * m[4] + z * m[7] + m[10];
  }

  double z(double x, double y, double z) {
    return x * m[2] + y * m[5] + z * m[8] + m[11];
  }

  /** Whether it turns what is inside to the outside. */
  boolean mirrors() {
    return m[0] * (m[4] * m[8] - m[5] * m[7])
            - m[1] * (m[3] * m[8] - m[5] * m[6])
            + m[2] * (m[3] * m[7] - m[4] * m[6])
        < 0;
  }
}
