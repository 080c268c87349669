package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.costing.breakeven.BreakEven;
import org.apache.commons.rng.UniformRandomProvider;
import org.joda.money.BigMoney;

/** A trial of the first crossing by the exact search, for plans that the kernel does not know. */
final class LedgerBreakEvenTrial implements Trial {
  private final DrawnPlan drawnPlan;
  private final Draws draws;
  private final BigMoney price;
  private final long most;

  LedgerBreakEvenTrial(
      UncertainPlan plan,
      DrawnPlan drawn,
      BigMoney price,
      long most,
      UniformRandomProvider random) {
    this.drawnPlan = drawn;
    this.draws = new Draws(plan.inputs(), random);
    this.price = price;
    this.most = most;
  }

  @Override
  public void run(double[] outputs) {
    outputs[0] =
        BreakEven.standard()
            .find(drawnPlan.plan(draws.next(), false), price)
            .first()
            .filter(parts -> parts <= most)
            .map(Long::doubleValue)
            .orElse(Double.POSITIVE_INFINITY);
  }
}
