package dev.kilnledger.costing.purchase;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.math.BigDecimal;
import java.util.List;
import org.immutables.value.Value;

/**
 * How much of an item is wanted and how it can be had, all in one measure of the caller's: kilogram
 * of filament, firings of a crucible, or prints where the rest of a spool is too short for one.
 */
@Value.Immutable
@ValueStyle
public interface Wanted extends Serializable {
  /** {@return the item} */
  @Value.Parameter
  String item();

  /** {@return how much is wanted, more than zero} */
  @Value.Parameter
  BigDecimal amount();

  /** {@return how it can be had, in catalogue order; at least one supply} */
  @Value.Parameter
  List<Supply> supplies();

  /**
   * What is wanted.
   *
   * @param item the item
   * @param amount how much, more than zero
   * @param supplies how it can be had, at least one supply
   * @return the want
   * @throws IllegalArgumentException with all problems
   */
  static Wanted of(String item, BigDecimal amount, List<Supply> supplies) {
    return ImmutableWanted.of(item, amount, supplies);
  }

  /** {@return whether all packs that can be had hold as much as is wanted} */
  default boolean isAvailable() {
    BigDecimal most = BigDecimal.ZERO;
    for (Supply supply : supplies()) {
      if (supply.offer().available().isEmpty()) {
        return true;
      }
      long limit = supply.offer().available().get();
      most =
          most.add(
              supply
                  .holds()
                  .multiply(BigDecimal.valueOf(limit - limit % supply.offer().orderIncrement())));
    }
    return most.compareTo(amount()) >= 0;
  }

  /**
   * Refuses a want of nothing, and one that cannot be met.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("want of " + item())
        .require(
            amount().signum() > 0,
            "amount is " + amount().toPlainString() + "; accepted is more than zero")
        .require(!supplies().isEmpty(), "there is no supply; accepted is one or more")
        .refuseIfAny();
  }
}
