package dev.kilnledger.costing.fuzz;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static java.nio.charset.StandardCharsets.UTF_8;

import dev.kilnledger.core.document.CoreDocuments;
import dev.kilnledger.core.equipment.EquipmentList;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.costing.document.CostingDocuments;
import dev.kilnledger.costing.document.PriceListCsv;
import dev.kilnledger.costing.job.Job;
import dev.kilnledger.costing.job.WholeJob;
import dev.kilnledger.thermal.document.ThermalDocuments;
import dev.kilnledger.thermal.firing.FiringSetup;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Well-formed inputs of each reader, small, so that a change seldom misses what matters. */
final class Seeds {
  private static final String RELATIONSHIPS =
      "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
          + "<Relationship Id=\"r\" Target=\"/3D/3dmodel.model\""
          + " Type=\"http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel\"/>"
          + "</Relationships>";
  private static final int[][] CORNERS = {{0, 0, 0}, {3, 0, 0}, {0, 4, 0}, {0, 0, 5}};
  private static final int[][] FACES = {{0, 2, 1}, {0, 1, 3}, {0, 3, 2}, {1, 2, 3}};

  private static final MaterialLibrary KNOWN = MaterialLibrary.standard();

  private Seeds() {}

  /** The inputs of a reader. */
  static List<byte[]> of(Reader reader) {
    return switch (reader) {
      case UCUM ->
          texts(
              "1.5 g/cm3",
              "820 Cel",
              "212 [degF]",
              "1 m.s-2",
              "-7e-3 kW.h",
              "9 %",
              "1 (g.m)/(s2.K)",
              "2 [in_i]2",
              "3 10*3.m",
              "4 mm[Hg]",
              "5 um",
              "6 L",
              "7",
              "0.5 [lb_av]");
      case GCODE ->
          texts(
              """
          ; a box
          G21
          G90
          M82
          G92 E0
          M104 S200
          G28
          G1 X0 Y0 Z0.2 F1200
          G1 X10 E0.5
          G1 Y10 E1.0 F3000
          G2 X0 Y10 I-5 J0 E1.5
          G1 E0.5
          G0 Z0.4 (up)
          T1
          G1 E1.5 X5.5Y-2
          N3 G4 P500*22
          G20 M83 G91
          G3 X1 Y1 R1 E.5
          G18 G2 X1 Z1 I.5 K.5
          """,
              "G21\nM83\nG1 X0 Y0 Z0.2 F1200\nG1 X10 E0.5\nG1 E-2\nG1 E2\nG1 X20 E0.5\n");
      case STL, STL_MEASURED -> List.of(binaryStl(), textStl());
      case THREE_MF -> List.of(zipped(model().getBytes(UTF_8)), stored());
      case THREE_MF_MODEL -> texts(model());
      case MATERIALS -> List.of(materials());
      case EQUIPMENT -> texts(equipment());
      case FIRING -> texts(ThermalDocuments.firing(KNOWN).text(setup()));
      case SINTERING_CURVE ->
          texts(ThermalDocuments.sinteringCurve().text(setup().sinteringCurve().orElseThrow()));
      case PRICE_BOOK -> texts(CostingDocuments.priceBook().text(job().prices()));
      case PRICE_LIST -> texts(PriceListCsv.standard().text(job().prices().offers()));
      case JOB, JOB_DESK -> texts(CostingDocuments.job(KNOWN).text(job()));
    };
  }

  /** Words of its grammar. */
  static List<String> words(Reader reader) {
    return switch (reader) {
      case UCUM ->
          List.of(
              "m", "g", "K", "Cel", "[degF]", "/", ".", "(", ")", "-1", "2", "10*", "10^", "{a}",
              "k", "da", "Y", "[pH]", "dB", "%", "[ppth]", "e3", " ", "µ", "m99", "'", "\"");
      case GCODE ->
          List.of(
              "G0",
              "G1",
              "G2",
              "G3",
              "G4",
              "G17",
              "G19",
              "G20",
              "G21",
              "G28",
              "G90",
              "G91",
              "G92",
              "M82",
              "M83",
              "T0",
              "T-1",
              "T99999",
              "X",
              "Y",
              "Z",
              "E",
              "F",
              "I",
              "J",
              "R",
              "S",
              "P",
              "N1",
              "*0",
              ";",
              "(",
              ")",
              "%",
              "/",
              "\n",
              "\r\n",
              "G1 E1e300",
              "#1",
              "=");
      case STL, STL_MEASURED ->
          List.of(
              "solid",
              "facet",
              "normal",
              "outer loop",
              "vertex",
              "endloop",
              "endfacet",
              "endsolid",
              " 0 0 0",
              "\n",
              "\r");
      case THREE_MF, THREE_MF_MODEL ->
          List.of(
              "<object id=\"2\">",
              "</object>",
              "<mesh>",
              "<components>",
              "<component objectid=\"1\"/>",
              "</components>",
              "<item objectid=\"1\"/>",
              "<build>",
              "<triangle v1=\"0\" v2=\"1\" v3=\"2\"/>",
              "transform=\"1 0 0 0 1 0 0 0 1 0 0 0\"",
              "unit=\"inch\"",
              "requiredextensions=\"p\"",
              "<!DOCTYPE a [<!ENTITY b \"c\">]>",
              "&b;",
              "&#0;",
              "<![CDATA[",
              "]]>",
              "<!--",
              "PK\u0003\u0004",
              "PK\u0001\u0002",
              "PK\u0005\u0006");
      case PRICE_LIST ->
          List.of(",", "\"", "\"\"", "\n", "\r\n", ";", "EUR", "1 g", "true", "\ufeff", ",,,,,,,,");
      default ->
          List.of(
              "{",
              "}",
              "[",
              "]",
              ",",
              ":",
              "\"",
              "null",
              "true",
              "\"name\":",
              "\"document\":\"materials\"",
              "\"schemaVersion\":1",
              "\\u0000",
              "\\ud800",
              "\"1 g/cm3\"",
              "\"1 Cel\"",
              "\"-1 kg\"",
              "\"\"",
              "[[[[[[[[[[[[[[[[",
              "{\"a\":{\"a\":{\"a\":");
    };
  }

