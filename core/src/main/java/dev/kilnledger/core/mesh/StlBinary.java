package dev.kilnledger.core.mesh;

import dev.kilnledger.core.reading.InputProblem;
import dev.kilnledger.core.reading.UnreadableInputException;
import java.io.IOException;
import java.io.InputStream;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;

/** Reads a binary STL file; what it counts is believed only when the bytes bear it out. */
final class StlBinary {
  private static final VarHandle COORDINATE =
      MethodHandles.byteArrayViewVarHandle(float[].class, ByteOrder.LITTLE_ENDIAN);
  private static final VarHandle ATTRIBUTE =
      MethodHandles.byteArrayViewVarHandle(short[].class, ByteOrder.LITTLE_ENDIAN);

  private final byte[] buffer = new byte[StlFile.FACET * 1310];
  private final byte[] beginning;
  private final int length;
  private final InputStream in;

  StlBinary(byte[] beginning, int length, InputStream in) {
    this.beginning = beginning;
    this.length = length;
    this.in = in;
  }

  /** How many facets a header counts. */
  static long count(byte[] beginning) {
    return ByteBuffer.wrap(beginning).order(ByteOrder.LITTLE_ENDIAN).getInt(StlFile.HEADER)
        & 0xffffffffL;
  }

  void read(StlVisitor visitor) throws IOException {
    int start = StlFile.HEADER + 4;
    if (length < start) {
      throw new UnreadableInputException(
          InputProblem.of(
              "STL file",
              "it has " + length + " bytes",
              "a text that begins with solid, or a binary file of 84 bytes and 50 for each facet"));
    }
    long stated = count(beginning);
    visitor.binary(Arrays.copyOf(beginning, StlFile.HEADER), stated);
    int filled = length - start;
    System.arraycopy(beginning, start, buffer, 0, filled);
    long facets = 0;
    while (true) {
      filled += in.readNBytes(buffer, filled, buffer.length - filled);
      int whole = filled / StlFile.FACET;
      for (int i = 0; i < whole; i++) {
        facets++;
        facet(StlFile.FACET * i, facets, visitor);
      }
      int rest = filled - whole * StlFile.FACET;
      if (filled < buffer.length) {
        if (facets != stated || rest != 0) {
          throw new UnreadableInputException(
              InputProblem.of(
                  "STL file",
                  "it counts "
                      + stated
                      + " facets and holds "
                      + facets
                      + (rest == 0 ? "" : " and " + rest + " bytes more"),
                  "50 bytes for each facet that is counted"));
        }
        return;
      }
      // a full buffer holds whole facets
      filled = 0;
    }
  }

  private void facet(int at, long number, StlVisitor visitor) throws IOException {
    float x1 = coordinate(at + 12);
    float y1 = coordinate(at + 16);
    float z1 = coordinate(at + 20);
    float x2 = coordinate(at + 24);
    float y2 = coordinate(at + 28);
    float z2 = coordinate(at + 32);
    float x3 = coordinate(at + 36);
    float y3 = coordinate(at + 40);
    float z3 = coordinate(at + 44);
    // a sum of what is not finite is not finite
    float sum = x1 + y1 + z1 + (x2 + y2 + z2) + (x3 + y3 + z3);
    if (!(Math.abs(sum) <= Float.MAX_VALUE)) {
      refuseUnlessFinite(number, x1, y1, z1, x2, y2, z2, x3, y3, z3);
    }
    visitor.facet(
        x1, y1, z1, x2, y2, z2, x3, y3, z3, (short) ATTRIBUTE.get(buffer, at + 48) & 0xffff);
  }

  private float coordinate(int at) {
    // half the time of a ByteBuffer
    return (float) COORDINATE.get(buffer, at);
  }

  private static void refuseUnlessFinite(long number, float... corners)
      throws UnreadableInputException {
    for (float corner : corners) {
      if (!(Math.abs(corner) <= Float.MAX_VALUE)) {
        throw new UnreadableInputException(
            InputProblem.of(
                "STL file, facet " + number,
                "its corners are " + Arrays.toString(corners),
                "finite coordinates"));
      }
    }
  }
}
