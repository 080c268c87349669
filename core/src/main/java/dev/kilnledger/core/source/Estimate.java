package dev.kilnledger.core.source;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.Quantity;
import org.immutables.value.Value;

/**
 * An expected amount and the span it may well lie in. Not a statistical interval unless its source
 * says so.
 *
 * @param <Q> the quantity
 */
@Value.Immutable
@ValueStyle
public interface Estimate<Q extends Quantity<Q>> extends Serializable {
  /**
   * The amount expected.
   *
   * @return the best single value
   */
  @Value.Parameter
  Amount<Q> expected();

  /**
   * The span it may lie in.
   *
   * @return a span that contains the expected amount
   */
  @Value.Parameter
  Span<Q> span();

  /**
   * An expected amount between two others.
   *
   * @param <Q> the quantity
   * @param low the low end
   * @param expected the best single value
   * @param high the high end
   * @return the estimate
   * @throws IllegalArgumentException if the three are not in ascending order
   */
  static <Q extends Quantity<Q>> Estimate<Q> of(Amount<Q> low, Amount<Q> expected, Amount<Q> high) {
    return ImmutableEstimate.of(expected, Span.of(low, high));
  }

  /**
   * An amount taken as it is, without a band.
   *
   * @param <Q> the quantity
   * @param amount the amount
   * @return the estimate whose span is that one amount
   */
  static <Q extends Quantity<Q>> Estimate<Q> exactly(Amount<Q> amount) {
    return of(amount, amount, amount);
  }

  /**
   * Refuses an expected amount outside the span.
   *
   * @throws IllegalArgumentException if the span does not contain the expected amount
   */
  @Value.Check
  default void check() {
    new Problems("estimate")
        .within("expected", expected(), span().low(), span().high())
        .refuseIfAny();
  }
}
