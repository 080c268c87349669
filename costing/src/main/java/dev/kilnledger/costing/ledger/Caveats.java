package dev.kilnledger.costing.ledger;

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
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** The caveats that apply to a plan and a number of parts, and no others. */
final class Caveats {
  private final LedgerPlan plan;
  private final List<Caveat> found = new ArrayList<>();

  private Caveats(LedgerPlan plan) {
    this.plan = plan;
  }

  static List<Caveat> of(Statement statement) {
    LedgerPlan plan = statement.plan();
    long parts = statement.parts();
    Caveats caveats = new Caveats(plan);
    caveats.areas();
    caveats.found.addAll(PriceCaveats.of(plan, parts, plan.purchases().buying.through(parts)));
    caveats.equipment();
    caveats.assumptions();
    caveats.charge(parts);
    caveats.leftovers(statement.stocks());
    return List.copyOf(caveats.found);
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

  private static void cover(Set<CostArea> covered, CostArea area, boolean holds) {
    if (holds) {
      covered.add(area);
    }
  }

  private void equipment() {
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

  private List<String> needed(Predicate<Resource> which) {
    return plan.resources().stream().filter(which).map(Resource::item).toList();
  }

  private void add(CaveatCode code, String text, List<String> items) {
    if (!items.isEmpty()) {
      found.add(Caveat.of(code, text + ": " + String.join(", ", items) + "."));
    }
  }
}
