package dev.kilnledger.costing.ledger;

import dev.kilnledger.costing.resource.Driver;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.joda.money.BigMoney;

/**
 * The orders that go to one supplier, bought as needed: all that falls due with one part is one
 * order, for which the charge is paid unless its goods are worth enough.
 *
 * <p>Orders are counted one by one up to the end of the first period in which the purchases of all
 * items repeat together, and from the counts of that period beyond it. What has been counted is
 * kept, as the same question comes often; so it is when the thread is interrupted, which ends the
 * count with a {@link CancellationException}.
 */
final class SupplierOrders {
  /** How many orders are counted one by one. */
  static final int MOST_ORDERS = 1 << 20;

  /** Up to how many purchases the long run is told from a whole period. */
  private static final int MOST_IN_PATTERN = 1 << 15;

  final Freight freight;
  final List<ItemPurchases> items;
  private final BigInteger period;
  private final long settled;

  /** The parts for which an order is paid, in ascending order, as far as they are counted. */
  private final List<Long> paid = new ArrayList<>();

  private final Walk walk;

  SupplierOrders(Freight freight, List<ItemPurchases> all) {
    this.freight = freight;
    this.items = all.stream().filter(one -> one.item.isFrom(freight.supplier())).toList();
    BigInteger together = BigInteger.ONE;
    long from = 1;
    for (ItemPurchases one : items) {
      if (!one.isOpen()) {
        BigInteger other = one.period();
        together = together.divide(together.gcd(other)).multiply(other);
        from = Math.max(from, one.settled());
      }
    }
    this.period = together;
    this.settled = from;
    this.walk = new Walk();
  }

  /** How many orders are paid for the first n parts. */
  BigInteger through(long parts) {
    BigInteger end = BigInteger.valueOf(settled).add(period);
    BigInteger asked = BigInteger.valueOf(parts);
    boolean open = items.stream().anyMatch(ItemPurchases::isOpen);
    if (open || asked.compareTo(end) < 0) {
      return counted(parts);
    }
    BigInteger[] rounds = asked.subtract(BigInteger.valueOf(settled)).divideAndRemainder(period);
    BigInteger inPeriod = counted(end.longValueExact()).subtract(counted(settled));
    return rounds[0].multiply(inPeriod).add(counted(settled + rounds[1].longValueExact()));
  }

  /** The parts after which the orders repeat; empty if that takes too long to find out. */
  Optional<BigInteger> period() {
    BigInteger end = BigInteger.valueOf(settled).add(period);
    if (items.stream().anyMatch(ItemPurchases::isOpen) || end.bitLength() >= Long.SIZE) {
      return Optional.empty();
    }
    BigInteger purchases = BigInteger.ZERO;
    for (ItemPurchases one : items) {
      purchases = purchases.add(one.through(end.longValueExact()));
    }
    return purchases.compareTo(BigInteger.valueOf(MOST_IN_PATTERN)) <= 0
        ? Optional.of(period)
        : Optional.empty();
  }

  long settled() {
    return settled;
  }

  /**
   * The share of the parts for which an order is paid, in the long run and exact; empty if that
   * takes too long to find out.
   */
  Optional<Fraction> perPart() {
    if (items.stream().anyMatch(ItemPurchases::isOpen)) {
      return Optional.empty();
    }
    if (period().isPresent()) {
      long end = settled + period.longValueExact();
      return Optional.of(Fraction.of(through(end).subtract(through(settled)), period));
    }
    if (freight.terms.freeFrom().isPresent()) {
      return Optional.empty();
    }
    return LongRunOrders.of(items, period, this::isPaid).map(orders -> Fraction.of(orders, period));
  }

  private boolean isPaid(LongRunOrders.Made made) {
    Order order = new Order();
    order.add(made.item(), made.before(), made.after());
    return order.isPaid();
  }

  /** The parts up to n for which an order is paid; n has been counted. */
  synchronized List<Long> paidThrough(long parts) {
    return List.copyOf(paid.subList(0, counted(parts).intValueExact()));
  }

  private synchronized BigInteger counted(long parts) {
    if (!walk.through(parts)) {
      throw new IllegalArgumentException(
          "the orders to "
              + freight.supplier()
              + " do not repeat within "
              + MOST_ORDERS
              + " of them; accepted are fewer parts, or rounder contents and quantities");
    }
    int below = 0;
    int above = paid.size();
    while (below < above) {
      int middle = (below + above) >>> 1;
      if (paid.get(middle) <= parts) {
        below = middle + 1;
      } else {
        above = middle;
      }
    }
    return BigInteger.valueOf(below);
  }

