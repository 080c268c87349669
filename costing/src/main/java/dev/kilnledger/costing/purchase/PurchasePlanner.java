package dev.kilnledger.costing.purchase;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.PriceCheck;
import dev.kilnledger.costing.offer.ShippingTerms;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.units.Amount;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.joda.money.BigMoney;

/**
 * Finds the cheapest order that covers given needs: over packs, minimum orders, increments, price
 * breaks, suppliers, and what they charge for sending.
 *
 * <p>The answer is exact. Everything is bought at once, whole packs from whom they are cheapest,
 * one order from each supplier; among equally cheap orders the one with the least surplus is taken
 * (compared need by need in their order), then the one with the fewest packs, then the first in the
 * order of the price book. The time depends on how many offers there are and how their contents
 * mix, not on how large a need is.
 *
 * <p>Free shipping goes by the value of goods as their prices stand in the book. It can pay to buy
 * more than is needed to reach it, and a dearer item can make the total cheaper. What is sold by
 * measure comes from whom it is cheapest, is not sent, and counts towards no threshold. Suppliers
 * without terms in the book send for nothing, and a finding says so.
 */
public final class PurchasePlanner {
  /** With more, the choices of suppliers grow too many. */
  private static final int MOST_CHARGING_SUPPLIERS = 12;

  private static final PurchasePlanner STANDARD = new PurchasePlanner();

  private PurchasePlanner() {}

  /** {@return the planner} */
  public static PurchasePlanner standard() {
    return STANDARD;
  }

  /**
   * The cheapest order.
   *
   * @param prices the offers and terms; those that do not hold on the book's day are left out
   * @param needs what is needed, at least one item and each of them once
   * @return the order
   * @throws IllegalArgumentException with all problems: an item that no offer covers, or in another
   *     measure, or both by packs and by measure; prices with and without tax; and if the packs can
   *     be mixed in more ways than can be weighed
   */
  public PurchasePlan plan(PriceBook prices, List<Need> needs) {
    Map<Need, List<Offer>> offers = new LinkedHashMap<>();
    needs.forEach(need -> offers.put(need, keeping(need, prices.offersOf(need.item()))));
    List<ShippingTerms> charging = charging(prices, offers);
    refuse(prices, needs, offers, charging);
    List<Wanted> wanted = new ArrayList<>();
    offers.forEach(
        (need, found) -> {
          if (!found.get(0).metered()) {
            wanted.add(wanted(need, found));
          }
        });
    Map<String, List<Purchase>> packs = new LinkedHashMap<>();
    cover(wanted, charging)
        .forEach(
            purchase ->
                packs
                    .computeIfAbsent(purchase.offer().item(), item -> new ArrayList<>())
                    .add(purchase));
    List<Purchase> purchases = new ArrayList<>();
    offers.forEach(
        (need, found) -> {
          if (found.get(0).metered()) {
            purchases.add(metered(need, found));
          } else {
            purchases.addAll(packs.getOrDefault(need.item(), List.of()));
          }
        });
    return PurchasePlan.builder()
        .currency(prices.currency())
        .asOf(prices.asOf())
        .purchases(purchases)
        .deliveries(deliveries(prices, purchases))
        .covered(needs.stream().map(need -> Covered.of(need, surplus(need, purchases))).toList())
        .findings(
            PriceCheck.standard().offers(prices, purchases.stream().map(Purchase::offer).toList()))
        .build();
  }

