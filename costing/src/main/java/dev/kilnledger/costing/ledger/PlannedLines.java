package dev.kilnledger.costing.ledger;

import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.resource.Staircase;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/**
 * The lines around the cash of what is planned for n: no cover is cheaper than the lowest price per
 * content, and none need be dearer than that offer alone, with the packs that its breaks and steps
 * ask for.
 */
final class PlannedLines {
  private final PlannedForN buying;
  private final CashLines.Sums sums = new CashLines.Sums();

  private PlannedLines(PlannedForN buying) {
    this.buying = buying;
  }

  static CashLines of(PlannedForN buying, BigInteger[][] weights, BigInteger[] orderWeights) {
    PlannedLines lines = new PlannedLines(buying);
    Bought first = buying.through(1);
    Bought alone = new PlannedForN(buying.items(), List.of()).through(1);
    for (int i = 0; i < weights.length; i++) {
      lines.add(i, weights[i], alone.counts[i]);
    }
    for (int i = 0; i < orderWeights.length; i++) {
      lines.sums.addBetween(Fraction.ZERO, Fraction.of(orderWeights[i]));
      lines.sums.addFixed(Fraction.of(orderWeights[i].multiply(first.orders[i])));
    }
    if (orderWeights.length > 0 && !buying.isPlain()) {
      lines.sums.repeatNever();
    }
    return lines.sums.lines();
  }

  private void add(int index, BigInteger[] weights, BigInteger[] first) {
    Item item = buying.items().get(index);
    Staircase staircase = item.staircase;
    if (!item.inPacks() || item.isPlain()) {
      sums.addGrowing(staircase, Fraction.of(weights[0].multiply(item.divisor())));
      sums.repeat(staircase.period(), staircase.settled());
      if (staircase.growth().signum() == 0) {
        sums.addFixed(Fraction.of(weights[0].multiply(staircase.count(Long.MAX_VALUE))));
      }
      return;
    }
    if (staircase.perUse().signum() == 0) {
      Fraction once = Fraction.ZERO;
      for (int i = 0; i < first.length; i++) {
        once = once.plus(Fraction.of(weights[i].multiply(first[i])));
      }
      sums.addBetween(once, once);
      sums.addFixed(once);
      return;
    }
    Buying.Cycle cycle =
        buying
            .cycle(index)
            .orElseThrow(
                () ->
                    new ArithmeticException(
                        "all offers of "
                            + item.resource.item()
                            + " are limited; accepted is one without a limit"));
    addMixed(item, weights, cycle);
  }

  private void addMixed(Item item, BigInteger[] weights, Buying.Cycle cycle) {
    int best = 0;
    while (cycle.packs().get(best).signum() == 0) {
      best++;
    }
    BigInteger cost = weights[best].multiply(cycle.packs().get(best));
    sums.addGrowing(item.staircase.byMeasureOf(cycle.content()), Fraction.of(cost));
    sums.addBetween(
        Fraction.ZERO.minus(saved(item, weights, cost, cycle.content())),
        Fraction.of(atMostMore(item, weights, best)));
    sums.repeatNever();
  }

  /** What limited offers can save against the best price that goes on, rounded up. */
  private static Fraction saved(
      Item item, BigInteger[] weights, BigInteger cost, BigDecimal content) {
    Fraction saved = Fraction.ZERO;
    for (int i = 0; i < item.prices.size(); i++) {
      Optional<Long> limit = item.prices.get(i).offer().available();
      if (limit.isPresent()) {
        BigInteger worth =
            new BigDecimal(cost)
                .multiply(item.holds(i))
                .divide(content, 0, RoundingMode.CEILING)
                .toBigIntegerExact();
        BigInteger most = worth.subtract(weights[i]).max(BigInteger.ZERO);
        saved = saved.plus(Fraction.of(most.multiply(BigInteger.valueOf(limit.get()))));
      }
    }
    return saved;
  }

  /** By how much an order of the best offer alone can lie above its best price per content. */
  private static BigInteger atMostMore(Item item, BigInteger[] weights, int best) {
    Offer offer = item.prices.get(best).offer();
    long packs = offer.minimumOrder() + 2 * offer.orderIncrement();
    if (!offer.breaks().isEmpty()) {
      packs += offer.breaks().get(offer.breaks().size() - 1).fromPacks();
    }
    return weights[item.prices.indexOf(new Priced(offer, offer.price()))].multiply(
        BigInteger.valueOf(packs));
  }
}
