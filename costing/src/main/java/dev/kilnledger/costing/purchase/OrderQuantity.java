package dev.kilnledger.costing.purchase;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.costing.offer.Offer;
import java.io.Serializable;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/** How much to order each time of what is used evenly all year, and what a year then costs. */
@Value.Immutable
@ValueStyle
public interface OrderQuantity extends Serializable {
  /** {@return the offer by which it is ordered} */
  Offer offer();

  /** {@return the packs of one order} */
  long packs();

  /** {@return a year's use at the price of such an order} */
  BigMoney purchase();

  /** {@return a year's orders} */
  BigMoney ordering();

  /** {@return a year's holding of half an order on average} */
  BigMoney holding();

  /** {@return the sum of the three} */
  @Value.Derived
  default BigMoney total() {
    return purchase().plus(ordering()).plus(holding());
  }

  /**
   * Starts one.
   *
   * @return a builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link OrderQuantity} values. */
  final class Builder extends ImmutableOrderQuantity.Builder {
    Builder() {}
  }
}
