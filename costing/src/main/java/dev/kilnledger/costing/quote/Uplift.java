package dev.kilnledger.costing.quote;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.TradeUnits;
import java.io.Serializable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/** What a price adds to a cost, as a share of the price (margin) or of the cost (markup). */
@Value.Immutable
@ValueStyle
public interface Uplift extends Serializable {
  /** {@return of what it is a share} */
  @Value.Parameter
  UpliftBasis basis();

  /** {@return the share, zero or more; a margin is less than 1} */
  @Value.Parameter
  Amount<Dimensionless> share();

  /**
   * A share of the price.
   *
   * @param share zero or more and less than 1
   * @return the uplift
   * @throws IllegalArgumentException if the share is out of range
   */
  static Uplift margin(Amount<Dimensionless> share) {
    return ImmutableUplift.of(UpliftBasis.MARGIN, share);
  }

  /**
   * A share of the cost.
   *
   * @param share zero or more
   * @return the uplift
   * @throws IllegalArgumentException if the share is negative
   */
  static Uplift markup(Amount<Dimensionless> share) {
    return ImmutableUplift.of(UpliftBasis.MARKUP, share);
  }

  /**
   * The price of what costs a sum.
   *
   * @param cost the cost
   * @return cost x (1 + markup), exact, or cost / (1 - margin), to 12 decimals, halves to the even
   *     neighbour
   */
  default BigMoney priceOf(BigMoney cost) {
    BigDecimal share = share().decimalIn(TradeUnits.ONE);
    return basis() == UpliftBasis.MARKUP
        ? cost.multipliedBy(BigDecimal.ONE.add(share))
        : cost.withScale(Math.max(12, cost.getScale()))
            .dividedBy(BigDecimal.ONE.subtract(share), RoundingMode.HALF_EVEN);
  }

  /** {@return the uplift for people: {@code "margin 20 %"}} */
  default String text() {
    return basis().words()
        + " "
        + share().decimalIn(TradeUnits.PERCENT).stripTrailingZeros().toPlainString()
        + " %";
  }

  /**
   * Refuses a margin of the whole price or more, and what sells below cost.
   *
   * @throws IllegalArgumentException if the share is out of range
   */
  @Value.Check
  default void check() {
    boolean margin = basis() == UpliftBasis.MARGIN;
    new Problems("uplift")
        .require(
            share().si() >= 0 && (!margin || share().si() < 1),
            basis().words()
                + " is "
                + share()
                + "; accepted is zero or more"
                + (margin ? " and less than 1, as no price is all margin" : ""))
        .refuseIfAny();
  }
}
