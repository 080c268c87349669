package dev.kilnledger.core.mesh;

/** Numbers for a corner that are the same for the same coordinates and look like chance. */
final class CornerHash {
  private static final long ODD1 = 0x9E3779B97F4A7C15L;
  private static final long ODD2 = 0xC2B2AE3D27D4EB4FL;
  private static final long ODD3 = 0xBF58476D1CE4E5B9L;
  private static final long ODD4 = 0x94D049BB133111EBL;

  private CornerHash() {}

  /** A number for a corner. */
  static long of(double x, double y, double z) {
    // plus zero makes one zero of two
    long first = Double.doubleToRawLongBits(x + 0.0) ^ ODD1;
    long second = Double.doubleToRawLongBits(y + 0.0) ^ ODD2;
    long third = Double.doubleToRawLongBits(z + 0.0) ^ ODD3;
    return folded(folded(first, second) ^ ODD4, third);
  }

  /** Another number, which does not follow from the first by sums and multiples. */
  static long second(long number) {
    return (number ^ ODD1) * (Long.rotateLeft(number, 32) ^ ODD2);
  }

  /** Both halves of a product of 128 bits in one, after the custom of quick hashes. */
  private static long folded(long a, long b) {
    return a * b ^ Math.multiplyHigh(a, b);
  }
}
