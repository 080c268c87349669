package dev.kilnledger.costing.ledger;

import dev.kilnledger.costing.resource.Driver;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Each part causes the purchases that its own shortage makes necessary. */
final class AsNeeded implements Buying {
  /** Over so many parts orders are averaged that do not repeat within any countable number. */
  private static final long LONG_RUN = 2_000;

  private final List<Item> items;
  private final List<Freight> freights;

  /** In the order of the items; empty for what is not bought in packs. */
  private final List<Optional<ItemPurchases>> purchases = new ArrayList<>();

  private final List<SupplierOrders> orders;

  /**
   * The rule for parts that find more in stock than the plan states.
   *
   * @param items the items
   * @param freights what suppliers charge
   * @param more how much more of each item there is, in the measure of its need
   */
  AsNeeded(List<Item> items, List<Freight> freights, List<BigDecimal> more) {
    this.items = items;
    this.freights = freights;
    List<ItemPurchases> inPacks = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      Item item = items.get(i);
      if (item.inPacks()) {
        inPacks.add(new ItemPurchases(item, item.staircase.with(more.get(i))));
        purchases.add(Optional.of(inPacks.get(inPacks.size() - 1)));
      } else {
        purchases.add(Optional.empty());
      }
    }
    orders = freights.stream().map(freight -> new SupplierOrders(freight, inPacks)).toList();
  }

  static AsNeeded of(List<Item> items, List<Freight> freights) {
    return new AsNeeded(items, freights, items.stream().map(item -> BigDecimal.ZERO).toList());
  }

  @Override
  public List<Item> items() {
    return items;
  }

  @Override
  public List<Freight> freights() {
    return freights;
  }

  List<Optional<ItemPurchases>> purchases() {
    return purchases;
  }

  List<SupplierOrders> orders() {
    return orders;
  }

  @Override
  public Bought through(long parts) {
    BigInteger[][] counts = new BigInteger[items.size()][];
    for (int i = 0; i < counts.length; i++) {
      Optional<ItemPurchases> one = purchases.get(i);
      counts[i] = one.isPresent() ? one.get().packs(parts) : Buying.measured(items.get(i), parts);
    }
    return new Bought(
        counts, orders.stream().map(order -> order.through(parts)).toArray(BigInteger[]::new));
  }

  @Override
  public Bought of(Map<Driver, BigInteger> events, long parts) {
    BigInteger[][] counts = new BigInteger[items.size()][];
    for (int i = 0; i < counts.length; i++) {
      Optional<ItemPurchases> one = purchases.get(i);
      counts[i] =
          one.isPresent()
              ? one.get().sequence.packs(one.get().of(events))
              : Buying.measured(items.get(i), events);
    }
    return new Bought(
        counts, orders.stream().map(order -> order.of(events, parts)).toArray(BigInteger[]::new));
  }

  @Override
  public Buying after(long parts) {
    return this;
  }

  @Override
  public Optional<Cycle> cycle(int item) {
    return purchases
        .get(item)
        .filter(one -> one.sequence.repeats())
        .map(
            one -> {
              List<BigInteger> packs = new ArrayList<>();
              for (int i = 0; i < items.get(item).prices.size(); i++) {
                packs.add(BigInteger.valueOf(one.sequence.cyclePacks(i)));
              }
              return new Cycle(packs, one.cycleContent());
            });
  }

  @Override
  public Share ordersPerPart(int freight) {
    SupplierOrders all = orders.get(freight);
    return all.perPart()
        .map(share -> new Share(share.numerator(), share.denominator(), "in the long run"))
        .orElseGet(
            () ->
                new Share(
                    all.through(LONG_RUN),
                    BigInteger.valueOf(LONG_RUN),
                    "over the first " + LONG_RUN + " parts, as they do not repeat soon"));
  }

  @Override
  public Optional<Long> lasts(int item, long parts) {
    ItemPurchases one = purchases.get(item).orElseThrow();
    Optional<Long> first = one.lasts(BigInteger.ONE);
    Optional<Long> last = one.lasts(one.through(parts));
    return first.flatMap(time -> last.map(other -> Math.max(time, other)));
  }

  @Override
  public String formula(int item) {
    Item one = items.get(item);
    if (!one.inPacks()) {
      return "packs(n) = max(0, x), x = ";
    }
    return one.isPlain()
        ? "packs(n) = max(0, ceil(x)), x = "
        : "packs(n) of the cheapest orders, each for what a use lacks, that together hold max(0, x)"
            + " x content, x = ";
  }

  @Override
  public String orderFormula(int freight) {
    return "parts of 1 to n for which something has to be bought"
        + freights.get(freight).condition()
        + ", of "
        + orders.get(freight).items.stream()
            .map(one -> one.item.resource.item())
            .collect(Collectors.joining(", "));
  }

  @Override
  public CashLines lines(BigInteger[][] weights, BigInteger[] orderWeights) {
    return AsNeededLines.of(this, weights, orderWeights);
  }
}
