package dev.kilnledger.costing.ledger;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.math.BigDecimal;
import java.math.MathContext;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/** One step of the staircase: what a part costs, and what all parts up to it have cost. */
@Value.Immutable
@ValueStyle
public interface CostStep extends Serializable {
  /** {@return the number of the part} */
  @Value.Parameter
  long part();

  /** {@return the cash for this part} */
  @Value.Parameter
  Account cash();

  /** {@return the cash for parts 1 to this one, unrounded} */
  @Value.Parameter
  BigMoney through();

  /** {@return the cash for parts 1 to this one over their number; 34 digits where it has no end} */
  default BigMoney average() {
    return BigMoney.of(
        through().getCurrencyUnit(),
        through().getAmount().divide(BigDecimal.valueOf(part()), MathContext.DECIMAL128));
  }

  /**
   * A step.
   *
   * @param part the number of the part
   * @param cash the cash for it
   * @param through the cash for parts 1 to it
   * @return the step
   */
  static CostStep of(long part, Account cash, BigMoney through) {
    return ImmutableCostStep.of(part, cash, through);
  }
}
