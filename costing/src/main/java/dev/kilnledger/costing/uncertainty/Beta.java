package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import org.immutables.value.Value;

/** The beta distribution, from 0 to 1: a share, such as a yield. */
@Value.Immutable
@ValueStyle
public non-sealed interface Beta extends Distribution {
  /** {@return the first shape, more than zero: it draws towards 1} */
  @Value.Parameter
  double alpha();

  /** {@return the second shape, more than zero: it draws towards 0} */
  @Value.Parameter
  double beta();

  /**
   * A beta distribution.
   *
   * @param alpha the first shape, more than zero
   * @param beta the second shape, more than zero
   * @return the distribution
   * @throws IllegalArgumentException with all problems
   */
  static Beta of(double alpha, double beta) {
    return ImmutableBeta.of(alpha, beta);
  }

  /**
   * What is known of a yield once some were tried: with Jeffreys' prior, alpha = good + 1/2 and
   * beta = tried - good + 1/2 (Bayesian textbooks, from memory).
   *
   * @param good how many came out good, zero or more
   * @param tried how many were tried, 1 or more
   * @return the distribution of the yield
   * @throws IllegalArgumentException with all problems
   */
  static Beta ofTried(long good, long tried) {
    new Problems("beta distribution")
        .require(tried >= 1, "tried is " + tried + "; accepted is 1 or more")
        .require(
            good >= 0 && good <= tried,
            "good is " + good + "; accepted is from 0 to the number tried, " + tried)
        .refuseIfAny();
    return of(good + 0.5, tried - good + 0.5);
  }

  @Override
  default String text() {
    return "beta, alpha " + Numbers.text(alpha()) + ", beta " + Numbers.text(beta());
  }

  /**
   * Refuses shapes that are none.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems = new Problems("beta distribution");
    Numbers.positive("alpha", alpha(), problems);
    Numbers.positive("beta", beta(), problems);
    problems.refuseIfAny();
  }
}
