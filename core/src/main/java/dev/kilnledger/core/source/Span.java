package dev.kilnledger.core.source;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.immutables.value.Value;

/**
 * Everything from a low to a high amount, both included: a window, a range of grades, a band.
 *
 * @param <Q> the quantity
 */
@Value.Immutable
@ValueStyle
public interface Span<Q extends Quantity<Q>> extends Serializable {
  /**
   * The lowest amount.
   *
   * @return the low end
   */
  @Value.Parameter
  Amount<Q> low();

  /**
   * The highest amount.
   *
   * @return the high end, not below the low one
   */
  @Value.Parameter
  Amount<Q> high();

  /**
   * The span between two amounts.
   *
   * @param <Q> the quantity
   * @param low the low end
   * @param high the high end
   * @return the span
   * @throws IllegalArgumentException if low lies above high
   */
  static <Q extends Quantity<Q>> Span<Q> of(Amount<Q> low, Amount<Q> high) {
    return ImmutableSpan.of(low, high);
  }

  /**
   * Whether an amount lies in the span, ends included.
   *
   * @param amount an amount of the same kind
   * @return true if it is neither below the low nor above the high end
   */
  default boolean contains(Amount<Q> amount) {
    return !amount.isLessThan(low()) && !amount.isGreaterThan(high());
  }

  /**
   * The span for people, in one unit: {@code "780 to 840 °C"}.
   *
   * @param unit the unit
   * @param decimals decimals to show
   * @return the text
   */
  default String format(Unit<Q> unit, int decimals) {
    String high = high().format(unit, decimals);
    String low = low().format(unit, decimals);
    String symbol = high.contains(" ") ? high.substring(high.indexOf(' ')) : "";
    return low.substring(0, low.length() - symbol.length()) + " to " + high;
  }

  /**
   * Refuses a low end above the high one.
   *
   * @throws IllegalArgumentException if low lies above high
   */
  @Value.Check
  default void check() {
    new Problems("span")
        .require(
            !low().isGreaterThan(high()),
            () -> "low is " + low() + " and high is " + high() + "; accepted is low up to high")
        .refuseIfAny();
  }
}
