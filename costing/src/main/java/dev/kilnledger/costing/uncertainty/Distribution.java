package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.io.Serializable;
import javax.measure.quantity.Dimensionless;

/**
 * How likely which value of an input is: a law of plain numbers, in the unit that the input has.
 *
 * <p>Which to take is a matter of what is known: {@link LogNormal} for prices, {@link Beta} for
 * yields that were counted, {@link Weibull} for lives, {@link Triangular} or {@link Pert} for
 * judgement, {@link Rectangular} for limits and nothing else, {@link Normal} for what was measured
 * often, {@link Empirical} for a list of observations, {@link Binomial} for counts.
 */
public sealed interface Distribution extends Serializable
    permits Beta,
        Binomial,
        Empirical,
        LogNormal,
        Normal,
        Pert,
        Rectangular,
        Scaled,
        Triangular,
        Weibull {

  /** {@return the distribution for people, lower case} */
  String text();

  /** {@return the mean, also called expectation} */
  default double mean() {
    return Law.of(this).mean();
  }

  /** {@return the variance} */
  default double variance() {
    return Law.of(this).variance();
  }

  /** {@return the square root of the variance: the standard uncertainty of an input} */
  default double standardDeviation() {
    return Math.sqrt(variance());
  }

  /** {@return the value that half of all values do not exceed} */
  default double median() {
    return Law.of(this).quantile(0.5);
  }

  /**
   * The value that a share of all values does not exceed.
   *
   * @param share the share, more than 0 and less than 1
   * @return the smallest value of which that holds
   * @throws IllegalArgumentException if the share is out of range
   */
  default double quantile(Amount<Dimensionless> share) {
    new Problems("quantile")
        .require(
            share.si() > 0 && share.si() < 1,
            "share is " + share + "; accepted is more than 0 and less than 1")
        .refuseIfAny();
    return Law.of(this).quantile(share.si());
  }

  /**
   * The share of all values up to one.
   *
   * @param value the value
   * @return the share that does not exceed it
   */
  default Amount<Dimensionless> shareUpTo(double value) {
    return Amounts.ratio(Law.of(this).upTo(value));
  }

  /**
   * The same law in a smaller or larger unit, or a count as a share: {@code Binomial.of(20,
   * 0.9).times(0.05)} is the share that is good of 20.
   *
   * @param factor by what every value is multiplied, more than zero
   * @return the law of the products
   * @throws IllegalArgumentException if the factor is not positive
   */
  default Distribution times(double factor) {
    return Scaled.of(this, factor);
  }
}