  /**
   * The cheapest order of whole packs for what is wanted in measures of the caller's, with the same
   * exactness and the same choice among equally cheap orders as {@link #plan}. Whether prices and
   * charges stand on one tax basis is for the caller to know.
   *
   * @param wanted what is wanted, each item once
   * @param terms what suppliers ask for sending; those that are not named send for nothing
   * @return what is bought, in the order of what is wanted, then of its supplies
   * @throws IllegalArgumentException if the packs that can be had do not suffice, if more than 12
   *     suppliers charge for sending, or if the packs can be mixed in more ways than can be weighed
   */
  public List<Purchase> cover(List<Wanted> wanted, List<ShippingTerms> terms) {
    Problems problems = new Problems("purchases");
    for (Wanted want : wanted) {
      problems.require(
          want.isAvailable(),
          "all packs of "
              + want.item()
              + " that can be had hold less than is wanted, "
              + want.amount().stripTrailingZeros().toPlainString()
              + " in the measure of their contents; accepted is a smaller want or more offers");
    }
    List<Offer> offers =
        wanted.stream().flatMap(want -> want.supplies().stream()).map(Supply::offer).toList();
    List<ShippingTerms> charging =
        terms.stream()
            .filter(one -> one.charge().isPositive())
            .filter(
                one -> offers.stream().anyMatch(offer -> offer.supplier().equals(one.supplier())))
            .toList();
    few(charging, problems);
    problems.refuseIfAny();
    int moneyScale = moneyScale(offers, charging);
    List<Market> markets = wanted.stream().map(want -> new Market(want, moneyScale)).toList();
    List<Cover> covers = new SupplierSearch(markets, charging, moneyScale).best().orElseThrow();
    List<Purchase> purchases = new ArrayList<>();
    for (int i = 0; i < covers.size(); i++) {
      addPacks(markets.get(i), covers.get(i), purchases);
    }
    return List.copyOf(purchases);
  }

  /**
   * The offer by which something is bought by measure: the one of the lowest price per content, and
   * among equal ones the first.
   *
   * @param offers offers by measure, at least one, of one kind of content and in one currency
   * @return the cheapest of them
   */
  public Offer cheapestByMeasure(List<Offer> offers) {
    Offer cheapest = offers.get(0);
    for (Offer offer : offers) {
      BigDecimal here = offer.price().getAmount().multiply(Market.si(cheapest.content()));
      BigDecimal there = cheapest.price().getAmount().multiply(Market.si(offer.content()));
      if (here.compareTo(there) < 0) {
        cheapest = offer;
      }
    }
    return cheapest;
  }

  private static Wanted wanted(Need need, List<Offer> offers) {
    return Wanted.of(
        need.item(),
        Market.si(need.amount()),
        offers.stream().map(offer -> Supply.of(offer, Market.si(offer.content()))).toList());
  }

  private static List<Offer> keeping(Need need, List<Offer> offers) {
    return offers.stream()
        .filter(
            offer ->
                need.usedWithin().isEmpty()
                    || offer.shelfLife().isEmpty()
                    || !offer.shelfLife().get().isLessThan(need.usedWithin().get()))
        .toList();
  }

  private static List<ShippingTerms> charging(PriceBook prices, Map<Need, List<Offer>> offers) {
    return offers.values().stream()
        .flatMap(List::stream)
        .filter(offer -> !offer.metered())
        .map(Offer::supplier)
        .distinct()
        .flatMap(supplier -> prices.shippingOf(supplier).stream())
        .filter(terms -> terms.charge().isPositive())
        .toList();
  }

  private static void refuse(
      PriceBook prices,
      List<Need> needs,
      Map<Need, List<Offer>> offers,
      List<ShippingTerms> charging) {
    Problems problems =
        new Problems("purchase plan")
            .require(!needs.isEmpty(), "there is no need; accepted is one or more");
    few(charging, problems);
    needs.stream()
        .collect(groupingBy(Need::item, TreeMap::new, counting()))
        .forEach(
            (item, count) ->
                problems.require(
                    count == 1,
                    item + " is needed " + count + " times; accepted is one need, of the sum"));
    offers.forEach((need, found) -> refuse(prices, need, found, problems));
    List<Tax> bases =
        Stream.concat(
                offers.values().stream().flatMap(List::stream).map(Offer::tax),
                charging.stream().map(ShippingTerms::tax))
            .toList();
    problems
        .require(
            !bases.contains(Tax.INCLUDED) || !bases.contains(Tax.EXCLUDED),
            "some prices hold the tax and others do not; accepted is a price book on one basis")
        .refuseIfAny();
  }

  private static void few(List<ShippingTerms> charging, Problems problems) {
    problems.require(
        charging.size() <= MOST_CHARGING_SUPPLIERS,
        charging.size()
            + " suppliers charge for sending; accepted are up to "
            + MOST_CHARGING_SUPPLIERS);
  }

