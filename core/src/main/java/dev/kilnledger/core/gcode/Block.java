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
  private static final int NONE = -1;

  /** The next word begins at the end of the line. */
  private static final int REST = -2;

  /** The letters that may stand more than once, with no value of their own. */
  private static final int NAMES = bit('G') | bit('M') | bit('N');

  /** No way is so long, no wait takes so long; sums of such numbers stay finite. */
  private static final double LARGEST = 1e12;

  private final double[] values = new double[26];
  private int letters;
  private int bare;
  private final int[] codes = new int[MOST_CODES];
  private int codeCount;
  private long comments;
  private @Nullable String passedOver;
  private @Nullable String problem;

  private byte[] bytes = new byte[0];
  private int end;

  /** Whether the word that gives the line its meaning is still to come. */
  private boolean first;

  private double number;

  /** Takes a line apart, up to the byte that ends it. */
  void parse(byte[] line, int from) {
    bytes = line;
    comments = 0;
    letters = 0;
    bare = 0;
    codeCount = 0;
    passedOver = null;
    problem = null;
    first = true;
    int at = white(from);
    if (line[at] == '%') {
      end = EightBytes.lineEnd(line, at);
      return;
    }
    if (line[at] == '/') {
      problem = "an optional block, which a machine may run or not; take out the slash or the line";
      end = EightBytes.lineEnd(line, at);
      return;
    }
    int seen = 0;
    while (true) {
      int b = line[at];
      int letter = (b | 0x20) - 'a';
      if (letter >= 0 && letter < 26) {
        int begin = line[at + 1] > ' ' ? at + 1 : white(at + 1);
        int next = number(begin);
        if ((NAMES >>> letter & 1) != 0 || next == NONE) {
          at = next == NONE ? bareLetter(letter, at, begin) : name(letter, next);
        } else if (((seen | bare) >>> letter & 1) != 0) {
          at = refuse((char) ('A' + letter) + " stands twice; accepted is once in a line");
        } else if (!(Math.abs(number) <= LARGEST)) {
          at =
              refuse((char) ('A' + letter) + " is larger than any machine; accepted is up to 1e12");
        } else {
          first = false;
          seen |= 1 << letter;
          values[letter] = number;
          at = next;
        }
      } else if (EightBytes.endsLine(b)) {
        break;
      } else {
        at = noWord(b, at, from);
      }
      if (at == REST) {
        at = EightBytes.lineEnd(line, from);
      }
    }
    end = at;
    letters = seen | bare;
  }

  private int noWord(int b, int at, int from) {
    if (b == ';') {
      comments++;
      return REST;
    }
    if (b == '(') {
      return bracketed(at);
    }
    if (b == '*') {
      return checksum(from, at);
    }
    return refuse("no word begins with '" + printable(b) + "'; accepted is a letter and a number");
  }

  private int bareLetter(int letter, int at, int next) {
    if (first && letter != 'n' - 'a') {
      passedOver = name(at);
      return REST;
    }
    first = false;
    if (!takesBareLetters()) {
      return refuse("no number after " + (char) ('A' + letter) + "; accepted is a decimal number");
    }
    bare |= 1 << letter;
    values[letter] = 0;
    return next;
  }

  /** Takes a line number, or the code of a letter G or M, in tenths: G92.1 is not G92. */
  private int name(int letter, int next) {
    if (letter == 'n' - 'a') {
      return next;
    }
    int whole = (int) number;
    int tenths = whole == number ? whole * 10 : (int) Math.round(number * 10);
    int code = tenths + (letter == 'm' - 'a' ? M : 0);
    if (number < 0 || number >= M / 20.0) {
      return refuse(
          "there is no " + (char) ('A' + letter) + " of that number; accepted is 0 to 4999");
    }
    if (first && letter == 'm' - 'a' && !GCodes.isKnown(code)) {
      // what follows may be text
      passedOver = codeName(code);
      return REST;
    }
    if (codeCount == MOST_CODES) {
      return refuse("more than " + MOST_CODES + " codes in one line");
    }
    first = false;
    codes[codeCount++] = code;
    return next;
  }

  private int refuse(String why) {
    problem = why;
    return REST;
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
    while (end - begin < 32 && isNameByte(bytes[end])) {
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
   * Reads a decimal number without exponent; answers where the next word begins, or that there is
   * no number. The digits before and behind the point are taken eight bytes at a time, so that no
   * branch depends on how many there are.
   */
  private int number(int from) {
    byte[] line = bytes;
    boolean negative = line[from] == '-';
    int at = negative ? from + 1 : from;
    if (at > line.length - 2 * EightBytes.LENGTH) {
      return numberOfAnyForm(from);
    }
    long eight = EightBytes.at(line, at);
    long ends = EightBytes.others(eight);
    int count = EightBytes.first(ends);
    double value;
    if (ends == 0) {
      return numberOfAnyForm(from);
    }
    if (line[at + count] == '.') {
      ends &= ends - 1;
      if (ends == 0) {
        return numberOfAnyForm(from);
      }
      int decimals = EightBytes.first(ends) - count - 1;
      at += 1 + count + decimals;
      eight = EightBytes.without(eight, count);
      count += decimals;
      // no more digits than a double holds exactly, so that the division rounds once
      value = EightBytes.number(eight, count) / POWERS[decimals];
    } else {
      at += count;
      value = EightBytes.number(eight, count);
    }
    if (count == 0) {
      return numberOfAnyForm(from);
    }
    int next = at;
    if (isWhite(line[at])) {
      next = line[at + 1] > '9' ? at + 1 : white(at + 1);
      if (goesOn(next)) {
        return numberOfAnyForm(from);
      }
    }
    number = negative ? -value : value;
    return next;
  }

  private boolean goesOn(int next) {
    return isDigit(bytes[next]) || bytes[next] == '.';
  }

  /** The same of any length, with a plus, or with white space inside (RS274/NGC section 3.3). */
  private int numberOfAnyForm(int from) {
    int at = from;
    boolean negative = bytes[at] == '-';
    if (negative || bytes[at] == '+') {
      at++;
    }
    long digits = 0;
    int count = 0;
    int decimals = -1;
    boolean exact = true;
    while (true) {
      int b = bytes[at];
      if (isDigit(b)) {
        count++;
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
      at++;
    }
    if (count == 0) {
      return NONE;
    }
    if (exact && decimals <= 22) {
      double value = decimals > 0 ? digits / POWERS[decimals] : digits;
      number = negative ? -value : value;
    } else {
      number =
          Double.parseDouble(
              new String(bytes, from, at - from, StandardCharsets.US_ASCII)
                  .replace(" ", "")
                  .replace("\t", ""));
    }
    return white(at);
  }

  /** Passes a comment over; answers where the next word begins. */
  private int bracketed(int at) {
    int close = at;
    while (bytes[close] != ')' && !EightBytes.endsLine(bytes[close])) {
      close++;
    }
    if (bytes[close] != ')') {
      return refuse("a comment that is not closed; accepted is one in brackets");
    }
    comments++;
    return white(close + 1);
  }

  private int checksum(int from, int star) {
    int sum = 0;
    for (int i = from; i < star; i++) {
      sum ^= bytes[i] & 0xff;
    }
    int next = number(white(star + 1));
    if (next == NONE || number != sum) {
      problem = "the checksum does not fit; accepted is " + sum;
    } else if (bytes[next] == ';') {
      comments++;
    } else if (!EightBytes.endsLine(bytes[next])) {
      problem = "something after the checksum; accepted is nothing, or a comment";
    }
    return REST;
  }

  /** The first place from here on where no white space stands. */
  private int white(int from) {
    int at = from;
    while (isWhite(bytes[at])) {
      at++;
    }
    return at;
  }

  private static boolean isWhite(int b) {
    return b == ' ' || b == '\t';
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

  /** Where the byte stands that ends the line. */
  int end() {
    return end;
  }

  /** How many comments the line has. */
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
