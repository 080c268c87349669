package dev.kilnledger.core.gcode;

import java.io.IOException;
import java.io.InputStream;

/**
 * Cuts a stream into lines without copying them; a line lies in {@link #buffer}, and behind it
 * stands a byte that ends a line, even behind the last.
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
  private long read;
  private boolean ended;
  private boolean afterReturn;
  private boolean tooLong;

  LineReader(InputStream in) {
    this.in = in;
  }

  /** Goes to the next line; false at the end. */
  boolean advance() throws IOException {
    tooLong = false;
    start = next;
    int at = start;
    while (true) {
      if (afterReturn && at == start && at < filled) {
        afterReturn = false;
        if (buffer[at] == '\n') {
          start = ++at;
        }
      }
      at = lineEnd(at);
      if (at < filled) {
        stop = at;
        next = at + 1;
        afterReturn = buffer[at] == '\r';
        tooLong |= stop - start > LONGEST_LINE;
        return true;
      }
      if (ended) {
        stop = filled;
        next = filled;
        return stop > start;
      }
      at = fill(at);
    }
  }

  /** Where the line ends, or what is filled. */
  private int lineEnd(int from) {
    byte[] bytes = buffer;
    int end = filled;
    int at = from;
    for (; at <= end - EightBytes.LENGTH; at += EightBytes.LENGTH) {
      long ends = EightBytes.lineEnds(EightBytes.at(bytes, at));
      if (ends != 0) {
        return at + EightBytes.first(ends);
      }
    }
    while (at < end && bytes[at] != '\n' && bytes[at] != '\r') {
      at++;
    }
    return at;
  }

  /** Makes room and reads on; what is kept of the line moves to the front. */
  private int fill(int at) throws IOException {
    int kept = at - start;
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
    return kept;
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
