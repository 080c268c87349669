package dev.kilnledger.costing.purchase;

import dev.kilnledger.costing.offer.ShippingTerms;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The cheapest covers of several needs from suppliers who charge for sending, exactly.
 *
 * <p>For each such supplier it is decided whether nothing is bought there, or the charge is paid,
 * or enough is bought to be free of it. The needs then fall apart, unless a value of goods has to
 * be reached that their cheapest covers miss; then the covers of all needs are merged, keeping
 * those that are beaten neither in cost nor in the values still missing.
 */
final class SupplierSearch {
  private enum Use {
    UNDECIDED,
    PAID,
    FREE,
    UNUSED
  }

  /** How many baskets may be kept in mind before the search gives up. */
  private static final int MOST_BASKETS = 1 << 17;

  private final List<Market> markets;
  private final List<ShippingTerms> terms;
  private final int moneyScale;
  private final Map<List<Object>, List<Cover>> cheapest = new HashMap<>();
  private Optional<Basket> best = Optional.empty();
  private BigInteger bestTotal = BigInteger.ZERO;

  /**
   * A search.
   *
   * @param markets the needs with their offers
   * @param terms the terms of the suppliers who charge something
   * @param moneyScale the decimals of money
   */
  SupplierSearch(List<Market> markets, List<ShippingTerms> terms, int moneyScale) {
    this.markets = markets;
    this.terms = terms;
    this.moneyScale = moneyScale;
  }

  /** The covers in the order of the markets; empty if a need cannot be covered. */
  Optional<List<Cover>> best() {
    Use[] uses = new Use[terms.size()];
    Arrays.fill(uses, Use.UNDECIDED);
    decide(0, uses);
    return best.map(basket -> basket.covers);
  }

  private void decide(int index, Use[] uses) {
    Optional<Basket> cheapest = cheapest(uses);
    if (cheapest.isEmpty() || beaten(cheapest.get().goods.add(paid(uses)))) {
      return;
    }
    offer(cheapest.get());
    if (index == uses.length) {
      reachThresholds(cheapest.get(), uses);
      return;
    }
    for (Use use : List.of(Use.PAID, Use.FREE, Use.UNUSED)) {
      if (use != Use.FREE || terms.get(index).freeFrom().isPresent()) {
        uses[index] = use;
        decide(index + 1, uses);
      }
    }
    uses[index] = Use.UNDECIDED;
  }

  /** The cheapest covers from the suppliers that are not ruled out, without their charges. */
  private Optional<Basket> cheapest(Use[] uses) {
    Basket basket = Basket.empty(0);
    for (Market market : markets) {
      boolean[] usable = usable(market, uses);
      List<Object> key = new ArrayList<>();
      key.add(market);
      for (boolean use : usable) {
        key.add(use);
      }
      List<Cover> covers = cheapest.get(key);
      if (covers == null) {
        int[] none = new int[usable.length];
        Arrays.fill(none, -1);
        covers = new CoverSearch(market, usable, none, new BigInteger[0], Optional.empty()).best();
        cheapest.put(key, covers);
      }
      if (covers.isEmpty()) {
        return Optional.empty();
      }
      basket = basket.with(covers.get(0), new BigInteger[0]);
    }
    return Optional.of(basket);
  }

  /** The cheapest covers that reach the thresholds of the suppliers who are to be free. */
  private void reachThresholds(Basket cheapest, Use[] uses) {
    List<ShippingTerms> free = new ArrayList<>();
    for (int i = 0; i < uses.length; i++) {
      if (uses[i] == Use.FREE && value(cheapest, terms.get(i)).compareTo(from(terms.get(i))) < 0) {
        free.add(terms.get(i));
      }
    }
    if (free.isEmpty()) {
      return;
    }
    BigInteger[] thresholds = free.stream().map(this::from).toArray(BigInteger[]::new);
    BigInteger slack = bestTotal.subtract(paid(uses)).subtract(cheapest.goods);
    List<Basket> baskets = List.of(Basket.empty(thresholds.length));
    for (int i = 0; i < markets.size(); i++) {
      Market market = markets.get(i);
      int[] threshold = new int[market.packs.size()];
      for (int j = 0; j < threshold.length; j++) {
        String supplier = market.packs.get(j).offer.supplier();
        threshold[j] = free.stream().map(ShippingTerms::supplier).toList().indexOf(supplier);
      }
      BigInteger limit = cheapest.covers.get(i).cost.add(slack);
      List<Cover> covers =
          new CoverSearch(market, usable(market, uses), threshold, thresholds, Optional.of(limit))
              .best();
      BigInteger sum = BigInteger.ZERO;
      for (Cover cover : cheapest.covers.subList(0, i + 1)) {
        sum = sum.add(cover.cost);
      }
      baskets = merged(baskets, covers, thresholds, sum.add(slack));
    }
    for (Basket basket : baskets) {
      if (basket.reaches(thresholds)) {
        offer(basket);
      }
    }
  }

