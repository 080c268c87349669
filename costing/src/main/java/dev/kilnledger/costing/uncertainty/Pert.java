package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import org.immutables.value.Value;

/**
 * The PERT distribution with lambda 4: lowest, most likely and highest value by judgement, with
 * less weight on the ends than {@link Triangular}. It is a beta distribution between the two ends,
 * of mean (low + 4 mode + high) / 6 (Malcolm and others, 1959; from memory).
 */
@Value.Immutable
@ValueStyle
public non-sealed interface Pert extends Distribution {
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
   * A PERT distribution.
   *
   * @param low the lowest value
   * @param mode the most likely value, from the lowest to the highest
   * @param high the highest value, above the lowest
   * @return the distribution
   * @throws IllegalArgumentException with all problems
   */
  static Pert of(double low, double mode, double high) {
    return ImmutablePert.of(low, mode, high);
  }

  @Override
  default String text() {
    return "PERT, "
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
    Problems problems = new Problems("PERT distribution");
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
