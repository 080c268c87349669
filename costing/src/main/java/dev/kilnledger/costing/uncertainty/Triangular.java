package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import org.immutables.value.Value;

/** The triangular distribution: lowest, most likely and highest value by judgement. */
@Value.Immutable
@ValueStyle
public non-sealed interface Triangular extends Distribution {
  /** {@return the lowest value} */
  @Value.Parameter
  double low();

  /** {@return the most likely value, from the lowest to the highest} */
  @Value.Parameter
  double mode();

  /** {@return the highest value, above the lowest} */
  @Value.Parameter
  double high();

  /**
   * A triangular distribution.
   *
   * @param low the lowest value
   * @param mode the most likely value, from the lowest to the highest
   * @param high the highest value, above the lowest
   * @return the distribution
   * @throws IllegalArgumentException with all problems
   */
  static Triangular of(double low, double mode, double high) {
    return ImmutableTriangular.of(low, mode, high);
  }

  @Override
  default String text() {
    return "triangular, "
        + Numbers.text(low())
        + " to "
        + Numbers.text(high())
        + ", most likely "
        + Numbers.text(mode());
  }

  /**
   * Refuses ends that are none, and a most likely value beyond them.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems = new Problems("triangular distribution");
    Numbers.ascending(low(), high(), problems);
    problems
        .require(
            low() <= mode() && mode() <= high(),
            "mode is "
                + Numbers.text(mode())
                + "; accepted is from low "
                + Numbers.text(low())
                + " to high "
                + Numbers.text(high()))
        .refuseIfAny();
  }
}
