package dev.kilnledger.benchmarks;

import java.io.IOException;
import java.io.InputStream;

/**
 * What a hand would write to take a print programme apart and no more: a loop over the bytes that
 * makes a letter and a double of each word, passes comments over and counts lines. Nothing is
 * checked and nothing is done with the words but to add them up by letter.
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

  /** Reads to the end. */
  void read(InputStream in) throws IOException {
    byte[] buffer = new byte[1 << 16];
    int count = in.read(buffer, 0, buffer.length);
    while (count > 0) {
      take(buffer, count);
      count = in.read(buffer, 0, buffer.length);
    }
  }

  private void take(byte[] buffer, int count) {
    int letter = this.letter;
    long digits = this.digits;
    int decimals = this.decimals;
    boolean negative = this.negative;
    boolean inComment = this.inComment;
    for (int i = 0; i < count; i++) {
      int b = buffer[i];
      if (inComment) {
        inComment = b != '\n';
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
      }
      if (letter >= 0 && !inComment) {
        double value = decimals > 0 ? digits / POWERS[decimals] : digits;
        sums[letter] += negative ? -value : value;
        words++;
        letter = -1;
      }
      if (b >= 'A' && b <= 'Z' && !inComment) {
        letter = b - 'A';
        digits = 0;
        decimals = -1;
        negative = false;
      } else if (b == ';' && !inComment) {
        comments++;
        inComment = true;
      } else if (b == '\n') {
        lines++;
      }
    }
    this.letter = letter;
    this.digits = digits;
    this.decimals = decimals;
    this.negative = negative;
    this.inComment = inComment;
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
