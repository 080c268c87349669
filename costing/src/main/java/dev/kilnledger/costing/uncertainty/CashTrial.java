package dev.kilnledger.costing.uncertainty;

import org.apache.commons.rng.UniformRandomProvider;

/** A trial of the cash for n parts, with the outputs of {@link CashCount}. */
final class CashTrial implements Trial {
  private final CashCount count;
  private final Draws draws;

  CashTrial(UncertainPlan plan, DrawnPlan drawn, long parts, UniformRandomProvider random) {
    this.count = CashCount.of(drawn, plan.failsAtRandom(), parts, random);
    this.draws = new Draws(plan.inputs(), random);
  }

  @Override
  public void run(double[] outputs) {
    count.count(draws.next(), outputs);
  }
}
