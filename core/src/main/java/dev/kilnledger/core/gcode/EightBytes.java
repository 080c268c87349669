package dev.kilnledger.core.gcode;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

/** Eight bytes of text looked at in one go, the first of them in the lowest place of a long. */
final class EightBytes {
  static final int LENGTH = 8;
  private static final VarHandle BYTES =
      MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);
  private static final long EACH = 0x0101010101010101L;
  private static final long TOP_BITS = 0x8080808080808080L;
  private static final long ABOVE_NINE = (0x80 - 10) * EACH;

  private EightBytes() {}

  /** The bytes from a place on; all eight lie in the array. */
  static long at(byte[] bytes, int from) {
    return (long) BYTES.get(bytes, from);
  }

  /** The next byte that ends a line, of which there is one. */
  static int lineEnd(byte[] bytes, int from) {
    int at = from;
    for (; at <= bytes.length - LENGTH; at += LENGTH) {
      long eight = at(bytes, at);
      // of the marks that this makes the lowest is right
      long ends = zeros(eight ^ ('\n' * EACH)) | zeros(eight ^ ('\r' * EACH));
      if (ends != 0) {
        return at + first(ends);
      }
    }
    while (!endsLine(bytes[at])) {
      at++;
    }
    return at;
  }

  static boolean endsLine(int b) {
    return b == '\n' || b == '\r';
  }

  /** A mark at each byte that is no digit. */
  static long others(long eight) {
    long digits = eight ^ ('0' * EACH);
    // what is above nine reaches the top bit, and nothing is carried beyond
    return (((digits & ~TOP_BITS) + ABOVE_NINE) | digits) & TOP_BITS;
  }

  /** The eight with one taken out and a zero byte at the end. */
  static long without(long eight, int place) {
    long before = (1L << (8 * place)) - 1;
    return (eight & before) | ((eight >>> 8) & ~before);
  }

  /** The number of so many digits, up to seven, that the eight begin with. */
  static long number(long eight, int digits) {
    // zeros before them, then neighbours together: eight of one digit, four of two, two of four
    long ones = (eight ^ ('0' * EACH)) << (8 * (LENGTH - 1 - digits)) << 8;
    long twos = ((ones * (1 + (10 << 8))) >>> 8) & 0x00FF00FF00FF00FFL;
    long fours = ((twos * (1 + (100 << 16))) >>> 16) & 0x0000FFFF0000FFFFL;
    return (fours * (1 + (10_000L << 32))) >>> 32;
  }

  private static long zeros(long eight) {
    return (eight - EACH) & ~eight & TOP_BITS;
  }

  /** The number of the first byte that is marked; 8 if none is. */
  static int first(long marks) {
    return Long.numberOfTrailingZeros(marks) >>> 3;
  }
}
