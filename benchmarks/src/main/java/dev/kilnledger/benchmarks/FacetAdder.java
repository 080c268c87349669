package dev.kilnledger.benchmarks;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * What a hand would write to size a binary STL file that it trusts: volume, area and box of the
 * facets, straight from the bytes. It checks neither the count nor the numbers nor whether the mesh
 * is closed.
 */
final class FacetAdder {
  private static final int FACET = 50;

  private final float[] low = {
    Float.POSITIVE_INFINITY, Float.POSITIVE_INFINITY, Float.POSITIVE_INFINITY
  };
  private final float[] high = {
    Float.NEGATIVE_INFINITY, Float.NEGATIVE_INFINITY, Float.NEGATIVE_INFINITY
  };
  private double sixVolumes;
  private double twoAreas;

  /** Reads to the end. */
  void read(InputStream in) throws IOException {
    in.skipNBytes(84);
    byte[] buffer = new byte[FACET * 1310];
    ByteBuffer numbers = ByteBuffer.wrap(buffer).order(ByteOrder.LITTLE_ENDIAN);
    int count = in.readNBytes(buffer, 0, buffer.length);
    while (count > 0) {
      for (int at = 12; at < count; at += FACET) {
        add(
            numbers.getFloat(at),
            numbers.getFloat(at + 4),
            numbers.getFloat(at + 8),
            numbers.getFloat(at + 12),
            numbers.getFloat(at + 16),
            numbers.getFloat(at + 20),
            numbers.getFloat(at + 24),
            numbers.getFloat(at + 28),
            numbers.getFloat(at + 32));
      }
      count = in.readNBytes(buffer, 0, buffer.length);
    }
  }

  private void add(
      float x1, float y1, float z1, float x2, float y2, float z2, float x3, float y3, float z3) {
    include(0, x1, x2, x3);
    include(1, y1, y2, y3);
    include(2, z1, z2, z3);
    double ax = (double) x2 - x1;
    double ay = (double) y2 - y1;
    double az = (double) z2 - z1;
    double bx = (double) x3 - x1;
    double by = (double) y3 - y1;
    double bz = (double) z3 - z1;
    double nx = ay * bz - az * by;
    double ny = az * bx - ax * bz;
    double nz = ax * by - ay * bx;
    twoAreas += Math.sqrt(nx * nx + ny * ny + nz * nz);
    sixVolumes += x1 * nx + y1 * ny + z1 * nz;
  }

  private void include(int axis, float a, float b, float c) {
    if (a < low[axis] || b < low[axis] || c < low[axis]) {
      low[axis] = Math.min(low[axis], Math.min(a, Math.min(b, c)));
    }
    if (a > high[axis] || b > high[axis] || c > high[axis]) {
      high[axis] = Math.max(high[axis], Math.max(a, Math.max(b, c)));
    }
  }

  double volume() {
    return sixVolumes / 6;
  }

  double area() {
    return twoAreas / 2;
  }

  double low(int axis) {
    return low[axis];
  }

  double high(int axis) {
    return high[axis];
  }
}
