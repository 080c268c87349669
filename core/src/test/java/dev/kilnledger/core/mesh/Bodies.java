package dev.kilnledger.core.mesh;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Bodies whose size is known from geometry, and the files that hold them. */
final class Bodies {
  private Bodies() {}

  /** A box from a corner. */
  static List<double[]> box(double x, double y, double z, double a, double b, double c) {
    double[][] corners = new double[8][];
    for (int i = 0; i < 8; i++) {
      corners[i] = new double[] {x + (i & 1) * a, y + (i >> 1 & 1) * b, z + (i >> 2 & 1) * c};
    }
    int[][] quads = {
      {0, 2, 3, 1}, {4, 5, 7, 6}, {0, 1, 5, 4}, {2, 6, 7, 3}, {0, 4, 6, 2}, {1, 3, 7, 5}
    };
    List<double[]> facets = new ArrayList<>();
    for (int[] q : quads) {
      facets.add(facet(corners[q[0]], corners[q[1]], corners[q[2]]));
      facets.add(facet(corners[q[0]], corners[q[2]], corners[q[3]]));
    }
    return facets;
  }

  /** A grid on a closed surface of revolution about z: a torus. */
  static List<double[]> torus(double large, double small, int around, int across) {
    double[][][] p = new double[around][across][];
    for (int i = 0; i < around; i++) {
      for (int j = 0; j < across; j++) {
        double u = 2 * Math.PI * i / around;
        double v = 2 * Math.PI * j / across;
        double r = large + small * Math.cos(v);
        p[i][j] = new double[] {r * Math.cos(u), r * Math.sin(u), small * Math.sin(v)};
      }
    }
    List<double[]> facets = new ArrayList<>();
    for (int i = 0; i < around; i++) {
      for (int j = 0; j < across; j++) {
        double[] a = p[i][j];
        double[] b = p[(i + 1) % around][j];
        double[] c = p[(i + 1) % around][(j + 1) % across];
        double[] d = p[i][(j + 1) % across];
        facets.add(facet(a, b, c));
        facets.add(facet(a, c, d));
      }
    }
    return facets;
  }

  /** An upright prism on a regular polygon. */
  static List<double[]> prism(double radius, double height, int sides) {
    List<double[]> facets = new ArrayList<>();
    double[] bottom = {0, 0, 0};
    double[] top = {0, 0, height};
    for (int i = 0; i < sides; i++) {
      double u = 2 * Math.PI * i / sides;
      double v = 2 * Math.PI * ((i + 1) % sides) / sides;
      double[] a = {radius * Math.cos(u), radius * Math.sin(u), 0};
      double[] b = {radius * Math.cos(v), radius * Math.sin(v), 0};
      double[] c = {b[0], b[1], height};
      double[] d = {a[0], a[1], height};
      facets.add(facet(bottom, b, a));
      facets.add(facet(top, d, c));
      facets.add(facet(a, b, c));
      facets.add(facet(a, c, d));
    }
    return facets;
  }

  static double[] facet(double[] a, double[] b, double[] c) {
    return new double[] {a[0], a[1], a[2], b[0], b[1], b[2], c[0], c[1], c[2]};
  }

  static byte[] binary(List<double[]> facets) {
    ByteBuffer bytes = ByteBuffer.allocate(84 + 50 * facets.size()).order(ByteOrder.LITTLE_ENDIAN);
    bytes.put("solid, but binary".getBytes(StandardCharsets.US_ASCII));
    bytes.position(80);
    bytes.putInt(facets.size());
    int number = 0;
    for (double[] facet : facets) {
      bytes.putFloat(0).putFloat(0).putFloat(0);
      for (double coordinate : facet) {
        bytes.putFloat((float) coordinate);
      }
      bytes.putShort((short) number++);
    }
    return bytes.array();
  }

  static byte[] text(List<double[]> facets) {
    StringBuilder text = new StringBuilder("solid body of text\n");
    for (double[] f : facets) {
      text.append("  facet normal 0 0 0\n    outer loop\n");
      for (int i = 0; i < 9; i += 3) {
        text.append(
            "      vertex "
                + (float) f[i]
                + " "
                + (float) f[i + 1]
                + " "
                + (float) f[i + 2]
                + "\n");
      }
      text.append("    endloop\n  endfacet\n");
    }
    return text.append("endsolid body of text\n").toString().getBytes(StandardCharsets.US_ASCII);
  }

  /** The mesh element of a 3MF object; corners are not shared. */
  static String mesh(List<double[]> facets) {
    List<String> corners = new ArrayList<>();
    StringBuilder triangles = new StringBuilder();
    for (double[] f : facets) {
      int first = corners.size();
      for (int i = 0; i < 9; i += 3) {
        corners.add("<vertex x=\"" + f[i] + "\" y=\"" + f[i + 1] + "\" z=\"" + f[i + 2] + "\"/>");
      }
      triangles.append(
          "<triangle v1=\"" + first + "\" v2=\"" + (first + 1) + "\" v3=\"" + (first + 2) + "\"/>");
    }
    return "<mesh><vertices>"
        + String.join("", corners)
        + "</vertices><triangles>"
        + triangles
        + "</triangles></mesh>";
  }

  static byte[] threeMf(String model) {
    return threeMf("/3D/3dmodel.model", model);
  }

  static byte[] threeMf(String target, String model) {
    return threeMf(target, model.getBytes(StandardCharsets.UTF_8));
  }

  static byte[] threeMf(String target, byte[] model) {
    return threeMfWith(relationships(target), model);
  }

  static String relationships(String target) {
    return "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
        + "<Relationship Id=\"r\" Target=\""
        + target
        + "\" Type=\"http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel\"/>"
        + "</Relationships>";
  }

  static byte[] threeMfWith(String relationships, byte[] model) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      zip.putNextEntry(new ZipEntry("3D/3dmodel.model"));
      zip.write(model);
      zip.putNextEntry(new ZipEntry("_rels/.rels"));
      zip.write(relationships.getBytes(StandardCharsets.UTF_8));
    } catch (java.io.IOException e) {
      throw new AssertionError(e);
    }
    return bytes.toByteArray();
  }

  static String model(String attributes, String content) {
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?><model xmlns=\""
        + ThreeMfModel.CORE
        + "\" "
        + attributes
        + ">"
        + content
        + "</model>";
  }
}
