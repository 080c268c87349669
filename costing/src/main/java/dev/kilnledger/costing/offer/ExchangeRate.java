package dev.kilnledger.costing.offer;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import java.io.Serializable;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.immutables.value.Value;
import org.joda.money.CurrencyUnit;

/** What one unit of a currency is worth in another, on a day. */
@Value.Immutable
@ValueStyle
public interface ExchangeRate extends Serializable {
  /** {@return the currency that is converted} */
  CurrencyUnit base();

  /** {@return the currency into which it is converted} */
  CurrencyUnit counter();

  /** {@return how many units of {@link #counter} one unit of {@link #base} is worth, above zero} */
  BigDecimal rate();

  /** {@return the day for which the rate was stated} */
  LocalDate date();

  /** {@return who stated the rate} */
  Source source();

  /** {@return the rate for people: {@code "1 USD = 0.92 EUR on 2026-11-02"}} */
  default String text() {
    return "1 " + base() + " = " + rate().toPlainString() + " " + counter() + " on " + date();
  }

  /**
   * Starts one.
   *
   * @return a builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link ExchangeRate} values. */
  final class Builder extends ImmutableExchangeRate.Builder {
    Builder() {}
  }

  /**
   * Refuses a rate of nothing, and one between a currency and itself.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("exchange rate from " + base() + " to " + counter())
        .require(
            rate().signum() > 0,
            "rate is " + rate().toPlainString() + "; accepted is more than zero")
        .require(
            !base().equals(counter()), "both currencies are the same; accepted are two currencies")
        .refuseIfAny();
  }
}
