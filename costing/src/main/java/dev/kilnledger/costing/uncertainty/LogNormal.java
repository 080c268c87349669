package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import org.immutables.value.Value;

/**
 * The lognormal distribution, by mean and coefficient of variation: never below zero, and dearer
 * surprises are larger than cheaper ones, as with prices. Its logarithm has the variance ln(1 +
 * v^2).
 */
@Value.Immutable
@ValueStyle
public non-sealed interface LogNormal extends Distribution {
  @Override
  @Value.Parameter
  double mean();

  /** {@return v, the standard deviation over the mean, more than zero and up to 10} */
  @Value.Parameter
  double coefficientOfVariation();

  /**
   * A lognormal distribution.
   *
   * @param mean the mean, more than zero
   * @param coefficientOfVariation the standard deviation over the mean, more than zero and up to 10
   * @return the distribution
   * @throws IllegalArgumentException with all problems
   */
  static LogNormal of(double mean, double coefficientOfVariation) {
    return ImmutableLogNormal.of(mean, coefficientOfVariation);
  }

  @Override
  default String text() {
    return "lognormal, mean "
        + Numbers.text(mean())
        + ", coefficient of variation "
        + Numbers.text(coefficientOfVariation());
  }

  /**
   * Refuses what is no lognormal distribution.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems = new Problems("lognormal distribution");
    Numbers.positive("mean", mean(), problems);
    problems
        .require(
            coefficientOfVariation() > 0 && coefficientOfVariation() <= 10,
            "coefficient of variation is "
                + Numbers.text(coefficientOfVariation())
                + "; accepted is more than zero and up to 10")
        .refuseIfAny();
  }
}
