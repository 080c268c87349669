package dev.kilnledger.core.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.core.reading.UnreadableInputException;
import dev.kilnledger.units.Amounts;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Files of 84 bytes and 50 for each facet, whole and cut. */
class StlBinaryTest {
  private static List<double[]> facets(ByteSource source) throws IOException {
    List<double[]> facets = new ArrayList<>();
    StlFile.of(source, Amounts.millimetres(1))
        .forEach(
            (a, b, c, d, e, f, g, h, i) -> facets.add(new double[] {a, b, c, d, e, f, g, h, i}),
            Progress.unheard());
    return facets;
  }

  private static void refused(byte[] bytes, String message) {
    assertThatThrownBy(() -> facets(ByteSource.of(bytes)))
        .isInstanceOf(UnreadableInputException.class)
        .hasMessage(message);
  }

  /** More than are read at once, and just as many. */
  @Test
  void facetsComeInTheirOrderHoweverManyThereAre() throws IOException {
    for (int count : new int[] {0, 1, 8, 9, 1310, 1311, 2620, 3001}) {
      List<double[]> written = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        written.add(new double[] {i, 1, 2, 3, i, 5, 6, 7, i});
      }
      List<double[]> read = facets(ByteSource.of(Bodies.binary(written)));
      assertThat(read).hasSize(count);
      for (int i = 0; i < count; i++) {
        assertThat(read.get(i)).isEqualTo(written.get(i));
      }
    }
  }

  @Test
  void countAndLengthHaveToFit() {
    byte[] box = Bodies.binary(Bodies.box(0, 0, 0, 1, 1, 1));
    String accepted = "; accepted is 50 bytes for each facet that is counted";
    refused(
        Arrays.copyOf(box, box.length + 3),
        "STL file: it counts 12 facets and holds 12 and 3 bytes more" + accepted);
    refused(
        Arrays.copyOf(box, box.length + 50),
        "STL file: it counts 12 facets and holds 13" + accepted);
    refused(
        Arrays.copyOf(box, box.length - 50),
        "STL file: it counts 12 facets and holds 11" + accepted);
    refused(
        Arrays.copyOf(box, box.length - 1),
        "STL file: it counts 12 facets and holds 11 and 49 bytes more" + accepted);
    refused(Arrays.copyOf(box, 84), "STL file: it counts 12 facets and holds 0" + accepted);
    refused(
        Arrays.copyOf(box, 83),
        "STL file: it has 83 bytes; accepted is a text that begins with solid, or a binary file of"
            + " 84 bytes and 50 for each facet");
  }

  /**
   * (2 - 2^-23) x 2^127 is the largest of single precision; that sums of it are not is no matter.
   */
  @Test
  void largestCoordinatesAreFinite() throws IOException {
    double[] facet = new double[9];
    Arrays.fill(facet, (2 - 0x1p-23) * 0x1p127);
    assertThat(facets(ByteSource.of(Bodies.binary(List.of(facet))))).containsExactly(facet);
    facet[8] = Double.NEGATIVE_INFINITY;
    assertThatThrownBy(() -> facets(ByteSource.of(Bodies.binary(List.of(facet)))))
        .hasMessageStartingWith("STL file, facet 1: its corners are [3.4028235E38, ")
        .hasMessageEndingWith(", -Infinity]; accepted is finite coordinates");
  }

  @Test
  void everyCoordinateIsLookedAt() {
    for (int i = 0; i < 9; i++) {
      double[] facet = new double[9];
      facet[i] = Double.NaN;
      assertThatThrownBy(() -> facets(ByteSource.of(Bodies.binary(List.of(facet)))))
          .hasMessageStartingWith("STL file, facet 1: its corners are [");
    }
  }

  /**
   * Its count, four tabs, is 9 x (1 + 2^8 + 2^16 + 2^24) = 151587081: a file of 7.6 GB, of which
   * only the beginning is here. Nothing but its length tells it from a text.
   */
  @Test
  void fileWhoseLengthFitsItsCountIsBinaryWhateverItBeginsWith() {
    byte[] beginning = ("solid" + " ".repeat(75) + "\t\t\t\t").getBytes(StandardCharsets.US_ASCII);
    byte[] bytes = Arrays.copyOf(beginning, 84 + 2 * 50);
    Arrays.fill(bytes, 84, bytes.length, (byte) ' ');
    ByteSource source =
        new ByteSource() {
          @Override
          public InputStream open() {
            return new ByteArrayInputStream(bytes);
          }

          @Override
          public long size() {
            return 84 + 50 * 151587081L;
          }
        };
    assertThatThrownBy(() -> facets(source))
        .hasMessageStartingWith("STL file: it counts 151587081 facets and holds 2; ");
    refused(bytes, "STL file, line 1: the file ends; accepted is endsolid before its end");
  }
}
