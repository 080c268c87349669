package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;
import org.joda.money.Money;

/** An interval that holds a share of all draws of a sum of money. */
@Value.Immutable
@ValueStyle
public interface CashInterval extends Serializable {
  /** {@return the low end} */
  @Value.Parameter
  Money low();

  /** {@return the high end} */
  @Value.Parameter
  Money high();

  /** {@return the share of the draws in it} */
  @Value.Parameter
  Amount<Dimensionless> coverage();

  /**
   * An interval.
   *
   * @param low the low end
   * @param high the high end
   * @param coverage the share of the draws in it
   * @return the interval
   */
  static CashInterval of(Money low, Money high, Amount<Dimensionless> coverage) {
    return ImmutableCashInterval.of(low, high, coverage);
  }
}
