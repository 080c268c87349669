package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.offer.ExchangeRate;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.resource.Aged;
import dev.kilnledger.costing.resource.Consumed;
import dev.kilnledger.costing.resource.Depreciated;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.RunDown;
import dev.kilnledger.costing.resource.Tails;
import dev.kilnledger.costing.resource.ToppedUp;
import dev.kilnledger.costing.resource.Wearing;
import dev.kilnledger.costing.yield.Stage;
import dev.kilnledger.costing.yield.StageYield;
import dev.kilnledger.units.Amounts;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** All figures of a plan that can vary, by name, and the names that stand for several of them. */
final class PlanFigures {
  private static final double LEAST_YIELD = 0.001;

  /** The figures, in the order of the plan. */
  final Map<String, PlanFigure> figures = new LinkedHashMap<>();

  /** For each common name, the figures it multiplies, and by what its value is divided first. */
  final Map<String, Map<String, Double>> common = new TreeMap<>();

  /** Names that would stand for more than one figure. */
  private final Set<String> ambiguous = new LinkedHashSet<>();

  private final LedgerPlan plan;

  private PlanFigures(LedgerPlan plan) {
    this.plan = plan;
  }

  static PlanFigures of(LedgerPlan plan) {
    PlanFigures all = new PlanFigures(plan);
    plan.resources().forEach(all::addPrices);
    plan.shipping().forEach(order -> all.addPrice(order, new PlanFigure.Bound(0, false)));
    plan.resources().forEach(all::addUse);
    for (Stage stage : Stage.values()) {
      all.addYields(plan.failures().at(stage));
    }
    plan.amounts()
        .forEach((driver, each) -> all.add(PlanFigure.positive(FigureName.amount(driver), each)));
    all.ambiguous.forEach(all.figures::remove);
    return all;
  }

  /** {@return every name that an input can have} */
  List<String> names() {
    Set<String> names = new LinkedHashSet<>(figures.keySet());
    names.addAll(common.keySet());
    return List.copyOf(names);
  }

  private void add(PlanFigure figure) {
    if (figures.put(figure.name(), figure) != null) {
      ambiguous.add(figure.name());
    }
  }

  private void addPrices(Resource resource) {
    for (Offer offer : plan.prices().offersOf(resource.item())) {
      // Several resources of one item, as labour is, share its price.
      if (!figures.containsKey(FigureName.price(plan, offer))) {
        addPrice(
            offer,
            resource instanceof Depreciated depreciated
                ? new PlanFigure.Bound(
                    depreciated.salvage().getAmount().doubleValue(), depreciated.salvage().isZero())
                : new PlanFigure.Bound(0, false));
      }
    }
  }

  private void addPrice(Offer offer, PlanFigure.Bound least) {
    String name = FigureName.price(plan, offer);
    add(PlanFigure.price(name, offer.price().getAmount().doubleValue(), least));
    group(FigureName.supplier(offer.supplier()), name, 1);
    if (offer.convertedAt().isPresent()) {
      ExchangeRate rate = offer.convertedAt().get();
      group(FigureName.exchangeRate(rate.base()), name, rate.rate().doubleValue());
    }
  }

  private void group(String name, String figure, double divisor) {
    common.computeIfAbsent(name, any -> new LinkedHashMap<>()).put(figure, divisor);
  }

  private void addUse(Resource resource) {
    String item = resource.item();
    if (resource instanceof Wearing wearing) {
      PlanFigure life = PlanFigure.positive(FigureName.life(item), wearing.life());
      add(wearing.driver().isMeasured() ? life : life.atLeastOne());
    } else if (resource instanceof Depreciated depreciated) {
      PlanFigure life = PlanFigure.positive(FigureName.life(item), depreciated.life());
      add(depreciated.driver().isMeasured() ? life : life.atLeastOne());
    } else if (resource instanceof Consumed consumed) {
      addQuantity(consumed);
    } else if (resource instanceof ToppedUp toppedUp) {
      add(PlanFigure.positive(FigureName.fill(item), toppedUp.fill()));
      add(PlanFigure.within(FigureName.loss(item), toppedUp.loss(), 0, 1));
    } else if (resource instanceof RunDown runDown) {
      add(PlanFigure.positive(FigureName.fill(item), runDown.fill()));
      add(PlanFigure.within(FigureName.loss(item), runDown.loss(), 0.000001, 0.999999));
    } else if (resource instanceof Aged aged) {
      add(PlanFigure.positive(FigureName.fill(item), aged.fill()));
      add(
          PlanFigure.positive(FigureName.life(item), Amounts.ratio(aged.cycles()))
              .inWholeNumbers());
    }
  }

  private void addQuantity(Consumed consumed) {
    Offer offer = plan.offerOf(consumed);
    boolean alone =
        plan.resources().stream().filter(other -> other.item().equals(consumed.item())).count()
            == 1;
    PlanFigure quantity =
        PlanFigure.positive(
            alone
                ? FigureName.quantity(consumed.item())
                : FigureName.quantity(consumed.item(), consumed.driver()),
            consumed.quantity());
    boolean strands = consumed.tails() == Tails.STRANDED && !offer.metered();
    add(strands ? quantity.upTo(offer.content().si()) : quantity);
  }

  private void addYields(StageYield stage) {
    add(PlanFigure.within(FigureName.partYield(stage.stage()), stage.parts(), LEAST_YIELD, 1));
    if (stage.stage().inCharges()) {
      add(
          PlanFigure.within(
              FigureName.chargeYield(stage.stage()), stage.charges(), LEAST_YIELD, 1));
    }
  }
}
