package dev.kilnledger.costing.quote;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import org.immutables.value.Value;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/** One line of a quote. */
@Value.Immutable
@ValueStyle
public interface QuoteLine extends Serializable {
  /** {@return what it is for} */
  String name();

  /** {@return how many parts, 1 for a charge that is not for parts} */
  long parts();

  /** {@return the price of one part without tax, unrounded} */
  BigMoney unitPrice();

  /** {@return how the unit price came about: {@code "EUR 80.00 with margin 20 %"}} */
  String formula();

  /** {@return the amount of the line} */
  TaxedAmount amount();

  /**
   * The net amount, part by part in whole minor units: equal shares by largest remainder, so that
   * the first few parts may carry one unit more than the others.
   *
   * @return one or two groups of parts, which add up to the net amount of the line
   */
  default List<PartShare> netPerPart() {
    Money net = amount().net();
    BigInteger[] units =
        net.getAmount().unscaledValue().divideAndRemainder(BigInteger.valueOf(parts()));
    Money least = Money.of(net.getCurrencyUnit(), new BigDecimal(units[0], net.getScale()));
    long more = units[1].longValueExact();
    return more == 0
        ? List.of(PartShare.of(parts(), least))
        : List.of(
            PartShare.of(more, least.plus(Money.ofMinor(net.getCurrencyUnit(), 1))),
            PartShare.of(parts() - more, least));
  }

  /**
   * Starts one.
   *
   * @return a builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link QuoteLine} values. */
  final class Builder extends ImmutableQuoteLine.Builder {
    Builder() {}
  }
}
