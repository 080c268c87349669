package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import org.immutables.value.Value;

/** Weibull's distribution: a life, of which exp(-(t / scale)^shape) lasts longer than t. */
@Value.Immutable
@ValueStyle
public non-sealed interface Weibull extends Distribution {
  /** {@return the shape beta, more than zero; above 1 where pieces wear out} */
  @Value.Parameter
  double shape();

  /** {@return the scale eta, more than zero, which 36.8 % outlast} */
  @Value.Parameter
  double scale();

  /**
   * A Weibull distribution.
   *
   * @param shape the shape beta, more than zero
   * @param scale the scale eta, more than zero
   * @return the distribution
   * @throws IllegalArgumentException with all problems
   */
  static Weibull of(double shape, double scale) {
    return ImmutableWeibull.of(shape, scale);
  }

  @Override
  default String text() {
    return "Weibull, shape " + Numbers.text(shape()) + ", scale " + Numbers.text(scale());
  }

  /**
   * Refuses what is no life.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems = new Problems("Weibull distribution");
    Numbers.positive("shape", shape(), problems);
    Numbers.positive("scale", scale(), problems);
    problems.refuseIfAny();
  }
}
