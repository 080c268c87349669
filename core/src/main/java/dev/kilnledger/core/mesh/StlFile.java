package dev.kilnledger.core.mesh;

import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.units.Amount;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import javax.measure.quantity.Length;

/**
 * A mesh in an STL file, binary or text. The format states no unit, so the caller has to.
 *
 * <p>A file whose length is 84 bytes and 50 for each facet that it counts is binary, whatever it
 * begins with; otherwise one that begins with {@code solid} and goes on as text is text. Normals
 * are passed over: the order of the corners tells the outside.
 */
public final class StlFile implements Facets {
  static final int HEADER = 80;
  static final int FACET = 50;
  private static final int LOOKED_AT = 512;

  private final ByteSource source;
  private final Amount<Length> unit;

  private StlFile(ByteSource source, Amount<Length> unit) {
    this.source = source;
    this.unit = unit;
  }

  /**
   * An STL file.
   *
   * @param source its bytes
   * @param unit what a 1 of its coordinates means, such as 1 mm
   * @return the mesh; nothing is read yet
   * @throws IllegalArgumentException if the unit is not above zero
   */
  public static StlFile of(ByteSource source, Amount<Length> unit) {
    if (!(unit.si() > 0)) {
      throw new IllegalArgumentException(
          "unit of the mesh is " + unit + "; accepted is a length above zero, such as 1 mm");
    }
    return new StlFile(source, unit);
  }

  @Override
  public Amount<Length> unit() {
    return unit;
  }

  @Override
  public void forEach(FacetConsumer consumer, Progress progress) throws IOException {
    read(new FacetsOnly(consumer), progress);
  }

  /** Goes through the file with all that it holds besides the corners. */
  void read(StlVisitor visitor, Progress progress) throws IOException {
    try (CountedStream in = new CountedStream(source, progress)) {
      byte[] beginning = new byte[LOOKED_AT];
      int length = in.readNBytes(beginning, 0, LOOKED_AT);
      if (isText(beginning, length, in.size())) {
        new StlText(beginning, length, in).read(visitor);
      } else {
        new StlBinary(beginning, length, in).read(visitor);
      }
    }
  }

  private static boolean isText(byte[] beginning, int length, long size) {
    if (length >= HEADER + 4 && size == HEADER + 4 + FACET * StlBinary.count(beginning)) {
      return false;
    }
    String text = new String(beginning, 0, length, StandardCharsets.ISO_8859_1).stripLeading();
    return text.startsWith("solid")
        && text.chars().allMatch(c -> c >= ' ' || c == '\n' || c == '\r' || c == '\t');
  }

  private static final class FacetsOnly implements StlVisitor {
    private final FacetConsumer consumer;

    FacetsOnly(FacetConsumer consumer) {
      this.consumer = consumer;
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
        int attribute) {
      consumer.facet(x1, y1, z1, x2, y2, z2, x3, y3, z3);
    }
  }
}
