package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.io.Serializable;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;

/**
 * How often is drawn, and from which seed: a fixed number of times, or until the result is stable
 * to so many digits (the adaptive procedure of JCGM 101:2008, 7.9; from memory).
 */
@Value.Immutable
@ValueStyle
public interface Trials extends Serializable {
  /** The largest number of trials. */
  int MOST = 10_000_000;

  /** {@return the number of trials, 1 to {@value #MOST}; where it adapts, the most} */
  int number();

  /** {@return the seed, from which the same draws follow again} */
  long seed();

  /** {@return whether it stops as soon as the result is stable; no unless stated} */
  @Value.Default
  default boolean adaptive() {
    return false;
  }

  /**
   * {@return to how many significant digits of the standard deviation the result has to be stable,
   * 1 or 2; 2 unless stated}
   */
  @Value.Default
  default int digits() {
    return 2;
  }

  /**
   * {@return the coverage probability of the interval whose ends have to be stable, 0.5 to 0.999;
   * 90 %, from the 5 % to the 95 % quantile, unless stated}
   */
  @Value.Default
  default Amount<Dimensionless> coverage() {
    return Amounts.percent(90);
  }

  /**
   * {@return M, the trials of one batch of the adaptive procedure: 10,000, or 100 / (1 - p) if that
   * is more, p being the coverage (7.9.4 b)}
   */
  default int batch() {
    return (int) Math.max(10_000, Math.ceil(100 / (1 - coverage().si()) - 1e-9));
  }

  /**
   * A fixed number of trials.
   *
   * @param number the number, 1 to {@value #MOST}
   * @param seed the seed
   * @return the trials
   * @throws IllegalArgumentException if the number is out of range
   */
  static Trials fixed(int number, long seed) {
    return builder().number(number).seed(seed).build();
  }

  /**
   * Trials until mean, standard deviation and 90 % interval are stable to two digits.
   *
   * @param most the number after which it is given up, two batches or more
   * @param seed the seed
   * @return the trials
   * @throws IllegalArgumentException if the number is out of range
   */
  static Trials untilStable(int most, long seed) {
    return builder().adaptive(true).number(most).seed(seed).build();
  }

  /**
   * Starts one.
   *
   * @return a builder; number and seed are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Trials} values. */
  final class Builder extends ImmutableTrials.Builder {
    Builder() {}
  }

  /**
   * Refuses numbers out of range.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("trials")
            .require(
                number() >= 1 && number() <= MOST,
                "number is " + number() + "; accepted is from 1 to " + MOST)
            .require(
                digits() == 1 || digits() == 2, "digits is " + digits() + "; accepted is 1 or 2")
            .within("coverage", coverage(), Amounts.ratio(0.5), Amounts.ratio(0.999));
    problems.refuseIfAny();
    problems
        .require(
            !adaptive() || number() >= 2 * batch(),
            "number is "
                + number()
                + "; accepted is two batches or more, "
                + 2 * batch()
                + ", to see whether they agree")
        .refuseIfAny();
  }
}
