package dev.kilnledger.costing.ledger;

import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceStep;
import dev.kilnledger.costing.purchase.Purchase;
import dev.kilnledger.costing.purchase.Supply;
import dev.kilnledger.costing.resource.Depreciated;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.Shelf;
import dev.kilnledger.costing.resource.Staircase;
import dev.kilnledger.costing.resource.Stock;
import dev.kilnledger.costing.resource.Workload;
import dev.kilnledger.units.Amount;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;

/** A resource of a plan, and at which prices its item can be bought. */
final class Item {
  final Resource resource;

  /** The offers it may be bought by; one where it is paid by measure or by depreciation. */
  final List<Offer> offers;

  /** The need, with the packs or measures of the first offer. */
  final Staircase staircase;

  /** What a pack of each offer holds; none where it is not bought in packs. */
  final List<Supply> supplies;

  /** Every price at which a pack can come, offer by offer; counts are told in this order. */
  final List<Priced> prices = new ArrayList<>();

  /** What a pack of each offer holds as it is stated, in the SI unit. */
  private final List<BigDecimal> contents;

  private final boolean inPacks;
  private final boolean plain;

  private Item(
      Resource resource,
      List<Offer> offers,
      Staircase staircase,
      List<Supply> supplies,
      boolean inPacks) {
    this.resource = resource;
    this.offers = offers;
    this.staircase = staircase;
    this.supplies = supplies;
    this.contents = offers.stream().map(offer -> si(offer.content())).toList();
    this.inPacks = inPacks;
    this.plain = offers.size() == 1 && offers.get(0).isPlain();
    for (Offer offer : offers) {
      prices.add(new Priced(offer, offer.price()));
      offer.breaks().forEach(step -> prices.add(new Priced(offer, step.price())));
    }
  }

  private static Item of(LedgerPlan plan, Resource resource) {
    List<Offer> fitting = plan.offersOf(resource);
    if (resource instanceof Depreciated || fitting.get(0).metered()) {
      Offer offer = plan.offerOf(resource);
      return new Item(
          resource, List.of(offer), resource.staircase(offer, plan.workload()), List.of(), false);
    }
    List<Supply> supplies =
        fitting.stream()
            .map(offer -> Supply.of(offer, resource.staircase(offer, plan.workload()).holds()))
            .toList();
    return new Item(
        resource, fitting, resource.staircase(fitting.get(0), plan.workload()), supplies, true);
  }

  /** The same item when some packs have been bought and cannot be had again. */
  Item without(BigInteger[] counts) {
    List<Supply> left = new ArrayList<>();
    for (Supply supply : supplies) {
      Offer offer = supply.offer();
      if (offer.available().isEmpty()) {
        left.add(supply);
        continue;
      }
      long rest = offer.available().get();
      for (int i = 0; i < counts.length; i++) {
        if (prices.get(i).offer().equals(offer)) {
          rest -= counts[i].longValueExact();
        }
      }
      if (offer.orderOf(1) <= rest) {
        left.add(Supply.of(Offer.builder().from(offer).available(rest).build(), supply.holds()));
      }
    }
    return new Item(resource, left.stream().map(Supply::offer).toList(), staircase, left, true);
  }

  static List<Item> of(LedgerPlan plan, List<Resource> resources) {
    return resources.stream().map(resource -> of(plan, resource)).toList();
  }

  boolean inPacks() {
    return inPacks;
  }

  /** The largest measure of the need of which every pack is a whole multiple. */
  BigDecimal packUnit() {
    return gcd(supplies.stream().map(Supply::holds).toList());
  }

  static BigDecimal gcd(List<BigDecimal> amounts) {
    int scale = amounts.stream().mapToInt(BigDecimal::scale).reduce(0, Math::max);
    BigInteger gcd = BigInteger.ZERO;
    for (BigDecimal amount : amounts) {
      gcd = gcd.gcd(amount.setScale(scale).unscaledValue());
    }
    return new BigDecimal(gcd, scale);
  }

  /** What to say where no more can be had. */
  String usedUp() {
    return "all packs of "
        + resource.item()
        + " that can be had are used up; accepted are fewer parts or more offers";
  }

  /** Whether all there is to decide is how many packs of one offer are bought. */
  boolean isPlain() {
    return plain;
  }

  boolean isFrom(String supplier) {
    return offers.stream().anyMatch(offer -> offer.supplier().equals(supplier));
  }

  /** What the counts of an account are divided by. */
  BigInteger divisor() {
    return inPacks() ? BigInteger.ONE : staircase.divisor();
  }

  /** The packs of an order, by price. */
  long[] counts(List<Purchase> order) {
    long[] counts = new long[prices.size()];
    for (Purchase purchase : order) {
      for (PriceStep step : purchase.offer().steps(purchase.packs().longValueExact())) {
        counts[prices.indexOf(new Priced(purchase.offer(), step.price()))] += step.packs();
      }
    }
    return counts;
  }

  /** What packs hold, in the measure of the need. */
  BigDecimal held(BigInteger[] counts) {
    BigDecimal held = BigDecimal.ZERO;
    for (int i = 0; i < counts.length; i++) {
      held = held.add(holds(i).multiply(new BigDecimal(counts[i])));
    }
    return held;
  }

  /** What a pack at a price holds, in the measure of the need. */
  BigDecimal holds(int price) {
    return supplies.get(offers.indexOf(prices.get(price).offer())).holds();
  }

  /** The next part after n whose need is more than packs hold. */
  Optional<Long> nextPurchase(BigInteger[] counts, long parts) {
    if (!inPacks || parts == Long.MAX_VALUE) {
      return Optional.empty();
    }
    if (plain) {
      return staircase.firstAbove(counts[0], parts + 1);
    }
    BigDecimal unit = packUnit();
    Staircase units = staircase.byMeasureOf(unit);
    BigInteger held = held(counts).divide(unit).toBigIntegerExact();
    return units.firstAbove(held.multiply(units.divisor()), parts + 1);
  }

  /** What is left of it after part n. */
  Stock stock(Workload workload, BigInteger[] counts, long parts) {
    return resource.stock(workload, shelf(counts, parts));
  }

  /** The same of what is paid as it is used. */
  Shelf meteredShelf(long parts) {
    return staircase.shelf(parts, contents.get(0));
  }

  /** What is there of an item bought in packs after part n. */
  Shelf shelf(BigInteger[] counts, long parts) {
    return staircase.shelf(parts, held(counts), contents(counts), nextPurchase(counts, parts));
  }

  /** What packs hold as their offers state it, in the SI unit. */
  BigDecimal contents(BigInteger[] counts) {
    BigDecimal sum = BigDecimal.ZERO;
    for (int i = 0; i < counts.length; i++) {
      BigDecimal content = contents.get(offers.indexOf(prices.get(i).offer()));
      sum = sum.add(content.multiply(new BigDecimal(counts[i])));
    }
    return sum;
  }

  private static <Q extends Quantity<Q>> BigDecimal si(Amount<Q> amount) {
    return amount.decimalIn(amount.kind().siUnit());
  }
}
