package dev.kilnledger.thermal.chance;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.immutables.value.Value;

/**
 * What 5, 50 and 95 % of the draws do not exceed.
 *
 * @param <Q> the quantity
 */
@Value.Immutable
@ValueStyle
public interface Quantiles<Q extends Quantity<Q>> extends Serializable {
  /** {@return what 5 % of the draws do not exceed} */
  @Value.Parameter
  Amount<Q> low();

  /** {@return what half of the draws do not exceed} */
  @Value.Parameter
  Amount<Q> median();

  /** {@return what 95 % of the draws do not exceed} */
  @Value.Parameter
  Amount<Q> high();

  /**
   * The three for people: {@code "1.20 h, 2.10 h and 2.50 h"}.
   *
   * @param unit the unit
   * @param decimals decimals to show
   * @return the text
   */
  default String format(Unit<Q> unit, int decimals) {
    return low().format(unit, decimals)
        + ", "
        + median().format(unit, decimals)
        + " and "
        + high().format(unit, decimals);
  }
}
