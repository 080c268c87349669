package dev.kilnledger.costing.ledger;

import dev.kilnledger.costing.offer.ExchangeRate;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.units.Amount;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import javax.measure.quantity.Time;

/** The caveats about the offers in use: what is bought, and no others. */
final class PriceCaveats {
  private final LedgerPlan plan;
  private final Buying buying;
  private final Bought bought;
  private final List<Caveat> found = new ArrayList<>();

  private PriceCaveats(LedgerPlan plan, Bought bought) {
    this.plan = plan;
    this.buying = plan.purchases().buying;
    this.bought = bought;
  }

  static List<Caveat> of(LedgerPlan plan, long parts, Bought bought) {
    PriceCaveats caveats = new PriceCaveats(plan, bought);
    caveats.shipping();
    caveats.taxes();
    caveats.ages();
    caveats.rates();
    caveats.offers();
    caveats.shelfLives(parts);
    return caveats.found;
  }

  /** Where some suppliers' charges are known, those of the others are missed. */
  private void shipping() {
    if (plan.covered().contains(CostArea.SHIPPING)
        || (plan.shipping().isEmpty() && plan.prices().shipping().isEmpty())) {
      return;
    }
    Set<String> unknown = new TreeSet<>();
    for (Item item : buying.items()) {
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

  private void taxes() {
    // Once tax is added or deducted, all prices that tell stand on one basis.
    boolean asPriced = plan.tax().rule() == TaxRule.AS_PRICED;
    List<String> included = paid(offer -> asPriced && offer.tax() == Tax.INCLUDED);
    List<String> excluded = paid(offer -> asPriced && offer.tax() == Tax.EXCLUDED);
    if (!included.isEmpty()) {
      add(CaveatCode.TAX_MIXED, "Prices with tax are summed with prices without tax", excluded);
    } else {
      add(CaveatCode.TAX_EXCLUDED, "Prices come without tax", excluded);
    }
    add(
        CaveatCode.TAX_UNKNOWN,
        "Prices do not say whether they hold the tax",
        paid(offer -> offer.tax() == Tax.UNKNOWN));
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
        plan.resources().stream()
            .filter(
                resource ->
                    plan.offersOf(resource).size() < plan.prices().offersOf(resource.item()).size())
            .map(Resource::item)
            .toList());
  }

  /** Holds what a purchase has to last against how long it keeps. */
  private void shelfLives(long parts) {
    List<String> atRisk = new ArrayList<>();
    List<String> undetermined = new ArrayList<>();
    List<Item> items = buying.items();
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
          buying.lasts(i, parts).map(more -> pace.multiply((double) more));
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

  /** The items of which an offer in use is such. */
  private List<String> bought(Predicate<Offer> which) {
    return plan.resources().stream()
        .filter(resource -> offersInUse(resource).stream().anyMatch(which))
        .map(Resource::item)
        .toList();
  }

  /** The same with the orders that are paid for. */
  private List<String> paid(Predicate<Offer> which) {
    List<String> items = new ArrayList<>(bought(which));
    for (int i = 0; i < bought.orders.length; i++) {
      Offer order = buying.freights().get(i).order;
      if (bought.orders[i].signum() > 0 && which.test(order)) {
        items.add(order.item());
      }
    }
    return items;
  }

  /** The offers by which something is bought or would be; the first where nothing is. */
  private List<Offer> offersInUse(Resource resource) {
    int index = plan.resources().indexOf(resource);
    Item item = buying.items().get(index);
    List<Offer> offers =
        item.prices.stream()
            .filter(priced -> inUse(item, priced))
            .map(Priced::offer)
            .distinct()
            .toList();
    return offers.isEmpty() ? List.of(item.offers.get(0)) : offers;
  }

  private boolean inUse(Item item, Priced priced) {
    int index = buying.items().indexOf(item);
    return bought.counts[index][item.prices.indexOf(priced)].signum() > 0;
  }

  private void add(CaveatCode code, String text, List<String> items) {
    if (!items.isEmpty()) {
      found.add(Caveat.of(code, text + ": " + String.join(", ", items) + "."));
    }
  }
}
