package dev.kilnledger.costing.purchase;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.List;
import org.immutables.value.Value;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/** When to order, and for how many periods. */
@Value.Immutable
@ValueStyle
public interface LotPlan extends Serializable {
  /** {@return the currency} */
  @Value.Parameter
  CurrencyUnit currency();

  /** {@return the orders by period; none if nothing is used} */
  @Value.Parameter
  List<Lot> lots();

  /** {@return the sum of order and holding costs, unrounded} */
  @Value.Derived
  default BigMoney total() {
    BigMoney total = BigMoney.zero(currency());
    for (Lot lot : lots()) {
      total = total.plus(lot.orderCost()).plus(lot.holdingCost());
    }
    return total;
  }

  /**
   * A plan.
   *
   * @param currency the currency
   * @param lots the orders by period
   * @return the plan
   */
  static LotPlan of(CurrencyUnit currency, List<Lot> lots) {
    return ImmutableLotPlan.of(currency, lots);
  }
}
