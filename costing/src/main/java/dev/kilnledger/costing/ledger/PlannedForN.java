package dev.kilnledger.costing.ledger;

import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.ShippingTerms;
import dev.kilnledger.costing.purchase.Purchase;
import dev.kilnledger.costing.purchase.PurchasePlanner;
import dev.kilnledger.costing.purchase.Wanted;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Staircase;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.BigMoney;

/** All packs for n parts come in one cheapest order to each supplier. */
final class PlannedForN implements Buying {
  private static final PurchasePlanner PLANNER = PurchasePlanner.standard();

  private final List<Item> items;
  private final List<Freight> freights;

  /** Whether what suppliers charge bears on what is cheapest, so that items are weighed as one. */
  private final boolean together;

  /** The count of a staircase of an item. */
  private interface Count {
    BigInteger of(Item item, Staircase staircase);
  }

  PlannedForN(List<Item> items, List<Freight> freights) {
    this.items = items;
    this.freights = freights;
    this.together = freights.stream().anyMatch(this::decides);
  }

  private boolean decides(Freight freight) {
    return items.stream()
        .filter(item -> item.inPacks() && item.isFrom(freight.supplier()))
        .anyMatch(
            item ->
                freight.terms.freeFrom().isPresent()
                    || item.offers.stream().map(Offer::supplier).distinct().count() > 1);
  }

  /** Whether each item is simply so many packs of its one offer. */
  boolean isPlain() {
    return !together && items.stream().allMatch(item -> !item.inPacks() || item.isPlain());
  }

  @Override
  public List<Item> items() {
    return items;
  }

  @Override
  public List<Freight> freights() {
    return freights;
  }

  @Override
  public Bought through(long parts) {
    return bought((item, staircase) -> staircase.count(parts));
  }

  @Override
  public Bought of(Map<Driver, BigInteger> events, long parts) {
    return bought((item, staircase) -> staircase.countOf(Buying.number(item, events)));
  }

  private Bought bought(Count count) {
    BigInteger[][] counts = new BigInteger[items.size()][];
    List<Integer> open = new ArrayList<>();
    List<Wanted> wanted = new ArrayList<>();
    for (int i = 0; i < counts.length; i++) {
      Item item = items.get(i);
      if (!item.inPacks() || (item.isPlain() && !together)) {
        counts[i] = new BigInteger[] {count.of(item, item.staircase)};
        continue;
      }
      counts[i] = new BigInteger[item.prices.size()];
      Arrays.fill(counts[i], BigInteger.ZERO);
      BigDecimal amount = wanted(item, count);
      if (amount.signum() > 0) {
        Wanted want = Wanted.of(item.resource.item(), amount, item.supplies);
        if (!want.isAvailable()) {
          throw new IllegalArgumentException(item.usedUp());
        }
        open.add(i);
        wanted.add(want);
      }
    }
    List<List<Wanted>> orders = together ? List.of(wanted) : wanted.stream().map(List::of).toList();
    List<ShippingTerms> terms =
        together ? freights.stream().map(freight -> freight.terms).toList() : List.of();
    List<Purchase> purchases = new ArrayList<>();
    orders.forEach(order -> purchases.addAll(PLANNER.cover(order, terms)));
    for (int i : open) {
      Item item = items.get(i);
      long[] packs =
          item.counts(
              purchases.stream()
                  .filter(purchase -> purchase.offer().item().equals(item.resource.item()))
                  .toList());
      counts[i] = Arrays.stream(packs).mapToObj(BigInteger::valueOf).toArray(BigInteger[]::new);
    }
    BigInteger[] paid =
        freights.stream()
            .map(freight -> isPaid(freight, counts) ? BigInteger.ONE : BigInteger.ZERO)
            .toArray(BigInteger[]::new);
    return new Bought(counts, paid);
  }

  /** What is wanted of an item, rounded up to what any mix of packs can hold. */
  private static BigDecimal wanted(Item item, Count count) {
    Staircase units = item.staircase.byMeasureOf(item.packUnit());
    return new BigDecimal(count.of(item, units))
        .divide(new BigDecimal(units.divisor()), 0, RoundingMode.CEILING)
        .multiply(item.packUnit());
  }

  private boolean isPaid(Freight freight, BigInteger[][] counts) {
    BigMoney goods = BigMoney.zero(freight.terms.charge().getCurrencyUnit());
    boolean placed = false;
    for (int i = 0; i < counts.length; i++) {
      Item item = items.get(i);
      for (int j = 0; j < counts[i].length && item.inPacks(); j++) {
        Priced priced = item.prices.get(j);
        if (counts[i][j].signum() > 0 && priced.offer().supplier().equals(freight.supplier())) {
          goods = goods.plus(priced.price().multipliedBy(new BigDecimal(counts[i][j])));
          placed = true;
        }
      }
    }
    return placed && freight.isPaidOn(goods);
  }

  /** {@return as needed, with what the plan leaves over in stock} */
  @Override
  public Buying after(long parts) {
    Bought planned = through(parts);
    List<Item> rest = new ArrayList<>();
    List<BigDecimal> more = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      Item item = items.get(i);
      rest.add(item.inPacks() ? item.without(planned.counts[i]) : item);
      more.add(item.inPacks() ? item.held(planned.counts[i]) : BigDecimal.ZERO);
    }
    return new AsNeeded(rest, freights, more);
  }

  @Override
  public Optional<Cycle> cycle(int item) {
    Item one = items.get(item);
    int best = -1;
    for (int i = 0; i < one.prices.size() && one.inPacks(); i++) {
      if (one.prices.get(i).offer().available().isEmpty() && (best < 0 || isBetter(one, i, best))) {
        best = i;
      }
    }
    if (best < 0) {
      return Optional.empty();
    }
    BigInteger[] packs = new BigInteger[one.prices.size()];
    Arrays.fill(packs, BigInteger.ZERO);
    packs[best] = BigInteger.valueOf(one.prices.get(best).offer().orderIncrement());
    return Optional.of(new Cycle(List.of(packs), one.held(packs)));
  }

  /** Whether a price per content is lower than another. */
  private static boolean isBetter(Item item, int price, int best) {
    BigDecimal here = item.prices.get(price).price().getAmount().multiply(item.holds(best));
    BigDecimal there = item.prices.get(best).price().getAmount().multiply(item.holds(price));
    return here.compareTo(there) < 0;
  }

  /** {@return none: one order serves any number of parts} */
  @Override
  public Share ordersPerPart(int freight) {
    return new Share(BigInteger.ZERO, BigInteger.ONE, "in the long run");
  }

  @Override
  public Optional<Long> lasts(int item, long parts) {
    return items.get(item).nextPurchase(through(parts).counts[item], parts).map(next -> next - 1);
  }

  @Override
  public String formula(int item) {
    Item one = items.get(item);
    if (!one.inPacks()) {
      return "packs(n) = max(0, x), x = ";
    }
    return one.isPlain() && !together
        ? "packs(n) = max(0, ceil(x)), x = "
        : "packs(n) of the cheapest order for all n parts"
            + (together ? ", with what suppliers charge for sending," : "")
            + " that holds max(0, x) x content, x = ";
  }

  @Override
  public String orderFormula(int freight) {
    return "one order to the supplier" + freights.get(freight).condition();
  }

  @Override
  public CashLines lines(BigInteger[][] weights, BigInteger[] orderWeights) {
    return PlannedLines.of(this, weights, orderWeights);
  }
}
