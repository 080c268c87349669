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
    long[] solved = benchmark.integerSolver();
    assertThat(benchmark.problem.isCoveredBy(solved)).isTrue();
    assertThat(cents(benchmark.planner())).isEqualTo(benchmark.problem.cost(solved));
  }

  /** Solvers in doubles may err; an error shows as a cover that is none, or a dearer one. */
  @Test
  void isFeasibleAndNeverWorseThanTheIntegerSolverOnRandomProblems() {
    Random random = new Random(1);
    int worse = 0;
    int infeasible = 0;
    int problems = 400;
    for (int i = 0; i < problems; i++) {
      PackProblem problem =
          PackProblem.random(random, 1 + random.nextInt(12), 1 + random.nextInt(20_000));
      PurchasePlan plan =
          PurchasePlanner.standard()
              .plan(
                  PurchaseBenchmark.book(problem),
                  List.of(Need.of("pellets", Amounts.ratio(problem.need()))));
      long held = 0;
      for (Purchase purchase : plan.purchases()) {
        held += (long) purchase.offer().content().si() * purchase.packs().longValueExact();
      }
      assertThat(held).isGreaterThanOrEqualTo(problem.need());
      long[] solved = problem.bySolver();
      if (!problem.isCoveredBy(solved)) {
        infeasible++;
      } else {
        assertThat(cents(plan)).as("%s", i).isLessThanOrEqualTo(problem.cost(solved));
        worse += cents(plan) < problem.cost(solved) ? 1 : 0;
      }
    }
    System.out.println("solver worse " + worse + ", infeasible " + infeasible);
  }

  private static long cents(PurchasePlan plan) {
    return plan.total().getAmount().movePointRight(2).longValueExact();
  }
}
