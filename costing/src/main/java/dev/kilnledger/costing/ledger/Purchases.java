package dev.kilnledger.costing.ledger;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The purchases of a plan by its rule of buying, worked out once and shared by all questions about
 * the plan. The {@link Ledger} tells what is in them.
 */
public final class Purchases {
  final Buying buying;
  private final LedgerPlan plan;
  private volatile @Nullable Accounts accounts;

  Purchases(LedgerPlan plan) {
    this.plan = plan;
    this.buying = buying(plan, Item.of(plan, plan.resources()));
  }

  /** What is said of the purchases, written when it is first asked for. */
  Accounts accounts() {
    Accounts known = accounts;
    if (known == null) {
      known = new Accounts(plan, buying);
      accounts = known;
    }
    return known;
  }

  /** The purchases for some resources of a plan. */
  static Buying buying(LedgerPlan plan, List<Item> items) {
    return plan.buying() == BuyingRule.PLANNED_FOR_N
        ? new PlannedForN(items, Freight.of(plan))
        : AsNeeded.of(items, Freight.of(plan));
  }
}
