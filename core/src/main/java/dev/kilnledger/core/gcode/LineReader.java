package dev.kilnledger.core.gcode;

import java.io.IOException;
import java.io.InputStream;

/**
 * Cuts a stream into lines without copying them; a line lies in {@link #buffer}, and behind it
 * stands a byte that ends a line, even behind the last. Who takes the line apart comes upon that
 * byte anyway, and says where it is, so that nobody looks for it twice.
 */
final class LineReader {
  /** Longer lines are no programme; RS274/NGC allows 256 characters. */
  static final int LONGEST_LINE = 8192;

  private final InputStream in;
  private final byte[] buffer = new byte[(1 << 16) + 1];
  private int start;
  private int next;
  private int stop;
  private int filled;

  /** The last byte in the buffer that ends a line, -1 if none does. */
  private int lastEnd = -1;

  private long read;
  private boolean ended;
  private boolean afterReturn;
  private boolean tooLong;

  LineReader(InputStream in) {
    this.in = in;
  }

  /** Goes to the next line, which then lies in the buffer up to its end; false if there is none. */
  boolean advance() throws IOException {
    tooLong = false;
    start = next;
    passNewlineAfterReturn();
    while (start > lastEnd) {
      if (ended) {
        return start < filled;
      }
      fill();
      passNewlineAfterReturn();
    }
    return true;
  }

  /** Says where the byte stands that ends this line. */
  void endAt(int end) {
    stop = end;
    next = Math.min(end + 1, filled);
    afterReturn = buffer[end] == '\r';
    tooLong |= stop - start > LONGEST_LINE;
  }

  private void passNewlineAfterReturn() {
    if (afterReturn && start < filled) {
      afterReturn = false;
      if (buffer[start] == '\n') {
        start++;
      }
    }
  }

  /** Makes room and reads on; what is kept of the line moves to the front. */
  private void fill() throws IOException {
    int kept = filled - start;
    if (kept > LONGEST_LINE) {
      tooLong = true;
      kept = LONGEST_LINE;
    }
    System.arraycopy(buffer, start, buffer, 0, kept);
    start = 0;
    int count = in.read(buffer, kept, buffer.length - 1 - kept);
    ended = count < 0;
    filled = kept + Math.max(0, count);
    buffer[filled] = '\n';
    read += Math.max(0, count);
    lastEnd = filled - 1;
    while (lastEnd >= kept && !EightBytes.endsLine(buffer[lastEnd])) {
      lastEnd--;
    }
    if (lastEnd < kept) {
      lastEnd = -1;
    }
  }

  byte[] buffer() {
    return buffer;
  }

  int start() {
    return start;
  }

  int stop() {
    return stop;
  }

  boolean tooLong() {
    return tooLong;
  }

  /** How many bytes have been taken from the stream. */
  long bytesRead() {
    return read;
  }
}
