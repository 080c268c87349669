package dev.kilnledger.costing.purchase;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/** One order of a lot plan. */
@Value.Immutable
@ValueStyle
public interface Lot extends Serializable {
  /** {@return the period in which it is ordered and from which on it is used, 1 or more} */
  int first();

  /** {@return the last period that it covers} */
  int last();

  /** {@return how much is ordered} */
  Amount<?> quantity();

  /** {@return what the order costs} */
  BigMoney orderCost();

  /** {@return what it costs to keep what later periods use} */
  BigMoney holdingCost();

  /** {@return the lot for people} */
  default String text() {
    return "periods "
        + first()
        + " to "
        + last()
        + ": "
        + quantity()
        + ", order "
        + orderCost()
        + ", holding "
        + holdingCost();
  }

  /**
   * Starts one.
   *
   * @return a builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Lot} values. */
  final class Builder extends ImmutableLot.Builder {
    Builder() {}
  }
}
