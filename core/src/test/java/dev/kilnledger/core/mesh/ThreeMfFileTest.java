package dev.kilnledger.core.mesh;

import static dev.kilnledger.core.mesh.Bodies.box;
import static dev.kilnledger.core.mesh.Bodies.mesh;
import static dev.kilnledger.core.mesh.Bodies.model;
import static dev.kilnledger.core.mesh.Bodies.threeMf;
import static dev.kilnledger.units.TradeUnits.CUBIC_MILLIMETRE;
import static dev.kilnledger.units.TradeUnits.MILLIMETRE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.core.reading.UnreadableInputException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThreeMfFileTest {
  private static final String BOX =
      "<resources><object id=\"1\" type=\"model\">"
          + mesh(box(0, 0, 0, 1, 2, 3))
          + "</object></resources>";

  private static MeshSize measure(byte[] file) throws IOException {
    return MeshMeasure.standard().measure(ThreeMfFile.of(ByteSource.of(file)));
  }

  private static double volume(String content) throws IOException {
    return measure(threeMf(model("unit=\"millimeter\"", content)))
        .volume()
        .orElseThrow()
        .in(CUBIC_MILLIMETRE);
  }

  /** The units of the core specification; an inch is 25.4 mm, a foot 12 inches. */
  @ParameterizedTest
  @CsvSource({
    "micron,6e-9",
    "millimeter,6",
    "centimeter,6000",
    "inch,98322.384",
    "foot,169901079.552",
    "meter,6e9"
  })
  void unitOfTheFileMakesTheSize(String unit, double expected) throws IOException {
    MeshSize size =
        measure(
            threeMf(model("unit=\"" + unit + "\"", BOX + "<build><item objectid=\"1\"/></build>")));
    assertThat(size.volume().orElseThrow().in(CUBIC_MILLIMETRE))
        .isCloseTo(expected, within(1e-9 * expected));
  }

  @Test
  void withoutAUnitItIsMillimetresAsTheSpecificationSays() throws IOException {
    assertThat(
            measure(threeMf(model("", BOX + "<build><item objectid=\"1\"/></build>")))
                .volume()
                .orElseThrow()
                .in(CUBIC_MILLIMETRE))
        .isCloseTo(6, within(1e-9));
  }

  @Test
  void itemsAreBuiltWhereTheirTransformsSay() throws IOException {
    String content =
        BOX
            + "<build><item objectid=\"1\"/>"
            + "<item objectid=\"1\" transform=\"2 0 0 0 2 0 0 0 2 10 20 30\"/></build>";
    MeshSize size = measure(threeMf(model("", content)));
    assertThat(size.volume().orElseThrow().in(CUBIC_MILLIMETRE)).isCloseTo(6 + 48, within(1e-9));
    assertThat(size.extent().highX().in(MILLIMETRE)).isEqualTo(12);
    assertThat(size.extent().highY().in(MILLIMETRE)).isEqualTo(24);
    assertThat(size.extent().highZ().in(MILLIMETRE)).isEqualTo(36);
  }

  @Test
  void componentsAreTurnedFirstByTheirOwnTransform() throws IOException {
    // a quarter turn about z makes x of y, then everything is shifted by 100 along x
    String content =
        "<resources><object id=\"1\">"
            + mesh(box(0, 0, 0, 1, 2, 3))
            + "</object><object id=\"2\"><components><component objectid=\"1\""
            + " transform=\"0 1 0 -1 0 0 0 0 1 0 0 0\"/></components></object></resources>"
            + "<build><item objectid=\"2\" transform=\"1 0 0 0 1 0 0 0 1 100 0 0\"/></build>";
    MeshSize size = measure(threeMf(model("", content)));
    assertThat(size.extent().lowX().in(MILLIMETRE)).isEqualTo(98);
    assertThat(size.extent().highX().in(MILLIMETRE)).isEqualTo(100);
    assertThat(size.extent().highY().in(MILLIMETRE)).isEqualTo(1);
    assertThat(size.volume().orElseThrow().in(CUBIC_MILLIMETRE)).isCloseTo(6, within(1e-9));
  }

  @Test
  void mirroredItemStillLooksOutwards() throws IOException {
    String content =
        BOX + "<build><item objectid=\"1\" transform=\"-1 0 0 0 1 0 0 0 1 0 0 0\"/></build>";
    MeshSize size = measure(threeMf(model("", content)));
    assertThat(size.findings()).allMatch(finding -> finding.message() != null);
    assertThat(size.findings().get(1).message()).isEqualTo("the facets look outwards");
  }

  @Test
  void whatNoItemBuildsIsLeftOut() throws IOException {
    String content =
        "<resources><object id=\"1\">"
            + mesh(box(0, 0, 0, 1, 2, 3))
            + "</object><object id=\"9\">"
            + mesh(box(0, 0, 0, 50, 50, 50))
            + "</object></resources><build><item objectid=\"1\"/></build>";
    assertThat(volume(content)).isCloseTo(6, within(1e-9));
  }

  private static final String ITEM = "<build><item objectid=\"1\"/></build>";

  /** All nine numbers of the transform, and more than a thousand corners in more than a MiB. */
  @Test
  void everyCornerOfALargeMeshIsPlaced() throws IOException {
    List<double[]> torus = Bodies.torus(20, 5, 70, 50);
    String transform = "1 2 3 -1 4 1 2 -3 5 10 20 30";
    String content =
        "<resources><object id=\"1\">"
            + mesh(torus)
            + "</object></resources><build><item objectid=\"1\" transform=\""
            + transform
            + "\"/></build>";
    ThreeMfLimits limits = ThreeMfLimits.builder().corners(3 * torus.size()).build();
    List<double[]> found = facets(model("", content), limits);
    assertThat(content.length()).isGreaterThan(1 << 20);
    assertThat(found).hasSize(torus.size());
    for (int i = 0; i < found.size(); i++) {
      double[] facet = torus.get(i);
      for (int c = 0; c < 9; c += 3) {
        double x = facet[c];
        double y = facet[c + 1];
        double z = facet[c + 2];
        assertThat(Arrays.copyOfRange(found.get(i), c, c + 3))
            .containsExactly(
                new double[] {
                  x - y + 2 * z + 10, 2 * x + 4 * y - 3 * z + 20, 3 * x + y + 5 * z + 30
                },
                within(1e-12));
      }
    }
  }

  private static List<double[]> facets(String model, ThreeMfLimits limits) throws IOException {
    List<double[]> facets = new ArrayList<>();
    ThreeMfFile.of(ByteSource.of(threeMf(model)), limits)
        .forEach(
            (a, b, c, d, e, f, g, h, i) -> facets.add(new double[] {a, b, c, d, e, f, g, h, i}),
            Progress.unheard());
    return facets;
  }

  private static void accepted(ThreeMfLimits.Builder limits, String content) throws IOException {
    assertThat(facets(model("", content), limits.build())).isNotEmpty();
  }

  private static void beyond(ThreeMfLimits.Builder limits, String content, String message) {
    assertThatThrownBy(() -> facets(model("", content), limits.build()))
        .isInstanceOf(UnreadableInputException.class)
        .hasMessageContaining(message);
  }

  /** Twelve facets with three corners each, none of them shared. */
  @Test
  void limitsAreReachedAndNotExceeded() throws IOException {
    accepted(ThreeMfLimits.builder().corners(36), BOX + ITEM);
    beyond(ThreeMfLimits.builder().corners(35), BOX + ITEM, "more than 35 corners");
    String more = BOX.replace("</resources>", "<object id=\"2\"/></resources>");
    accepted(ThreeMfLimits.builder().objects(2), more + ITEM);
    beyond(
        ThreeMfLimits.builder().objects(1), more + ITEM, "too many objects; accepted is up to 1");
    String two = BOX + ITEM.replace("<item objectid=\"1\"/>", "<item objectid=\"1\"/>".repeat(2));
    accepted(ThreeMfLimits.builder().copies(2), two);
    beyond(ThreeMfLimits.builder().copies(1), two, "too many items and components");
    // two items and a component are three, and make four copies
    String four =
        BOX.replace(
                "</resources>",
                "<object id=\"2\"><components><component objectid=\"1\"/></components></object>"
                    + "</resources>")
            + "<build><item objectid=\"2\"/><item objectid=\"2\"/></build>";
    accepted(ThreeMfLimits.builder().copies(4), four);
    beyond(
        ThreeMfLimits.builder().copies(3), four, "too many copies of objects; accepted is up to 3");
    // the file's first reading goes through both of its parts
    String model = model("", BOX + ITEM);
    long relationships = Bodies.relationships("/3D/3dmodel.model").length();
    long bytes = model.length() + relationships;
    accepted(ThreeMfLimits.builder().unfoldedBytes(bytes), BOX + ITEM);
    beyond(ThreeMfLimits.builder().unfoldedBytes(bytes - 1), BOX + ITEM, "unfolds to more than");
  }

  @Test
  void objectsMayLie64Deep() throws IOException {
    StringBuilder objects =
        new StringBuilder(
            "<resources><object id=\"0\">" + mesh(box(0, 0, 0, 1, 2, 3)) + "</object>");
    for (int i = 1; i <= 65; i++) {
      objects.append(
          "<object id=\""
              + i
              + "\"><components><component objectid=\""
              + (i - 1)
              + "\"/></components></object>");
    }
    objects.append("</resources>");
    assertThat(volume(objects + "<build><item objectid=\"64\"/></build>"))
        .isCloseTo(6, within(1e-9));
    refused(objects + "<build><item objectid=\"65\"/></build>", "object 0 lies too deep");
  }

  /** 2^20 bytes from one opening bracket to before the next one. */
  @Test
  void tagsMayBeAMebibyteLong() throws IOException {
    String spaces = " ".repeat((1 << 20) - "resources>".length());
    String content = BOX.replace("<resources>", "<resources>" + spaces) + ITEM;
    assertThat(volume(content)).isCloseTo(6, within(1e-9));
    refused(content.replace("<resources>", "<resources> "), "a tag is longer than 1048576 bytes");
  }

  /** Extensions may add what they like; what is not of the core specification is passed over. */
  @Test
  void elementsOfOtherNamespacesAndStrayOnesArePassedOver() throws IOException {
    String other = "<x:vertex/><x:triangle/><x:item objectid=\"7\"/><x:component objectid=\"7\"/>";
    String content =
        BOX.replace("<resources>", "<resources><x:object id=\"1\"/>")
                .replace("<vertices>", "<vertices>" + other)
                .replace(
                    "</resources>",
                    "<triangle v1=\"0\" v2=\"1\" v3=\"2\"/><component objectid=\"7\"/></resources>")
            + ITEM;
    String model = model("xmlns:x=\"http://example.org/x\"", content);
    assertThat(facets(model, ThreeMfLimits.standard())).hasSize(12);
  }

  @Test
  void relationshipsWithoutAModelAreRefused() {
    for (String relationships :
        List.of(
            "<Relationships/>",
            Bodies.relationships("x").replace("Target", "Goal"),
            Bodies.relationships("x").replace("3dmodel", "thumbnail"))) {
      assertThatThrownBy(() -> measure(Bodies.threeMfWith(relationships, new byte[0])))
          .isInstanceOf(UnreadableInputException.class)
          .hasMessage(
              "3MF file, _rels/.rels: it names no 3D model; accepted is a relationship of type"
                  + " http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel");
    }
  }

  private static void refused(String content, String message) {
    assertThatThrownBy(() -> volume(content))
        .isInstanceOf(UnreadableInputException.class)
        .hasMessageContaining(message);
  }

  @Test
  void objectsThatHoldThemselvesAreRefused() {
    refused(
        "<resources><object id=\"1\"><components><component objectid=\"1\"/></components></object>"
            + "</resources><build><item objectid=\"1\"/></build>",
        "too deep or in itself");
  }

  @Test
  void copiesThatMultiplyWithoutEndAreRefused() {
    StringBuilder objects =
        new StringBuilder(
            "<resources><object id=\"0\">" + mesh(box(0, 0, 0, 1, 1, 1)) + "</object>");
    for (int i = 1; i < 40; i++) {
      String component = "<component objectid=\"" + (i - 1) + "\"/>";
      objects.append(
          "<object id=\"" + i + "\"><components>" + component.repeat(4) + "</components></object>");
    }
    refused(objects + "</resources><build><item objectid=\"39\"/></build>", "too many copies");
  }

  @Test
  void wrongNumbersAreToldWithTheirPlace() {
    String item = "<build><item objectid=\"1\"/></build>";
    refused(
        BOX.replace("x=\"1.0\"", "x=\"NaN\"") + item, "x is 'NaN'; accepted is a finite number");
    refused(
        BOX.replace("v3=\"35\"", "v3=\"36\"") + item,
        "v3 is '36'; accepted is the number of a corner, 0 to 35");
    refused(BOX.replace("v3=\"35\"", "v3=\"34.5\"") + item, "v3 is '34.5'; accepted is");
    refused(BOX.replace("id=\"1\"", "name=\"1\"") + item, "3MF file, model, line 1, column ");
    refused(BOX.replace("</resources>", "<object id=\"1\"/></resources>"), "object 1 stands twice");
    refused(
        BOX + "<build><item objectid=\"1\" path=\"/3D/other.model\"/></build>",
        "an object lies in another part; accepted is objects in the same part");
    refused(BOX + "<build><item objectid=\"7\"/></build>", "there is no object 7");
    refused(BOX + "<build><item objectid=\"1\" transform=\"1 0 0\"/></build>", "twelve numbers");
    refused(BOX + "<build><item/></build>", "item has no objectid");
    refused(BOX + "<build/>", "no facet");
    refused(BOX, "no facet");
  }

  @Test
  void unknownUnitsAndRequiredExtensionsAreRefused() {
    String content = BOX + "<build><item objectid=\"1\"/></build>";
    assertThatThrownBy(() -> measure(threeMf(model("unit=\"cubit\"", content))))
        .hasMessageContaining("its unit is 'cubit'; accepted is micron");
    assertThatThrownBy(() -> measure(threeMf(model("requiredextensions=\"q\"", content))))
        .hasMessageContaining("requires the extensions q");
  }

  @Test
  void externalEntitiesAreNotRead() {
    String xml =
        "<?xml version=\"1.0\"?><!DOCTYPE model [<!ENTITY a SYSTEM \"file:///etc/hostname\">]>"
            + "<model xmlns=\""
            + ThreeMfModel.CORE
            + "\" unit=\"&a;\"/>";
    assertThatThrownBy(() -> measure(threeMf(xml)))
        .isInstanceOf(UnreadableInputException.class)
        .hasMessage(
            "3MF file, 3D/3dmodel.model: it has a document type; accepted is a model without one");
  }

  @Test
  void fileThatUnfoldsWithoutEndIsRefused() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      zip.putNextEntry(new ZipEntry("other"));
      byte[] zeros = new byte[1 << 16];
      for (int i = 0; i < 400; i++) {
        zip.write(zeros);
      }
    }
    assertThat(bytes.size()).isLessThan(60_000);
    ThreeMfLimits limits = ThreeMfLimits.builder().unfoldedBytes(10_000_000).build();
    assertThatThrownBy(
            () ->
                MeshMeasure.standard()
                    .measure(ThreeMfFile.of(ByteSource.of(bytes.toByteArray()), limits)))
        .isInstanceOf(UnreadableInputException.class)
        .hasMessageContaining("unfolds to more than 10000000 bytes");
  }

  @Test
  void tagWithoutEndIsRefused() {
    refused(
        BOX + "<build><item objectid=\"" + "1".repeat(3_000_000) + "\"/></build>",
        "a tag is longer");
  }

  @Test
  void filesThatAreNoneAreRefused() {
    assertThatThrownBy(() -> measure(new byte[0]))
        .isInstanceOf(UnreadableInputException.class)
        .hasMessageContaining("no part _rels/.rels");
    assertThatThrownBy(() -> measure(new byte[] {'P', 'K', 3, 4, 1, 2, 3}))
        .isInstanceOf(IOException.class);
    assertThatThrownBy(() -> measure(threeMf("/3D/else.model", model("", BOX))))
        .hasMessageContaining("there is no part 3D/else.model");
    assertThatThrownBy(() -> measure(threeMf("<model")))
        .isInstanceOf(UnreadableInputException.class)
        .hasMessageContaining("no well-formed XML");
    assertThatThrownBy(() -> measure(threeMf("<other/>")))
        .hasMessageContaining("there is no model in it");
  }

  /** The core specification allows both, with a byte order mark or, for UTF-8, without. */
  @Test
  void modelsAreReadInUtf8AndUtf16() throws IOException {
    String model = model("", BOX + "<build><item objectid=\"1\"/></build>");
    String wide = model.replace("UTF-8", "UTF-16");
    for (byte[] bytes :
        List.of(
            ("\ufeff" + model).getBytes(StandardCharsets.UTF_8),
            wide.getBytes(StandardCharsets.UTF_16),
            ("\ufeff" + wide).getBytes(StandardCharsets.UTF_16LE))) {
      assertThat(measure(threeMf("/3D/3dmodel.model", bytes)).closed()).isTrue();
    }
    // a byte order mark alone is text, but no model
    byte[] mark = {(byte) 0xfe, (byte) 0xff};
    assertThatThrownBy(() -> measure(threeMf("/3D/3dmodel.model", mark)))
        .hasMessageContaining("it is no well-formed XML");
  }

  /** The parser itself would print to the console where the first line is no text. */
  @Test
  void modelThatIsNoTextIsRefusedInSilence() {
    PrintStream console = System.err;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    System.setErr(new PrintStream(printed, true, StandardCharsets.UTF_8));
    try {
      assertThatThrownBy(() -> measure(threeMf("/3D/3dmodel.model", new byte[] {(byte) 0xc0})))
          .isInstanceOf(UnreadableInputException.class)
          .hasMessageContaining("no text in UTF-8 or UTF-16");
    } finally {
      System.setErr(console);
    }
    assertThat(printed.size()).isZero();
  }

  @Test
  void fileThatEndsTooEarlyIsRefused() {
    byte[] whole = threeMf(model("", BOX + "<build><item objectid=\"1\"/></build>"));
    for (int length = 0; length < whole.length - 200; length += 13) {
      byte[] part = Arrays.copyOf(whole, length);
      assertThatThrownBy(() -> measure(part)).isInstanceOf(UnreadableInputException.class);
    }
  }
}
