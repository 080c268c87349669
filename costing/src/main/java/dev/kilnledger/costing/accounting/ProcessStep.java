package dev.kilnledger.costing.accounting;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/** A step that every part goes through, what it costs, and how many parts survive it. */
@Value.Immutable
@ValueStyle
public interface ProcessStep extends Serializable {
  /** {@return the step, such as "print"} */
  @Value.Parameter
  String name();

  /** {@return what the step costs for each part that enters it, zero or more} */
  @Value.Parameter
  BigMoney cost();

  /** {@return the share of parts that leave it good, above 0 and up to 1} */
  @Value.Parameter
  Amount<Dimensionless> goodShare();

  /**
   * A step.
   *
   * @param name the step
   * @param cost its cost for each part that enters it, zero or more
   * @param goodShare the share of parts that leave it good, above 0 and up to 1
   * @return the step
   * @throws IllegalArgumentException with all problems
   */
  static ProcessStep of(String name, BigMoney cost, Amount<Dimensionless> goodShare) {
    return ImmutableProcessStep.of(name, cost, goodShare);
  }

  /**
   * Refuses a negative cost and a yield out of range.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("step " + name())
        .text("name", name())
        .require(!cost().isNegative(), "cost is " + cost() + "; accepted is zero or more")
        .require(
            goodShare().si() > 0 && goodShare().si() <= 1,
            "yield is " + goodShare() + "; accepted is above 0 and up to 1")
        .refuseIfAny();
  }
}
