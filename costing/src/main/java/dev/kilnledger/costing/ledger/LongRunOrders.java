package dev.kilnledger.costing.ledger;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * How many parts of a common period cause an order, where anything bought with a part does, without
 * going through that period.
 *
 * <p>Item i is bought with parts of certain residues modulo its own period P(i). Let g be a number
 * that the greatest common divisor of any two periods divides. Of the parts of one residue r modulo
 * g, the residues modulo the P(i) are then independent of each other (the Chinese remainder
 * theorem), so those with which nothing is bought are the product over the items of the residues
 * modulo P(i) that agree with r and are not among the item's; the sum over all r is what is sought.
 * The time grows with g and with the purchases in each item's own period.
 */
final class LongRunOrders {
  /** Up to which g, and how many purchases in an item's period, this is worked out. */
  private static final int MOST = 1 << 15;

  private LongRunOrders() {}

  /** One item: its period, and the parts of one of them that cause an order. */
  private record Pattern(BigInteger period, List<Long> parts) {
    /** Residues modulo the period that cause no order, by their residue modulo the common part. */
    BigInteger[] without(int common) {
      BigInteger[] without = new BigInteger[common];
      Arrays.fill(without, period.divide(BigInteger.valueOf(common)));
      for (long part : parts) {
        int residue = (int) (part % common);
        without[residue] = without[residue].subtract(BigInteger.ONE);
      }
      return without;
    }
  }

  /**
   * The parts of one common period that cause an order.
   *
   * @param items what is bought from the supplier, none of it open
   * @param period the common period
   * @param orders whether the purchases of an item between two numbers of them are an order
   * @return their number; empty if it takes too long to find out
   */
  static Optional<BigInteger> of(
      List<ItemPurchases> items, BigInteger period, Predicate<Made> orders) {
    List<Pattern> patterns = new ArrayList<>();
    BigInteger g = BigInteger.ONE;
    for (ItemPurchases one : items) {
      Optional<Pattern> pattern = pattern(one, orders);
      if (pattern.isEmpty()) {
        return Optional.empty();
      }
      for (Pattern other : patterns) {
        g = ExactCash.lcm(g, pattern.get().period.gcd(other.period));
      }
      patterns.add(pattern.get());
    }
    if (g.compareTo(BigInteger.valueOf(MOST)) > 0) {
      return Optional.empty();
    }
    List<BigInteger[]> without = new ArrayList<>();
    for (Pattern pattern : patterns) {
      without.add(pattern.without(pattern.period.gcd(g).intValueExact()));
    }
    BigInteger none = BigInteger.ZERO;
    for (int residue = 0; residue < g.intValueExact(); residue++) {
      BigInteger product = BigInteger.ONE;
      for (BigInteger[] counts : without) {
        product = product.multiply(counts[residue % counts.length]);
      }
      none = none.add(product);
    }
    return Optional.of(period.subtract(none));
  }

  /** The purchases of an item that one part causes. */
  record Made(ItemPurchases item, BigInteger before, BigInteger after) {}

  private static Optional<Pattern> pattern(ItemPurchases one, Predicate<Made> orders) {
    BigInteger period = one.period();
    long from = one.settled();
    BigInteger last = period.add(BigInteger.valueOf(from));
    if (last.bitLength() >= Long.SIZE) {
      return Optional.empty();
    }
    long end = last.longValueExact();
    BigInteger made = one.through(from);
    if (one.through(end).subtract(made).compareTo(BigInteger.valueOf(MOST)) > 0) {
      return Optional.empty();
    }
    List<Long> parts = new ArrayList<>();
    long part = one.partAfter(made, from).orElse(Long.MAX_VALUE);
    while (part <= end) {
      BigInteger after = one.through(part);
      if (orders.test(new Made(one, made, after))) {
        parts.add(part);
      }
      made = after;
      part = one.partAfter(made, part).orElse(Long.MAX_VALUE);
    }
    return Optional.of(new Pattern(period, parts));
  }
}
