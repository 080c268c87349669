package dev.kilnledger.costing.ledger;

import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.costing.resource.Consumed;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.RunDown;
import dev.kilnledger.costing.resource.Stock;
import dev.kilnledger.costing.resource.ToppedUp;
import dev.kilnledger.costing.resource.Wearing;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Kind;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** The caveats that apply to a plan and a number of parts, and no others. */
final class Caveats {
  private final LedgerPlan plan;
  private final List<Caveat> found = new ArrayList<>();

  private Caveats(LedgerPlan plan) {
    this.plan = plan;
  }

  static List<Caveat> of(LedgerPlan plan, long parts, List<Stock> stocks) {
    Caveats caveats = new Caveats(plan);
    caveats.areas();
    caveats.taxes();
    caveats.ages();
    caveats.assumptions();
    caveats.charge(parts);
    caveats.leftovers(stocks);
    return caveats.found;
  }

  private void areas() {
    boolean energy =
        plan.resources().stream()
            .anyMatch(resource -> plan.offerOf(resource).content().kind().equals(Kind.ENERGY));
    for (CostArea area : CostArea.values()) {
      if (!plan.covered().contains(area) && !(area == CostArea.ENERGY && energy)) {
        found.add(Caveat.of(area.caveat(), "Not included: " + area.words() + "."));
      }
    }
  }

  private void taxes() {
    List<String> included = bought(offer -> offer.tax() == Tax.INCLUDED);
    List<String> excluded = bought(offer -> offer.tax() == Tax.EXCLUDED);
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
        bought(
            offer ->
                offer
                    .date()
                    .filter(
                        date ->
                            ChronoUnit.DAYS.between(date, plan.prices().asOf())
                                > plan.prices().oldAfterDays())
                    .isPresent()));
  }

  private void assumptions() {
    add(
        CaveatCode.LIFE_ASSUMED,
        "How long it lasts is an assumption",
        needed(resource -> resource instanceof Wearing));
    add(
        CaveatCode.LOSS_ASSUMED,
        "How much a firing loses is an assumption",
        needed(resource -> resource instanceof ToppedUp || resource instanceof RunDown));
    add(
        CaveatCode.OWNERSHIP_ASSUMED,
        "Taken to be owned at the start, at no cost",
        needed(Caveats::isOwned));
  }

  private void charge(long parts) {
    long inLast = parts % plan.partsPerFiring();
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
    List<String> durable = needed(resource -> resource instanceof Durable);
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
      return wearing.usesLeft() > 0;
    }
    Optional<Amount<?>> owned = Optional.empty();
    if (resource instanceof ToppedUp toppedUp) {
      owned = toppedUp.owned();
    } else if (resource instanceof RunDown runDown) {
      owned = runDown.owned();
    } else if (resource instanceof Consumed consumed) {
      owned = consumed.owned();
    }
    return owned.filter(stock -> stock.si() > 0).isPresent();
  }

  private List<String> bought(Predicate<Offer> which) {
    return needed(resource -> which.test(plan.offerOf(resource)));
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
