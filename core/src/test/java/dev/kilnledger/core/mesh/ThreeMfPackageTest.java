package dev.kilnledger.core.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.core.reading.UnreadableInputException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;

/** What holds of the zip and the XML of a 3MF file, whatever the model. */
class ThreeMfPackageTest {
  private static final String TYPE = "http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel";
  private static final String ONE_FACET =
      "<resources><object id=\"1\">"
          + "<mesh><vertices><vertex x=\"0\" y=\"0\" z=\"0\"/><vertex x=\"1\" y=\"0\" z=\"0\"/>"
          + "<vertex x=\"0\" y=\"1\" z=\"0\"/></vertices><triangles>"
          + "<triangle v1=\"0\" v2=\"1\" v3=\"2\"/></triangles></mesh>"
          + "</object></resources><build><item objectid=\"1\"/></build>";

  private static int facets(byte[] file, ThreeMfLimits limits) throws IOException {
    AtomicInteger count = new AtomicInteger();
    ThreeMfFile.of(ByteSource.of(file), limits)
        .forEach((a, b, c, d, e, f, g, h, i) -> count.incrementAndGet(), Progress.unheard());
    return count.get();
  }

  private static int facets(byte[] file) throws IOException {
    return facets(file, ThreeMfLimits.standard());
  }

  private static void refused(byte[] file, String message) {
    assertThatThrownBy(() -> facets(file))
        .isInstanceOf(UnreadableInputException.class)
        .hasMessage(message);
  }

  private static byte[] zip(String... namesAndContents) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (int i = 0; i < namesAndContents.length; i += 2) {
        zip.putNextEntry(new ZipEntry(namesAndContents[i]));
        zip.write(namesAndContents[i + 1].getBytes(StandardCharsets.UTF_8));
      }
    }
    return bytes.toByteArray();
  }

  private static String relationships(String content) {
    return "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
        + content
        + "</Relationships>";
  }

  private static String relationship(String attributes) {
    return "<Relationship Id=\"r\" " + attributes + "/>";
  }

  @Test
  void packageThatNamesNoModelIsRefused() throws IOException {
    String message =
        "3MF file, _rels/.rels: it names no 3D model; accepted is a relationship of type " + TYPE;
    refused(zip("_rels/.rels", relationships("")), message);
    refused(zip("_rels/.rels", relationships(relationship("Type=\"" + TYPE + "\""))), message);
    String thumbnail = relationship("Type=\"urn:thumbnail\" Target=\"/3D/3dmodel.model\"");
    refused(zip("_rels/.rels", relationships(thumbnail)), message);
    String other = "<Other Type=\"" + TYPE + "\" Target=\"/3D/3dmodel.model\"/>";
    refused(zip("_rels/.rels", relationships(other)), message);
  }

  @Test
  void partsMayStandInAnyOrderAndTheirNamesInAnyCase() throws IOException {
    String model = Bodies.model("", ONE_FACET);
    String named = relationships(relationship("Target=\"/3D/A.model\" Type=\"" + TYPE + "\""));
    assertThat(facets(zip("_rels/.rels", named, "3D/A.model", model))).isEqualTo(1);
    assertThat(facets(zip("3d/a.MODEL", model, "x", "", "_RELS/.rels", named))).isEqualTo(1);
    assertThat(facets(zip("/3D/A.model", model, "/_rels/.rels", named))).isEqualTo(1);
  }

  /** A parser that looked for the outside part would find no such file, and say something else. */
  @Test
  void documentTypesAreRefusedUnread() {
    String message =
        "3MF file, 3D/3dmodel.model: it has a document type; accepted is a model without one";
    for (String type :
        new String[] {
          "<!DOCTYPE model>",
          "<!DOCTYPE model SYSTEM \"file:///no/such/file.dtd\">",
          "<!DOCTYPE model [<!ENTITY % p SYSTEM \"file:///no/such/file.dtd\"> %p;]>",
          "<!DOCTYPE model [<!ENTITY a \"b\">]>"
        }) {
      refused(
          Bodies.threeMf(type + Bodies.model("", "").replaceFirst("<\\?xml.*?\\?>", "")), message);
    }
  }

  @Test
  void brokenXmlIsToldWithItsLine() {
    refused(
        Bodies.threeMf(Bodies.model("", "\n\n<resources>\n</build>")),
        "3MF file, 3D/3dmodel.model, line 4: it is no well-formed XML;"
            + " accepted is the XML of a 3MF model");
  }

  /** Two bytes that say the order of bytes, and nothing after them, are an empty text. */
  @Test
  void modelOfAByteOrderMarkAloneIsAnEmptyText() {
    for (byte[] mark : new byte[][] {{(byte) 0xfe, (byte) 0xff}, {(byte) 0xff, (byte) 0xfe}}) {
      assertThatThrownBy(() -> facets(Bodies.threeMf("/3D/3dmodel.model", mark)))
          .isInstanceOf(UnreadableInputException.class)
          .hasMessageContaining("it is no well-formed XML");
    }
  }

  /** All parts count up to the one that is read, whether they are read or passed over. */
  @Test
  void partsMayUnfoldToAsMuchAsTheLimit() throws IOException {
    String model = Bodies.model("", ONE_FACET);
    String named =
        relationships(relationship("Target=\"/3D/3dmodel.model\" Type=\"" + TYPE + "\""));
    int size = model.length() + named.length();
    for (byte[] file :
        new byte[][] {
          zip("3D/3dmodel.model", model, "_rels/.rels", named),
          zip("_rels/.rels", named, "3D/3dmodel.model", model)
        }) {
      assertThat(facets(file, ThreeMfLimits.builder().unfoldedBytes(size).build())).isEqualTo(1);
      assertThatThrownBy(
              () -> facets(file, ThreeMfLimits.builder().unfoldedBytes(size - 1).build()))
          .isInstanceOf(UnreadableInputException.class)
          .hasMessage(
              "3MF file, zip: it unfolds to more than "
                  + (size - 1)
                  + " bytes; accepted is up to that");
    }
  }

  /** From one angle bracket to the next 2^20 = 1048576 bytes, not from the start of the model. */
  @Test
  void tagsMayBeAsLongAsTheLimit() throws IOException {
    String longest = "<metadata>" + "m".repeat((1 << 20) - "metadata>".length()) + "</metadata>";
    assertThat(facets(Bodies.threeMf(Bodies.model("", longest + longest + ONE_FACET))))
        .isEqualTo(1);
    refused(
        Bodies.threeMf(Bodies.model("", longest.replace(">m", ">mm") + ONE_FACET)),
        "3MF file, zip: a tag is longer than 1048576 bytes; accepted is up to that");
  }
}
