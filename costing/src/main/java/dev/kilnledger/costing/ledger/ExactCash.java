package dev.kilnledger.costing.ledger;

import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Resource;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The cash for n parts as a whole number, for searches and simulations that ask for it a million
 * times: money times a {@link #denominator} that clears the decimals of all prices and the divisors
 * of all counts. It is the total of the ledger's account of parts 1 to n, from the same counts of
 * packs; and it knows {@linkplain CashLines straight lines} that the cash never leaves.
 */
public final class ExactCash {
  private final Buying buying;

  /** What one of each count costs, by item and price, over the denominator. */
  private final BigInteger[][] weights;

  /** What one order costs, by freight. */
  private final BigInteger[] orderWeights;

  private final BigInteger denominator;

  private ExactCash(LedgerPlan plan, Buying buying) {
    this.buying = buying;
    List<List<Price>> prices = new ArrayList<>();
    BigInteger common = BigInteger.ONE;
    for (int i = 0; i < buying.items().size(); i++) {
      Item item = buying.items().get(i);
      List<Price> ofItem =
          item.prices.stream()
              .map(priced -> Price.of(priced.offer(), priced.price(), plan))
              .toList();
      prices.add(ofItem);
      for (Price price : ofItem) {
        common = lcm(common, price.denominator().multiply(item.divisor()));
      }
    }
    List<Price> charges =
        buying.freights().stream()
            .map(freight -> Price.of(freight.order, freight.order.price(), plan))
            .toList();
    for (Price charge : charges) {
      common = lcm(common, charge.denominator());
    }
    denominator = common;
    weights = new BigInteger[prices.size()][];
    for (int i = 0; i < weights.length; i++) {
      BigInteger divisor = buying.items().get(i).divisor();
      weights[i] =
          prices.get(i).stream()
              .map(price -> price.over(denominator, divisor))
              .toArray(BigInteger[]::new);
    }
    orderWeights =
        charges.stream()
            .map(price -> price.over(denominator, BigInteger.ONE))
            .toArray(BigInteger[]::new);
  }

  /**
   * The cash of a plan.
   *
   * @param plan what is needed and what it costs
   * @return its cash for any number of parts
   */
  public static ExactCash of(LedgerPlan plan) {
    return new ExactCash(plan, plan.purchases().buying);
  }

  /**
   * The cash for some resources of a plan.
   *
   * @param plan what is needed and what it costs
   * @param resources some of its resources, or none
   * @return their cash for any number of parts
   */
  public static ExactCash of(LedgerPlan plan, List<Resource> resources) {
    return new ExactCash(plan, Purchases.buying(plan, Item.of(plan, resources)));
  }

  /** {@return what every amount here is divided by to be money} */
  public BigInteger denominator() {
    return denominator;
  }

  /**
   * The cash for the first n parts.
   *
   * @param parts n, zero or more
   * @return the cash, over {@link #denominator}
   * @throws IllegalArgumentException if the packs that can be had do not suffice for n
   */
  public BigInteger through(long parts) {
    return cash(buying.through(parts));
  }

  /** The cash for n parts and events drawn at random. */
  BigInteger of(Map<Driver, BigInteger> events, long parts) {
    return cash(buying.of(events, parts));
  }

  private BigInteger cash(Bought bought) {
    BigInteger cash = BigInteger.ZERO;
    for (int i = 0; i < weights.length; i++) {
      for (int j = 0; j < weights[i].length; j++) {
        cash = cash.add(weights[i][j].multiply(bought.counts[i][j]));
      }
    }
    for (int i = 0; i < orderWeights.length; i++) {
      cash = cash.add(orderWeights[i].multiply(bought.orders[i]));
    }
    return cash;
  }

  /**
   * {@return the lines between which the cash lies}
   *
   * @throws ArithmeticException if what is bought does not go on in a pattern, as where all offers
   *     of an item are limited
   */
  public CashLines lines() {
    return buying.lines(weights, orderWeights);
  }

  static BigInteger lcm(BigInteger a, BigInteger b) {
    return a.divide(a.gcd(b)).multiply(b);
  }
}
