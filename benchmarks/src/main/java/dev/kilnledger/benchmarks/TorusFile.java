package dev.kilnledger.benchmarks;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes a torus of 40 and 10 mm as a binary STL file, a closed mesh of any number of facets. */
final class TorusFile {
  private static final double LARGE = 40;
  private static final double SMALL = 10;

  private TorusFile() {}

  /** Writes two facets for each place around and across. */
  static void write(Path file, int around, int across) throws IOException {
    byte[] bytes = new byte[84];
    ByteBuffer facet = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file), 1 << 16)) {
      facet.putInt(80, 2 * around * across);
      out.write(bytes);
      for (int i = 0; i < around; i++) {
        for (int j = 0; j < across; j++) {
          float[] a = corner(i, j, around, across);
          float[] b = corner(i + 1, j, around, across);
          float[] c = corner(i + 1, j + 1, around, across);
          float[] d = corner(i, j + 1, around, across);
          put(facet, a, b, c);
          out.write(bytes, 0, 50);
          put(facet, a, c, d);
          out.write(bytes, 0, 50);
        }
      }
    }
  }

  private static float[] corner(int i, int j, int around, int across) {
    double u = 2 * Math.PI * (i % around) / around;
    double v = 2 * Math.PI * (j % across) / across;
    double r = LARGE + SMALL * Math.cos(v);
    return new float[] {
      (float) (r * Math.cos(u)), (float) (r * Math.sin(u)), (float) (SMALL * Math.sin(v))
    };
  }

  private static void put(ByteBuffer bytes, float[] a, float[] b, float[] c) {
    for (int axis = 0; axis < 3; axis++) {
      bytes.putFloat(12 + 4 * axis, a[axis]);
      bytes.putFloat(24 + 4 * axis, b[axis]);
      bytes.putFloat(36 + 4 * axis, c[axis]);
    }
  }

  /** {@return its volume, 2 pi2 R r2, in mm3, for ever finer facets} */
  static double volume() {
    return 2 * Math.PI * Math.PI * LARGE * SMALL * SMALL;
  }

  /** {@return its area, 4 pi2 R r, in mm2, for ever finer facets} */
  static double area() {
    return 4 * Math.PI * Math.PI * LARGE * SMALL;
  }
}
