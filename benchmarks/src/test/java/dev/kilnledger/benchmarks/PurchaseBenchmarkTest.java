package dev.kilnledger.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.costing.purchase.Need;
import dev.kilnledger.costing.purchase.Purchase;
import dev.kilnledger.costing.purchase.PurchasePlan;
import dev.kilnledger.costing.purchase.PurchasePlanner;
import dev.kilnledger.units.Amounts;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PurchaseBenchmarkTest {

  @Test
  void isNotDearerThanTheIntegerSolver() {
    PurchaseBenchmark benchmark = new PurchaseBenchmark();
    List<PurchasePlan> plans = benchmark.planner();
    List<long[]> solved = benchmark.integerSolver();
    for (int i = 0; i < plans.size(); i++) {
      isNeverWorse(benchmark.problems.get(i), plans.get(i), solved.get(i));
    }
  }

  /**
   * Solvers in doubles may err, which shows as packs that do not suffice, or as a dearer order:
   * with ojAlgo 57.1.0 one of these 400 orders is dearer than the best. That they agree in nearly
   * all cases shows that both were asked the same.
   */
  @Test
  void isFeasibleAndNeverWorseThanTheIntegerSolverOnRandomProblems() {
    Random random = new Random(1);
    int agreed = 0;
    for (int i = 0; i < 400; i++) {
      PackProblem problem =
          PackProblem.random(random, 1 + random.nextInt(12), 1 + random.nextInt(20_000));
      PurchasePlan plan =
          PurchasePlanner.standard()
              .plan(
                  PurchaseBenchmark.book(problem),
                  List.of(Need.of("pellets", Amounts.ratio((double) problem.need()))));
      agreed += isNeverWorse(problem, plan, problem.bySolver()) ? 1 : 0;
    }
    assertThat(agreed).isGreaterThan(390);
  }

  /** Whether plan and solver come to the same cost. */
  private static boolean isNeverWorse(PackProblem problem, PurchasePlan plan, long[] solved) {
    long held = 0;
    for (Purchase purchase : plan.purchases()) {
      long content = Math.round(purchase.offer().content().si());
      held += content * purchase.packs().longValueExact();
    }
    assertThat(held).as("%s", problem).isGreaterThanOrEqualTo(problem.need());
    if (!problem.isCoveredBy(solved)) {
      return false;
    }
    assertThat(cents(plan)).as("%s", problem).isLessThanOrEqualTo(problem.cost(solved));
    return cents(plan) == problem.cost(solved);
  }

  private static long cents(PurchasePlan plan) {
    return plan.total().getAmount().movePointRight(2).longValueExact();
  }
}
