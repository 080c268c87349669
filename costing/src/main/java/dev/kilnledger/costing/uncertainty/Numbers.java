package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.Problems;
import java.math.BigDecimal;

/** Plain numbers in messages, and what is asked of them. */
final class Numbers {
  private Numbers() {}

  /** The shortest decimal that stands for a number, without an exponent. */
  static String text(double number) {
    return Double.isFinite(number)
        ? BigDecimal.valueOf(number).stripTrailingZeros().toPlainString()
        : String.valueOf(number);
  }

  static void finite(String where, double number, Problems problems) {
    problems.require(
        Double.isFinite(number), where + " is " + text(number) + "; accepted is a finite number");
  }

  static void positive(String where, double number, Problems problems) {
    problems.require(
        number > 0 && Double.isFinite(number),
        where + " is " + text(number) + "; accepted is more than zero");
  }

  static void ascending(double low, double high, Problems problems) {
    finite("low", low, problems);
    finite("high", high, problems);
    problems.require(
        low < high, "low is " + text(low) + " and high " + text(high) + "; accepted is low < high");
  }

  /** The rank, from 1 up, of the smallest of so many sorted values that a share does not exceed. */
  static int rank(double share, int size) {
    // The share may be a quotient that was rounded: 0.07 x 100 is 7.000000000000001.
    int rank = (int) Math.ceil(share * size * (1 - 1e-14));
    return Math.max(1, Math.min(rank, size));
  }

  /** How many of some sorted values do not exceed one. */
  static int upTo(double value, double[] sorted) {
    int low = 0;
    int high = sorted.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (sorted[middle] <= value) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
