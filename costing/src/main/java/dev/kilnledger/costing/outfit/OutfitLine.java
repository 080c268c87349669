package dev.kilnledger.costing.outfit;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.costing.purchase.Purchase;
import java.io.Serializable;
import java.math.RoundingMode;
import org.immutables.value.Value;
import org.joda.money.Money;

/** One line of an outfit's shopping list. */
@Value.Immutable
@ValueStyle
public interface OutfitLine extends Serializable {
  /** {@return the name of the option it is bought for} */
  @Value.Parameter
  String option();

  /** {@return the packs and their offer, with its source} */
  @Value.Parameter
  Purchase purchase();

  /** {@return what is paid: the cost in whole minor units, halves to the even neighbour} */
  @Value.Derived
  default Money paid() {
    return purchase().cost().toMoney(RoundingMode.HALF_EVEN);
  }

  /**
   * A line.
   *
   * @param option the name of the option it is bought for
   * @param purchase the packs and their offer
   * @return the line
   */
  static OutfitLine of(String option, Purchase purchase) {
    return ImmutableOutfitLine.of(option, purchase);
  }
}
