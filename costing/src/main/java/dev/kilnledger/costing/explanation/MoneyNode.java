package dev.kilnledger.costing.explanation;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.units.Kind;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.BigMoney;
import org.joda.money.BigMoneyProvider;

/** Nodes whose figure is money. */
final class MoneyNode {
  private static final int DECIMALS = 6;

  private MoneyNode() {}

  static Explanation.Builder of(String what, BigMoneyProvider money) {
    Explanation.Builder node = Explanation.builder();
    BigMoney exact = money.toBigMoney();
    // Money is serializable, as BigMoney is; only their common interface is not.
    return node.what(what).value(exact).shown(shown(exact));
  }

  static Explanation given(String what, BigMoneyProvider money, Source source) {
    return of(what, money).source(source).build();
  }

  static Explanation computed(
      String what, BigMoneyProvider money, String formula, Explanation... children) {
    return of(what, money).formula(formula).children(List.of(children)).build();
  }

  /** Up to six decimals, and never less than the currency has. */
  private static String shown(BigMoney money) {
    BigDecimal amount = money.getAmount();
    if (amount.scale() > DECIMALS) {
      amount = amount.setScale(DECIMALS, RoundingMode.HALF_EVEN);
    }
    amount = amount.stripTrailingZeros();
    int least = money.getCurrencyUnit().getDecimalPlaces();
    return money.getCurrencyUnit()
        + " "
        + amount.setScale(Math.max(least, amount.scale())).toPlainString();
  }

  /** The price of an offer, with who offers it, when it was seen, and how it was converted. */
  static Explanation price(Offer offer) {
    return price(offer, offer.price());
  }

  /** What is paid for a pack of an offer: its price, or that of one of its breaks. */
  static Explanation price(Offer offer, BigMoney paid) {
    List<Explanation> converted = new ArrayList<>();
    offer
        .convertedAt()
        .ifPresent(
            rate ->
                converted.add(
                    Explanation.builder()
                        .what("exchange rate")
                        .value(rate.rate())
                        .condition(rate.text())
                        .source(rate.source())
                        .build()));
    Explanation.Builder price =
        of("price", paid)
            .condition(
                offer.supplier()
                    + ", "
                    + offer.content()
                    + (offer.content().kind().equals(Kind.RATIO) ? " piece" : "")
                    + ", "
                    + offer.date().map(day -> "seen on " + day).orElse("not dated")
                    + ", tax "
                    + offer.tax().words())
            .source(offer.source())
            .children(converted);
    return converted.isEmpty()
        ? price.build()
        : price.formula("the price as offered x exchange rate").build();
  }
}
