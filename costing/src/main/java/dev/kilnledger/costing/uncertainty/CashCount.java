package dev.kilnledger.costing.uncertainty;

import org.apache.commons.rng.UniformRandomProvider;

/** Counts the cash for n parts of a trial whose values are given; not shared between threads. */
interface CashCount {
  int FIRST = 0;
  int LAST = 1;
  int ALL = 2;
  int USAGE = 3;
  int OUTPUTS = 4;

  /** Writes down first part, last part, all parts and usage. */
  void count(double[] values, double[] outputs);

  /** The quick way where it can be gone, else the ledger itself. */
  static CashCount of(DrawnPlan plan, boolean atRandom, long parts, UniformRandomProvider random) {
    return plan.isPlain()
        ? new KernelCount(plan, atRandom, parts, random)
        : new LedgerCount(plan, parts);
  }
}
