package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.io.Serializable;
import java.util.Map;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/**
 * From how many parts on making them has cost no more than buying them for the first time, trial by
 * trial. As whole packs are bought it may cost more again a little later.
 */
@Value.Immutable
@ValueStyle
public interface BreakEvenBand extends Serializable {
  /** {@return what was counted, and what was drawn} */
  UncertainPlan plan();

  /** {@return what one part costs outside} */
  BigMoney outsidePrice();

  /** {@return up to how many parts was looked} */
  long parts();

  /** {@return how many trials were made, from which seed, and why they have ended} */
  TrialRecord trials();

  /** {@return in how many trials each number of parts was the first, the fewest parts first} */
  Map<Long, Integer> first();

  /**
   * The probability of breaking even by a number of parts.
   *
   * @param number the number of parts, 1 to {@link #parts}
   * @return the share of the trials that have done so with this number of parts or fewer
   * @throws IllegalArgumentException if it is more than was looked at
   */
  default Amount<Dimensionless> probabilityBy(long number) {
    new Problems("break-even")
        .require(
            number >= 1 && number <= parts(),
            "number of parts is " + number + "; accepted is from 1 to " + parts())
        .refuseIfAny();
    int reached =
        first().entrySet().stream()
            .filter(entry -> entry.getKey() <= number)
            .mapToInt(Map.Entry::getValue)
            .sum();
    return Amounts.ratio((double) reached / trials().made());
  }

  /**
   * {@return the number of parts with which half of the trials have broken even, if by n at all}
   */
  default Optional<Long> median() {
    return quantile(Amounts.ratio(0.5));
  }

  /**
   * The number of parts with which a share of the trials has broken even.
   *
   * @param share the share, more than 0 and up to 1
   * @return the smallest number; empty if it is more than was looked at, or never
   * @throws IllegalArgumentException if the share is out of range
   */
  default Optional<Long> quantile(Amount<Dimensionless> share) {
    new Problems("quantile")
        .require(
            share.si() > 0 && share.si() <= 1,
            "share is " + share + "; accepted is more than 0 and up to 1")
        .refuseIfAny();
    int rank = Numbers.rank(share.si(), trials().made());
    int reached = 0;
    for (Map.Entry<Long, Integer> entry : first().entrySet()) {
      reached += entry.getValue();
      if (reached >= rank) {
        return Optional.of(entry.getKey());
      }
    }
    return Optional.empty();
  }

  /**
   * Starts one.
   *
   * @return a builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link BreakEvenBand} values. */
  final class Builder extends ImmutableBreakEvenBand.Builder {
    Builder() {}
  }
}
