package dev.kilnledger.costing.purchase;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** How much of an item has to be bought. */
@Value.Immutable
@ValueStyle
public interface Need extends Serializable {
  /** {@return the item, as the offers name it} */
  @Value.Parameter
  String item();

  /** {@return how much of it, more than zero, in a measure in which it is sold} */
  @Value.Parameter
  Amount<?> amount();

  /**
   * {@return how long the last of it lies before it is used, more than zero; offers that keep less
   * long are left out. Empty where that does not matter}
   */
  @Value.Parameter
  Optional<Amount<Time>> usedWithin();

  /**
   * A need that is used before anything perishes.
   *
   * @param item the item
   * @param amount how much of it, more than zero
   * @return the need
   * @throws IllegalArgumentException with all problems
   */
  static Need of(String item, Amount<?> amount) {
    return ImmutableNeed.of(item, amount, Optional.empty());
  }

  /**
   * A need that is used up over some time.
   *
   * @param item the item
   * @param amount how much of it, more than zero
   * @param usedWithin how long the last of it lies before it is used, more than zero
   * @return the need
   * @throws IllegalArgumentException with all problems
   */
  static Need of(String item, Amount<?> amount, Amount<Time> usedWithin) {
    return ImmutableNeed.of(item, amount, Optional.of(usedWithin));
  }

  /**
   * Refuses a need of nothing.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("need of " + item()).text("item", item()).positive("amount", amount());
    usedWithin().ifPresent(time -> problems.positive("used within", time));
    problems.refuseIfAny();
  }
}
