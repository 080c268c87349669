package dev.kilnledger.costing.offer;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/** A lower price of one pack, from a number of packs on. */
@Value.Immutable
@ValueStyle
public interface PriceBreak extends Serializable {
  /** {@return the packs from which the price applies, 2 or more} */
  @Value.Parameter
  long fromPacks();

  /** {@return the price of one pack, zero or more} */
  @Value.Parameter
  BigMoney price();

  /**
   * A break.
   *
   * @param fromPacks the packs from which the price applies, 2 or more
   * @param price the price of one pack, zero or more
   * @return the break
   * @throws IllegalArgumentException with all problems
   */
  static PriceBreak of(long fromPacks, BigMoney price) {
    return ImmutablePriceBreak.of(fromPacks, price);
  }

  /**
   * Refuses a break before the second pack, and a price below zero.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("price break")
        .require(fromPacks() >= 2, "it is from " + fromPacks() + " packs; accepted is 2 or more")
        .require(!price().isNegative(), "price is " + price() + "; accepted is zero or more")
        .refuseIfAny();
  }
}