  private static void refuse(PriceBook prices, Need need, List<Offer> found, Problems problems) {
    List<Offer> holding = prices.offersOf(need.item());
    if (holding.isEmpty()) {
      problems.require(false, prices.missing(need.item()));
      return;
    }
    problems.require(
        !found.isEmpty(),
        "no offer of "
            + need.item()
            + " keeps for "
            + need.usedWithin().map(Amount::toString).orElse("")
            + "; accepted is a need of a shorter time, bought more often");
    List<String> otherMeasure =
        found.stream()
            .filter(offer -> !offer.content().kind().equals(need.amount().kind()))
            .map(Offer::text)
            .toList();
    long metered = found.stream().filter(Offer::metered).count();
    problems
        .require(
            otherMeasure.isEmpty(),
            need.item()
                + " is needed as "
                + need.amount()
                + " and offered as "
                + otherMeasure
                + "; accepted is one measure for both")
        .require(
            !otherMeasure.isEmpty()
                || found.isEmpty()
                || metered > 0
                || wanted(need, found).isAvailable(),
            "all packs of "
                + need.item()
                + " that can be had hold less than the "
                + need.amount()
                + " needed; accepted is a smaller need or more offers")
        .require(
            metered == 0 || metered == found.size(),
            need.item() + " is offered both in packs and by measure; accepted is one of the two");
  }

  private static int moneyScale(List<Offer> offers, List<ShippingTerms> charging) {
    Stream<BigMoney> prices =
        offers.stream()
            .flatMap(
                offer ->
                    Stream.concat(
                        Stream.of(offer.price()),
                        offer.breaks().stream().map(step -> step.price())));
    Stream<BigMoney> charges =
        charging.stream()
            .flatMap(terms -> Stream.concat(Stream.of(terms.charge()), terms.freeFrom().stream()));
    return Stream.concat(prices, charges).mapToInt(BigMoney::getScale).max().orElse(0);
  }

  private static void addPacks(Market market, Cover cover, List<Purchase> purchases) {
    for (int i = 0; i < cover.counts.length; i++) {
      if (cover.counts[i] > 0) {
        purchases.add(Purchase.of(market.packs.get(i).offer, BigDecimal.valueOf(cover.counts[i])));
      }
    }
  }

  private Purchase metered(Need need, List<Offer> offers) {
    Offer cheapest = cheapestByMeasure(offers);
    return Purchase.of(
        cheapest,
        Market.si(need.amount()).divide(Market.si(cheapest.content()), MathContext.DECIMAL128));
  }

  private static List<Delivery> deliveries(PriceBook prices, List<Purchase> purchases) {
    Map<String, BigMoney> goods = new LinkedHashMap<>();
    for (Purchase purchase : purchases) {
      if (!purchase.offer().metered()) {
        goods.merge(purchase.offer().supplier(), purchase.cost(), BigMoney::plus);
      }
    }
    List<Delivery> deliveries = new ArrayList<>();
    goods.forEach(
        (supplier, value) ->
            prices
                .shippingOf(supplier)
                .ifPresent(terms -> deliveries.add(Delivery.of(terms, value))));
    return deliveries;
  }

  private static Amount<?> surplus(Need need, List<Purchase> purchases) {
    BigDecimal bought = BigDecimal.ZERO;
    for (Purchase purchase : purchases) {
      if (purchase.offer().item().equals(need.item())) {
        if (purchase.offer().metered()) {
          return like(need.amount(), BigDecimal.ZERO);
        }
        bought = bought.add(Market.si(purchase.offer().content()).multiply(purchase.packs()));
      }
    }
    return like(need.amount(), bought.subtract(Market.si(need.amount())));
  }

  private static <Q extends Quantity<Q>> Amount<Q> like(Amount<Q> sample, BigDecimal si) {
    BigDecimal one = Market.si(Amount.of(1, sample.getUnit(), sample.kind()));
    return Amount.of(
        si.divide(one, MathContext.DECIMAL128).doubleValue(), sample.getUnit(), sample.kind());
  }
}
