package dev.kilnledger.costing.accounting;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/**
 * The learning curve of T. P. Wright, Factors affecting the cost of airplanes, Journal of the
 * Aeronautical Sciences 3 (1936) 122 (from memory): when the number of units doubles, their
 * cumulative average falls to the rate. The average of x units is a x^b with b = ln rate / ln 2.
 *
 * <p>Costs are not rounded; the factors on the first unit's cost have 15 digits.
 */
@Value.Immutable
@ValueStyle
public interface WrightLearningCurve extends Serializable {
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
  static WrightLearningCurve of(BigMoney firstUnit, Amount<Dimensionless> rate) {
    return ImmutableWrightLearningCurve.of(firstUnit, rate);
  }

  /**
   * The cumulative average.
   *
   * @param units x, 1 or more
   * @return a x^b
   * @throws IllegalArgumentException if x is less than 1
   */
  default BigMoney averageOf(long units) {
    Learning.refuseNone("Wright learning curve", units);
    return Learning.times(firstUnit(), Math.pow((double) units, Learning.exponent(rate())));
  }

  /**
   * The cost of the first units together.
   *
   * @param units x, 1 or more
   * @return x a x^b
   * @throws IllegalArgumentException if x is less than 1
   */
  default BigMoney totalOf(long units) {
    return averageOf(units).multipliedBy(units);
  }

  /**
   * The cost of one unit.
   *
   * @param unit x, 1 or more
   * @return the total of x units less that of x - 1
   * @throws IllegalArgumentException if x is less than 1
   */
  default BigMoney unit(long unit) {
    return unit == 1 ? totalOf(1) : totalOf(unit).minus(totalOf(unit - 1));
  }

  /**
   * Refuses a rate out of range.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Learning.check("Wright learning curve", firstUnit(), rate());
  }
}
