package dev.kilnledger.costing.uncertainty;

import org.apache.commons.rng.UniformRandomProvider;

/**
 * A trial of the first n with C(n) &lt;= n P, C(n) being the cash for n parts. As it never falls,
 * no n below C(m) / P can be the next after m with C(m) &gt; m P, so that the search jumps.
 */
final class BreakEvenTrial implements Trial {
  /** Sums in doubles may miss the outside cost they equal by their last digits. */
  private static final double EQUAL = 1 + 1e-13;

  private final CashKernel kernel;
  private final Draws draws;
  private final long most;
  private final double price;

  BreakEvenTrial(
      UncertainPlan plan, DrawnPlan drawn, double price, long most, UniformRandomProvider random) {
    this.kernel = new CashKernel(drawn, plan.failsAtRandom(), random);
    this.kernel.keep(1);
    this.draws = new Draws(plan.inputs(), random);
    this.price = price;
    this.most = most;
  }

  @Override
  public void run(double[] outputs) {
    kernel.start(draws.next());
    long parts = 1;
    double cash = kernel.packs + kernel.metered;
    while (cash > parts * price * EQUAL) {
      double next = Math.max(parts + 1.0, Math.ceil(cash / (price * EQUAL)));
      if (next > most) {
        outputs[0] = Double.POSITIVE_INFINITY;
        return;
      }
      parts = (long) next;
      kernel.through(parts);
      cash = kernel.packs + kernel.metered;
    }
    outputs[0] = parts;
  }
}
