package dev.kilnledger.core.mesh;

import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.TradeUnits.CUBIC_MILLIMETRE;
import static dev.kilnledger.units.TradeUnits.MILLIMETRE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.part.PerAxis;
import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.core.reading.UnreadableInputException;
import dev.kilnledger.units.Amounts;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StlFileTest {
  private static StlFile stl(byte[] bytes) {
    return StlFile.of(ByteSource.of(bytes), Amounts.millimetres(1));
  }

  private static List<double[]> facets(Facets mesh) throws IOException {
    List<double[]> facets = new ArrayList<>();
    mesh.forEach(
        (a, b, c, d, e, f, g, h, i) -> facets.add(new double[] {a, b, c, d, e, f, g, h, i}),
        Progress.unheard());
    return facets;
  }

  @Test
  void binaryAndTextHoldTheSameFacets() throws IOException {
    List<double[]> torus = Bodies.torus(20, 5, 50, 30);
    List<double[]> binary = facets(stl(Bodies.binary(torus)));
    List<double[]> text = facets(stl(Bodies.text(torus)));
    assertThat(binary).hasSize(3000);
    for (int i = 0; i < binary.size(); i++) {
      assertThat(text.get(i)).isEqualTo(binary.get(i));
    }
  }

  @Test
  void unitOfTheCallerMakesTheSize() throws IOException {
    byte[] bytes = Bodies.binary(Bodies.box(0, 0, 0, 1, 1, 1));
    MeshSize inch =
        MeshMeasure.standard().measure(StlFile.of(ByteSource.of(bytes), Amounts.inches(1)));
    // 25.4 cubed
    assertThat(inch.volume().orElseThrow().in(CUBIC_MILLIMETRE)).isCloseTo(16387.064, within(1e-8));
    assertThatThrownBy(() -> StlFile.of(ByteSource.of(bytes), Amounts.millimetres(0)))
        .hasMessageContaining("accepted is a length above zero");
  }

  @Test
  void countThatLiesIsToldWithBothNumbers() {
    byte[] bytes = Bodies.binary(Bodies.box(0, 0, 0, 1, 1, 1));
    bytes[80] = (byte) 0xff;
    bytes[83] = (byte) 0xff;
    assertThatThrownBy(() -> facets(stl(bytes)))
        .isInstanceOf(UnreadableInputException.class)
        .hasMessageContaining("counts 4278190335 facets and holds 12");
    byte[] shorter = Arrays.copyOf(Bodies.binary(Bodies.box(0, 0, 0, 1, 1, 1)), 84 + 50 * 12 - 7);
    assertThatThrownBy(() -> facets(stl(shorter)))
        .hasMessageContaining("counts 12 facets and holds 11 and 43 bytes more");
    byte[] longer = Arrays.copyOf(Bodies.binary(Bodies.box(0, 0, 0, 1, 1, 1)), 84 + 50 * 12 + 7);
    assertThatThrownBy(() -> facets(stl(longer)))
        .hasMessageContaining("counts 12 facets and holds 12 and 7 bytes more");
    byte[] fewer = Arrays.copyOf(longer, 84 + 50 * 11);
    assertThatThrownBy(() -> facets(stl(fewer)))
        .hasMessage(
            "STL file: it counts 12 facets and holds 11; accepted is 50 bytes for each facet that"
                + " is counted");
  }

  /** All bytes looked at are letters, those of the count too; the size says that it is one. */
  @ParameterizedTest
  @ValueSource(ints = {0, 20})
  void binaryFileIsToldByItsSizeEvenIfAllOfItIsText(int held) {
    byte[] bytes = new byte[84 + 50 * held];
    Arrays.fill(bytes, (byte) ' ');
    System.arraycopy("solid".getBytes(StandardCharsets.US_ASCII), 0, bytes, 0, 5);
    ByteSource source =
        new ByteSource() {
          @Override
          public InputStream open() throws IOException {
            return ByteSource.of(bytes).open();
          }

          @Override
          public long size() {
            return 84 + 50L * 0x20202020;
          }
        };
    assertThatThrownBy(() -> facets(StlFile.of(source, Amounts.millimetres(1))))
        .hasMessageStartingWith(
            "STL file: it counts " + 0x20202020 + " facets and holds " + held + ";");
  }

  @Test
  void coordinatesMayBeAsLargeAsSinglePrecisionHas() throws IOException {
    double most = Float.MAX_VALUE;
    List<double[]> facet = List.of(new double[] {most, most, 0, -most, 0, 0, 0, most, 1});
    assertThat(facets(stl(Bodies.binary(facet)))).containsExactly(facet.get(0));
    assertThat(facets(stl(Bodies.text(facet)))).containsExactly(facet.get(0));
  }

  @Test
  void coordinatesThatAreNoNumbersAreToldWithTheirFacet() {
    List<double[]> box = new ArrayList<>(Bodies.box(0, 0, 0, 1, 1, 1));
    box.get(3)[5] = Double.NaN;
    assertThatThrownBy(() -> facets(stl(Bodies.binary(box)))).hasMessageContaining("facet 4");
    box.get(3)[5] = Double.POSITIVE_INFINITY;
    assertThatThrownBy(() -> facets(stl(Bodies.binary(box)))).hasMessageContaining("facet 4");
  }

  @Test
  void textIsReadWhateverItsWhiteSpaceAndCapitals() throws IOException {
    String text =
        new String(Bodies.text(Bodies.box(0, 0, 0, 1, 1, 1)), StandardCharsets.US_ASCII)
            .replace("\n", "\r\n\t")
            .replace("facet", "FACET")
            .replace("1.0", "+1.0E0");
    assertThat(facets(stl(text.getBytes(StandardCharsets.US_ASCII)))).hasSize(12);
  }

  @Test
  void allProblemsOfATextAreToldWithTheirLines() {
    String text =
        """
        solid x
        facet normal 0 0 1
        outer loop
        vertex 0 0 nan
        vertex 1 0 0
        vertex 0 1 0
        endloop
        endfacet
        facet normal 0 0 1
        outer loop
        vertex 0 0 0
        vertex 1 0 0
        endloop
        endfacet
        """;
    assertThatThrownBy(() -> facets(stl(text.getBytes(StandardCharsets.US_ASCII))))
        .isInstanceOfSatisfying(
            UnreadableInputException.class,
            e ->
                assertThat(e.problems())
                    .extracting(problem -> problem.text())
                    .containsExactly(
                        "STL file, line 4: 'nan' stands there; accepted is a finite number",
                        "STL file, line 13: 'endloop' stands there; accepted is vertex"));
  }

  /** Where each text stops being one, with what would have to stand there. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "facet normal 0 0|line 2: the file ends; accepted is a number",
        "facet normal 0 0 1 outer|line 2: the file ends; accepted is loop",
        "facet nurmal 0 0 1|line 2: 'nurmal' stands there; accepted is normal",
        "facet normals 0 0 1|line 2: 'normals' stands there; accepted is normal",
        "facet normal 0 0 1 inner loop|line 2: 'inner' stands there; accepted is outer",
        "facet normal 0 0 1 outer lo?p|line 2: 'lo?p' stands there; accepted is loop",
        "facet normal 0 0 4e38|line 2: '4e38' stands there; accepted is a finite number",
        "fecet|line 2: 'fecet' stands there; accepted is facet or endsolid",
        "endsolid x|",
        "endsolid x%nsolid y|line 3: the file ends; accepted is endsolid before its end",
        "endsolid x%nsolid y%nendsolid y|",
      })
  void textsAreReadUpToWhereTheyAreNone(String rest, String problem) throws IOException {
    byte[] bytes = ("solid x\n" + rest.replace("%n", "\n")).getBytes(StandardCharsets.US_ASCII);
    if (problem == null) {
      assertThat(facets(stl(bytes))).isEmpty();
    } else {
      assertThatThrownBy(() -> facets(stl(bytes)))
          .isInstanceOfSatisfying(
              UnreadableInputException.class,
              e ->
                  assertThat(e.problems())
                      .extracting(each -> each.text())
                      .containsExactly("STL file, " + problem));
    }
  }

  private static List<String> told(String text) {
    try {
      facets(stl(text.getBytes(StandardCharsets.US_ASCII)));
      throw new AssertionError("was read");
    } catch (UnreadableInputException e) {
      return e.problems().stream().map(problem -> problem.text()).toList();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static final String FACET =
      "facet normal 0 0 1 outer loop vertex 0 0 0 vertex 1 0 0 vertex 0 1 0 endloop endfacet\n";

  @Test
  void bodiesNeedNoName() throws IOException {
    String text = "solid\n" + FACET + "endsolid\nsolid\n" + FACET + "endsolid\n";
    assertThat(facets(stl(text.getBytes(StandardCharsets.US_ASCII)))).hasSize(2);
    String windows = text.replace("\n", "\r\n");
    assertThat(facets(stl(windows.getBytes(StandardCharsets.US_ASCII)))).hasSize(2);
  }

  @Test
  void aFacetIsToldOnceAndTwentyAtMost() {
    // where a number is missing all that follows would be wrong as well
    String missing = FACET.replace("vertex 0 0 0", "vertex 0 0");
    assertThat(told("solid\n" + missing + FACET + "endsolid\n"))
        .containsExactly("STL file, line 2: 'vertex' stands there; accepted is a finite number");
    assertThat(told("solid\n" + FACET.replace("1 0 0", "1 0 nan").repeat(30) + "endsolid\n"))
        .hasSize(20)
        .last()
        .asString()
        .startsWith("STL file, line 21: 'nan'");
  }

  @Test
  void wordsAreShownAsFarAsTheyCanBe() {
    assertThat(told("solid x\nface\u007f")).singleElement().asString().contains("'face?' stands");
    assertThat(told("solid x\n" + "y".repeat(64)).get(0)).contains("'" + "y".repeat(64) + "'");
    assertThat(told("solid x\n" + "y".repeat(66)).get(0)).contains("'" + "y".repeat(64) + "'");
    // behind the beginning by which text is told from binary, any byte may come
    String name = "solid " + "x".repeat(600);
    assertThat(told(name + "\nfacet nor\u0000mal").get(0)).contains("'nor?mal' stands there");
    assertThat(told(name + "\u0000 y\nz").get(0)).startsWith("STL file, line 2: 'z' stands there");
  }

  @ParameterizedTest
  @CsvSource({"'',it has 0 bytes", "solid,the file ends", "solid x y z,the file ends"})
  void filesThatAreNoneAreRefused(String content, String message) {
    assertThatThrownBy(() -> facets(stl(content.getBytes(StandardCharsets.US_ASCII))))
        .isInstanceOf(UnreadableInputException.class)
        .hasMessageContaining(message);
  }

  @Test
  void interruptionStopsTheReading() {
    Thread.currentThread().interrupt();
    byte[] bytes = Bodies.binary(Bodies.box(0, 0, 0, 1, 1, 1));
    assertThatThrownBy(() -> facets(stl(bytes))).isInstanceOf(InterruptedIOException.class);
    assertThat(Thread.interrupted()).isTrue();
  }

  private static byte[] scaled(byte[] bytes, double x, double y, double z) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    StlScaling.standard()
        .write(stl(bytes), PerAxis.of(ratio(x), ratio(y), ratio(z)), out, Progress.unheard());
    return out.toByteArray();
  }

  @Test
  void scaledCopyIsAsMuchLargerAlongEachAxis() throws IOException {
    for (byte[] file :
        List.of(
            Bodies.binary(Bodies.box(1, 2, 3, 10, 20, 40)),
            Bodies.text(Bodies.box(1, 2, 3, 10, 20, 40)))) {
      MeshSize size = MeshMeasure.standard().measure(stl(scaled(file, 1.5, 1.25, 1.125)));
      assertThat(size.closed()).isTrue();
      assertThat(size.extent().lowX().in(MILLIMETRE)).isEqualTo(1.5);
      assertThat(size.extent().highX().in(MILLIMETRE)).isEqualTo(16.5);
      assertThat(size.extent().highY().in(MILLIMETRE)).isEqualTo(27.5);
      assertThat(size.extent().highZ().in(MILLIMETRE)).isEqualTo(48.375);
      assertThat(size.volume().orElseThrow().in(CUBIC_MILLIMETRE))
          .isCloseTo(8000 * 1.5 * 1.25 * 1.125, within(1e-6));
    }
  }

  @Test
  void scaledBinaryKeepsHeaderAndTheBytesBehindFacets() throws IOException {
    byte[] file = Bodies.binary(Bodies.box(0, 0, 0, 1, 1, 1));
    byte[] copy = scaled(file, 2, 2, 2);
    assertThat(copy).hasSize(file.length);
    assertThat(Arrays.copyOf(copy, 84)).isEqualTo(Arrays.copyOf(file, 84));
    assertThat(copy[84 + 50 * 11 + 48]).isEqualTo((byte) 11);
  }

  @Test
  void normalsOfAScaledCopyAreThoseOfItsFacets() throws IOException {
    String copy =
        new String(
            scaled(Bodies.text(Bodies.box(0, 0, 0, 1, 1, 1)), 2, 3, 4), StandardCharsets.US_ASCII);
    assertThat(copy)
        .startsWith("solid scaled\nfacet normal 0.0 0.0 -1.0\n")
        .endsWith("endsolid scaled\n");
  }

  /** The normal is that of the scaled facet: its two sides' cross product, of length one. */
  @Test
  void normalsOfABinaryCopyAreThoseOfItsFacets() throws IOException {
    byte[] copy = scaled(Bodies.binary(Bodies.torus(20, 5, 12, 9)), 2, 3, 4);
    ByteBuffer in = ByteBuffer.wrap(copy).order(ByteOrder.LITTLE_ENDIAN);
    for (int facet = 0; facet < in.getInt(80); facet++) {
      float[] n = new float[12];
      for (int i = 0; i < 12; i++) {
        n[i] = in.getFloat(84 + 50 * facet + 4 * i);
      }
      double[] a = {n[6] - n[3], n[7] - n[4], n[8] - n[5]};
      double[] b = {n[9] - n[3], n[10] - n[4], n[11] - n[5]};
      double[] cross = {
        a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
      };
      double length = Math.hypot(cross[0], Math.hypot(cross[1], cross[2]));
      for (int axis = 0; axis < 3; axis++) {
        // single precision of sides of ten from corners of a hundred
        assertThat((double) n[axis]).isCloseTo(cross[axis] / length, within(1e-5));
      }
    }
    // a facet without area has none
    List<double[]> flat = List.of(new double[] {0, 0, 0, 1, 0, 0, 2, 0, 0});
    ByteBuffer line = ByteBuffer.wrap(scaled(Bodies.binary(flat), 2, 3, 4));
    assertThat(line.getFloat(84)).isZero();
    assertThat(line.getFloat(92)).isZero();
  }

  @Test
  void productsBeyondSinglePrecisionAreRefused() {
    byte[] large = Bodies.binary(Bodies.box(0, 0, 0, 1e38, 1, 1));
    assertThatThrownBy(() -> scaled(large, 10, 1, 1))
        .isInstanceOf(UnreadableInputException.class)
        .hasMessageContaining("times 10.0 is too large");
  }

  @Test
  void factorsThatAreNoneAreRefused() {
    assertThatThrownBy(() -> scaled(Bodies.binary(Bodies.box(0, 0, 0, 1, 1, 1)), 0, 1, -1))
        .hasMessageContaining("factor along x is 0")
        .hasMessageContaining("factor along z is -1");
  }
}
