package dev.kilnledger.costing.accounting;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.math.BigDecimal;
import java.math.MathContext;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/** What a step costs for each good part at the end. */
@Value.Immutable
@ValueStyle
public interface StepCost extends Serializable {
  /** {@return the step} */
  @Value.Parameter
  ProcessStep step();

  /** {@return the share of parts entering the step that are good at the end, exact} */
  @Value.Parameter
  BigDecimal surviving();

  /** {@return cost of the step / surviving, to 34 digits} */
  default BigMoney perGoodPart() {
    return BigMoney.of(
        step().cost().getCurrencyUnit(),
        step().cost().getAmount().divide(surviving(), MathContext.DECIMAL128));
  }

  /**
   * The cost of a step.
   *
   * @param step the step
   * @param surviving the share of parts entering it that are good at the end
   * @return the cost
   * @throws IllegalArgumentException if the share is not above 0 and up to 1
   */
  static StepCost of(ProcessStep step, BigDecimal surviving) {
    return ImmutableStepCost.of(step, surviving);
  }

  /**
   * Refuses a share out of range.
   *
   * @throws IllegalArgumentException if the share is not above 0 and up to 1
   */
  @Value.Check
  default void check() {
    new Problems("cost of step " + step().name())
        .require(
            surviving().signum() > 0 && surviving().compareTo(BigDecimal.ONE) <= 0,
            "surviving is " + surviving() + "; accepted is above 0 and up to 1")
        .refuseIfAny();
  }
}
