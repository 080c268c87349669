package dev.kilnledger.benchmarks;

import java.io.IOException;
import java.io.InputStream;

/**
 * What a hand would write to take a print programme apart and no more: a loop over the bytes that
 * makes a letter and a double of each word, passes comments of both kinds over and counts lines,
 * whatever ends them. Nothing is checked and nothing is done with the words but to add them up by
 * letter.
 */
final class WordCounter {
  private static final double[] POWERS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10};

  private final double[] sums = new double[26];
  private long words;
  private long lines;
  private long comments;
  private int letter = -1;
  private long digits;
  private int decimals = -1;
  private boolean negative;
  private boolean inComment;
  private boolean inBrackets;
  private int returnAt = -2;
  private boolean lineEnded = true;

  /** Reads to the end. */
  void read(InputStream in) throws IOException {
    byte[] buffer = new byte[1 << 16];
    int count = in.read(buffer, 0, buffer.length);
    while (count > 0) {
      take(buffer, count);
      lineEnded = buffer[count - 1] == '\n' || buffer[count - 1] == '\r';
      count = in.read(buffer, 0, buffer.length);
    }
    if (!lineEnded) {
      take(new byte[] {'\n'}, 1);
    }
  }

  private void take(byte[] buffer, int count) {
    int letter = this.letter;
    long digits = this.digits;
    int decimals = this.decimals;
    boolean negative = this.negative;
    boolean inComment = this.inComment;
    boolean inBrackets = this.inBrackets;
    int returnAt = this.returnAt;
    for (int i = 0; i < count; i++) {
      int b = buffer[i];
      if (inComment) {
        if (inBrackets && b == ')') {
          inComment = false;
          continue;
        }
        if (b != '\n' && b != '\r') {
          continue;
        }
        inComment = false;
      } else if (b >= '0' && b <= '9') {
        digits = digits * 10 + (b - '0');
        if (decimals >= 0) {
          decimals++;
        }
        continue;
      } else if (b == '.') {
        decimals = 0;
        continue;
      } else if (b == '-') {
        negative = true;
        continue;
      } else if (b == ' ' || b == '\t' || b == '+') {
        continue;
      }
      if (letter >= 0) {
        double value = decimals > 0 ? digits / POWERS[decimals] : digits;
        sums[letter] += negative ? -value : value;
        words++;
        letter = -1;
      }
      int place = (b | 0x20) - 'a';
      if (place >= 0 && place < 26) {
        letter = place;
        digits = 0;
        decimals = -1;
        negative = false;
      } else if (b == ';' || b == '(') {
        comments++;
        inComment = true;
        inBrackets = b == '(';
      } else if (b == '\r') {
        lines++;
        returnAt = i;
      } else if (b == '\n' && returnAt != i - 1) {
        lines++;
      }
    }
    this.letter = letter;
    this.digits = digits;
    this.decimals = decimals;
    this.negative = negative;
    this.inComment = inComment;
    this.inBrackets = inBrackets;
    this.returnAt = returnAt - count;
  }

  /** {@return the sum of all words of a letter} */
  double sum(char letter) {
    return sums[letter - 'A'];
  }

  long words() {
    return words;
  }

  long lines() {
    return lines;
  }

  long comments() {
    return comments;
  }
}
