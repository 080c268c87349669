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

  /** The number of the first byte that is marked; 8 if none is. */
  static int first(long marks) {
    return Long.numberOfTrailingZeros(marks) >>> 3;
  }
}
