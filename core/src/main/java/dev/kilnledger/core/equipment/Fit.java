package dev.kilnledger.core.equipment;

/** Whether sizes in metres fit, up to the rounding of their sums. */
final class Fit {
  /** A nanometre: far below any size that matters, far above rounding. */
  private static final double ROUNDING = 1e-9;

  private Fit() {}

  static boolean fits(double size, double space) {
    return size <= space + ROUNDING;
  }

  /** How many times a size goes into a space. */
  static int times(double space, double size) {
    return (int) Math.floor((space + ROUNDING) / size);
  }
}
