package dev.kilnledger.units;

import java.math.BigDecimal;

/** Numbers as plain decimal text, the same in every locale. */
final class DecimalText {
  private DecimalText() {}

  /** The shortest decimal that reads back as the same double; no exponent from 1e-6 to 1e15. */
  static String of(double number) {
    BigDecimal shortest = BigDecimal.valueOf(number).stripTrailingZeros();
    double size = Math.abs(number);
    return size >= 1e-6 && size < 1e15 ? shortest.toPlainString() : shortest.toString();
  }
}
