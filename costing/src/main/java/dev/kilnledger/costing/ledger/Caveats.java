package dev.kilnledger.costing.ledger;

import dev.kilnledger.costing.offer.ExchangeRate;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.costing.resource.Aged;
import dev.kilnledger.costing.resource.ChargeRule;
import dev.kilnledger.costing.resource.Consumed;
import dev.kilnledger.costing.resource.Depreciated;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.RunDown;
import dev.kilnledger.costing.resource.Stock;
import dev.kilnledger.costing.resource.ToppedUp;
import dev.kilnledger.costing.resource.Wearing;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Kind;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import javax.measure.quantity.Time;

/** The caveats that apply to a plan and a number of parts, and no others. */
final class Caveats {
  private final LedgerPlan plan;
  private final Bought bought;
  private final List<Caveat> found = new ArrayList<>();

  private Caveats(LedgerPlan plan, Bought bought) {
    this.plan = plan;
    this.bought = bought;
  }

  static List<Caveat> of(LedgerPlan plan, long parts, List<Stock> stocks, Bought bought) {
    Caveats caveats = new Caveats(plan, bought);
    caveats.areas();
    caveats.shipping();
    caveats.taxes();
    caveats.ages();
    caveats.rates();
    caveats.offers();
    caveats.assumptions();
    caveats.shelfLives(parts);
    caveats.charge(parts);
    caveats.leftovers(stocks);
    return caveats.found;
  }

  private void areas() {
    boolean energy =
        plan.resources().stream()
            .anyMatch(resource -> plan.offerOf(resource).content().kind().equals(Kind.ENERGY));
    Set<CostArea> covered = EnumSet.noneOf(CostArea.class);
    covered.addAll(plan.covered());
    cover(covered, CostArea.ENERGY, energy);
    cover(
        covered,
        CostArea.SHIPPING,
        !plan.shipping().isEmpty() || !plan.prices().shipping().isEmpty());
    cover(covered, CostArea.OVERHEAD, !plan.overheads().isEmpty());
    cover(covered, CostArea.FAILURES, !plan.failures().isNone());
    for (CostArea area : CostArea.values()) {
      if (!covered.contains(area)) {
        found.add(Caveat.of(area.caveat(), "Not included: " + area.words() + "."));
      }
    }
  }

  /** Where some suppliers' charges are known, those of the others are missed. */
  private void shipping() {
    if (plan.covered().contains(CostArea.SHIPPING)
        || (plan.shipping().isEmpty() && plan.prices().shipping().isEmpty())) {
      return;
    }
    Set<String> unknown = new TreeSet<>();
    for (Item item : plan.purchases().buying.items()) {
      for (Priced priced : item.prices) {
        String supplier = priced.offer().supplier();
        boolean known =
            plan.prices().shippingOf(supplier).isPresent()
                || plan.shipping().stream().anyMatch(order -> order.supplier().equals(supplier));
        if (item.inPacks() && inUse(item, priced) && !known) {
          unknown.add(supplier);
        }
      }
    }
    add(
        CaveatCode.SHIPPING_EXCLUDED,
        "Not included: shipping by suppliers whose charge is not known",
        List.copyOf(unknown));
  }

  private static void cover(Set<CostArea> covered, CostArea area, boolean holds) {
    if (holds) {
      covered.add(area);
    }
  }

  private void taxes() {
    // Once tax is added or deducted, all prices that tell stand on one basis.
    boolean asPriced = plan.tax().rule() == TaxRule.AS_PRICED;
    List<String> included = bought(offer -> asPriced && offer.tax() == Tax.INCLUDED);
    List<String> excluded = bought(offer -> asPriced && offer.tax() == Tax.EXCLUDED);
    if (!included.isEmpty()) {
      add(CaveatCode.TAX_MIXED, "Prices with tax are summed with prices without tax", excluded);
    } else {
      add(CaveatCode.TAX_EXCLUDED, "Prices come without tax", excluded);
    }
    add(
        CaveatCode.TAX_UNKNOWN,
        "Prices do not say whether they hold the tax",
        bought(offer -> offer.tax() == Tax.UNKNOWN));
  }

