package dev.kilnledger.costing.ledger;

import dev.kilnledger.costing.resource.Staircase;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;

/** The lines around the cash of what is bought as needed. */
final class AsNeededLines {
  private final CashLines.Sums sums = new CashLines.Sums();

  private AsNeededLines() {}

  static CashLines of(AsNeeded buying, BigInteger[][] weights, BigInteger[] orderWeights) {
    AsNeededLines lines = new AsNeededLines();
    for (int i = 0; i < weights.length; i++) {
      Optional<ItemPurchases> purchases = buying.purchases().get(i);
      if (purchases.isPresent()) {
        lines.add(purchases.get(), weights[i]);
      } else {
        lines.addMeasured(buying.items().get(i), weights[i][0]);
      }
    }
    for (int i = 0; i < orderWeights.length; i++) {
      lines.add(buying.orders().get(i), orderWeights[i]);
    }
    return lines.sums.lines();
  }

  private void addMeasured(Item item, BigInteger weight) {
    Staircase staircase = item.staircase;
    sums.addGrowing(staircase, Fraction.of(weight.multiply(staircase.divisor())));
    sums.repeat(staircase.period(), staircase.settled());
    if (staircase.growth().signum() == 0) {
      sums.addFixed(Fraction.of(weight.multiply(staircase.count(Long.MAX_VALUE))));
    }
  }

  private void add(ItemPurchases one, BigInteger[] weights) {
    if (one.isOpen()) {
      throw new ArithmeticException(one.sequence.end());
    }
    if (one.item.staircase.perUse().signum() == 0) {
      Fraction once = Fraction.of(cost(one.sequence.packs(one.through(1)), weights));
      sums.addBetween(once, once);
      sums.addFixed(once);
      return;
    }
    BigInteger[] costs = new BigInteger[one.sequence.size() + 1];
    for (int i = 0; i < costs.length; i++) {
      costs[i] = cost(one.sequence.packs(BigInteger.valueOf(i)), weights);
    }
    enclose(one, costs);
    sums.repeat(one.period(), one.settled());
  }

  /** Adds the lines of something that each purchase adds to. */
  private void enclose(ItemPurchases one, BigInteger[] costs) {
    PurchaseSequence sequence = one.sequence;
    BigInteger cycle = costs[sequence.size()].subtract(costs[sequence.first()]);
    Fraction perUnit = Fraction.of(cycle, BigInteger.valueOf(sequence.cycleContent()));
    Fraction low = Fraction.ZERO;
    Fraction high = Fraction.ZERO;
    for (int i = 1; i < costs.length; i++) {
      Fraction cost = Fraction.of(costs[i]);
      low = low.min(cost.minus(perUnit.times(BigInteger.valueOf(sequence.reach(i)))));
      high = high.max(cost.minus(perUnit.times(BigInteger.valueOf(sequence.reach(i - 1)))));
    }
    sums.addGrowing(one.inCycles(), Fraction.of(cycle));
    sums.addBetween(low, high);
  }

  private void add(SupplierOrders orders, BigInteger weight) {
    Optional<BigInteger> period = orders.period();
    if (period.isPresent()) {
      addRepeating(orders, period.get(), weight);
      return;
    }
    sums.repeatNever();
    // There is no order without a purchase.
    for (ItemPurchases one : orders.items) {
      addAtMost(one, weight);
    }
  }

  private void addRepeating(SupplierOrders orders, BigInteger period, BigInteger weight) {
    long settled = orders.settled();
    long end = settled + period.longValueExact();
    BigInteger rise = orders.through(end).subtract(orders.through(settled));
    // Times the period: orders x period - rise x parts, at its extremes at both ends
    // and next to paid parts.
    BigInteger low = period.multiply(orders.through(end)).subtract(times(rise, end));
    BigInteger high = low.max(period.multiply(orders.through(1)).subtract(rise));
    List<Long> paid = orders.paidThrough(end);
    for (int i = 0; i < paid.size(); i++) {
      long part = paid.get(i);
      high = high.max(times(period, i + 1L).subtract(times(rise, part)));
      if (part > 1) {
        low = low.min(times(period, i).subtract(times(rise, part - 1)));
      }
    }
    sums.addAlong(
        Fraction.of(rise.multiply(weight), period),
        Fraction.of(low.multiply(weight), period),
        Fraction.of(high.multiply(weight), period));
    sums.repeat(period, settled);
  }

  private void addAtMost(ItemPurchases one, BigInteger weight) {
    if (one.item.staircase.perUse().signum() == 0) {
      sums.addBetween(Fraction.ZERO, Fraction.of(weight.multiply(one.through(1))));
      return;
    }
    PurchaseSequence sequence = one.sequence;
    long cycle = (long) sequence.size() - sequence.first();
    Fraction perUnit =
        Fraction.of(BigInteger.valueOf(cycle), BigInteger.valueOf(sequence.cycleContent()));
    Fraction high = Fraction.ZERO;
    for (int i = 1; i <= sequence.size(); i++) {
      high =
          high.max(
              Fraction.of(BigInteger.valueOf(i))
                  .minus(perUnit.times(BigInteger.valueOf(sequence.reach(i - 1)))));
    }
    sums.addHigh(one.inCycles(), Fraction.of(weight.multiply(BigInteger.valueOf(cycle))));
    sums.addBetween(Fraction.ZERO, high.times(weight));
  }

  private static BigInteger cost(BigInteger[] packs, BigInteger[] weights) {
    BigInteger cost = BigInteger.ZERO;
    for (int i = 0; i < packs.length; i++) {
      cost = cost.add(packs[i].multiply(weights[i]));
    }
    return cost;
  }

  private static BigInteger times(BigInteger factor, long number) {
    return factor.multiply(BigInteger.valueOf(number));
  }
}