  /** A job that states nearly everything, of the pinned documents. */
  private static Job job() {
    try (InputStream in =
        Seeds.class.getResourceAsStream("/dev/kilnledger/costing/document/v1/job.json")) {
      return CostingDocuments.job(KNOWN).read(ByteSource.of(in.readAllBytes()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static FiringSetup setup() {
    return WholeJob.standard().answer(job()).forecast().setup();
  }

  private static List<byte[]> texts(String... texts) {
    return Arrays.stream(texts).map(text -> text.getBytes(UTF_8)).toList();
  }

  private static byte[] binaryStl() {
    ByteBuffer bytes = ByteBuffer.allocate(84 + 50 * FACES.length).order(ByteOrder.LITTLE_ENDIAN);
    bytes.position(80);
    bytes.putInt(FACES.length);
    for (int[] face : FACES) {
      bytes.putFloat(0).putFloat(0).putFloat(0);
      for (int corner : face) {
        for (int coordinate : CORNERS[corner]) {
          bytes.putFloat(coordinate);
        }
      }
      bytes.putShort((short) 0);
    }
    return bytes.array();
  }

  private static byte[] textStl() {
    StringBuilder text = new StringBuilder("solid a\n");
    for (int[] face : FACES) {
      text.append("facet normal 0 0 0\nouter loop\n");
      for (int corner : face) {
        int[] c = CORNERS[corner];
        text.append("vertex " + c[0] + " " + c[1] + " " + c[2] + "\n");
      }
      text.append("endloop\nendfacet\n");
    }
    return text.append("endsolid a\n").toString().getBytes(US_ASCII);
  }

  private static String model() {
    StringBuilder corners = new StringBuilder();
    for (int[] c : CORNERS) {
      corners.append("<vertex x=\"" + c[0] + "\" y=\"" + c[1] + "\" z=\"" + c[2] + "\"/>");
    }
    StringBuilder faces = new StringBuilder();
    for (int[] f : FACES) {
      faces.append("<triangle v1=\"" + f[0] + "\" v2=\"" + f[1] + "\" v3=\"" + f[2] + "\"/>");
    }
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<model unit=\"millimeter\""
        + " xmlns=\"http://schemas.microsoft.com/3dmanufacturing/core/2015/02\"><resources>"
        + "<object id=\"1\" type=\"model\"><mesh><vertices>"
        + corners
        + "</vertices><triangles>"
        + faces
        + "</triangles></mesh></object><object id=\"2\"><components><component objectid=\"1\""
        + " transform=\"2 0 0 0 2 0 0 0 2 10 20 30\"/></components></object></resources>"
        + "<build><item objectid=\"1\"/><item objectid=\"2\"/></build></model>";
  }

  /** A 3MF file of a model. */
  static byte[] zipped(byte[] model) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      put(zip, new ZipEntry("_rels/.rels"), RELATIONSHIPS.getBytes(UTF_8));
      put(zip, new ZipEntry("3D/3dmodel.model"), model);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  /** The same without compression, so that what is changed in it is text. */
  private static byte[] stored() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      put(zip, uncompressed("_rels/.rels", RELATIONSHIPS), RELATIONSHIPS.getBytes(UTF_8));
      put(zip, uncompressed("3D/3dmodel.model", model()), model().getBytes(UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private static ZipEntry uncompressed(String name, String content) {
    byte[] bytes = content.getBytes(UTF_8);
    CRC32 sum = new CRC32();
    sum.update(bytes);
    ZipEntry entry = new ZipEntry(name);
    entry.setMethod(ZipEntry.STORED);
    entry.setSize(bytes.length);
    entry.setCrc(sum.getValue());
    return entry;
  }

  private static void put(ZipOutputStream zip, ZipEntry entry, byte[] content) throws IOException {
    zip.putNextEntry(entry);
    zip.write(content);
    zip.closeEntry();
  }

  /** Two materials in full, so that every form is in it and the text stays short. */
  private static byte[] materials() {
    MaterialLibrary standard = MaterialLibrary.standard();
    MaterialLibrary some =
        MaterialLibrary.builder()
            .addFeedstocks(standard.feedstock("copper in polylactide, generic"))
            .build();
    return CoreDocuments.materials(MaterialLibrary.empty()).text(some).getBytes(UTF_8);
  }

  /** The equipment of the job. */
  private static String equipment() {
    Job job = job();
    EquipmentList.Builder list =
        EquipmentList.builder()
            .addPrinters(job.printer())
            .addKilns(job.kiln())
            .addCrucibles(job.crucible());
    job.supplyCircuit().ifPresent(list::addSupplyCircuits);
    return CoreDocuments.equipment(KNOWN).text(list.build());
  }
}
