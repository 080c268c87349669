package dev.kilnledger.core.gcode;

import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * One line taken apart into words, after NIST RS274/NGC (Kramer, Proctor and Messina 2000, section
 * 3.3): a letter and a number, white space anywhere, comments in brackets or, by the custom of
 * extruding machines, after a semicolon, and a checksum after a star. It is used again for each
 * line.
 */
final class Block {
  /** Powers of ten that a double holds exactly, so that a division rounds once. */
  private static final double[] POWERS = {
    1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16,
    1e17, 1e18, 1e19, 1e20, 1e21, 1e22
  };

  private static final long EXACT = 1L << 53;
  private static final int MOST_CODES = 16;

  /** No way is so long, no wait takes so long; sums of such numbers stay finite. */
  private static final double LARGEST = 1e12;

  private final double[] values = new double[26];
  private int letters;
  private final int[] codes = new int[MOST_CODES];
  private int codeCount;
  private long comments;
  private @Nullable String passedOver;
  private @Nullable String problem;

  private byte[] bytes = new byte[0];
  private int at;
  private int stop;

  /** Takes a line apart. */
  void parse(byte[] line, int from, int to) {
    bytes = line;
    at = from;
    stop = to;
    letters = 0;
    codeCount = 0;
    passedOver = null;
    problem = null;
    skipWhite();
    if (at < stop && bytes[at] == '%') {
      return;
    }
    if (at < stop && bytes[at] == '/') {
      problem = "an optional block, which a machine may run or not; take out the slash or the line";
      return;
    }
    boolean first = true;
    while (problem == null && passedOver == null && at < stop) {
      int b = bytes[at];
      int letter = (b | 0x20) - 'a';
      if (letter >= 0 && letter < 26) {
        first = word(letter, first);
      } else if (b == ';') {
        comments++;
        return;
      } else if (b == '(') {
        bracketed();
      } else if (b == '*') {
        checksum(from);
        return;
      } else {
        problem = "no word begins with '" + printable(b) + "'; accepted is a letter and a number";
      }
      skipWhite();
    }
  }

  /** Reads a word; answers whether a word that gives the line its meaning is still to come. */
  private boolean word(int letter, boolean first) {
    int begin = at++;
    double value = number();
    if (Double.isNaN(value)) {
      if (first && letter != 'n' - 'a') {
        passedOver = name(begin);
      } else if (takesBareLetters()) {
        letters |= 1 << letter;
        values[letter] = 0;
      } else {
        problem = "no number after " + (char) ('A' + letter) + "; accepted is a decimal number";
      }
      return false;
    }
    if (letter == 'n' - 'a') {
      return first;
    }
    if (letter == 'g' - 'a' || letter == 'm' - 'a') {
      // codes in tenths: G92.1 is another word than G92
      int code = (int) Math.round(value * 10) + (letter == 'm' - 'a' ? M : 0);
      if (value < 0 || value >= M / 20.0) {
        problem = "there is no " + (char) ('A' + letter) + " of that number; accepted is 0 to 4999";
      } else if (first && letter == 'm' - 'a' && !GCodes.isKnown(code)) {
        // what follows may be text
        passedOver = codeName(code);
      } else if (codeCount == MOST_CODES) {
        problem = "more than " + MOST_CODES + " codes in one line";
      } else {
        codes[codeCount++] = code;
      }
      return false;
    }
    if ((letters & (1 << letter)) != 0) {
      problem = (char) ('A' + letter) + " stands twice; accepted is once in a line";
    } else if (!(Math.abs(value) <= LARGEST)) {
      problem = (char) ('A' + letter) + " is larger than any machine; accepted is up to 1e12";
    } else {
      letters |= 1 << letter;
      values[letter] = value;
    }
    return false;
  }

  /** By the custom of extruding machines homing, and codes not known here, take letters alone. */
  private boolean takesBareLetters() {
    return codeCount > 0 && (codes[0] == GCodes.HOME || !GCodes.isKnown(codes[0]));
  }

