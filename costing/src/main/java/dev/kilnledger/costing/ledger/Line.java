package dev.kilnledger.costing.ledger;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Input;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Kind;
import java.io.Serializable;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/** One amount of an account: how many packs of an offer, and why. */
@Value.Immutable
@ValueStyle
public interface Line extends Serializable {
  /** {@return what the line stands for} */
  Entry entry();

  /** {@return the offer that is paid, with pack content, price and source} */
  Offer offer();

  /** {@return what is paid for one pack: the price of the offer, or that of one of its breaks} */
  @Value.Default
  default BigMoney price() {
    return offer().price();
  }

  /** {@return the packs, over {@link #divisor}} */
  BigInteger count();

  /** {@return 1 where whole packs are bought, more where a share of a pack is paid or used} */
  BigInteger divisor();

  /** {@return how the packs are counted, in the names of {@link #inputs}} */
  String formula();

  /** {@return the figures of the formula, each with its source} */
  List<Input> inputs();

  /** {@return the item} */
  default String item() {
    return offer().item();
  }

  /** {@return the packs as a decimal, of 34 digits where it has no end} */
  default BigDecimal packs() {
    return new BigDecimal(count()).divide(new BigDecimal(divisor()), MathContext.DECIMAL128);
  }

  /** {@return what the packs hold together, to the precision of an amount} */
  default Amount<?> quantity() {
    return offer().content().multiply(packs().doubleValue());
  }

  /**
   * {@return price x count / divisor: exact, but for a quotient without end, which has 34 digits}
   */
  @Value.Derived
  default BigMoney amount() {
    BigMoney dividend = price().multipliedBy(new BigDecimal(count()));
    return divisor().equals(BigInteger.ONE)
        ? dividend
        : BigMoney.of(
            dividend.getCurrencyUnit(),
            dividend.getAmount().divide(new BigDecimal(divisor()), MathContext.DECIMAL128));
  }

  /**
   * {@return the line for people, packs to six decimals: {@code "filament: bought 1 x 500 g at EUR
   * 60.00"}}
   */
  default String text() {
    return item()
        + ": "
        + entry().words()
        + " "
        + packs().setScale(6, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString()
        + " x "
        + offer().content()
        + pieces()
        + " at "
        + price();
  }

  private String pieces() {
    Amount<?> content = offer().content();
    if (!content.kind().equals(Kind.RATIO) || entry() == Entry.SHIPPED) {
      return "";
    }
    return content.si() == 1 ? " piece" : " pieces";
  }

  /**
   * Starts one.
   *
   * @return a builder; all attributes but the price are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Line} values. */
  final class Builder extends ImmutableLine.Builder {
    Builder() {}
  }
}
