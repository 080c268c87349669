package dev.kilnledger.thermal.burnout;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.io.Serializable;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Frequency;
import org.immutables.value.Value;

/**
 * A reaction of order n: {@code d alpha / dJ = A (1 - alpha)^n}, so that {@code alpha = 1 - exp(-A
 * J)} for n = 1, and {@code alpha = 1 - (1 - (1 - n) A J)^(1 / (1 - n))} else, which for n below 1
 * is complete once the bracket has come down to zero (derivable).
 *
 * <p>Example: at A J = 1 a reaction of first order has exp(-1) = 0.368 left, one of order 0.5 a
 * quarter.
 */
@Value.Immutable
@ValueStyle
public non-sealed interface ReactionOrder extends ConversionCurve, Serializable {
  /** {@return the pre-exponential factor A, above zero} */
  @Value.Parameter
  Amount<Frequency> preExponential();

  /** {@return the order n, zero or more} */
  @Value.Parameter
  Amount<Dimensionless> order();

  /**
   * A reaction of any order.
   *
   * @param preExponential the factor A, above zero
   * @param order the order n, zero or more
   * @return the curve
   * @throws IllegalArgumentException if either is out of range
   */
  static ReactionOrder of(Amount<Frequency> preExponential, Amount<Dimensionless> order) {
    return ImmutableReactionOrder.of(preExponential, order);
  }

  /**
   * A reaction of first order.
   *
   * @param preExponential the factor A, above zero
   * @return the curve
   * @throws IllegalArgumentException if it is not above zero
   */
  static ReactionOrder first(Amount<Frequency> preExponential) {
    return of(preExponential, Amounts.ratio(1));
  }

  @Override
  default double unconverted(double logReducedTime) {
    double advance = preExponential().si() * Math.exp(logReducedTime);
    double n = order().si();
    if (n == 1) {
      return Math.exp(-advance);
    }
    double bracket = (n - 1) * advance;
    return bracket <= -1 ? 0 : Math.exp(Math.log1p(bracket) / (1 - n));
  }

  @Override
  default double conversionPerReducedTime(double logReducedTime) {
    double left = unconverted(logReducedTime);
    double n = order().si();
    return left == 0 ? 0 : preExponential().si() * (n == 1 ? left : Math.pow(left, n));
  }

  /**
   * Refuses a factor that is not above zero and an order below zero.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("reaction order")
        .positive("pre-exponential factor", preExponential())
        .notNegative("order", order())
        .refuseIfAny();
  }
}
