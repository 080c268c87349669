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
  /** {@return what the line stands for, the offer and its price, and how packs are counted} */
  @Value.Parameter
  LineBasis basis();

  /** {@return the packs, over {@link #divisor}} */
  @Value.Parameter
  BigInteger count();

  /** {@return 1 where whole packs are bought, more where a share of a pack is paid or used} */
  @Value.Parameter
  BigInteger divisor();

  /**
   * A line.
   *
   * @param basis what it stands for
   * @param count the packs, over the divisor
   * @param divisor 1 or more
   * @return the line
   */
  static Line of(LineBasis basis, BigInteger count, BigInteger divisor) {
    return ImmutableLine.of(basis, count, divisor);
  }

  /** {@return what the line stands for} */
  default Entry entry() {
    return basis().entry();
  }

  /** {@return the offer that is paid, with pack content, price and source} */
  default Offer offer() {
    return basis().offer();
  }

  /** {@return what is paid for one pack: the price of the offer, or that of one of its breaks} */
  default BigMoney price() {
    return basis().price();
  }

  /** {@return how the packs are counted, in the names of {@link #inputs}} */
  default String formula() {
    return basis().formula();
  }

  /** {@return the figures of the formula, each with its source} */
  default List<Input> inputs() {
    return basis().inputs();
  }

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
}
