package dev.kilnledger.core.mesh;

/**
 * Whether each edge of a mesh has an even number of facets, whichever way they go along it, in
 * constant memory: a number that follows from both ends alike is taken in by exclusive or each time
 * an edge is met, so that what is met twice is gone. It is zero for an edge whose ends are one.
 */
final class EdgePairs implements FacetConsumer {
  private long parity;

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
    long first = CornerHash.of(x1, y1, z1);
    long second = CornerHash.of(x2, y2, z2);
    long third = CornerHash.of(x3, y3, z3);
    edge(first, second);
    edge(second, third);
    edge(third, first);
  }

  private void edge(long from, long to) {
    parity ^= (from - to) * (CornerHash.second(from) - CornerHash.second(to));
  }

  /** Every edge has an even number of facets. */
  boolean paired() {
    return parity == 0;
  }
}
