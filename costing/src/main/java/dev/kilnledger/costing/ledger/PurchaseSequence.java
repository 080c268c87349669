package dev.kilnledger.costing.ledger;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/**
 * The purchases of one item in the order in which they are made, each of them when the need
 * outgrows what all before it hold: some first ones, and then a cycle that repeats for good. How
 * many have been made is a function of the need alone.
 */
final class PurchaseSequence {
  /** The measure of which every pack is a whole multiple. */
  final BigDecimal unit;

  /** What the purchases up to each hold together, in units. */
  private final List<Long> reach = new ArrayList<>(List.of(0L));

  /** The packs of the purchases up to each, by price. */
  private final List<long[]> packs = new ArrayList<>();

  private int cycleStart;
  private String end = "";

  PurchaseSequence(BigDecimal unit, int prices) {
    this.unit = unit;
    packs.add(new long[prices]);
  }

  void add(long[] counts, long content) {
    long[] sums = packs.get(packs.size() - 1).clone();
    for (int i = 0; i < sums.length; i++) {
      sums[i] = Math.addExact(sums[i], counts[i]);
    }
    packs.add(sums);
    reach.add(Math.addExact(reach.get(reach.size() - 1), content));
    cycleStart = size();
  }

  /** Purchases after the first so many repeat. */
  void repeatAfter(int first) {
    cycleStart = first;
  }

  /** Nothing can be bought beyond, and why. */
  void endBecause(String reason) {
    end = reason;
  }

  /** The purchases that are listed: the first ones and one cycle. */
  int size() {
    return reach.size() - 1;
  }

  int first() {
    return cycleStart;
  }

  boolean repeats() {
    return cycleStart < size();
  }

  String end() {
    return end;
  }

  long reach(int purchase) {
    return reach.get(purchase);
  }

  long packs(int purchase, int price) {
    return packs.get(purchase)[price];
  }

  /** What one cycle holds. */
  long cycleContent() {
    return reach(size()) - reach(cycleStart);
  }

  /** How many packs at a price one cycle takes. */
  long cyclePacks(int price) {
    return packs(size(), price) - packs(cycleStart, price);
  }

  /** How many purchases meet a need, given as a numerator over a divisor, in units. */
  BigInteger purchases(BigInteger need, BigInteger divisor) {
    if (need.signum() <= 0) {
      return BigInteger.ZERO;
    }
    BigInteger start = whole(reach(cycleStart)).multiply(divisor);
    if (need.compareTo(whole(reach(size())).multiply(divisor)) <= 0) {
      return whole(reaching(need, divisor));
    }
    if (!repeats()) {
      throw new IllegalArgumentException(end);
    }
    BigInteger beyond = need.subtract(start).subtract(BigInteger.ONE);
    BigInteger[] cycles = beyond.divideAndRemainder(whole(cycleContent()).multiply(divisor));
    BigInteger rest = start.add(cycles[1]).add(BigInteger.ONE);
    return cycles[0]
        .multiply(whole((long) size() - cycleStart))
        .add(whole(reaching(rest, divisor)));
  }

  /** The first listed purchase that reaches a need. */
  private int reaching(BigInteger need, BigInteger divisor) {
    int below = 0;
    int above = size();
    while (above - below > 1) {
      int middle = (below + above) >>> 1;
      if (whole(reach(middle)).multiply(divisor).compareTo(need) >= 0) {
        above = middle;
      } else {
        below = middle;
      }
    }
    return above;
  }

  /** What so many purchases hold, in units. */
  BigInteger reach(BigInteger purchases) {
    BigInteger[] place = place(purchases);
    return whole(reach(place[1].intValueExact())).add(place[0].multiply(whole(cycleContent())));
  }

  /** How many packs at each price so many purchases take. */
  BigInteger[] packs(BigInteger purchases) {
    BigInteger[] place = place(purchases);
    long[] listed = packs.get(place[1].intValueExact());
    BigInteger[] counts = new BigInteger[listed.length];
    for (int i = 0; i < counts.length; i++) {
      counts[i] = whole(listed[i]).add(place[0].multiply(whole(cyclePacks(i))));
    }
    return counts;
  }

  /** Whole cycles, and a listed purchase. */
  private BigInteger[] place(BigInteger purchases) {
    if (purchases.compareTo(whole(size())) <= 0) {
      return new BigInteger[] {BigInteger.ZERO, purchases};
    }
    BigInteger[] cycles =
        purchases
            .subtract(whole(cycleStart + 1L))
            .divideAndRemainder(whole((long) size() - cycleStart));
    return new BigInteger[] {cycles[0], cycles[1].add(whole(cycleStart + 1L))};
  }

  private static BigInteger whole(long number) {
    return BigInteger.valueOf(number);
  }
}
