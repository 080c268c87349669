package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.costing.ledger.Account;
import dev.kilnledger.costing.ledger.Ledger;
import dev.kilnledger.costing.ledger.LedgerPlan;

/** Lets the ledger count each trial: for plans that {@link KernelCount} does not know. */
final class LedgerCount implements CashCount {
  private static final Ledger LEDGER = Ledger.standard();

  private final DrawnPlan drawnPlan;
  private final long parts;

  LedgerCount(DrawnPlan drawnPlan, long parts) {
    this.drawnPlan = drawnPlan;
    this.parts = parts;
  }

  @Override
  public void count(double[] values, double[] outputs) {
    LedgerPlan plan = drawnPlan.plan(values, false);
    outputs[FIRST] = total(LEDGER.part(plan, 1, parts));
    outputs[LAST] = total(LEDGER.part(plan, parts, parts));
    outputs[ALL] = total(LEDGER.through(plan, parts));
    outputs[USAGE] = total(LEDGER.usage(plan));
  }

  private static double total(Account account) {
    return account.total().getAmount().doubleValue();
  }
}
