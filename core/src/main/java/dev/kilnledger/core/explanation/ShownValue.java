package dev.kilnledger.core.explanation;

import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import javax.measure.Quantity;

/** Figures for people. */
final class ShownValue {
  private static final int DIGITS = 6;

  private ShownValue() {}

  static String of(Object value) {
    if (value instanceof Amount<?> amount) {
      return amount(amount);
    }
    if (value instanceof Span<?> span) {
      return span(span);
    }
    if (value instanceof Estimate<?> estimate) {
      boolean exact = estimate.span().low().equals(estimate.span().high());
      return amount(estimate.expected()) + (exact ? "" : " (" + span(estimate.span()) + ")");
    }
    return value instanceof BigDecimal number ? rounded(number).toPlainString() : value.toString();
  }

  /** The unit is told once where both ends have the same. */
  private static String span(Span<?> span) {
    String low = amount(span.low());
    String high = amount(span.high());
    int unit = high.indexOf(' ');
    boolean same = unit > 0 && low.endsWith(high.substring(unit));
    return (same ? low.substring(0, low.indexOf(' ')) : low) + " to " + high;
  }

  private static <Q extends Quantity<Q>> String amount(Amount<Q> amount) {
    BigDecimal number = BigDecimal.valueOf(amount.in(amount.getUnit()));
    return Amount.of(rounded(number).doubleValue(), amount.getUnit(), amount.kind()).toString();
  }

  /** Six digits, but never less than all those before the decimal point. */
  private static BigDecimal rounded(BigDecimal number) {
    int whole = number.precision() - number.scale();
    MathContext digits = new MathContext(Math.max(DIGITS, whole), RoundingMode.HALF_UP);
    return number.round(digits).stripTrailingZeros();
  }
}
