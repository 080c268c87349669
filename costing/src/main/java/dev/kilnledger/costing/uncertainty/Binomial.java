package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import org.immutables.value.Value;

/**
 * The binomial distribution: how many of a number of trials succeed. As a share of them it is
 * {@code Binomial.of(trials, p).times(1.0 / trials)}.
 */
@Value.Immutable
@ValueStyle
public non-sealed interface Binomial extends Distribution {
  /** {@return the number of trials, 1 or more} */
  @Value.Parameter
  int trials();

  /** {@return the chance of each of them, more than 0 and less than 1} */
  @Value.Parameter
  double chance();

  /**
   * A binomial distribution.
   *
   * @param trials the number of trials, 1 or more
   * @param chance the chance of each of them, more than 0 and less than 1
   * @return the distribution
   * @throws IllegalArgumentException with all problems
   */
  static Binomial of(int trials, double chance) {
    return ImmutableBinomial.of(trials, chance);
  }

  @Override
  default String text() {
    return "binomial, " + trials() + " trials of chance " + Numbers.text(chance());
  }

  /**
   * Refuses what is no binomial distribution.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("binomial distribution")
        .require(trials() >= 1, "trials is " + trials() + "; accepted is 1 or more")
        .require(
            chance() > 0 && chance() < 1,
            "chance is " + Numbers.text(chance()) + "; accepted is more than 0 and less than 1")
        .refuseIfAny();
  }
}