  /**
   * How many orders are paid where events are drawn at random for n parts, their need being spread
   * over the parts as the need foretold is.
   */
  BigInteger of(Map<Driver, BigInteger> events, long parts) {
    List<BigInteger> made = new ArrayList<>();
    List<BigInteger> wanted = new ArrayList<>();
    for (ItemPurchases one : items) {
      made.add(BigInteger.ZERO);
      wanted.add(one.of(events));
    }
    BigInteger count = BigInteger.ZERO;
    long part = 0;
    while (part < parts) {
      long next = Long.MAX_VALUE;
      List<Long> due = new ArrayList<>();
      for (int i = 0; i < made.size(); i++) {
        boolean done = made.get(i).compareTo(wanted.get(i)) >= 0;
        due.add(
            done
                ? Long.MAX_VALUE
                : items.get(i).drawnPartAfter(made.get(i), events, Math.max(1, part), parts));
        next = Math.min(next, due.get(i));
      }
      if (next == Long.MAX_VALUE) {
        return count;
      }
      Order order = new Order();
      for (int i = 0; i < made.size(); i++) {
        while (due.get(i) == next && made.get(i).compareTo(wanted.get(i)) < 0) {
          BigInteger more = made.get(i).add(BigInteger.ONE);
          order.add(items.get(i), made.get(i), more);
          made.set(i, more);
          boolean done = more.compareTo(wanted.get(i)) >= 0;
          due.set(
              i, done ? Long.MAX_VALUE : items.get(i).drawnPartAfter(more, events, next, parts));
        }
      }
      count = order.isPaid() ? count.add(BigInteger.ONE) : count;
      part = next;
    }
    return count;
  }

  /** What one order holds; its value only where that matters. */
  private final class Order {
    private BigMoney goods = BigMoney.zero(freight.terms.charge().getCurrencyUnit());
    private boolean placed;

    void add(ItemPurchases one, BigInteger before, BigInteger after) {
      BigInteger[] had = one.sequence.packs(before);
      BigInteger[] has = one.sequence.packs(after);
      for (int i = 0; i < has.length; i++) {
        Priced priced = one.item.prices.get(i);
        BigInteger packs = has[i].subtract(had[i]);
        if (packs.signum() > 0 && priced.offer().supplier().equals(freight.supplier())) {
          placed = true;
          if (freight.terms.freeFrom().isPresent()) {
            goods = goods.plus(priced.price().multipliedBy(new BigDecimal(packs)));
          }
        }
      }
    }

    boolean isPaid() {
      return placed && freight.isPaidOn(goods);
    }
  }

  /** Goes from order to order. */
  private final class Walk {
    private final List<BigInteger> made = new ArrayList<>();
    private final List<Long> due = new ArrayList<>();
    private long reached;
    private int orders;

    Walk() {
      for (ItemPurchases one : items) {
        made.add(BigInteger.ZERO);
        due.add(one.partAfter(BigInteger.ZERO, 1).orElse(Long.MAX_VALUE));
      }
    }

    /** Counts the orders of the first n parts; tells whether they are not too many. */
    boolean through(long parts) {
      while (reached < parts) {
        long next = due.stream().min(Long::compare).orElse(Long.MAX_VALUE);
        if (next > parts || next == Long.MAX_VALUE) {
          reached = parts;
          return true;
        }
        if (orders == MOST_ORDERS) {
          return false;
        }
        if (orders % 4096 == 0 && Thread.currentThread().isInterrupted()) {
          throw new CancellationException(
              "interrupted while the orders to " + freight.supplier() + " were counted");
        }
        orders++;
        Order order = new Order();
        for (int i = 0; i < due.size(); i++) {
          if (due.get(i) == next) {
            ItemPurchases one = items.get(i);
            BigInteger after = one.through(next);
            order.add(one, made.get(i), after);
            made.set(i, after);
            due.set(i, one.partAfter(after, next + 1).orElse(Long.MAX_VALUE));
          }
        }
        if (order.isPaid()) {
          paid.add(next);
        }
        reached = next;
      }
      return true;
    }
  }
}
