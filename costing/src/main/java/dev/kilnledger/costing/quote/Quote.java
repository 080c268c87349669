package dev.kilnledger.costing.quote;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.List;
import org.immutables.value.Value;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** What a customer is asked: lines whose net, tax and gross add up to the totals. */
@Value.Immutable
@ValueStyle
public interface Quote extends Serializable {
  /** {@return the rules by which it was made} */
  QuoteTerms terms();

  /** {@return the currency of every line} */
  CurrencyUnit currency();

  /** {@return the lines in the order of the items, then a minimum charge where one is due} */
  List<QuoteLine> lines();

  /** {@return every place at which a sum was rounded, in the order of the computation} */
  List<RoundingStep> roundings();

  /** {@return the sum of the lines without tax, and the tax on it} */
  @Value.Derived
  default TaxedAmount total() {
    Money net = Money.zero(currency());
    Money tax = Money.zero(currency());
    for (QuoteLine line : lines()) {
      net = net.plus(line.amount().net());
      tax = tax.plus(line.amount().tax());
    }
    return TaxedAmount.of(net, tax);
  }

  /**
   * Starts one.
   *
   * @return a builder; terms and currency are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Quote} values. */
  final class Builder extends ImmutableQuote.Builder {
    Builder() {}
  }
}
