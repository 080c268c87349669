package dev.kilnledger.core.mesh;

import dev.kilnledger.core.reading.InputProblem;
import dev.kilnledger.core.reading.UnreadableInputException;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads a text STL file word by word: {@code solid}, then for each facet {@code facet normal} and
 * three numbers, {@code outer loop}, three times {@code vertex} and three numbers, {@code endloop},
 * {@code endfacet}; at the end {@code endsolid}. After a problem it goes on with the next facet.
 */
final class StlText {
  private static final int LONGEST_WORD = 64;
  private static final int MOST_PROBLEMS = 20;

  private final InputStream in;
  private final byte[] buffer = new byte[1 << 16];
  private int at;
  private int filled;
  private long line = 1;
  private final byte[] letters = new byte[LONGEST_WORD];
  private int length;
  private long wordLine;
  private final List<InputProblem> problems = new ArrayList<>();

  StlText(byte[] beginning, int length, InputStream in) {
    System.arraycopy(beginning, 0, buffer, 0, length);
    this.filled = length;
    this.in = in;
  }

  void read(StlVisitor visitor) throws IOException {
    visitor.text();
    expect("solid");
    restOfLine();
    boolean open = true;
    float[] c = new float[9];
    while (next() && problems.size() < MOST_PROBLEMS) {
      if (is("facet")) {
        facet(c);
        if (problems.isEmpty()) {
          visitor.facet(c[0], c[1], c[2], c[3], c[4], c[5], c[6], c[7], c[8], 0);
        }
      } else if (is("endsolid")) {
        open = false;
        restOfLine();
      } else if (is("solid")) {
        open = true;
        restOfLine();
      } else if (problems.isEmpty()) {
        unexpected("facet or endsolid");
      }
    }
    if (open && problems.isEmpty()) {
      problem("line " + line, "the file ends", "endsolid before its end");
    }
    if (!problems.isEmpty()) {
      throw new UnreadableInputException(problems);
    }
  }

  /** Reads a facet, or notes the first problem in it. */
  private void facet(float[] corners) throws IOException {
    boolean read = expect("normal") && numbers(corners, 0) && expect("outer") && expect("loop");
    for (int corner = 0; read && corner < 3; corner++) {
      read = expect("vertex") && numbers(corners, 3 * corner);
    }
    if (read && expect("endloop")) {
      expect("endfacet");
    }
  }

  private boolean numbers(float[] into, int from) throws IOException {
    for (int i = 0; i < 3; i++) {
      if (!next()) {
        problem("line " + line, "the file ends", "a number");
        return false;
      }
      float number = (float) Decimals.parse(word());
      if (!(Math.abs(number) <= Float.MAX_VALUE)) {
        unexpected("a finite number");
        return false;
      }
      into[from + i] = number;
    }
    return true;
  }

  private boolean expect(String word) throws IOException {
    if (!next()) {
      problem("line " + line, "the file ends", word);
      return false;
    }
    if (is(word)) {
      return true;
    }
    unexpected(word);
    return false;
  }

  private void unexpected(String accepted) {
    problem("line " + wordLine, "'" + word() + "' stands there", accepted);
  }

  private void problem(String where, String what, String accepted) {
    problems.add(InputProblem.of("STL file, " + where, what, accepted));
  }

  private boolean is(String word) {
    if (length != word.length()) {
      return false;
    }
    for (int i = 0; i < length; i++) {
      int letter = letters[i];
      // some write the words in capitals
      if ((letter >= 'A' && letter <= 'Z' ? letter | 0x20 : letter) != word.charAt(i)) {
        return false;
      }
    }
    return true;
  }

  private String word() {
    StringBuilder text = new StringBuilder(length);
    for (int i = 0; i < length; i++) {
      text.append(letters[i] > ' ' && letters[i] < 127 ? (char) letters[i] : '?');
    }
    return text.toString();
  }

  /** Goes to the next word; false at the end. A longer one than fits is cut. */
  private boolean next() throws IOException {
    int b = read();
    while (isWhite(b)) {
      b = read();
    }
    length = 0;
    wordLine = line;
    while (b >= 0 && !isWhite(b)) {
      if (length < LONGEST_WORD) {
        letters[length++] = (byte) b;
      }
      b = read();
    }
    if (b == '\n' || b == '\r') {
      // the end of a line is left for who passes the rest of it over, and told with this word
      line -= b == '\n' ? 1 : 0;
      at--;
    }
    return length > 0;
  }

  private static boolean isWhite(int b) {
    return b == ' ' || b == '\n' || b == '\r' || b == '\t';
  }

  private void restOfLine() throws IOException {
    int b = read();
    while (b >= 0 && b != '\n' && b != '\r') {
      b = read();
    }
  }

  private int read() throws IOException {
    if (at == filled) {
      int count = in.read(buffer, 0, buffer.length);
      if (count < 0) {
        return -1;
      }
      at = 0;
      filled = count;
    }
    int b = buffer[at++] & 0xff;
    if (b == '\n') {
      line++;
    }
    return b;
  }
}
