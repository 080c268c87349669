package dev.kilnledger.core.mesh;

/** How far coordinates reach along an axis. */
final class Reach {
  private double low = Double.POSITIVE_INFINITY;
  private double high = Double.NEGATIVE_INFINITY;

  /** Takes three in; a mesh with one that is not a number is refused afterwards. */
  void include(double a, double b, double c) {
    // a branch that hardly ever is taken costs less than the smallest of three
    if (a < low || b < low || c < low) {
      low = Math.min(low, Math.min(a, Math.min(b, c)));
    }
    if (a > high || b > high || c > high) {
      high = Math.max(high, Math.max(a, Math.max(b, c)));
    }
  }

  double low() {
    return low;
  }

  double high() {
    return high;
  }

  double length() {
    return high - low;
  }
}
