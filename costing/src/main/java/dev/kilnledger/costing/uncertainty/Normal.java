package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import org.immutables.value.Value;

/** The normal distribution, also called Gaussian: many small causes, added. */
@Value.Immutable
@ValueStyle
public non-sealed interface Normal extends Distribution {
  @Override
  @Value.Parameter
  double mean();

  @Override
  @Value.Parameter
  double standardDeviation();

  /**
   * A normal distribution.
   *
   * @param mean the mean
   * @param standardDeviation the standard deviation, more than zero
   * @return the distribution
   * @throws IllegalArgumentException with all problems
   */
  static Normal of(double mean, double standardDeviation) {
    return ImmutableNormal.of(mean, standardDeviation);
  }

  @Override
  default String text() {
    return "normal, mean "
        + Numbers.text(mean())
        + ", standard deviation "
        + Numbers.text(standardDeviation());
  }

  /**
   * Refuses what is no normal distribution.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems = new Problems("normal distribution");
    Numbers.finite("mean", mean(), problems);
    Numbers.positive("standard deviation", standardDeviation(), problems);
    problems.refuseIfAny();
  }
}
