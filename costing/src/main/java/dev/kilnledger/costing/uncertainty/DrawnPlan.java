package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.PriceBreak;
import dev.kilnledger.costing.resource.Aged;
import dev.kilnledger.costing.resource.Consumed;
import dev.kilnledger.costing.resource.Depreciated;
import dev.kilnledger.costing.resource.DepreciationMethod;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.RunDown;
import dev.kilnledger.costing.resource.Staircase;
import dev.kilnledger.costing.resource.ToppedUp;
import dev.kilnledger.costing.resource.Wearing;
import dev.kilnledger.costing.yield.Failures;
import dev.kilnledger.costing.yield.Stage;
import dev.kilnledger.costing.yield.StageYield;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.Kind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Dimensionless;
import org.joda.money.BigMoney;

/** Writes the values of a trial into the plan, so that the ledger itself can count it. */
final class DrawnPlan {
  private final LedgerPlan plan;
  private final Binding binding;
  private final List<Staircase> withoutLosses;
  private final boolean plain;

  DrawnPlan(UncertainPlan uncertain) {
    this(uncertain, false);
  }

  private DrawnPlan(UncertainPlan uncertain, boolean smooth) {
    this.plan = uncertain.plan();
    this.binding = Binding.of(plan, uncertain.inputs(), smooth, new Problems("uncertain plan"));
    this.withoutLosses =
        LedgerPlan.builder().from(plan).failures(plan.failures().trialsOnly()).build().staircases();
    this.plain =
        plan.shipping().isEmpty()
            && plan.prices().shipping().isEmpty()
            && plan.resources().stream().allMatch(this::isPlain);
  }

  /** With values that are not rounded, for the derivatives of what is smooth. */
  static DrawnPlan smooth(UncertainPlan uncertain) {
    return new DrawnPlan(uncertain, true);
  }

  /** The plan as it is stated. */
  LedgerPlan plan() {
    return plan;
  }

  /**
   * Whether all there is to count are packs of one offer at one price for each item, and measures:
   * what {@link CashKernel} knows.
   */
  boolean isPlain() {
    return plain;
  }

  private boolean isPlain(Resource resource) {
    boolean inProportion =
        !(resource instanceof Depreciated depreciated)
            || depreciated.method() == DepreciationMethod.UNITS_OF_PRODUCTION
            || depreciated.method() == DepreciationMethod.STRAIGHT_LINE;
    return inProportion
        && plan.prices().offersOf(resource.item()).size() == 1
        && plan.offerOf(resource).isPlain();
  }

  /** The purchases by the stated plan, but for its losses: what so many events take. */
  List<Staircase> withoutLosses() {
    return withoutLosses;
  }

  Binding binding() {
    return binding;
  }

  /**
   * The plan of a trial.
   *
   * @param drawn the value of each input
   * @param withoutLosses whether only the trial parts stay of its failures
   */
  LedgerPlan plan(double[] drawn, boolean withoutLosses) {
    Map<Driver, Amount<?>> amounts = new EnumMap<>(Driver.class);
    plan.amounts()
        .forEach(
            (driver, each) -> amounts.put(driver, amount(FigureName.amount(driver), each, drawn)));
    return LedgerPlan.builder()
        .from(plan)
        .prices(
            PriceBook.builder()
                .from(plan.prices())
                .offers(
                    plan.prices().offers().stream()
                        .map(offer -> isBought(offer) ? priced(offer, drawn) : offer)
                        .toList())
                .build())
        .shipping(plan.shipping().stream().map(order -> priced(order, drawn)).toList())
        .resources(plan.resources().stream().map(resource -> used(resource, drawn)).toList())
        .amounts(amounts)
        .failures(withoutLosses ? plan.failures().trialsOnly() : failures(drawn))
        .build();
  }

  private boolean isBought(Offer offer) {
    return plan.resourceOf(offer.item()).isPresent()
        && plan.prices().offersOf(offer.item()).contains(offer);
  }

  private Offer priced(Offer offer, double[] drawn) {
    DrawnFigure price = binding.figure(FigureName.price(plan, offer));
    if (!price.varies()) {
      return offer;
    }
    BigMoney drawnPrice = money(offer, price.si(drawn));
    // Prices of larger orders go up and down with that of a single pack.
    double factor = price.si(drawn) / offer.price().getAmount().doubleValue();
    return Offer.builder()
        .from(offer)
        .price(drawnPrice)
        .breaks(
            offer.breaks().stream()
                .map(
                    step ->
                        PriceBreak.of(
                            step.fromPacks(),
                            step.price().multipliedBy(BigDecimal.valueOf(factor))))
                .toList())
        .build();
  }

  private static BigMoney money(Offer offer, double price) {
    return BigMoney.of(offer.price().getCurrencyUnit(), BigDecimal.valueOf(price));
  }

  private Resource used(Resource resource, double[] drawn) {
    String item = resource.item();
    if (resource instanceof Wearing wearing) {
      Amount<?> life = amount(FigureName.life(item), wearing.life(), drawn);
      return Wearing.builder().from(wearing).life(life).build();
    }
    if (resource instanceof Depreciated depreciated) {
      Amount<?> life = amount(FigureName.life(item), depreciated.life(), drawn);
      return Depreciated.builder().from(depreciated).life(life).build();
    }
    if (resource instanceof Consumed consumed) {
      String name = binding.quantity(consumed);
      return Consumed.builder()
          .from(consumed)
          .quantity(amount(name, consumed.quantity(), drawn))
          .build();
    }
    if (resource instanceof ToppedUp toppedUp) {
      return ToppedUp.builder()
          .from(toppedUp)
          .fill(amount(FigureName.fill(item), toppedUp.fill(), drawn))
          .loss(share(FigureName.loss(item), toppedUp.loss(), drawn))
          .build();
    }
    if (resource instanceof RunDown runDown) {
      return RunDown.builder()
          .from(runDown)
          .fill(amount(FigureName.fill(item), runDown.fill(), drawn))
          .loss(share(FigureName.loss(item), runDown.loss(), drawn))
          .build();
    }
    if (resource instanceof Aged aged) {
      Amount<?> cycles = amount(FigureName.life(item), Amounts.ratio(aged.cycles()), drawn);
      return Aged.builder()
          .from(aged)
          .fill(amount(FigureName.fill(item), aged.fill(), drawn))
          .cycles((int) cycles.si())
          .build();
    }
    return resource;
  }

  private Failures failures(double[] drawn) {
    List<StageYield> stages = new ArrayList<>();
    for (Stage stage : Stage.values()) {
      StageYield yield = plan.failures().at(stage);
      StageYield.Builder builder =
          StageYield.builder()
              .from(yield)
              .parts(share(FigureName.partYield(stage), yield.parts(), drawn));
      if (stage.inCharges()) {
        builder.charges(share(FigureName.chargeYield(stage), yield.charges(), drawn));
      }
      stages.add(builder.build());
    }
    return Failures.builder().from(plan.failures()).stages(stages).build();
  }

  private Amount<?> amount(String name, Amount<?> stated, double[] drawn) {
    // A name that stands for several figures stands for none that can vary.
    return binding.knows(name) && binding.figure(name).varies()
        ? binding.figure(name).amount(drawn)
        : stated;
  }

  private Amount<Dimensionless> share(String name, Amount<Dimensionless> stated, double[] drawn) {
    Amount<?> amount = amount(name, stated, drawn);
    return Amount.of(amount.getValue().doubleValue(), amount.getUnit(), Kind.RATIO);
  }
}
