package dev.kilnledger.costing.ledger;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Input;
import java.io.Serializable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/** An amount of an account that is a share of some of its lines: overhead or tax. */
@Value.Immutable
@ValueStyle
public interface Surcharge extends Serializable {
  /** {@return what it is, for people, lower case} */
  String title();

  /** {@return the sum of the lines of which it is a share} */
  BigMoney base();

  /** {@return the items of these lines, in their order} */
  List<String> items();

  /** {@return the share, over {@link #divisor}; negative where it is deducted} */
  BigDecimal share();

  /** {@return 1, or what the share is divided by} */
  BigDecimal divisor();

  /** {@return how it is computed, in the names of {@link #inputs}} */
  String formula();

  /** {@return the figures of the formula but the base, which is a name in it, each with source} */
  List<Input> inputs();

  /**
   * {@return base x share / divisor: exact, but for a quotient without end, which has 34 digits}
   */
  @Value.Derived
  default BigMoney amount() {
    BigDecimal dividend = base().getAmount().multiply(share());
    return BigMoney.of(
        base().getCurrencyUnit(),
        divisor().compareTo(BigDecimal.ONE) == 0
            ? dividend
            : dividend.divide(divisor(), MathContext.DECIMAL128));
  }

  /** {@return the surcharge for people: {@code "overhead on all costs: EUR 12.00 on EUR 80.00"}} */
  default String text() {
    return title() + ": " + amount() + " on " + base();
  }

  /**
   * Starts one.
   *
   * @return a builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Surcharge} values. */
  final class Builder extends ImmutableSurcharge.Builder {
    Builder() {}
  }
}