  private void ages() {
    add(CaveatCode.PRICE_UNDATED, "Prices carry no date", bought(offer -> offer.date().isEmpty()));
    add(
        CaveatCode.PRICE_OLD,
        "Prices are more than "
            + plan.prices().oldAfterDays()
            + " days old on "
            + plan.prices().asOf(),
        bought(offer -> offer.date().filter(this::isOld).isPresent()));
  }

  private boolean isOld(LocalDate date) {
    return ChronoUnit.DAYS.between(date, plan.prices().asOf()) > plan.prices().oldAfterDays();
  }

  private void rates() {
    Set<ExchangeRate> rates = new LinkedHashSet<>();
    plan.resources()
        .forEach(
            resource ->
                offersInUse(resource).forEach(offer -> offer.convertedAt().ifPresent(rates::add)));
    for (ExchangeRate rate : rates) {
      String at = rate.text() + " (" + rate.source().cite() + ")";
      List<String> items = bought(offer -> offer.convertedAt().equals(Optional.of(rate)));
      add(CaveatCode.EXCHANGE_RATE_ASSUMED, "Prices were converted at " + at, items);
      if (isOld(rate.date())) {
        add(
            CaveatCode.EXCHANGE_RATE_OLD,
            "The exchange rate "
                + rate.text()
                + " is more than "
                + plan.prices().oldAfterDays()
                + " days old on "
                + plan.prices().asOf(),
            items);
      }
    }
  }

  private void offers() {
    add(
        CaveatCode.OFFERS_LEFT_OUT,
        "Some offers do not serve the need and are left out",
        needed(
            resource ->
                plan.offersOf(resource).size() < plan.prices().offersOf(resource.item()).size()));
    add(CaveatCode.EQUIPMENT_NOT_COVERED, "Neither priced nor marked as owned", plan.uncovered());
  }

  private void assumptions() {
    add(
        CaveatCode.EQUIPMENT_NOT_IN_USAGE,
        "Taken to last for good: in the cash of the first part, not in the usage per part",
        needed(resource -> resource instanceof Durable durable && !durable.owned()));
    add(
        CaveatCode.LIFE_ASSUMED,
        "How long it lasts is an assumption",
        needed(
            resource ->
                resource instanceof Wearing
                    || resource instanceof Aged
                    || resource instanceof Depreciated));
    add(
        CaveatCode.LIFE_EXTRAPOLATED,
        "Taken to last longer than it has been seen to last",
        needed(Caveats::isExtrapolated));
    add(
        CaveatCode.LOSS_ASSUMED,
        "How much a firing loses is an assumption",
        needed(resource -> resource instanceof ToppedUp || resource instanceof RunDown));
    if (!plan.failures().isNone()) {
      found.add(
          Caveat.of(
              CaveatCode.YIELD_ASSUMED,
              "How many parts come out good is an assumption, counted as "
                  + plan.failures().rule().words()
                  + "."));
    }
    add(
        CaveatCode.DEPRECIATION_NOT_CASH,
        "Charged by depreciation, not by what is paid for it",
        needed(resource -> resource instanceof Depreciated));
    add(
        CaveatCode.OWNERSHIP_ASSUMED,
        "Taken to be owned at the start, at no cost",
        needed(Caveats::isOwned));
  }

  /** Holds what a purchase has to last against how long it keeps. */
  private void shelfLives(long parts) {
    List<String> atRisk = new ArrayList<>();
    List<String> undetermined = new ArrayList<>();
    List<Item> items = plan.purchases().buying.items();
    for (int i = 0; i < items.size(); i++) {
      Item item = items.get(i);
      Optional<Amount<Time>> life = Accounts.shelfLife(item, bought.counts[i]);
      if (life.isEmpty() || !item.inPacks() || item.resource instanceof Durable) {
        continue;
      }
      String keeps = item.resource.item() + " keeps " + life.get();
      if (plan.timePerPart().isEmpty()) {
        undetermined.add(keeps);
        continue;
      }
      Amount<Time> pace = plan.timePerPart().get();
      Optional<Amount<Time>> lasts =
          plan.purchases().buying.lasts(i, parts).map(more -> pace.multiply((double) more));
      if (lasts.filter(time -> !time.isGreaterThan(life.get())).isEmpty()) {
        atRisk.add(keeps + " and lasts " + lasts.map(Amount::toString).orElse("for good"));
      }
    }
    add(CaveatCode.SHELF_LIFE_AT_RISK, "Bought for longer than it keeps", atRisk);
    add(
        CaveatCode.SHELF_LIFE_UNDETERMINED,
        "Whether it is used within its shelf life is not known, as no pace of parts is stated",
        undetermined);
  }

