package dev.kilnledger.costing.purchase;

import java.math.BigInteger;
import java.util.Arrays;

/**
 * Packs of one item that cover its need. Ordered by cost, surplus, packs, and then the packs of the
 * catalogue's first offers, more of them first.
 */
final class Cover {
  final long[] counts;
  final BigInteger cost;
  final long surplus;
  final long packs;

  /** The value of goods at each supplier whose threshold matters, up to the threshold. */
  final BigInteger[] values;

  Cover(long[] counts, BigInteger cost, long surplus, BigInteger[] values) {
    this.counts = counts;
    this.cost = cost;
    this.surplus = surplus;
    this.packs = Arrays.stream(counts).reduce(0, Math::addExact);
    this.values = values;
  }

  int order(Cover that) {
    int order = cost.compareTo(that.cost);
    if (order == 0) {
      order = Long.compare(surplus, that.surplus);
    }
    if (order == 0) {
      order = Long.compare(packs, that.packs);
    }
    return order == 0 ? Arrays.compare(that.counts, counts) : order;
  }

  /** Whether this cover is as good as another in every way that matters. */
  boolean dominates(Cover that) {
    for (int i = 0; i < values.length; i++) {
      if (values[i].compareTo(that.values[i]) < 0) {
        return false;
      }
    }
    return order(that) <= 0;
  }
}
