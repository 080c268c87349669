package dev.kilnledger.costing.ledger;

import dev.kilnledger.costing.resource.Driver;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A rule of buying, applied to items and freights. */
interface Buying {
  List<Item> items();

  List<Freight> freights();

  /** What is bought for the first n parts, n being zero or more. */
  Bought through(long parts);

  /** What is bought for n parts where as many events happen as were drawn at random. */
  Bought of(Map<Driver, BigInteger> events, long parts);

  /** How parts beyond the first n are bought. */
  Buying after(long parts);

  /** What is bought of an item over and over in the long run; empty if nothing is. */
  Optional<Cycle> cycle(int item);

  /** How many orders to a supplier a part takes in the long run. */
  Share ordersPerPart(int freight);

  /**
   * Over how many parts the longest lasting purchase of an item for the first n parts is used up,
   * of the first and the last one; empty if it is for good.
   */
  Optional<Long> lasts(int item, long parts);

  /** How the packs of an item are counted, x being what the item's own formula gives. */
  String formula(int item);

  /** How the orders to a supplier are counted. */
  String orderFormula(int freight);

  /**
   * The lines around the cash.
   *
   * @param weights what a count costs, by item and price
   * @param orderWeights what an order costs
   */
  CashLines lines(BigInteger[][] weights, BigInteger[] orderWeights);

  /** Packs at each price, and what they hold together in the measure of the need. */
  record Cycle(List<BigInteger> packs, BigDecimal content) {}

  /** A fraction, and over which parts it was taken. */
  record Share(BigInteger numerator, BigInteger denominator, String span) {}

  /** What is not bought in packs. */
  static BigInteger[] measured(Item item, long parts) {
    return new BigInteger[] {item.staircase.count(parts)};
  }

  /** What is not bought in packs, for events drawn at random. */
  static BigInteger[] measured(Item item, Map<Driver, BigInteger> events) {
    return new BigInteger[] {item.staircase.countOf(number(item, events))};
  }

  /** The events of an item's driver. */
  static BigInteger number(Item item, Map<Driver, BigInteger> events) {
    Driver driver = item.resource.driver().event();
    BigInteger number = events.get(driver);
    if (number == null) {
      throw new IllegalStateException("no events of " + driver);
    }
    return number;
  }
}
