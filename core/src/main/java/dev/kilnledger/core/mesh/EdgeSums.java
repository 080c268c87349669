package dev.kilnledger.core.mesh;

/**
 * Whether a mesh is closed, in constant memory: each corner is made a point (u, v) of numbers that
 * follow from it and look like chance, and the areas in that plane of all facets are added up,
 * modulo 2^64. What a facet adds along an edge is what the next one takes away that goes along it
 * the other way; so if each edge is gone along as often one way as the other the sum is zero, and
 * otherwise it is the area within the open edges, which is zero by a chance of about 2^-59: a
 * product of two numbers by chance has that to be a multiple of 2^64.
 *
 * <p>Corners are the same if their coordinates are, to the bit.
 */
final class EdgeSums implements FacetConsumer {
  private long sum;

  @Override
  public void facet(
      double x1,
      double y1,
      double z1,
      double x2,
      double y2,
      double z2,
      double x3,
      double y3,
      double z3) {
    long u1 = CornerHash.of(x1, y1, z1);
    long u2 = CornerHash.of(x2, y2, z2);
    long u3 = CornerHash.of(x3, y3, z3);
    long v1 = CornerHash.second(u1);
    long v2 = CornerHash.second(u2);
    long v3 = CornerHash.second(u3);
    sum += (u2 - u1) * (v3 - v1) - (u3 - u1) * (v2 - v1);
  }

  /** Every edge is gone along as often one way as the other. */
  boolean closed() {
    return sum == 0;
  }
}
