package dev.kilnledger.benchmarks;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/**
 * Writes an invented print programme: layers of 0.2 mm, each with a comment, a retraction and a
 * travel, and within it straight moves with every fiftieth an arc. It is the same each time.
 */
final class PrintProgrammeText {
  private static final int MOVES_OF_A_LAYER = 500;
  private static final int MOVES_TO_AN_ARC = 50;

  private final OutputStream out;
  private final StringBuilder text = new StringBuilder();
  private long state = 1;
  private long written;

  private PrintProgrammeText(OutputStream out) {
    this.out = out;
  }

  /** Writes whole layers until there are so many bytes at least. */
  static void write(OutputStream out, long bytes) throws IOException {
    new PrintProgrammeText(out).write(bytes);
  }

  private void write(long bytes) throws IOException {
    text.append("; an invented programme\nG21\nG90\nM83\nG28\nT0\n");
    for (int layer = 1; written < bytes; layer++) {
      layer(layer);
      byte[] ready = text.toString().getBytes(StandardCharsets.US_ASCII);
      out.write(ready);
      written += ready.length;
      text.setLength(0);
    }
  }

  private void layer(int layer) {
    text.append(";LAYER:").append(layer).append('\n');
    text.append("G1 F2400 E-1.5\nG0 F9000 X20 Y20 Z");
    number(layer * 200L, 3);
    text.append("\nG1 F2400 E1.5\nG1 F1800\n");
    for (int move = 1; move <= MOVES_OF_A_LAYER; move++) {
      if (move % MOVES_TO_AN_ARC == 0) {
        text.append("G0 X100 Y100\nG2 X110 Y100 I5 J0 E0.52247 ; half a circle\n");
      } else {
        text.append("G1 X");
        number(random(180_000), 3);
        text.append(" Y");
        number(random(180_000), 3);
        text.append(" E");
        number(1 + random(99_999), 5);
        text.append('\n');
      }
    }
  }

  private void number(long value, int decimals) {
    long unit = decimals == 3 ? 1000 : 100_000;
    text.append(value / unit).append('.');
    String fraction = Long.toString(unit + value % unit);
    text.append(fraction, 1, fraction.length());
  }

  /** A linear congruence (Knuth, The Art of Computer Programming 2, MMIX), from memory. */
  private int random(int below) {
    state = state * 6364136223846793005L + 1442695040888963407L;
    return (int) ((state >>> 33) % below);
  }
}
