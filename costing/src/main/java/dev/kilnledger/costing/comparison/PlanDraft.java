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
import java.util.function.BinaryOperator;
import javax.measure.Quantity;
import org.joda.money.BigMoney;

/** A plan between two plans, into which the other's attributes are taken one by one. */
final class PlanDraft {
  private final LedgerPlan to;
  private final Map<String, List<Resource>> others;
  private final Map<String, List<Offer>> otherOffers;
  private final Map<String, List<Resource>> resources;
  private final Map<String, List<Offer>> offers;

  /** Items of both plans whose resource in the one cannot be bought by the offers of the other. */
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
          if (resources.containsKey(item) && !canBuy(wanted, of(item, offers))) {
            incompatible.add(item);
          }
        });
  }

  private static boolean canBuy(List<Resource> wanted, List<Offer> offers) {
    return wanted.stream()
            .allMatch(r -> offers.stream().anyMatch(offer -> r.mismatches(offer).isEmpty()))
        && (wanted.size() == 1 || offers.stream().allMatch(Offer::metered));
  }

  private static Map<String, List<Resource>> byItem(LedgerPlan plan) {
    Map<String, List<Resource>> items = new LinkedHashMap<>();
    plan.resources()
        .forEach(r -> items.computeIfAbsent(r.item(), item -> new ArrayList<>()).add(r));
    return items;
  }

  /** The offers that hold, free of their validity, as states have no day of their own. */
  private static Map<String, List<Offer>> offers(LedgerPlan plan) {
    Map<String, List<Offer>> offers = new LinkedHashMap<>();
    for (Resource resource : plan.resources()) {
      offers.put(
          resource.item(),
          plan.prices().offersOf(resource.item()).stream()
              .map(
                  offer ->
                      Offer.builder()
                          .from(offer)
                          .validFrom(Optional.empty())
                          .validThrough(Optional.empty())
                          .build())
              .toList());
    }
    return offers;
  }

  private static List<Offer> of(String item, Map<String, List<Offer>> offers) {
    return offers.getOrDefault(item, List.of());
  }

  /** The plan as drafted; empty where what was taken so far does not fit together yet. */
  Optional<LedgerPlan> plan() {
    List<Resource> all = new ArrayList<>();
    resources.values().forEach(all::addAll);
    List<Offer> offered = new ArrayList<>();
    offers.values().forEach(offered::addAll);
    LocalDate day = rules.prices().asOf();
    try {
      return Optional.of(
          LedgerPlan.builder()
              .from(rules)
              .prices(
                  PriceBook.builder()
                      .from(rules.prices())
                      .asOf(day.isAfter(to.prices().asOf()) ? day : to.prices().asOf())
                      .offers(offered)
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
      case PACK_SIZE -> eachOffer(PlanDraft::repacked);
      case EXCHANGE -> eachOffer(PlanDraft::exchanged);
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
        eachOffer((offer, other) -> Offer.builder().from(offer).supplier(other.supplier()).build());
      }
      case PRICE -> {
        offers.replaceAll((item, mine) -> isChoice(item) ? of(item, otherOffers) : mine);
        eachOffer(
            (offer, other) ->
                Offer.builder().from(other).tax(offer.tax()).taxRate(offer.taxRate()).build());
      }
      case OVERHEAD -> rules = rules().overheads(to.overheads()).build();
      case TAX -> {
        rules = rules().tax(to.tax()).build();
        offers.replaceAll((item, mine) -> of(item, otherOffers));
      }
      case LEFTOVERS -> rules = rules().leftovers(to.leftovers()).build();
    }
  }

  private LedgerPlan.Builder rules() {
    return LedgerPlan.builder().from(rules);
  }

  /** Whether either plan buys an item by a choice of offers, which cannot be paired. */
  private boolean isChoice(String item) {
    return of(item, offers).size() != 1 || of(item, otherOffers).size() != 1;
  }

  private void eachOffer(BinaryOperator<Offer> change) {
    offers.replaceAll(
        (item, mine) ->
            isChoice(item)
                ? mine
                : List.of(change.apply(mine.get(0), of(item, otherOffers).get(0))));
  }

  private void takeConsumption() {
    rules = rules().putAllAmounts(to.amounts()).build();
    resources.replaceAll(
        (item, mine) -> incompatible.contains(item) ? mine : others.getOrDefault(item, mine));
  }

  private void takeItem(String item) {
    resources.put(item, others.getOrDefault(item, List.of()));
    offers.put(item, of(item, otherOffers));
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
