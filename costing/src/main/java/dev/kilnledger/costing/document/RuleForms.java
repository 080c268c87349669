package dev.kilnledger.costing.document;

import static dev.kilnledger.core.document.internal.Forms.COUNT;
import static dev.kilnledger.core.document.internal.Forms.SOURCE;
import static dev.kilnledger.core.document.internal.Forms.amount;

import dev.kilnledger.core.document.internal.Form;
import dev.kilnledger.core.document.internal.Forms;
import dev.kilnledger.core.document.internal.ObjectForm;
import dev.kilnledger.costing.ledger.BuyingRule;
import dev.kilnledger.costing.ledger.CostArea;
import dev.kilnledger.costing.ledger.LeftoverRule;
import dev.kilnledger.costing.ledger.Overhead;
import dev.kilnledger.costing.ledger.OverheadBase;
import dev.kilnledger.costing.ledger.Rounding;
import dev.kilnledger.costing.ledger.TaxPolicy;
import dev.kilnledger.costing.ledger.TaxRule;
import dev.kilnledger.costing.resource.ChargeRule;
import dev.kilnledger.costing.yield.AfterFailure;
import dev.kilnledger.costing.yield.FailureRule;
import dev.kilnledger.costing.yield.Failures;
import dev.kilnledger.costing.yield.Stage;
import dev.kilnledger.costing.yield.StageYield;
import dev.kilnledger.units.Kind;

/** The forms of the rules by which a ledger counts. */
final class RuleForms {
  static final Form<ChargeRule> CHARGING = Forms.choice(ChargeRule.class);
  static final Form<BuyingRule> BUYING = Forms.choice(BuyingRule.class);
  static final Form<Rounding> ROUNDING = Forms.choice(Rounding.class);
  static final Form<LeftoverRule> LEFTOVERS = Forms.choice(LeftoverRule.class);
  static final Form<CostArea> COST_AREA = Forms.choice(CostArea.class);
  static final ObjectForm<Failures> FAILURES = failuresForm();
  static final ObjectForm<Overhead> OVERHEAD = overheadForm();
  static final ObjectForm<TaxPolicy> TAX = taxForm();

  private RuleForms() {}

  private static ObjectForm<StageYield> yieldForm() {
    ObjectForm<StageYield> form =
        ObjectForm.named("stageYield", "How much of what enters a stage leaves it good.");
    var stage = form.required("stage", Forms.choice(Stage.class), StageYield::stage);
    var parts = form.defaulted("parts", amount(Kind.RATIO), StageYield::parts);
    var charges = form.defaulted("charges", amount(Kind.RATIO), StageYield::charges);
    var after =
        form.withDefault(
            "afterFailure",
            Forms.choice(AfterFailure.class),
            AfterFailure.SCRAPPED,
            StageYield::afterFailure);
    var source = form.required("source", SOURCE, StageYield::source);
    return form.read(
        values -> {
          StageYield.Builder yield =
              StageYield.builder()
                  .stage(values.get(stage))
                  .afterFailure(values.get(after))
                  .source(values.get(source));
          values.get(parts).ifPresent(yield::parts);
          values.get(charges).ifPresent(yield::charges);
          return yield.build();
        });
  }

  private static ObjectForm<Failures> failuresForm() {
    ObjectForm<Failures> form =
        ObjectForm.named("failures", "What fails on the way to good parts.");
    var rule =
        form.withDefault(
            "rule", Forms.choice(FailureRule.class), FailureRule.PLANNED_STARTS, Failures::rule);
    var stages = form.list("stages", yieldForm(), Failures::stages);
    var parts = form.withDefault("trialParts", COUNT, 0, Failures::trialParts);
    var firings = form.defaulted("trialFirings", COUNT, Failures::trialFirings);
    var source = form.defaulted("trialSource", SOURCE, Failures::trialSource);
    return form.read(
        values -> {
          Failures.Builder failures =
              Failures.builder()
                  .rule(values.get(rule))
                  .stages(values.get(stages))
                  .trialParts(values.get(parts));
          values.get(firings).ifPresent(failures::trialFirings);
          values.get(source).ifPresent(failures::trialSource);
          return failures.build();
        });
  }

  private static ObjectForm<Overhead> overheadForm() {
    ObjectForm<Overhead> form =
        ObjectForm.named("overhead", "A share of other costs that is added to them.");
    var base = form.required("base", Forms.choice(OverheadBase.class), Overhead::base);
    var rate = form.required("rate", amount(Kind.RATIO), Overhead::rate);
    var source = form.required("source", SOURCE, Overhead::source);
    return form.read(values -> Overhead.of(values.get(base), values.get(rate), values.get(source)));
  }

  private static ObjectForm<TaxPolicy> taxForm() {
    ObjectForm<TaxPolicy> form = ObjectForm.named("tax", "How tax enters a ledger.");
    var rule = form.required("rule", Forms.choice(TaxRule.class), TaxPolicy::rule);
    var rate = form.required("rate", amount(Kind.RATIO), TaxPolicy::rate);
    var source = form.required("source", SOURCE, TaxPolicy::source);
    return form.read(
        values -> TaxPolicy.of(values.get(rule), values.get(rate), values.get(source)));
  }
}