  private void charge(long parts) {
    if (plan.charging() == ChargeRule.SHARED) {
      if (plan.partsPerFiring() > 1) {
        found.add(
            Caveat.of(
                CaveatCode.CHARGE_SHARED,
                "Room left in a charge is taken to be filled by other work that pays its share."));
      }
      return;
    }
    long inLast = plan.workload().partsInLastFiring(parts);
    if (inLast != 0) {
      found.add(
          Caveat.of(
              CaveatCode.CHARGE_NOT_FULL,
              "The last charge holds "
                  + inLast
                  + " of "
                  + plan.partsPerFiring()
                  + " parts and is counted as a whole firing."));
    }
  }

  private void leftovers(List<Stock> stocks) {
    if (plan.leftovers().rule() != LeftoverRule.NOT_VALUED) {
      return;
    }
    List<String> durable =
        needed(resource -> resource instanceof Durable || resource instanceof Depreciated);
    add(
        CaveatCode.LEFTOVERS_NOT_VALUED,
        "What is left over is not deducted",
        stocks.stream()
            .filter(
                stock ->
                    stock.left().si() > 0
                        || stock.stranded().filter(rest -> rest.si() > 0).isPresent())
            .map(Stock::item)
            .filter(item -> !durable.contains(item))
            .toList());
  }

  private static boolean isOwned(Resource resource) {
    if (resource instanceof Durable durable) {
      return durable.owned();
    }
    if (resource instanceof Wearing wearing) {
      return wearing.usesLeft().si() > 0;
    }
    Optional<Amount<?>> owned = Optional.empty();
    if (resource instanceof ToppedUp toppedUp) {
      owned = toppedUp.owned();
    } else if (resource instanceof RunDown runDown) {
      owned = runDown.owned();
    } else if (resource instanceof Aged aged) {
      owned = aged.owned();
    } else if (resource instanceof Consumed consumed) {
      owned = consumed.owned();
    }
    return owned.filter(stock -> stock.si() > 0).isPresent();
  }

  private static boolean isExtrapolated(Resource resource) {
    if (resource instanceof Wearing wearing) {
      return wearing.observed().filter(seen -> seen.si() < wearing.life().si()).isPresent();
    }
    return resource instanceof Aged aged
        && aged.observed().filter(seen -> seen < aged.cycles()).isPresent();
  }

  /** The items of which an offer in use is such. */
  private List<String> bought(Predicate<Offer> which) {
    return needed(resource -> offersInUse(resource).stream().anyMatch(which));
  }

  /** The offers by which something is bought or would be; the first where nothing is. */
  private List<Offer> offersInUse(Resource resource) {
    int index = plan.resources().indexOf(resource);
    Item item = plan.purchases().buying.items().get(index);
    List<Offer> offers =
        item.prices.stream()
            .filter(priced -> inUse(item, priced))
            .map(Priced::offer)
            .distinct()
            .toList();
    return offers.isEmpty() ? List.of(item.offers.get(0)) : offers;
  }

  private boolean inUse(Item item, Priced priced) {
    int index = plan.purchases().buying.items().indexOf(item);
    return bought.counts[index][item.prices.indexOf(priced)].signum() > 0;
  }

  private List<String> needed(Predicate<Resource> which) {
    return plan.resources().stream().filter(which).map(Resource::item).toList();
  }

  private void add(CaveatCode code, String text, List<String> items) {
    if (!items.isEmpty()) {
      found.add(Caveat.of(code, text + ": " + String.join(", ", items) + "."));
    }
  }
}
