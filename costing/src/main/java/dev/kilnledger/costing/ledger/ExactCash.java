package dev.kilnledger.costing.ledger;

import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.Staircase;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The cash for n parts as a whole number, for searches and simulations that ask for it a million
 * times: money times a {@link #denominator} that clears the decimals of all prices and the divisors
 * of all counts. It is the total of the ledger's account of parts 1 to n, from the same counts of
 * packs; and it knows two straight lines that the cash never leaves.
 */
public final class ExactCash {
  private final List<Term> terms = new ArrayList<>();
  private final List<Orders> shipping = new ArrayList<>();
  private final BigInteger denominator;
  private BigInteger growth = BigInteger.ZERO;
  private BigInteger lowest = BigInteger.ZERO;
  private BigInteger highest = BigInteger.ZERO;
  private BigInteger fixed = BigInteger.ZERO;
  private BigInteger period = BigInteger.ONE;
  private long settled = 1;

  private record Term(Driver driver, Staircase staircase, BigInteger weight) {}

  private record Orders(Freight freight, BigInteger weight) {}

  private ExactCash(LedgerPlan plan, List<Resource> resources) {
    List<Staircase> staircases = new ArrayList<>();
    List<Price> prices = new ArrayList<>();
    BigInteger common = BigInteger.ONE;
    for (Resource resource : resources) {
      Offer offer = plan.offerOf(resource);
      Staircase staircase = resource.staircase(offer, plan.workload());
      Price price = Price.of(offer, plan);
      staircases.add(staircase);
      prices.add(price);
      common = lcm(common, price.denominator.multiply(staircase.lineDivisor()));
    }
    List<Freight> freights = Freight.of(plan, resources);
    for (Freight freight : freights) {
      BigInteger divisor = Price.of(freight.order, plan).denominator;
      common = lcm(common, divisor);
      for (Staircase orders : freight.orders) {
        common = lcm(common, divisor.multiply(orders.lineDivisor()));
      }
    }
    denominator = common;
    for (int i = 0; i < staircases.size(); i++) {
      Staircase staircase = staircases.get(i);
      Price price = prices.get(i);
      BigInteger weight = price.over(denominator, staircase.divisor());
      terms.add(new Term(resources.get(i).driver().event(), staircase, weight));
      enclose(staircase, price);
      if (staircase.growth().signum() == 0) {
        fixed = fixed.add(weight.multiply(staircase.count(Long.MAX_VALUE)));
      }
    }
    for (Freight freight : freights) {
      Price price = Price.of(freight.order, plan);
      BigInteger weight = price.over(denominator, BigInteger.ONE);
      shipping.add(new Orders(freight, weight));
      ship(freight, price, weight);
    }
  }

  /**
   * The cash of a plan.
   *
   * @param plan what is needed and what it costs
   * @return its cash for any number of parts
   */
  public static ExactCash of(LedgerPlan plan) {
    return new ExactCash(plan, plan.resources());
  }

  /**
   * The cash for some resources of a plan.
   *
   * @param plan what is needed and what it costs
   * @param resources some of its resources, or none
   * @return their cash for any number of parts
   */
  public static ExactCash of(LedgerPlan plan, List<Resource> resources) {
    return new ExactCash(plan, resources);
  }

  private void enclose(Staircase staircase, Price price) {
    BigInteger weight = price.over(denominator, staircase.lineDivisor());
    growth = growth.add(weight.multiply(staircase.growth()));
    lowest = lowest.add(weight.multiply(staircase.lowest()));
    highest = highest.add(weight.multiply(staircase.highest()));
    repeat(staircase);
  }

  private void repeat(Staircase staircase) {
    period = lcm(period, staircase.period());
    settled = Math.max(settled, staircase.settled());
  }

  private void ship(Freight freight, Price price, BigInteger weight) {
    BigInteger first = freight.through(1).multiply(weight);
    if (freight.grows()) {
      fixed = fixed.add(first);
      lowest = lowest.add(first);
      highest = highest.add(first);
      for (Staircase orders : freight.orders) {
        BigInteger before = orders.count(1).multiply(weight);
        enclose(orders, price);
        lowest = lowest.subtract(before);
        highest = highest.subtract(before);
      }
    } else {
      freight.orders.forEach(this::repeat);
      fixed = fixed.add(freight.through(Long.MAX_VALUE).multiply(weight));
      highest = highest.add(weight);
    }
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
   */
  public BigInteger through(long parts) {
    BigInteger cash = BigInteger.ZERO;
    for (Term term : terms) {
      cash = cash.add(term.weight.multiply(term.staircase.count(parts)));
    }
    for (Orders orders : shipping) {
      cash = cash.add(orders.weight.multiply(orders.freight.through(parts)));
    }
    return cash;
  }

  /** The cash for events drawn at random. */
  BigInteger of(Map<Driver, BigInteger> events) {
    BigInteger cash = BigInteger.ZERO;
    for (Term term : terms) {
      cash = cash.add(term.weight.multiply(term.staircase.countOf(number(events, term.driver))));
    }
    for (Orders orders : shipping) {
      cash = cash.add(orders.weight.multiply(orders.freight.of(events)));
    }
    return cash;
  }

  /** {@return by how much the cash rises per part in the long run: the slope of both lines} */
  public BigInteger growth() {
    return growth;
  }

  /** {@return the intercept of the line that the cash for 1 or more parts never lies below} */
  public BigInteger lowest() {
    return lowest;
  }

  /** {@return the intercept of the line that the cash for 1 or more parts never lies above} */
  public BigInteger highest() {
    return highest;
  }

  /** {@return what does not grow with the number of parts} */
  public BigInteger fixed() {
    return fixed;
  }

  /** {@return after how many parts the purchases repeat their pattern, once {@link #settled}} */
  public BigInteger period() {
    return period;
  }

  /** {@return the number of parts from which on the pattern holds, 1 or more} */
  public long settled() {
    return settled;
  }

  /** The events of a driver. */
  static BigInteger number(Map<Driver, BigInteger> events, Driver driver) {
    BigInteger number = events.get(driver);
    if (number == null) {
      throw new IllegalStateException("no events of " + driver);
    }
    return number;
  }

  private static BigInteger lcm(BigInteger a, BigInteger b) {
    return a.divide(a.gcd(b)).multiply(b);
  }

  /** The price of an offer with the surcharges on it, as a fraction. */
  private record Price(BigInteger numerator, BigInteger denominator) {
    static Price of(Offer offer, LedgerPlan plan) {
      BigDecimal price = offer.price().getAmount().multiply(Surcharges.factor(offer, plan));
      BigDecimal divisor = Surcharges.divisor(offer, plan);
      int scale = Math.max(0, Math.max(price.scale(), divisor.scale()));
      BigInteger numerator = price.setScale(scale).unscaledValue();
      BigInteger denominator = divisor.setScale(scale).unscaledValue();
      BigInteger gcd = numerator.gcd(denominator);
      return new Price(numerator.divide(gcd), denominator.divide(gcd));
    }

    /** This price over a divisor, as a whole number of parts of the common denominator. */
    BigInteger over(BigInteger common, BigInteger divisor) {
      return numerator.multiply(common.divide(denominator.multiply(divisor)));
    }
  }
}
