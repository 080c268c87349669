package dev.kilnledger.costing.accounting;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/**
 * The learning curve named after J. R. Crawford (from memory): when the number of units doubles,
 * the cost of the last unit falls to the rate. Unit x costs a x^b with b = ln rate / ln 2.
 *
 * <p>Costs are not rounded; the factors on the first unit's cost have 15 digits.
 */
@Value.Immutable
@ValueStyle
public interface CrawfordLearningCurve extends Serializable {
  /** {@return a, what the first unit costs, zero or more} */
  @Value.Parameter
  BigMoney firstUnit();

  /** {@return the rate, above 0 and up to 1, such as 80 %} */
  @Value.Parameter
  Amount<Dimensionless> rate();

  /**
   * A curve.
   *
   * @param firstUnit a, what the first unit costs, zero or more
   * @param rate the rate, above 0 and up to 1
   * @return the curve
   * @throws IllegalArgumentException with all problems
   */
  static CrawfordLearningCurve of(BigMoney firstUnit, Amount<Dimensionless> rate) {
    return ImmutableCrawfordLearningCurve.of(firstUnit, rate);
  }

  /**
   * The cost of one unit.
   *
   * @param unit x, 1 or more
   * @return a x^b
   * @throws IllegalArgumentException if x is less than 1
   */
  default BigMoney unit(long unit) {
    Learning.refuseNone("Crawford learning curve", unit);
    return Learning.times(firstUnit(), Math.pow((double) unit, Learning.exponent(rate())));
  }

  /**
   * The cost of the first units together.
   *
   * @param units x, 1 or more
   * @return a times the sum of k^b for k = 1 to x; beyond 1000 units the rest of the sum is taken
   *     by the Euler-Maclaurin formula with two corrections, whose remainder is below 1e-12 of it
   * @throws IllegalArgumentException if x is less than 1
   */
  default BigMoney totalOf(long units) {
    Learning.refuseNone("Crawford learning curve", units);
    return Learning.times(firstUnit(), Learning.sumOfPowers(units, Learning.exponent(rate())));
  }

  /**
   * The cumulative average.
   *
   * @param units x, 1 or more
   * @return the total of x units / x, its factor to 15 digits
   * @throws IllegalArgumentException if x is less than 1
   */
  default BigMoney averageOf(long units) {
    Learning.refuseNone("Crawford learning curve", units);
    return Learning.times(
        firstUnit(), Learning.sumOfPowers(units, Learning.exponent(rate())) / (double) units);
  }

  /**
   * Refuses a rate out of range.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Learning.check("Crawford learning curve", firstUnit(), rate());
  }
}
