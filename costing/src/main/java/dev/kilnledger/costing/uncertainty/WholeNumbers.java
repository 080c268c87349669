package dev.kilnledger.costing.uncertainty;

/**
 * Rounding to whole numbers of what was computed in doubles: sure, or not at all. A quotient that
 * lies so near a whole number that rounding errors could have moved it across is left to exact
 * arithmetic, which is the ledger's own.
 */
final class WholeNumbers {
  /** Far above the rounding errors of a few operations, which are near 1e-15. */
  private static final double NEAR = 1e-10;

  private WholeNumbers() {}

  /** Whether a value computed from terms of a size is too near a whole number to be rounded. */
  static boolean isNear(double value, double size) {
    return Math.abs(value - Math.rint(value)) <= NEAR * (1 + size);
  }

  static boolean isWhole(double value) {
    return value == Math.rint(value);
  }
}
