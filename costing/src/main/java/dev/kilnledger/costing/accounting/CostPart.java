package dev.kilnledger.costing.accounting;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import java.io.Serializable;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/** A named part of a cost. */
@Value.Immutable
@ValueStyle
public interface CostPart extends Serializable {
  /** {@return what it is for, such as "rent"} */
  @Value.Parameter
  String name();

  /** {@return the cost, zero or more, unrounded} */
  @Value.Parameter
  BigMoney cost();

  /** {@return where the cost comes from} */
  @Value.Parameter
  Source source();

  /**
   * A part of a cost.
   *
   * @param name what it is for
   * @param cost the cost, zero or more
   * @param source where it comes from
   * @return the part
   * @throws IllegalArgumentException with all problems
   */
  static CostPart of(String name, BigMoney cost, Source source) {
    return ImmutableCostPart.of(name, cost, source);
  }

  /**
   * Refuses a negative cost and a blank name.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("cost part " + name())
        .text("name", name())
        .require(!cost().isNegative(), "cost is " + cost() + "; accepted is zero or more")
        .refuseIfAny();
  }
}
