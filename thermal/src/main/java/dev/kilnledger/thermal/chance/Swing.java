package dev.kilnledger.thermal.chance;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.Quantity;
import org.immutables.value.Value;

/**
 * How far one input alone moves a result, all others standing at their medians.
 *
 * @param <Q> the quantity of the result
 */
@Value.Immutable
@ValueStyle
public interface Swing<Q extends Quantity<Q>> extends Serializable {
  /** {@return the input} */
  @Value.Parameter
  FiringInput input();

  /**
   * {@return the result with the input at what 5 % of its values do not exceed; of several
   * kinetics, the least result}
   */
  @Value.Parameter
  Amount<Q> atLow();

  /**
   * {@return the result with the input at what 95 % of its values do not exceed; of several
   * kinetics, the largest result}
   */
  @Value.Parameter
  Amount<Q> atHigh();

  /** {@return how far apart the two are, zero or more, in SI units} */
  default double width() {
    return Math.abs(atHigh().si() - atLow().si());
  }
}
