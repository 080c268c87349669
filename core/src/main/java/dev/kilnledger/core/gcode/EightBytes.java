package dev.kilnledger.core.gcode;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

/**
 * Eight bytes of text looked at in one go, the first of them in the lowest place of a long. No loop
 * over single bytes, so no end of a loop that the processor could not foresee.
 */
final class EightBytes {
  static final int LENGTH = 8;
  private static final VarHandle BYTES =
      MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);
  private static final long EACH = 0x0101010101010101L;
  private static final long TOP_BITS = 0x80 * EACH;

  private EightBytes() {}

  /** The bytes from a place on; all eight lie in the array. */
  static long at(byte[] bytes, int from) {
    return (long) BYTES.get(bytes, from);
  }

  /** A mark at the first byte that ends a line, where one does; above it marks mean nothing. */
  static long lineEnds(long eight) {
    return zeros(eight ^ ('\n' * EACH)) | zeros(eight ^ ('\r' * EACH));
  }

  private static long zeros(long eight) {
    return (eight - EACH) & ~eight & TOP_BITS;
  }

  /** A mark at every byte that is no digit. */
  static long noDigits(long eight) {
    long values = eight ^ ('0' * EACH);
    // 10 and more reach the top bit with 118
    return ((values & ~TOP_BITS) + 118 * EACH | values) & TOP_BITS;
  }

  /** The number of the first byte that is marked; 8 if none is. */
  static int first(long marks) {
    return Long.numberOfTrailingZeros(marks) >>> 3;
  }

  /** The number that the first bytes make, all of them digits; from 1 to 8 of them. */
  static long number(long eight, int digits) {
    // pairs, then fours, then all eight at once (Lemire and others, from memory)
    long values = (eight ^ ('0' * EACH)) << 8 * (LENGTH - digits);
    long pairs = values * 10 + (values >>> 8);
    long low = (pairs & 0x000000FF000000FFL) * 0x000F424000000064L;
    long high = (pairs >>> 16 & 0x000000FF000000FFL) * 0x0000271000000001L;
    return low + high >>> 32;
  }
}
