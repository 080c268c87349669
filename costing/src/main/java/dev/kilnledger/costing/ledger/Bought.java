package dev.kilnledger.costing.ledger;

import java.math.BigInteger;

/** What is bought for some parts: for each item the packs at each price, and the orders paid. */
final class Bought {
  /** By item, then by price; over the item's divisor. */
  final BigInteger[][] counts;

  /** By freight. */
  final BigInteger[] orders;

  Bought(BigInteger[][] counts, BigInteger[] orders) {
    this.counts = counts;
    this.orders = orders;
  }

  /** What is bought beyond something that it holds. */
  Bought less(Bought before) {
    BigInteger[][] more = new BigInteger[counts.length][];
    for (int i = 0; i < counts.length; i++) {
      more[i] = less(counts[i], before.counts[i]);
    }
    return new Bought(more, less(orders, before.orders));
  }

  private static BigInteger[] less(BigInteger[] all, BigInteger[] before) {
    BigInteger[] more = new BigInteger[all.length];
    for (int i = 0; i < all.length; i++) {
      more[i] = all[i].subtract(before[i]);
    }
    return more;
  }
}
