package dev.kilnledger.core.mesh;

/** Decimal numbers as XML and STL write them. */
final class Decimals {
  private Decimals() {}

  /** The finite number that a text is; not a number where it is something else. */
  static double parse(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      // the parser would take NaN, hexadecimals, type letters and white space as well
      if (!((c >= '0' && c <= '9') || c == 'e' || c == 'E' || c == '.' || c == '+' || c == '-')) {
        return Double.NaN;
      }
    }
    try {
      double value = Double.parseDouble(text);
      return Double.isInfinite(value) ? Double.NaN : value;
    } catch (NumberFormatException e) {
      return Double.NaN;
    }
  }
}
