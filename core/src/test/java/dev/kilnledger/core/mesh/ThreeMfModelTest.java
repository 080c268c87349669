package dev.kilnledger.core.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.core.reading.UnreadableInputException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A single facet, so that what is built of it can be told corner by corner. */
class ThreeMfModelTest {
  private static final String MESH =
      """
      <mesh>
      <vertices>
      <vertex x="9" y="9" z="9"/>
      <vertex x="1" y="2" z="3"/>
      <vertex x="0" y="1" z="0"/>
      <vertex x="0" y="0" z="1"/>
      </vertices>
      <triangles>
      <triangle v1="1" v2="2" v3="3"/>
      </triangles>
      </mesh>
      """;
  private static final String OBJECT = "<object id=\"1\">\n" + MESH + "</object>\n";
  private static final String ITEM = "<item objectid=\"1\"/>";

  private static String content(String resources, String build) {
    return "\n<resources>\n" + resources + "</resources>\n<build>" + build + "</build>";
  }

  private static List<double[]> facets(String content, ThreeMfLimits limits) throws IOException {
    List<double[]> facets = new ArrayList<>();
    byte[] file = Bodies.threeMf(Bodies.model("xmlns:x=\"urn:other\"", content));
    ThreeMfFile.of(ByteSource.of(file), limits)
        .forEach(
            (a, b, c, d, e, f, g, h, i) -> facets.add(new double[] {a, b, c, d, e, f, g, h, i}),
            Progress.unheard());
    return facets;
  }

  private static List<double[]> facets(String content) throws IOException {
    return facets(content, ThreeMfLimits.standard());
  }

  private static void refused(String content, ThreeMfLimits limits, String message) {
    assertThatThrownBy(() -> facets(content, limits))
        .isInstanceOf(UnreadableInputException.class)
        .hasMessageMatching(message);
  }

  private static void refused(String content, String message) {
    refused(content, ThreeMfLimits.standard(), message);
  }

  /** What stands in a line, wherever in it the parser says that it is. */
  private static String inLine(int line, String rest) {
    return "3MF file, model, line " + line + ", column [1-9]\\d*: " + Pattern.quote(rest);
  }

  private static String inModel(String rest) {
    return Pattern.quote("3MF file, model: " + rest);
  }

  /** The row (x, y, z, 1) times the matrix by hand; its determinant is -3, so corners change. */
  @Test
  void eachCornerIsPlacedAndAMirroredFacetTurnedOver() throws IOException {
    String item = "<item objectid=\"1\" transform=\"1 2 3 4 5 6 7 8 10 11 12 13\"/>";
    assertThat(facets(content(OBJECT, ITEM + item)))
        .containsExactly(
            new double[] {1, 2, 3, 0, 1, 0, 0, 0, 1},
            new double[] {41, 48, 58, 18, 20, 23, 15, 17, 19});
    String unmirrored = "<item objectid=\"1\" transform=\"4 5 6 1 2 3 7 8 10 11 12 13\"/>";
    // 4 + 2 + 21 + 11, 5 + 4 + 24 + 12, 6 + 6 + 30 + 13
    assertThat(facets(content(OBJECT, unmirrored)))
        .containsExactly(new double[] {38, 45, 55, 12, 14, 16, 18, 20, 23});
  }

  @Test
  void elementsOfOtherNamespacesArePassedOver() throws IOException {
    String others =
        "<x:vertex x=\"q\"/><x:triangle v1=\"q\"/><x:item objectid=\"7\"/><x:component/>"
            + "<x:model requiredextensions=\"x\"/>";
    String mesh = OBJECT.replace("</vertices>", others + "</vertices>");
    assertThat(facets(content("<x:object/>" + mesh, others + ITEM))).hasSize(1);
  }

  @Test
  void foreignObjectDoesNotEndTheOneAroundIt() throws IOException {
    String mesh = OBJECT.replace("<mesh>", "<x:object/><mesh>");
    assertThat(facets(content(mesh, ITEM))).hasSize(1);
    String assembly =
        "<object id=\"2\"><x:object/><components><component objectid=\"1\"/></components></object>";
    assertThat(facets(content(OBJECT + assembly, "<item objectid=\"2\"/>"))).hasSize(1);
  }

  @Test
  void whatStandsInNoObjectIsPassedOver() throws IOException {
    String component = "<component objectid=\"1\"/>";
    assertThat(facets(content(OBJECT + component + MESH, ITEM))).hasSize(1);
    assertThat(facets(content(component + MESH + OBJECT, ITEM))).hasSize(1);
  }

