package dev.kilnledger.costing.ledger;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.Map;
import java.util.Optional;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** By which rule leftovers are valued, and what that rule needs. */
@Value.Immutable
@ValueStyle
public interface Leftovers extends Serializable {
  /** {@return the rule; {@link LeftoverRule#NOT_VALUED} unless stated} */
  @Value.Default
  default LeftoverRule rule() {
    return LeftoverRule.NOT_VALUED;
  }

  /** {@return from one good part to the next, more than zero; required where shelf lives count} */
  Optional<Amount<Time>> timePerPart();

  /** {@return how long items can be kept, zero or more; others keep for good} */
  Map<String, Amount<Time>> shelfLives();

  /**
   * How many further parts what is left of an item can serve.
   *
   * @param item the item
   * @return that number of parts; empty for any number
   */
  default Optional<Long> furtherParts(String item) {
    Amount<Time> shelfLife = shelfLives().get(item);
    return rule() == LeftoverRule.COST_SHARE_WITHIN_SHELF_LIFE && shelfLife != null
        ? timePerPart().map(time -> (long) Math.floor(shelfLife.si() / time.si()))
        : Optional.empty();
  }

  /** {@return nothing is deducted} */
  static Leftovers notValued() {
    return builder().build();
  }

  /** {@return what is left is deducted at its share of the cost} */
  static Leftovers atCostShare() {
    return builder().rule(LeftoverRule.COST_SHARE).build();
  }

  /**
   * Starts one.
   *
   * @return a builder; nothing is required but what the rule needs
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Leftovers} values. */
  final class Builder extends ImmutableLeftovers.Builder {
    Builder() {}
  }

  /**
   * Refuses times that are none, and shelf lives without a pace.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("leftovers")
            .require(
                rule() != LeftoverRule.COST_SHARE_WITHIN_SHELF_LIFE || timePerPart().isPresent(),
                "time per part is not stated; accepted is the time from one part to the next, by"
                    + " which shelf lives become numbers of parts");
    timePerPart().ifPresent(time -> problems.positive("time per part", time));
    shelfLives().forEach((item, life) -> problems.notNegative("shelf life of " + item, life));
    problems.refuseIfAny();
  }
}
