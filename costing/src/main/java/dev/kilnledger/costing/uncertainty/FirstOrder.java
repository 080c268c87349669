package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.resource.Aged;
import dev.kilnledger.costing.resource.Consumed;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.RunDown;
import dev.kilnledger.costing.resource.Tails;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import javax.measure.quantity.Dimensionless;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Propagates standard uncertainties through a formula to the first order (JCGM 100:2008, the Guide
 * to the Expression of Uncertainty in Measurement; clauses from memory): the law of propagation for
 * independent inputs (5.1.2), effective degrees of freedom by Welch and Satterthwaite (G.4.1),
 * expanded uncertainty (6.2, G.6.4).
 *
 * <p>It holds where the formula is nearly straight over the spread of each input. The usage of a
 * plan is a smooth formula; cash for whole packs is a step function of its inputs, of which this
 * class refuses to speak: {@link MonteCarlo} tells it. Example:
 *
 * <pre>{@code
 * UncertaintyBudget budget = FirstOrder.standard()
 *     .propagate("volume", List.of(
 *         UncertainInput.of("length", Normal.of(40, 0.02), calliper),
 *         UncertainInput.of("width", Normal.of(25, 0.02), calliper)),
 *         values -> values[0] * values[1], percent(95));
 * budget.estimate();                    // 1000
 * budget.combinedStandardUncertainty(); // the root of (25 x 0.02)^2 + (40 x 0.02)^2: 0.943
 * }</pre>
 */
public final class FirstOrder {
  /** An input bends the result if its second difference exceeds this share of the first. */
  private static final double MOST_BEND = 0.1;

  private static final FirstOrder STANDARD = new FirstOrder();

  private FirstOrder() {}

  /** {@return the propagation} */
  public static FirstOrder standard() {
    return STANDARD;
  }

  /**
   * The uncertainty of the usage per part of a plan.
   *
   * @param plan the plan and its inputs, one or more; failures are counted by the rule of the plan
   * @param figure the figure, {@link CashFigure#USAGE}
   * @param coverage the level of confidence, 0.5 to 0.9999
   * @return the uncertainty budget, in units of the plan's currency
   * @throws IllegalArgumentException with all problems: if the figure is cash for whole packs, or
   *     an input acts on a number that is rounded to a whole one
   */
  public UncertaintyBudget propagate(
      UncertainPlan plan, CashFigure figure, Amount<Dimensionless> coverage) {
    Problems problems =
        new Problems("first-order propagation")
            .require(
                figure == CashFigure.USAGE,
                figure.words()
                    + " is cash for whole packs, a step function that has no derivative; accepted"
                    + " is usage per part, or Monte Carlo for the cash");
    steps(plan, problems);
    problems.refuseIfAny();
    return propagate(figure.words(), plan.inputs(), PlanModel.of(plan, figure, 1).get(), coverage);
  }

  /** Figures that enter the usage as a whole number: of firings, cycles or servings. */
  private static void steps(UncertainPlan uncertain, Problems problems) {
    LedgerPlan plan = uncertain.plan();
    Binding binding = new DrawnPlan(uncertain).binding();
    for (Resource resource : plan.resources()) {
      String name = "";
      if (resource instanceof RunDown) {
        name = FigureName.loss(resource.item());
      } else if (resource instanceof Aged) {
        name = FigureName.life(resource.item());
      } else if (resource instanceof Consumed consumed
          && consumed.tails() == Tails.STRANDED
          && !plan.offerOf(resource).metered()) {
        name = binding.quantity(consumed);
      }
      problems.require(
          !binding.knows(name) || !binding.figure(name).varies(),
          name
              + " enters as a whole number of uses, a step function that has no derivative;"
              + " accepted is to leave it certain, or Monte Carlo");
    }
  }

