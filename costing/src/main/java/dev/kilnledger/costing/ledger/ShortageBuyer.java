package dev.kilnledger.costing.ledger;

import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.purchase.Purchase;
import dev.kilnledger.costing.purchase.PurchasePlanner;
import dev.kilnledger.costing.purchase.Supply;
import dev.kilnledger.costing.purchase.Wanted;
import dev.kilnledger.costing.resource.Staircase;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Buys one item as needed: a use that finds less than it takes has what it lacks covered by the
 * cheapest order, and what that order holds beyond it stays in stock.
 *
 * <p>What a use lacks lies between nothing and what it takes, and it alone decides the order, so
 * that orders repeat as soon as the same amount is lacking again. Where the cheapest order of all
 * holds enough for any use, it is the order of every use, and there is nothing to search.
 */
final class ShortageBuyer {
  /** How many purchases are listed before the search for the pattern is given up. */
  static final int MOST_PURCHASES = 1 << 17;

  private final Item item;

  /** What a use takes. */
  private final BigDecimal step;

  private final PurchaseSequence sequence;
  private final Map<Shortage, Order> orders = new HashMap<>();

  /** The measure of which every pack is a whole multiple. */
  private final BigDecimal unit;

  /** What is lacking, in the largest measure of all packs, and what can still be had. */
  private record Shortage(BigInteger lacking, List<Long> available) {}

  /** The amount lacking, exactly, and what can still be had. */
  private record State(BigDecimal lacking, List<Long> available) {}

  /** An order: the packs by price, what they hold, and what can be had after it. */
  private static final class Order {
    final long[] counts;
    final long content;
    final List<Long> available;

    Order(long[] counts, long content, List<Long> available) {
      this.counts = counts;
      this.content = content;
      this.available = available;
    }
  }

  private ShortageBuyer(Item item, Staircase need) {
    this.item = item;
    this.unit = item.supplies.isEmpty() ? BigDecimal.ONE : item.packUnit();
    this.step = need.perUse();
    this.sequence = new PurchaseSequence(unit, item.prices.size());
  }

  /**
   * The purchases of an item.
   *
   * @param item an item bought in packs
   * @param need its need, which may have more in stock than the item's own
   */
  static PurchaseSequence sequence(Item item, Staircase need) {
    ShortageBuyer buyer = new ShortageBuyer(item, need);
    BigDecimal first = buyer.firstShortage(need.lacking(BigInteger.ONE));
    if (item.supplies.isEmpty()) {
      buyer.sequence.endBecause(item.usedUp());
    } else if (item.isPlain()) {
      // One pack after the other, as many as it takes.
      buyer.sequence.add(new long[] {1}, 1);
      buyer.sequence.repeatAfter(0);
    } else if (first.signum() > 0 && !buyer.buyAlwaysTheSame(first)) {
      buyer.buyUntilItRepeats(first);
    }
    return buyer.sequence;
  }

  /** What the first use lacks for which there is not enough; nothing if there is for all. */
  private BigDecimal firstShortage(BigDecimal lackingForOne) {
    if (lackingForOne.signum() > 0 || step.signum() == 0) {
      return lackingForOne.max(BigDecimal.ZERO);
    }
    return step.subtract(lackingForOne.negate().remainder(step));
  }

  /** Where the cheapest order of all holds enough for any use but the first. */
  private boolean buyAlwaysTheSame(BigDecimal first) {
    if (item.offers.stream().anyMatch(offer -> offer.available().isPresent())) {
      return false;
    }
    Order least = order(new Shortage(BigInteger.ONE, all()));
    BigDecimal holds = unit.multiply(BigDecimal.valueOf(least.content));
    if (holds.compareTo(step) < 0) {
      return false;
    }
    if (first.compareTo(holds) > 0) {
      add(order(shortage(new State(first, all()))));
    }
    if (step.signum() > 0 || sequence.size() == 0) {
      int before = sequence.size();
      add(least);
      sequence.repeatAfter(before);
    }
    return true;
  }

