package dev.kilnledger.costing.ledger;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.List;
import org.immutables.value.Value;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/** A sum, the lines it is the sum of, and the surcharges on them. */
@Value.Immutable
@ValueStyle
public interface Account extends Serializable {
  /** {@return what is summed up, such as "part 4"} */
  @Value.Parameter
  String title();

  /** {@return the currency} */
  @Value.Parameter
  CurrencyUnit currency();

  /** {@return the lines, in the order of the resources; none of them is zero packs} */
  @Value.Parameter
  List<Line> lines();

  /** {@return overhead and tax on the lines; none of them is of nothing} */
  @Value.Parameter
  List<Surcharge> surcharges();

  /** {@return the sum of the lines' and surcharges' amounts, unrounded} */
  @Value.Derived
  default BigMoney total() {
    BigMoney total = BigMoney.zero(currency());
    for (Line line : lines()) {
      total = total.plus(line.amount());
    }
    for (Surcharge surcharge : surcharges()) {
      total = total.plus(surcharge.amount());
    }
    return total;
  }

  /**
   * An account.
   *
   * @param title what is summed up
   * @param currency the currency of every line
   * @param lines the lines
   * @param surcharges overhead and tax on the lines
   * @return the account
   */
  static Account of(
      String title, CurrencyUnit currency, List<Line> lines, List<Surcharge> surcharges) {
    return ImmutableAccount.of(title, currency, lines, surcharges);
  }
}
