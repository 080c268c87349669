package dev.kilnledger.costing.purchase;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.costing.offer.ShippingTerms;
import java.io.Serializable;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/** One line of a purchase plan: the sending of what is ordered from one supplier. */
@Value.Immutable
@ValueStyle
public interface Delivery extends Serializable {
  /** {@return the supplier's terms} */
  @Value.Parameter
  ShippingTerms terms();

  /** {@return the value of the goods that are sent} */
  @Value.Parameter
  BigMoney goods();

  /** {@return the charge, zero where the value of the goods is high enough} */
  @Value.Derived
  default BigMoney charge() {
    return terms().chargeOn(goods());
  }

  /** {@return the line for people} */
  default String text() {
    return terms().supplier()
        + ": "
        + terms().text()
        + ", on goods of "
        + goods()
        + " = "
        + charge();
  }

  /**
   * A line.
   *
   * @param terms the supplier's terms
   * @param goods the value of the goods that are sent
   * @return the line
   */
  static Delivery of(ShippingTerms terms, BigMoney goods) {
    return ImmutableDelivery.of(terms, goods);
  }
}