  private void buyUntilItRepeats(BigDecimal first) {
    Map<State, Integer> seen = new HashMap<>();
    State state = new State(first.stripTrailingZeros(), all());
    while (!seen.containsKey(state)) {
      Shortage shortage = shortage(state);
      if (seen.size() == MOST_PURCHASES) {
        sequence.endBecause(
            "the purchases of "
                + item.resource.item()
                + " do not repeat within "
                + MOST_PURCHASES
                + " of them; accepted are fewer parts, or rounder contents and quantities");
        return;
      }
      if (!isAvailable(shortage)) {
        sequence.endBecause(item.usedUp());
        return;
      }
      seen.put(state, sequence.size());
      Order order = order(shortage);
      add(order);
      if (step.signum() == 0) {
        return;
      }
      BigDecimal left = unit.multiply(BigDecimal.valueOf(order.content)).subtract(state.lacking());
      state = new State(step.subtract(left.remainder(step)).stripTrailingZeros(), order.available);
    }
    sequence.repeatAfter(seen.get(state));
  }

  private List<Long> all() {
    return item.offers.stream().map(offer -> offer.available().orElse(Long.MAX_VALUE)).toList();
  }

  private void add(Order order) {
    sequence.add(order.counts, order.content);
  }

  private Shortage shortage(State state) {
    BigInteger packUnits =
        state.lacking().divide(unit, 0, RoundingMode.CEILING).toBigIntegerExact();
    return new Shortage(packUnits, state.available());
  }

  private boolean isAvailable(Shortage shortage) {
    List<Supply> supplies = supplies(shortage.available());
    return !supplies.isEmpty() && wanted(shortage, supplies).isAvailable();
  }

  private Order order(Shortage shortage) {
    return orders.computeIfAbsent(shortage, this::cheapest);
  }

  private Order cheapest(Shortage shortage) {
    List<Supply> supplies = supplies(shortage.available());
    List<Purchase> order =
        PurchasePlanner.standard().cover(List.of(wanted(shortage, supplies)), List.of());
    List<Long> left = new ArrayList<>(shortage.available());
    List<Purchase> original = new ArrayList<>();
    BigDecimal content = BigDecimal.ZERO;
    for (Purchase purchase : order) {
      int index = index(shortage.available(), supplies, purchase.offer());
      Offer offer = item.offers.get(index);
      original.add(Purchase.of(offer, purchase.packs()));
      content = content.add(item.supplies.get(index).holds().multiply(purchase.packs()));
      if (offer.available().isPresent()) {
        left.set(index, left.get(index) - purchase.packs().longValueExact());
      }
    }
    return new Order(
        item.counts(original), content.divide(unit).longValueExact(), List.copyOf(left));
  }

  private Wanted wanted(Shortage shortage, List<Supply> supplies) {
    return Wanted.of(
        item.resource.item(), unit.multiply(new BigDecimal(shortage.lacking())), supplies);
  }

  /** The supplies of which an order can still be had. */
  private List<Supply> supplies(List<Long> available) {
    List<Supply> supplies = new ArrayList<>();
    for (int i = 0; i < available.size(); i++) {
      Supply supply = item.supplies.get(i);
      if (supply.offer().available().isEmpty()) {
        supplies.add(supply);
      } else if (supply.offer().orderOf(1) <= available.get(i)) {
        supplies.add(
            Supply.of(
                Offer.builder().from(supply.offer()).available(available.get(i)).build(),
                supply.holds()));
      }
    }
    return supplies;
  }

  private int index(List<Long> available, List<Supply> supplies, Offer bought) {
    int place = supplies.stream().map(Supply::offer).toList().indexOf(bought);
    for (int i = 0; i < available.size(); i++) {
      Offer offer = item.offers.get(i);
      if (offer.available().isEmpty() || offer.orderOf(1) <= available.get(i)) {
        place--;
      }
      if (place < 0) {
        return i;
      }
    }
    throw new IllegalStateException("no supply " + bought.text());
  }
}
