package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import org.immutables.value.Value;

/** The rectangular distribution, also called uniform: limits are known, and nothing else. */
@Value.Immutable
@ValueStyle
public non-sealed interface Rectangular extends Distribution {
  /** {@return the lowest value} */
  @Value.Parameter
  double low();

  /** {@return the highest value, above the lowest} */
  @Value.Parameter
  double high();

  /**
   * A rectangular distribution.
   *
   * @param low the lowest value
   * @param high the highest value, above the lowest
   * @return the distribution
   * @throws IllegalArgumentException with all problems
   */
  static Rectangular of(double low, double high) {
    return ImmutableRectangular.of(low, high);
  }

  @Override
  default String text() {
    return "rectangular, " + Numbers.text(low()) + " to " + Numbers.text(high());
  }

  /**
   * Refuses limits that are none.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems = new Problems("rectangular distribution");
    Numbers.ascending(low(), high(), problems);
    problems.refuseIfAny();
  }
}
