package dev.kilnledger.costing.comparison;

import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.offer.ExchangeRate;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.PriceBreak;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.units.Amount;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.measure.Quantity;
import org.joda.money.BigMoney;

/** A plan between two plans, into which the other's attributes are taken one by one. */
final class PlanDraft {
  private final LedgerPlan to;
  private final Map<String, List<Resource>> others;
  private final Map<String, Offer> otherOffers;
  private final Map<String, List<Resource>> resources;
  private final Map<String, Offer> offers;

  /** Items of both plans whose resource in the one cannot be bought by the offer of the other. */
  private final Set<String> incompatible = new HashSet<>();

  private LedgerPlan rules;

  PlanDraft(LedgerPlan from, LedgerPlan to) {
    this.to = to;
    this.rules = from;
    this.resources = byItem(from);
    this.offers = offers(from);
    this.others = byItem(to);
    this.otherOffers = offers(to);
    others.forEach(
        (item, wanted) -> {
          Offer offer = offers.get(item);
          if (offer != null
              && (wanted.stream().anyMatch(r -> !r.mismatches(offer).isEmpty())
                  || (wanted.size() > 1 && !offer.metered()))) {
            incompatible.add(item);
          }
        });
  }

  private static Map<String, List<Resource>> byItem(LedgerPlan plan) {
    Map<String, List<Resource>> items = new LinkedHashMap<>();
    plan.resources()
        .forEach(r -> items.computeIfAbsent(r.item(), item -> new ArrayList<>()).add(r));
    return items;
  }

  /**
   * The offers by which a plan buys, free of their validity, as states have no day of their own.
   */
  private static Map<String, Offer> offers(LedgerPlan plan) {
    Map<String, Offer> offers = new LinkedHashMap<>();
    for (Resource resource : plan.resources()) {
      offers.put(
          resource.item(),
          Offer.builder()
              .from(plan.offerOf(resource))
              .validFrom(Optional.empty())
              .validThrough(Optional.empty())
              .build());
    }
    return offers;
  }

  /** The plan as drafted; empty where what was taken so far does not fit together yet. */
  Optional<LedgerPlan> plan() {
    List<Resource> all = new ArrayList<>();
    resources.values().forEach(all::addAll);
    LocalDate day = rules.prices().asOf();
    try {
      return Optional.of(
          LedgerPlan.builder()
              .from(rules)
              .prices(
                  PriceBook.builder()
                      .from(rules.prices())
                      .asOf(day.isAfter(to.prices().asOf()) ? day : to.prices().asOf())
                      .offers(offers.values())
                      .build())
              .resources(all)
              .build());
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** Takes what stands for an effect from the other plan. */
  void take(Effect effect) {
    switch (effect) {
      case PARTS, ROUNDING, OTHER -> {}
      case CHARGE_SIZE -> rules = rules().partsPerFiring(to.partsPerFiring()).build();
      case CHARGING -> rules = rules().charging(to.charging()).build();
      case FAILURES -> rules = rules().failures(to.failures()).build();
      case BUYING -> rules = rules().buying(to.buying()).build();
      case CONSUMPTION -> takeConsumption();
      case REPLACED -> incompatible.forEach(this::takeItem);
      case NEW_ITEM ->
          others.keySet().stream()
              .filter(item -> !resources.containsKey(item))
              .forEach(this::takeItem);
      case DROPPED_ITEM -> {
        resources.keySet().retainAll(others.keySet());
        offers.keySet().retainAll(others.keySet());
      }
      case PACK_SIZE -> offers.replaceAll((item, offer) -> repacked(offer, other(item)));
      case EXCHANGE -> offers.replaceAll((item, offer) -> exchanged(offer, other(item)));
      case SHIPPING -> {
        rules =
            rules()
                .shipping(to.shipping())
                .prices(
                    PriceBook.builder()
                        .from(rules.prices())
                        .shipping(to.prices().shipping())
                        .build())
                .build();
        offers.replaceAll(
            (item, offer) -> Offer.builder().from(offer).supplier(other(item).supplier()).build());
      }
      case PRICE ->
          offers.replaceAll(
              (item, offer) ->
                  Offer.builder()
                      .from(other(item))
                      .tax(offer.tax())
                      .taxRate(offer.taxRate())
                      .build());
      case OVERHEAD -> rules = rules().overheads(to.overheads()).build();
      case TAX -> {
        rules = rules().tax(to.tax()).build();
        offers.replaceAll((item, offer) -> other(item));
      }
      case LEFTOVERS -> rules = rules().leftovers(to.leftovers()).build();
    }
  }

  private LedgerPlan.Builder rules() {
    return LedgerPlan.builder().from(rules);
  }

  private Offer other(String item) {
    Offer offer = otherOffers.get(item);
    if (offer == null) {
      throw new IllegalStateException("items are dropped before their offers change: " + item);
    }
    return offer;
  }

  private void takeConsumption() {
    rules = rules().putAllAmounts(to.amounts()).build();
    resources.replaceAll(
        (item, mine) -> incompatible.contains(item) ? mine : others.getOrDefault(item, mine));
  }

  private void takeItem(String item) {
    resources.put(item, others.getOrDefault(item, List.of()));
    offers.put(item, other(item));
  }

  /** Packs of the other size at the price per content that there was. */
  private static Offer repacked(Offer offer, Offer other) {
    if (offer.content().equals(other.content()) && offer.metered() == other.metered()) {
      return offer;
    }
    return Offer.builder()
        .from(other)
        .supplier(offer.supplier())
        .price(times(offer.price(), si(other.content()), si(offer.content())))
        .breaks(List.of())
        .tax(offer.tax())
        .taxRate(offer.taxRate())
        .convertedAt(offer.convertedAt())
        .build();
  }

  /** The price there was in its own currency, converted as the other one is. */
  private static Offer exchanged(Offer offer, Offer other) {
    Optional<ExchangeRate> before = offer.convertedAt();
    Optional<ExchangeRate> after = other.convertedAt();
    if (before.isEmpty()
        || after.isEmpty()
        || before.equals(after)
        || !before.get().base().equals(after.get().base())) {
      return offer;
    }
    BigDecimal now = after.get().rate();
    BigDecimal then = before.get().rate();
    return Offer.builder()
        .from(offer)
        .price(times(offer.price(), now, then))
        .breaks(
            offer.breaks().stream()
                .map(step -> PriceBreak.of(step.fromPacks(), times(step.price(), now, then)))
                .toList())
        .convertedAt(after)
        .build();
  }

  private static BigMoney times(BigMoney price, BigDecimal factor, BigDecimal divisor) {
    return BigMoney.of(
        price.getCurrencyUnit(),
        price.getAmount().multiply(factor).divide(divisor, MathContext.DECIMAL128));
  }

  private static <Q extends Quantity<Q>> BigDecimal si(Amount<Q> amount) {
    return amount.decimalIn(amount.kind().siUnit());
  }
}