  /** Codes of the letter M begin here. */
  static final int M = 100_000;

  static String codeName(int code) {
    int tenths = code % M;
    return (code >= M ? "M" : "G") + tenths / 10 + (tenths % 10 == 0 ? "" : "." + tenths % 10);
  }

  private String name(int begin) {
    int end = begin;
    while (end < stop && end - begin < 32 && isNameByte(bytes[end])) {
      end++;
    }
    return new String(bytes, begin, end - begin, StandardCharsets.US_ASCII);
  }

  private static boolean isNameByte(int b) {
    return isDigit(b) || ((b | 0x20) >= 'a' && (b | 0x20) <= 'z') || b == '_';
  }

  private static boolean isDigit(int b) {
    return b >= '0' && b <= '9';
  }

  /**
   * A decimal number without exponent; not a number where there is none. White space may stand
   * anywhere, even in numbers (RS274/NGC section 3.3); it is passed over.
   */
  private double number() {
    skipWhite();
    int begin = at;
    boolean negative = at < stop && bytes[at] == '-';
    if (negative || (at < stop && bytes[at] == '+')) {
      at++;
    }
    long digits = 0;
    boolean any = false;
    int decimals = -1;
    boolean exact = true;
    for (; at < stop; at++) {
      int b = bytes[at];
      if (isDigit(b)) {
        any = true;
        exact &= digits < EXACT / 10;
        if (exact) {
          digits = digits * 10 + (b - '0');
        }
        if (decimals >= 0) {
          decimals++;
        }
      } else if (b == '.' && decimals < 0) {
        decimals = 0;
      } else if (!isWhite(b)) {
        break;
      }
    }
    if (!any) {
      at = begin;
      return Double.NaN;
    }
    if (!exact || decimals > 22) {
      return Double.parseDouble(
          new String(bytes, begin, at - begin, StandardCharsets.US_ASCII)
              .replace(" ", "")
              .replace("\t", ""));
    }
    double value = digits / POWERS[Math.max(0, decimals)];
    return negative ? -value : value;
  }

  private static boolean isWhite(int b) {
    return b == ' ' || b == '\t';
  }

  private void bracketed() {
    int end = at;
    while (end < stop && bytes[end] != ')') {
      end++;
    }
    if (end == stop) {
      problem = "a comment that is not closed; accepted is one in brackets";
      return;
    }
    comments++;
    at = end + 1;
  }

  private void checksum(int from) {
    int sum = 0;
    for (int i = from; i < at; i++) {
      sum ^= bytes[i] & 0xff;
    }
    at++;
    double stated = number();
    if (stated != sum) {
      problem = "the checksum does not fit; accepted is " + sum;
    } else if (at < stop && bytes[at] == ';') {
      comments++;
    } else if (at < stop) {
      problem = "something after the checksum; accepted is nothing, or a comment";
    }
  }

  private void skipWhite() {
    while (at < stop && isWhite(bytes[at])) {
      at++;
    }
  }

  private static String printable(int b) {
    return b >= ' ' && b < 127 ? String.valueOf((char) b) : "?";
  }

  boolean has(char letter) {
    return (letters & bit(letter)) != 0;
  }

  /** The number after a letter that is there. */
  double value(char letter) {
    return values[letter - 'A'];
  }

  boolean hasAxes() {
    return (letters & AXES) != 0;
  }

  private static final int AXES = bit('X') | bit('Y') | bit('Z') | bit('E');

  private static int bit(char letter) {
    return 1 << (letter - 'A');
  }

  int codeCount() {
    return codeCount;
  }

  int code(int index) {
    return codes[index];
  }

  /** The comments of all lines so far. */
  long comments() {
    return comments;
  }

  /** The word for which the rest of the line was passed over, if it was. */
  @Nullable String passedOver() {
    return passedOver;
  }

  /** Why the line cannot be understood, if it cannot. */
  @Nullable String problem() {
    return problem;
  }
}
