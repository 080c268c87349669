package dev.kilnledger.examples.report;

import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Span;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.joda.money.BigMoney;

/** Figures as words, the same in every locale. */
final class Words {
  private static final Pattern BEFORE_UNIT =
      Pattern.compile("(?<=\\d) (?=(?:%|°C|K|K/h|h|g|kg|m|mm|cm³|g/cm³|L|Pa|kJ|kW|kWh)(?!\\p{L}))");
  private static final Pattern AFTER_CURRENCY = Pattern.compile("(?<=\\b[A-Z]{3}) (?=\\d)");
  private static final String NO_BREAK = "\u00a0";

  private Words() {}

  /** Keeps a number on one line with its unit or currency. */
  static String kept(String words) {
    String units = BEFORE_UNIT.matcher(words).replaceAll(NO_BREAK);
    return AFTER_CURRENCY.matcher(units).replaceAll(NO_BREAK);
  }

  static String decimals(double number, int decimals) {
    return BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  /** A span, as one figure where both ends read alike. */
  static <Q extends Quantity<Q>> String span(Span<Q> span, Unit<Q> unit, int decimals) {
    String high = span.high().format(unit, decimals);
    return span.low().format(unit, decimals).equals(high) ? high : span.format(unit, decimals);
  }

  /** A share from 0 to 1 as percent. */
  static String percent(double share) {
    return BigDecimal.valueOf(share).movePointRight(2).stripTrailingZeros().toPlainString() + " %";
  }

  static String percent(double share, int decimals) {
    return decimals(100 * share, decimals) + " %";
  }

  static <Q extends Quantity<Q>> String band(Estimate<Q> estimate, Unit<Q> unit, int decimals) {
    String expected = estimate.expected().format(unit, decimals);
    String span = span(estimate.span(), unit, decimals);
    return span.equals(expected) ? expected : expected + " (" + span + ")";
  }

  /** An amount as it stands in its account, rounded to four decimals where it has more. */
  static String exact(BigMoney amount) {
    return amount.getScale() <= 4
        ? amount.toString()
        : amount.withScale(4, RoundingMode.HALF_EVEN).toString();
  }

  static String count(long number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }
}
