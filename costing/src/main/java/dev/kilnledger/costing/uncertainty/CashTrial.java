package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.costing.ledger.BuyingRule;
import org.apache.commons.rng.UniformRandomProvider;

/** A trial of the cash for n parts: first part, last part, all parts, usage. */
final class CashTrial implements Trial {
  static final int FIRST = 0;
  static final int LAST = 1;
  static final int ALL = 2;
  static final int USAGE = 3;
  static final int OUTPUTS = 4;

  private final CashKernel kernel;
  private final Draws draws;
  private final long parts;
  private final boolean planned;

  CashTrial(UncertainPlan plan, DrawnPlan drawn, long parts, UniformRandomProvider random) {
    this.kernel = new CashKernel(drawn, plan.failsAtRandom(), random);
    this.kernel.keep(1);
    if (parts > 1) {
      this.kernel.keep(parts - 1);
      this.kernel.keep(parts);
    }
    this.draws = new Draws(plan.inputs(), random);
    this.parts = parts;
    this.planned = plan.plan().buying() == BuyingRule.PLANNED_FOR_N;
  }

  @Override
  public void run(double[] outputs) {
    count(draws.next(), outputs);
  }

  /** Counts a trial whose values are given. */
  void count(double[] values, double[] outputs) {
    kernel.start(values);
    double first = kernel.packs + kernel.metered;
    double firstMetered = kernel.metered;
    double last = first;
    double all = first;
    if (parts > 1) {
      kernel.through(parts - 1);
      double before = planned ? kernel.metered : kernel.packs + kernel.metered;
      kernel.through(parts);
      all = kernel.packs + kernel.metered;
      last = (planned ? kernel.metered : all) - before;
      // Planned for n, the first part has the packs of all.
      first = planned ? kernel.packs + firstMetered : first;
    }
    outputs[FIRST] = first;
    outputs[LAST] = last;
    outputs[ALL] = all;
    outputs[USAGE] = kernel.usage();
  }
}
