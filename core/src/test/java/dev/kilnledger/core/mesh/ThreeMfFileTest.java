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

import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.core.reading.UnreadableInputException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
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
        BOX.replace("v3=\"35\"", "v3=\"36\"") + item, "v3 is '36'; accepted is the number of a");
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
    assertThatThrownBy(() -> measure(threeMf(xml))).isInstanceOf(UnreadableInputException.class);
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
