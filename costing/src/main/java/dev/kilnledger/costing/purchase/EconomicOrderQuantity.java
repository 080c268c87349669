package dev.kilnledger.costing.purchase;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBreak;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.TradeUnits;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import javax.measure.quantity.Dimensionless;
import org.joda.money.BigMoney;

/**
 * The order quantity that makes a year cheapest when use is even: a year's cost of orders of Q
 * packs is D cost(Q) / Q + D S / Q + h cost(Q) / 2, with D the packs used in a year, S the cost of
 * placing an order, and h the share of their value that packs cost to hold for a year.
 *
 * <p>Within one price the cost of an order is f + c Q, and the year is cheapest at Q = sqrt(2 D (S
 * + f) / (h c)); f is zero for breaks on all units (textbook formula, from memory). The order
 * quantities next to it that can be ordered at that price, and the first and last at each price,
 * are compared exactly; equal ones are decided for the smaller order. Amounts are kept to 34
 * digits.
 */
public final class EconomicOrderQuantity {
  private static final EconomicOrderQuantity STANDARD = new EconomicOrderQuantity();

  private EconomicOrderQuantity() {}

  /** {@return the calculator} */
  public static EconomicOrderQuantity standard() {
    return STANDARD;
  }

  /**
   * The best order quantity.
   *
   * @param offer an offer of packs
   * @param yearlyUse how much a year uses, more than zero, in the offer's measure
   * @param orderCost what placing an order costs, zero or more, such as the shipping
   * @param holdingRate the share of the value of stock that a year of holding costs, above zero
   * @return the quantity and a year's cost
   * @throws IllegalArgumentException with all problems
   */
  public OrderQuantity best(
      Offer offer, Amount<?> yearlyUse, BigMoney orderCost, Amount<Dimensionless> holdingRate) {
    new Problems("order quantity of " + offer.item())
        .require(!offer.metered(), "it is sold by measure; accepted are packs")
        .require(
            offer.price().isPositive()
                && offer.breaks().stream().allMatch(step -> step.price().isPositive()),
            "some packs cost nothing; accepted are prices above zero")
        .positive("yearly use", yearlyUse)
        .require(
            yearlyUse.kind().equals(offer.content().kind()),
            "yearly use is "
                + yearlyUse
                + "; accepted is a measure of "
                + offer.content().kind()
                + ", in which it is sold")
        .require(
            !orderCost.isNegative()
                && orderCost.getCurrencyUnit().equals(offer.price().getCurrencyUnit()),
            "order cost is "
                + orderCost
                + "; accepted is zero or more in "
                + offer.price().getCurrencyUnit())
        .positive("holding rate", holdingRate)
        .refuseIfAny();
    BigDecimal packsPerYear =
        Market.si(yearlyUse).divide(Market.si(offer.content()), MathContext.DECIMAL128);
    BigDecimal rate = holdingRate.decimalIn(TradeUnits.ONE);
    Optional<OrderQuantity> best = Optional.empty();
    for (long packs : candidates(offer, packsPerYear, orderCost, rate)) {
      OrderQuantity candidate = at(offer, packs, packsPerYear, orderCost, rate);
      if (best.filter(known -> !candidate.total().isLessThan(known.total())).isEmpty()) {
        best = Optional.of(candidate);
      }
    }
    return best.orElseThrow();
  }

  private static SortedSet<Long> candidates(
      Offer offer, BigDecimal packsPerYear, BigMoney orderCost, BigDecimal rate) {
    int scale = offer.price().getScale();
    for (PriceBreak step : offer.breaks()) {
      scale = Math.max(scale, step.price().getScale());
    }
    SortedSet<Long> candidates = new TreeSet<>();
    Pack pack = new Pack(offer, 1, scale);
    for (Pack.Tier tier : pack.tiers()) {
      add(candidates, offer, tier.first());
      BigInteger fixed =
          pack.cost(tier.first()).subtract(tier.price().multiply(BigInteger.valueOf(tier.first())));
      BigDecimal square =
          packsPerYear
              .multiply(BigDecimal.valueOf(2))
              .multiply(orderCost.getAmount().add(new BigDecimal(fixed, scale)))
              .divide(rate.multiply(new BigDecimal(tier.price(), scale)), MathContext.DECIMAL128);
      long root =
          square.sqrt(MathContext.DECIMAL64).setScale(0, RoundingMode.DOWN).longValueExact();
      add(candidates, offer, root);
      add(candidates, offer, root + 1);
    }
    return candidates;
  }

  /** Adds the orders next to a number of packs on both sides. */
  private static void add(SortedSet<Long> candidates, Offer offer, long packs) {
    long wanted = Math.min(packs, offer.available().orElse(Long.MAX_VALUE));
    long below = wanted - Math.floorMod(wanted, offer.orderIncrement());
    for (long order : new long[] {below, offer.orderOf(wanted)}) {
      if (order >= offer.orderOf(1) && offer.available().filter(most -> order > most).isEmpty()) {
        candidates.add(order);
      }
    }
  }

  private static OrderQuantity at(
      Offer offer, long packs, BigDecimal packsPerYear, BigMoney orderCost, BigDecimal rate) {
    BigDecimal orders = packsPerYear.divide(BigDecimal.valueOf(packs), MathContext.DECIMAL128);
    BigMoney order = offer.cost(packs);
    return OrderQuantity.builder()
        .offer(offer)
        .packs(packs)
        .purchase(times(order, orders))
        .ordering(times(orderCost, orders))
        .holding(times(order, rate.divide(BigDecimal.valueOf(2))))
        .build();
  }

  private static BigMoney times(BigMoney money, BigDecimal factor) {
    return BigMoney.of(
        money.getCurrencyUnit(), money.getAmount().multiply(factor, MathContext.DECIMAL128));
  }
}
