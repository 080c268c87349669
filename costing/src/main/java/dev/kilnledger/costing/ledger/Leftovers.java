package dev.kilnledger.costing.ledger;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import org.immutables.value.Value;

/** By which rule leftovers are valued. */
@Value.Immutable
@ValueStyle
public interface Leftovers extends Serializable {
  /** {@return the rule} */
  @Value.Parameter
  LeftoverRule rule();

  /**
   * A rule.
   *
   * @param rule the rule
   * @return leftovers valued by it
   */
  static Leftovers by(LeftoverRule rule) {
    return ImmutableLeftovers.of(rule);
  }

  /** {@return nothing is deducted} */
  static Leftovers notValued() {
    return by(LeftoverRule.NOT_VALUED);
  }

  /** {@return what is left is deducted at its share of the cost} */
  static Leftovers atCostShare() {
    return by(LeftoverRule.COST_SHARE);
  }

  /**
   * {@return what is left is deducted at its share of the cost, as far as it is used within the
   * shelf life of its offer at the pace of the plan}
   */
  static Leftovers atCostShareWithinShelfLife() {
    return by(LeftoverRule.COST_SHARE_WITHIN_SHELF_LIFE);
  }
}
