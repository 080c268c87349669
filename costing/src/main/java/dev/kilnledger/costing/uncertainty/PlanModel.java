package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.Problems;
import java.util.function.Supplier;
import org.apache.commons.rng.simple.RandomSource;

/**
 * A figure of a plan as a formula of its inputs: failures are counted by the rule of the plan, as
 * what falls at random is no formula.
 */
final class PlanModel {
  private PlanModel() {}

  /** Formulas for one thread each. */
  static Supplier<Model> of(UncertainPlan plan, CashFigure figure, long parts) {
    new Problems("figure of an uncertain plan")
        .require(
            !plan.inputs().isEmpty(), "there is no input; accepted is one or more that can vary")
        .require(
            parts >= 1 && parts <= MonteCarlo.MOST_PARTS,
            "parts is " + parts + "; accepted is from 1 to " + MonteCarlo.MOST_PARTS)
        .refuseIfAny();
    UncertainPlan counted =
        UncertainPlan.builder().from(plan).failureRule(plan.plan().failures().rule()).build();
    DrawnPlan drawn =
        figure == CashFigure.USAGE ? DrawnPlan.smooth(counted) : new DrawnPlan(counted);
    return () -> {
      // Nothing is drawn from it: the values are given, and failures are not random.
      CashCount count = CashCount.of(drawn, false, parts, RandomSource.XO_SHI_RO_256_PP.create(1L));
      double[] outputs = new double[CashCount.OUTPUTS];
      return values -> {
        count.count(values, outputs);
        return switch (figure) {
          case FIRST_PART -> outputs[CashCount.FIRST];
          case LAST_PART -> outputs[CashCount.LAST];
          case ALL_PARTS -> outputs[CashCount.ALL];
          case AVERAGE -> outputs[CashCount.ALL] / parts;
          case USAGE -> outputs[CashCount.USAGE];
        };
      };
    };
  }
}
