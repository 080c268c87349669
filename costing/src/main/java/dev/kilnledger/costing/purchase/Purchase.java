package dev.kilnledger.costing.purchase;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.costing.offer.Offer;
import java.io.Serializable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/** One line of a purchase plan: so many packs of an offer. */
@Value.Immutable
@ValueStyle
public interface Purchase extends Serializable {
  /** {@return what is bought, with its source} */
  @Value.Parameter
  Offer offer();

  /** {@return the packs, more than zero; whole unless the offer is sold by measure} */
  @Value.Parameter
  BigDecimal packs();

  /** {@return the cost by the offer's price and breaks, exact but for a share without end} */
  default BigMoney cost() {
    return offer().metered()
        ? BigMoney.of(
            offer().price().getCurrencyUnit(),
            offer().price().getAmount().multiply(packs(), MathContext.DECIMAL128))
        : offer().cost(packs().longValueExact());
  }

  /**
   * {@return the line for people: {@code "filament: 2 x 500 g from supplier A at EUR 60.00 = EUR
   * 120.00"}}
   */
  default String text() {
    boolean flat = cost().isEqual(offer().price().multipliedBy(packs()));
    return offer().item()
        + ": "
        + packs().setScale(6, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString()
        + " x "
        + offer().content()
        + " from "
        + offer().supplier()
        + " at "
        + offer().price()
        + (flat ? "" : " before its price break " + offer().breakRule().words())
        + " = "
        + cost();
  }

  /**
   * A line.
   *
   * @param offer what is bought
   * @param packs the packs, more than zero
   * @return the line
   * @throws IllegalArgumentException if so many cannot be bought
   */
  static Purchase of(Offer offer, BigDecimal packs) {
    return ImmutablePurchase.of(offer, packs);
  }

  /**
   * Refuses packs that cannot be bought.
   *
   * @throws IllegalArgumentException if the packs are not above zero, or not whole where they have
   *     to be
   */
  @Value.Check
  default void check() {
    boolean whole = packs().stripTrailingZeros().scale() <= 0;
    new Problems("purchase of " + offer().item())
        .require(
            packs().signum() > 0 && (whole || offer().metered()),
            "packs is "
                + packs().toPlainString()
                + "; accepted is "
                + (offer().metered() ? "more than zero" : "a whole number of 1 or more"))
        .refuseIfAny();
  }
}