  /**
   * The uncertainty of a formula.
   *
   * @param figure what the formula is, for people
   * @param inputs its inputs, in the order of its values: means and standard deviations of their
   *     distributions, and degrees of freedom
   * @param model the formula
   * @param coverage the level of confidence, 0.5 to 0.9999
   * @return the uncertainty budget
   * @throws IllegalArgumentException if the level is out of range
   * @throws ArithmeticException if the formula comes to what is no number
   */
  public UncertaintyBudget propagate(
      String figure, List<UncertainInput> inputs, Model model, Amount<Dimensionless> coverage) {
    new Problems("first-order propagation")
        .require(
            coverage.si() >= 0.5 && coverage.si() <= 0.9999,
            "coverage is " + coverage + "; accepted is from 0.5 to 0.9999")
        .refuseIfAny();
    double[] means = inputs.stream().mapToDouble(input -> input.distribution().mean()).toArray();
    double estimate = MonteCarlo.number(model, means);
    List<BudgetLine> lines = new ArrayList<>();
    for (int i = 0; i < means.length; i++) {
      lines.add(line(inputs.get(i), means, i, estimate, model));
    }
    UncertaintyBudget.Builder budget =
        UncertaintyBudget.builder()
            .figure(figure)
            .estimate(estimate)
            .lines(lines)
            .coverage(coverage)
            .findings(lines.stream().map(line -> finding(figure, line)).toList());
    double freedom = budget.coverageFactor(0).build().effectiveDegreesOfFreedom();
    return budget.coverageFactor(factor(freedom, coverage)).build();
  }

  private static BudgetLine line(
      UncertainInput input, double[] means, int i, double estimate, Model model) {
    double mean = means[i];
    double u = input.distribution().standardDeviation();
    DoubleUnaryOperator at =
        shift -> {
          means[i] = mean + shift;
          double value = MonteCarlo.number(model, means);
          means[i] = mean;
          return value;
        };
    double first = at.applyAsDouble(u) - at.applyAsDouble(-u);
    double second = at.applyAsDouble(u) + at.applyAsDouble(-u) - 2 * estimate;
    return BudgetLine.builder()
        .input(input)
        .estimate(mean)
        .standardUncertainty(u)
        .sensitivity(u == 0 ? 0 : derivative(at, u))
        .bend(bend(first, second, estimate))
        .build();
  }

  /**
   * The derivative by central differences over a tenth and a twentieth of the spread, extrapolated
   * (Richardson): the error is of the fourth order in the spread.
   */
  private static double derivative(DoubleUnaryOperator at, double u) {
    double wide = u / 10;
    double narrow = u / 20;
    double coarse = (at.applyAsDouble(wide) - at.applyAsDouble(-wide)) / (2 * wide);
    double fine = (at.applyAsDouble(narrow) - at.applyAsDouble(-narrow)) / (2 * narrow);
    return (4 * fine - coarse) / 3;
  }

  private static double bend(double first, double second, double estimate) {
    // Differences below the rounding errors of the formula are none.
    double noise = 1e-12 * Math.abs(estimate);
    if (Math.abs(second) <= noise) {
      return 0;
    }
    return Math.abs(first) <= noise ? Double.MAX_VALUE : Math.abs(second / first);
  }

  private static Finding finding(String figure, BudgetLine line) {
    boolean straight = line.bend() <= MOST_BEND;
    return Finding.builder()
        .code(UncertaintyFinding.LINEAR_OVER_SPREAD)
        .severity(straight ? Severity.PASSED : Severity.WARNING)
        .subject(line.input().name())
        .message(
            straight
                ? figure + " is nearly a straight line over the spread of " + line.input().name()
                : figure
                    + " bends over the spread of "
                    + line.input().name()
                    + ": the first order misses part of it, Monte Carlo does not")
        .measured(Amounts.ratio(line.bend()))
        .limit(Amounts.ratio(MOST_BEND))
        .basis(
            Source.commonPractice(
                "JCGM 100:2008, 5.1.2 note, asks for higher orders where a formula bends; the"
                    + " limit is a choice"))
        .build();
  }

  private static double factor(double freedom, Amount<Dimensionless> coverage) {
    double upper = (1 - coverage.si()) / 2;
    // With infinite degrees of freedom this is the normal distribution.
    return TDistribution.of(Math.max(1, Math.floor(freedom))).inverseSurvivalProbability(upper);
  }
}
