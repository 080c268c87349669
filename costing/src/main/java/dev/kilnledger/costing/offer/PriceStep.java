package dev.kilnledger.costing.offer;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/** The packs of one order that are paid at one price. */
@Value.Immutable
@ValueStyle
public interface PriceStep extends Serializable {
  /** {@return how many packs, 1 or more} */
  @Value.Parameter
  long packs();

  /** {@return the price of each of them} */
  @Value.Parameter
  BigMoney price();

  /** {@return packs x price} */
  default BigMoney cost() {
    return price().multipliedBy(packs());
  }

  /**
   * A step.
   *
   * @param packs how many packs
   * @param price the price of each of them
   * @return the step
   */
  static PriceStep of(long packs, BigMoney price) {
    return ImmutablePriceStep.of(packs, price);
  }
}
