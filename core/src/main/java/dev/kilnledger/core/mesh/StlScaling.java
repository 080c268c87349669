package dev.kilnledger.core.mesh;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.part.PerAxis;
import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.core.reading.InputProblem;
import dev.kilnledger.core.reading.UnreadableInputException;
import dev.kilnledger.units.Amount;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import javax.measure.quantity.Dimensionless;

/**
 * Writes a copy of an STL file with every coordinate multiplied by a factor for its axis, so that a
 * part can be printed as much larger as it will shrink. A binary file stays binary and keeps its
 * header and the two bytes behind each facet; a text stays text. Coordinates are rounded to single
 * precision, as the format has them; normals are computed anew.
 */
public final class StlScaling {
  private static final StlScaling STANDARD = new StlScaling();

  private StlScaling() {}

  /** {@return the scaling} */
  public static StlScaling standard() {
    return STANDARD;
  }

  /**
   * Writes the copy.
   *
   * @param stl the file
   * @param factors the factor for each axis, above zero, such as the expected oversize of a passage
   * @param out takes the copy; it is flushed and left open
   * @param progress hears how far it has come, where the size of the file is known
   * @throws IllegalArgumentException if a factor is not above zero
   * @throws UnreadableInputException if the file is no STL or a product is beyond single precision;
   *     what was written before is then worth nothing
   * @throws IOException if the bytes cannot be read or written
   */
  public void write(
      StlFile stl, PerAxis<Amount<Dimensionless>> factors, OutputStream out, Progress progress)
      throws IOException {
    new Problems("scaling")
        .positive("factor along x", factors.x())
        .positive("factor along y", factors.y())
        .positive("factor along z", factors.z())
        .refuseIfAny();
    Copy copy = new Copy(factors, new BufferedOutputStream(out, 1 << 16));
    stl.read(copy, progress);
    copy.end();
  }

  private static final class Copy implements StlVisitor {
    private final double[] factors;
    private final OutputStream out;
    private final ByteBuffer facet =
        ByteBuffer.allocate(StlFile.FACET).order(ByteOrder.LITTLE_ENDIAN);
    private final float[] scaled = new float[9];
    private boolean text;

    Copy(PerAxis<Amount<Dimensionless>> factors, OutputStream out) {
      this.factors = new double[] {factors.x().si(), factors.y().si(), factors.z().si()};
      this.out = out;
    }

    @Override
    public void binary(byte[] header, long facets) throws IOException {
      out.write(header);
      facet.putInt(0, (int) facets);
      out.write(facet.array(), 0, 4);
    }

    @Override
    public void text() throws IOException {
      text = true;
      print("solid scaled\n");
    }

    @Override
    public void facet(
        float x1,
        float y1,
        float z1,
        float x2,
        float y2,
        float z2,
        float x3,
        float y3,
        float z3,
        int attribute)
        throws IOException {
      scale(0, x1, y1, z1);
      scale(3, x2, y2, z2);
      scale(6, x3, y3, z3);
      float[] normal = normal();
      if (text) {
        print("facet normal" + words(normal, 0) + "\nouter loop\n");
        for (int corner = 0; corner < 9; corner += 3) {
          print("vertex" + words(scaled, corner) + "\n");
        }
        print("endloop\nendfacet\n");
        return;
      }
      facet.clear();
      for (float number : normal) {
        facet.putFloat(number);
      }
      for (float number : scaled) {
        facet.putFloat(number);
      }
      facet.putShort((short) attribute);
      out.write(facet.array());
    }

    private void scale(int corner, float x, float y, float z) throws UnreadableInputException {
      scaled[corner] = scaled(x, factors[0]);
      scaled[corner + 1] = scaled(y, factors[1]);
      scaled[corner + 2] = scaled(z, factors[2]);
    }

    private static float scaled(float coordinate, double factor) throws UnreadableInputException {
      float scaled = (float) (coordinate * factor);
      if (Float.isInfinite(scaled)) {
        throw new UnreadableInputException(
            InputProblem.of(
                "STL file",
                "a coordinate of " + coordinate + " times " + factor + " is too large",
                "products within single precision, up to " + Float.MAX_VALUE));
      }
      return scaled;
    }

    /** The unit normal of the scaled facet; zero where it has none. */
    private float[] normal() {
      double ax = (double) scaled[3] - scaled[0];
      double ay = (double) scaled[4] - scaled[1];
      double az = (double) scaled[5] - scaled[2];
      double bx = (double) scaled[6] - scaled[0];
      double by = (double) scaled[7] - scaled[1];
      double bz = (double) scaled[8] - scaled[2];
      double x = ay * bz - az * by;
      double y = az * bx - ax * bz;
      double z = ax * by - ay * bx;
      double length = Math.sqrt(x * x + y * y + z * z);
      return length > 0
          ? new float[] {(float) (x / length), (float) (y / length), (float) (z / length)}
          : new float[3];
    }

    private static String words(float[] numbers, int from) {
      return " " + numbers[from] + " " + numbers[from + 1] + " " + numbers[from + 2];
    }

    private void print(String words) throws IOException {
      out.write(words.getBytes(StandardCharsets.US_ASCII));
    }

    void end() throws IOException {
      if (text) {
        print("endsolid scaled\n");
      }
      out.flush();
    }
  }
}