  private static List<Basket> merged(
      List<Basket> baskets, List<Cover> covers, BigInteger[] thresholds, BigInteger limit) {
    List<Basket> kept = new ArrayList<>();
    long tried = 0;
    for (Basket basket : baskets) {
      for (Cover cover : covers) {
        Basket more = basket.with(cover, thresholds);
        tried++;
        if (tried > MOST_BASKETS) {
          throw new IllegalArgumentException(
              "free shipping can be reached in more than "
                  + MOST_BASKETS
                  + " ways that matter; accepted are fewer needs or offers");
        }
        if (more.goods.compareTo(limit) <= 0
            && kept.stream().noneMatch(known -> known.dominates(more))) {
          kept.removeIf(more::dominates);
          kept.add(more);
        }
      }
    }
    return kept;
  }

  /** Takes a basket if, with the charges that fall due, it is better than the best so far. */
  private void offer(Basket basket) {
    BigInteger total = basket.goods;
    for (ShippingTerms supplier : terms) {
      boolean free =
          supplier.freeFrom().isPresent() && value(basket, supplier).compareTo(from(supplier)) >= 0;
      if (!free && buysFrom(basket, supplier)) {
        total = total.add(charge(supplier));
      }
    }
    int order = best.isEmpty() ? -1 : total.compareTo(bestTotal);
    if (order < 0 || (order == 0 && basket.orderOfEqualCost(best.orElseThrow()) < 0)) {
      best = Optional.of(basket);
      bestTotal = total;
    }
  }

  private boolean beaten(BigInteger least) {
    return best.isPresent() && least.compareTo(bestTotal) > 0;
  }

  private BigInteger paid(Use[] uses) {
    BigInteger sum = BigInteger.ZERO;
    for (int i = 0; i < uses.length; i++) {
      if (uses[i] == Use.PAID) {
        sum = sum.add(charge(terms.get(i)));
      }
    }
    return sum;
  }

  private boolean[] usable(Market market, Use[] uses) {
    boolean[] usable = new boolean[market.packs.size()];
    for (int i = 0; i < usable.length; i++) {
      String supplier = market.packs.get(i).offer.supplier();
      usable[i] = true;
      for (int j = 0; j < uses.length; j++) {
        if (uses[j] == Use.UNUSED && terms.get(j).supplier().equals(supplier)) {
          usable[i] = false;
        }
      }
    }
    return usable;
  }

  private BigInteger value(Basket basket, ShippingTerms supplier) {
    BigInteger value = BigInteger.ZERO;
    for (int i = 0; i < markets.size(); i++) {
      List<Pack> packs = markets.get(i).packs;
      for (int j = 0; j < packs.size(); j++) {
        if (packs.get(j).offer.supplier().equals(supplier.supplier())) {
          value = value.add(packs.get(j).cost(basket.covers.get(i).counts[j]));
        }
      }
    }
    return value;
  }

  private boolean buysFrom(Basket basket, ShippingTerms supplier) {
    for (int i = 0; i < markets.size(); i++) {
      List<Pack> packs = markets.get(i).packs;
      for (int j = 0; j < packs.size(); j++) {
        if (basket.covers.get(i).counts[j] > 0
            && packs.get(j).offer.supplier().equals(supplier.supplier())) {
          return true;
        }
      }
    }
    return false;
  }

  private BigInteger charge(ShippingTerms supplier) {
    return supplier.charge().getAmount().setScale(moneyScale).unscaledValue();
  }

  private BigInteger from(ShippingTerms supplier) {
    return supplier.freeFrom().orElseThrow().getAmount().setScale(moneyScale).unscaledValue();
  }
}