  @Test
  void objectsAndItemsAreToldWhereTheyStand() {
    refused(
        content(OBJECT + OBJECT, ITEM),
        inLine(16, "object 1 stands twice; accepted is each id once"));
    refused(content("<object/>", ITEM), inLine(3, "object has no id; accepted is a value for it"));
    refused(
        content(OBJECT, "\n<item objectid=\"1\" transform=\"1 0 0 0 1 0 0 0 1 0 0 x\"/>"),
        inLine(18, "a transform is '1 0 0 0 1 0 0 0 1 0 0 x'; accepted is twelve numbers"));
    refused(
        content(OBJECT, "\n<item objectid=\"1\" x:path=\"/3D/other.model\"/>"),
        inLine(18, "an object lies in another part; accepted is objects in the same part"));
    refused(
        content(OBJECT, "<item objectid=\"2\"/>"),
        inModel("there is no object 2; accepted is one of [1]"));
    String three = OBJECT.replace("\"1\">", "\"9\">") + OBJECT + OBJECT.replace("\"1\">", "\"4\">");
    refused(
        content(three, "<item objectid=\"2\"/>"),
        inModel("there is no object 2; accepted is one of [9, 1, 4]"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"4", "-1", "1.5", "1e9", "x", ""})
  void cornersAreCountedFromZero(String corner) {
    refused(
        content(OBJECT.replace("v2=\"2\"", "v2=\"" + corner + "\""), ITEM),
        inLine(12, "v2 is '" + corner + "'; accepted is the number of a corner, 0 to 3"));
  }

  @Test
  void coordinatesAreToldWhereTheyStand() {
    refused(
        content(OBJECT.replace("z=\"3\"", "z=\"inf\""), ITEM),
        inLine(7, "z is 'inf'; accepted is a finite number"));
    refused(
        content(OBJECT.replace("z=\"3\"", ""), ITEM),
        inLine(7, "vertex has no z; accepted is a value for it"));
  }

  /** Each object has its own corners, counted from zero again, in the order of the file. */
  @Test
  void objectMayHaveAsManyCornersAsTheLimit() throws IOException {
    String content = content(OBJECT + OBJECT.replace("id=\"1\"", "id=\"2\""), ITEM);
    String both = content.replace(ITEM, ITEM + "<item objectid=\"2\"/>");
    assertThat(facets(both, ThreeMfLimits.builder().corners(4).build())).hasSize(2);
    refused(
        both,
        ThreeMfLimits.builder().corners(3).build(),
        inLine(9, "an object has more than 3 corners; accepted is up to that"));
  }

  /** 3 corners for each of 1000 facets, which have to be kept whatever the limit. */
  @Test
  void thousandsOfCornersAreKept() throws IOException {
    List<double[]> written = new ArrayList<>();
    for (int i = 0; i < 1000; i++) {
      written.add(new double[] {i, 1, 2, 3, i, 5, 6, 7, i});
    }
    String object = "<object id=\"1\">" + Bodies.mesh(written) + "</object>";
    for (int most : new int[] {3000, 10_000_000}) {
      List<double[]> read =
          facets(content(object, ITEM), ThreeMfLimits.builder().corners(most).build());
      assertThat(read).hasSize(1000);
      for (int i = 0; i < 1000; i++) {
        assertThat(read.get(i)).isEqualTo(written.get(i));
      }
    }
  }

  @Test
  void fileMayHaveAsManyObjectsAsTheLimit() throws IOException {
    String content = content(OBJECT + "<object id=\"2\"/>\n<object id=\"3\"/>", ITEM);
    assertThat(facets(content, ThreeMfLimits.builder().objects(3).build())).hasSize(1);
    refused(
        content,
        ThreeMfLimits.builder().objects(2).build(),
        inLine(17, "there are too many objects; accepted is up to 2"));
  }

  /** Three items of an object that has two components: 3 + 2 are stated, 3 + 3 x 2 are made. */
  @Test
  void fileMayHaveAsManyCopiesAsTheLimit() throws IOException {
    String two =
        "<object id=\"2\"><components><component objectid=\"1\"/><component objectid=\"1\"/>"
            + "</components></object>";
    String content = content(OBJECT + two, "\n" + "<item objectid=\"2\"/>\n".repeat(3));
    assertThat(facets(content, ThreeMfLimits.builder().copies(9).build())).hasSize(6);
    refused(
        content,
        ThreeMfLimits.builder().copies(8).build(),
        inModel("there are too many copies of objects; accepted is up to 8"));
    refused(
        content,
        ThreeMfLimits.builder().copies(5).build(),
        inModel("there are too many copies of objects; accepted is up to 5"));
    refused(
        content,
        ThreeMfLimits.builder().copies(4).build(),
        inLine(20, "there are too many items and components; accepted is up to 4"));
  }

  /** Object 1, within 2, within 3 ... */
  @Test
  void objectsLieUpToSixtyFourDeep() throws IOException {
    StringBuilder objects = new StringBuilder(OBJECT);
    for (int i = 2; i <= 66; i++) {
      objects.append(
          "<object id=\""
              + i
              + "\"><components><component objectid=\""
              + (i - 1)
              + "\"/></components></object>");
    }
    assertThat(facets(content(objects.toString(), "<item objectid=\"65\"/>"))).hasSize(1);
    refused(
        content(objects.toString(), "<item objectid=\"66\"/>"),
        inModel(
            "object 1 lies too deep or in itself; accepted is objects of objects up to 64 deep"));
  }

  @Test
  void limitsBelowOneAreRefused() {
    ThreeMfLimits.Builder ones =
        ThreeMfLimits.builder().unfoldedBytes(1).corners(1).objects(1).copies(1);
    assertThat(ones.build().copies()).isEqualTo(1);
    List<ThreeMfLimits.Builder> zeros =
        List.of(
            ThreeMfLimits.builder().unfoldedBytes(0),
            ThreeMfLimits.builder().corners(0),
            ThreeMfLimits.builder().objects(0),
            ThreeMfLimits.builder().copies(0));
    for (ThreeMfLimits.Builder zero : zeros) {
      assertThatThrownBy(zero::build).isInstanceOf(IllegalArgumentException.class);
    }
    assertThatThrownBy(() -> ThreeMfLimits.builder().copies(0).build())
        .hasMessageContaining(
            "bytes, corners, objects and copies are 4294967296, 10000000, 10000 and 0;"
                + " accepted is 1 or more of each");
  }
}
