package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.costing.ledger.BuyingRule;
import org.apache.commons.rng.UniformRandomProvider;

/** Counts trials in doubles, with what is the same in all of them prepared once. */
final class KernelCount implements CashCount {
  private final CashKernel kernel;
  private final long parts;
  private final boolean planned;

  KernelCount(DrawnPlan drawn, boolean atRandom, long parts, UniformRandomProvider random) {
    this.kernel = new CashKernel(drawn, atRandom, random);
    this.kernel.keep(1);
    if (parts > 1) {
      this.kernel.keep(parts - 1);
      this.kernel.keep(parts);
    }
    this.parts = parts;
    this.planned = drawn.plan().buying() == BuyingRule.PLANNED_FOR_N;
  }

  @Override
  public void count(double[] values, double[] outputs) {
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
