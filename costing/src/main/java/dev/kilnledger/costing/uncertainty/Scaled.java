package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import org.immutables.value.Value;

/** Another distribution, every value of it multiplied by the same factor. */
@Value.Immutable
@ValueStyle
public non-sealed interface Scaled extends Distribution {
  /** {@return the distribution whose values are multiplied} */
  @Value.Parameter
  Distribution base();

  /** {@return by what, more than zero} */
  @Value.Parameter
  double factor();

  /**
   * A distribution times a factor.
   *
   * @param base the distribution whose values are multiplied
   * @param factor by what, more than zero
   * @return the distribution of the products
   * @throws IllegalArgumentException if the factor is not positive
   */
  static Scaled of(Distribution base, double factor) {
    return ImmutableScaled.of(base, factor);
  }

  @Override
  default String text() {
    return Numbers.text(factor()) + " times " + base().text();
  }

  /**
   * Refuses a factor that is not positive.
   *
   * @throws IllegalArgumentException if the factor is not positive
   */
  @Value.Check
  default void check() {
    Problems problems = new Problems("scaled distribution");
    Numbers.positive("factor", factor(), problems);
    problems.refuseIfAny();
  }
}
