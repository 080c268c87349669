package dev.kilnledger.core.mesh;

/**
 * Whether a mesh is closed, in constant memory: each edge adds a number made of its two ends when
 * it is gone along one way, and takes it away the other way. If each edge is gone along as often
 * one way as the other the sums are zero; otherwise they are not, but for a chance of 2^-128.
 *
 * <p>Ends are the same if their coordinates are, to the bit.
 */
final class EdgeSums {
  private static final long ODD1 = 0x9E3779B97F4A7C15L;
  private static final long ODD2 = 0xC2B2AE3D27D4EB4FL;

  private long sum1;
  private long sum2;
  private long parity1;
  private long parity2;

  void facet(long first, long second, long third) {
    edge(first, second);
    edge(second, third);
    edge(third, first);
  }

  /** A number for a corner. */
  static long corner(double x, double y, double z) {
    // plus zero makes one zero of two
    long hash = mix(Double.doubleToRawLongBits(x + 0.0) + ODD1);
    hash = mix(hash ^ (Double.doubleToRawLongBits(y + 0.0) * ODD2));
    return mix(hash + Double.doubleToRawLongBits(z + 0.0) * ODD1);
  }

  private void edge(long from, long to) {
    if (from == to) {
      return;
    }
    boolean up = from < to;
    long low = up ? from : to;
    long high = up ? to : from;
    long edge1 = mix(low * ODD1 + Long.rotateLeft(high, 31));
    long edge2 = mix(high * ODD2 + Long.rotateLeft(low, 17));
    sum1 += up ? edge1 : -edge1;
    sum2 += up ? edge2 : -edge2;
    parity1 ^= edge1;
    parity2 ^= edge2;
  }

  /** Every edge is gone along as often one way as the other. */
  boolean closed() {
    return sum1 == 0 && sum2 == 0;
  }

  /** Every edge has an even number of facets, whichever way they go along it. */
  boolean paired() {
    return parity1 == 0 && parity2 == 0;
  }

  /** The finalizer of a common hash (Steele, Lea and Flood 2014, from memory). */
  private static long mix(long z) {
    long mixed = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
    return mixed ^ (mixed >>> 31);
  }
}
