package dev.kilnledger.core.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Few cubes, so that what is inside and how far from outside can be counted one by one. */
class VoxelBodyTest {
  private static VoxelBody body(List<double[]> facets, double cubes, double... ends) {
    VoxelBody body =
        new VoxelBody(
            List.of(reach(ends[0], ends[3]), reach(ends[1], ends[4]), reach(ends[2], ends[5])),
            cubes);
    for (double[] f : facets) {
      body.facet(f[0], f[1], f[2], f[3], f[4], f[5], f[6], f[7], f[8]);
    }
    return body;
  }

  private static Reach reach(double low, double high) {
    Reach reach = new Reach();
    reach.include(low, high, low);
    return reach;
  }

  /** 4 x 6 x 8 in 192 cubes of 1: a rim of one on every side. */
  @Test
  void boxIsFilledCubeByCube() {
    VoxelBody body = body(Bodies.box(10, 20, 30, 4, 6, 8), 192, 10, 20, 30, 14, 26, 38);
    assertThat(body.side()).isCloseTo(1, within(1e-12));
    int[] count = {body.count(0), body.count(1), body.count(2)};
    assertThat(count).containsExactly(6, 8, 10);
    BitSet inside = body.inside();
    assertThat(inside.cardinality()).isEqualTo(192);
    assertThat(body.brokenColumns()).isZero();
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 8; j++) {
        for (int k = 0; k < 10; k++) {
          boolean within = i >= 1 && i <= 4 && j >= 1 && j <= 6 && k >= 1 && k <= 8;
          assertThat(inside.get((i * 8 + j) * 10 + k)).isEqualTo(within);
        }
      }
    }
    // four cubes thick: from the second layer two to the rim's centres
    assertThat(new DistanceField(body).largest()).isCloseTo(2, within(1e-12));
  }

  /** A needle gets no more than 2000 cubes along it. */
  @Test
  void needlesHaveNoMoreThanTwoThousandCubesInARow() {
    VoxelBody needle = body(List.of(), 1e6, 0, 0, 0, 1000, 0.01, 0.01);
    assertThat(needle.side()).isCloseTo(0.5, within(1e-12));
    assertThat(needle.count(0)).isEqualTo(2002);
    assertThat(needle.count(1)).isEqualTo(3);
  }

  /** Inside is what the equation of the torus says, but for cubes that the surface cuts. */
  @Test
  void torusIsFilledAsItsEquationSays() {
    VoxelBody body = body(Bodies.torus(20, 6, 90, 45), 40_000, -26, -26, -6, 26, 26, 6);
    BitSet inside = body.inside();
    int[] count = {body.count(0), body.count(1), body.count(2)};
    int filled = 0;
    for (int i = 0; i < count[0]; i++) {
      for (int j = 0; j < count[1]; j++) {
        for (int k = 0; k < count[2]; k++) {
          double x = (i + 0.5 - count[0] / 2.0) * body.side();
          double y = (j + 0.5 - count[1] / 2.0) * body.side();
          double z = (k + 0.5 - count[2] / 2.0) * body.side();
          double fromTube = Math.hypot(Math.hypot(x, y) - 20, z);
          if (Math.abs(fromTube - 6) > 0.1) {
            assertThat(inside.get((i * count[1] + j) * count[2] + k)).isEqualTo(fromTube < 6);
            filled += fromTube < 6 ? 1 : 0;
          }
        }
      }
    }
    assertThat(filled).isGreaterThan(1000);
    assertThat(body.brokenColumns()).isZero();
    assertThat(new DistanceField(body).largest()).isEqualTo(bruteForce(body, inside));
  }

  private static double bruteForce(VoxelBody body, BitSet inside) {
    int[] n = {body.count(0), body.count(1), body.count(2)};
    double largest = 0;
    for (int i = 0; i < n[0]; i++) {
      for (int j = 0; j < n[1]; j++) {
        for (int k = 0; k < n[2]; k++) {
          if (inside.get((i * n[1] + j) * n[2] + k)) {
            largest = Math.max(largest, nearestOutside(n, inside, i, j, k));
          }
        }
      }
    }
    return Math.sqrt(largest);
  }

  private static double nearestOutside(int[] n, BitSet inside, int i, int j, int k) {
    double nearest = Double.POSITIVE_INFINITY;
    int reach = 12; // further than any cube of these bodies lies from their surface
    for (int a = Math.max(0, i - reach); a < Math.min(n[0], i + reach); a++) {
      for (int b = Math.max(0, j - reach); b < Math.min(n[1], j + reach); b++) {
        for (int c = Math.max(0, k - reach); c < Math.min(n[2], k + reach); c++) {
          if (!inside.get((a * n[1] + b) * n[2] + c)) {
            nearest = Math.min(nearest, (a - i) * (a - i) + (b - j) * (b - j) + (c - k) * (c - k));
          }
        }
      }
    }
    return nearest;
  }

  /**
   * The same box with caps of facets that have corners and edges in the middle of every column:
   * each column is covered once.
   */
  @Test
  void columnsOnCornersAndEdgesBelongToOneFacet() {
    double[] alongX = {0, 0.5, 1.5, 2.5, 3.5, 4};
    double[] alongY = {0, 0.5, 1.5, 2.5, 3.5, 4.5, 5.5, 6};
    for (boolean rising : new boolean[] {true, false}) {
      List<double[]> caps = new ArrayList<>();
      for (double z : new double[] {0, 8}) {
        for (int i = 1; i < alongX.length; i++) {
          for (int j = 1; j < alongY.length; j++) {
            double[] a = {alongX[i - 1], alongY[j - 1], z};
            double[] b = {alongX[i], alongY[j - 1], z};
            double[] c = {alongX[i], alongY[j], z};
            double[] d = {alongX[i - 1], alongY[j], z};
            caps.add(rising ? Bodies.facet(a, b, c) : Bodies.facet(b, c, d));
            caps.add(rising ? Bodies.facet(a, c, d) : Bodies.facet(b, d, a));
          }
        }
      }
      VoxelBody body = body(caps, 192, 0, 0, 0, 4, 6, 8);
      assertThat(body.inside().cardinality()).isEqualTo(192);
      assertThat(body.brokenColumns()).isZero();
    }
  }

  /** Without its top a box's columns never end: all 24 are left out. */
  @Test
  void columnsThatNeverEndAreLeftOut() {
    List<double[]> topless =
        Bodies.box(0, 0, 0, 4, 6, 8).stream()
            .filter(f -> f[2] < 8 || f[5] < 8 || f[8] < 8)
            .toList();
    VoxelBody body = body(topless, 192, 0, 0, 0, 4, 6, 8);
    assertThat(body.inside().isEmpty()).isTrue();
    assertThat(body.brokenColumns()).isEqualTo(24);
    assertThat(new DistanceField(body).largest()).isZero();
    // nor does a whole box below count then
    List<double[]> both = new ArrayList<>(Bodies.box(0, 0, 0, 4, 6, 2));
    topless.forEach(
        f ->
            both.add(
                new double[] {f[0], f[1], up(f[2]), f[3], f[4], up(f[5]), f[6], f[7], up(f[8])}));
    VoxelBody above = body(both, 192, 0, 0, 0, 4, 6, 8);
    assertThat(above.inside().isEmpty()).isTrue();
    assertThat(above.brokenColumns()).isEqualTo(24);
  }

  /** The upper half of a height of 8. */
  private static double up(double z) {
    return 4 + z / 2;
  }

  /**
   * Three layers over each other end at no cube: what lies between the first two is out as well.
   */
  @Test
  void columnsOfAnOddNumberOfTurnsAreLeftOutWhole() {
    List<double[]> layers = new ArrayList<>();
    for (double z : new double[] {0, 3, 8}) {
      layers.addAll(sheet(z));
    }
    VoxelBody body = body(layers, 192, 0, 0, 0, 4, 6, 8);
    assertThat(body.inside().isEmpty()).isTrue();
    assertThat(body.brokenColumns()).isEqualTo(24);
  }

  /** The two triangles of a rectangle over a floor of 4 x 6. */
  private static List<double[]> sheet(double z) {
    return List.of(
        new double[] {0, 0, z, 4, 0, z, 4, 6, z}, new double[] {0, 0, z, 4, 6, z, 0, 6, z});
  }

  /**
   * Edges along both axes and on both diagonals, through centres of cubes, which lie at halves:
   * each column is turned over once at the bottom and once at the top.
   */
  @Test
  void columnOnAnEdgeOrACornerBelongsToOneFacetAlone() {
    double[][] rim = {
      {4, 1.5}, {4, 4}, {1.5, 4}, {0, 3}, {0, 1.5}, {0, 0}, {1.5, 0}, {3, 0},
    };
    List<double[]> facets = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      double[] p = rim[i];
      double[] q = rim[(i + 1) % 8];
      facets.add(new double[] {1.5, 1.5, 0, q[0], q[1], 0, p[0], p[1], 0});
      facets.add(new double[] {1.5, 1.5, 4, p[0], p[1], 4, q[0], q[1], 4});
    }
    // where the rim leaves (4, 0) and (0, 4) out
    facets.add(new double[] {3, 0, 4, 4, 0, 4, 4, 1.5, 4});
    facets.add(new double[] {3, 0, 0, 4, 1.5, 0, 4, 0, 0});
    facets.add(new double[] {1.5, 4, 4, 0, 4, 4, 0, 3, 4});
    facets.add(new double[] {1.5, 4, 0, 0, 3, 0, 0, 4, 0});
    VoxelBody body = body(facets, 64, 0, 0, 0, 4, 4, 4);
    assertThat(body.inside().cardinality()).isEqualTo(64);
    assertThat(body.brokenColumns()).isZero();
  }

  @Test
  void facetThatIsAPointOrUprightTurnsNothing() {
    List<double[]> facets = new ArrayList<>(Bodies.box(0, 0, 0, 4, 6, 8));
    facets.add(new double[] {2, 3, 4, 2, 3, 4, 2, 3, 4});
    facets.add(new double[] {0.5, 0.5, 1, 0.5, 0.5, 7, 0.5, 0.5, 4});
    facets.add(new double[] {0, 0, 1, 4, 4, 1, 2, 2, 7});
    VoxelBody body = body(facets, 192, 0, 0, 0, 4, 6, 8);
    assertThat(body.inside().cardinality()).isEqualTo(192);
    assertThat(body.brokenColumns()).isZero();
  }

  /** A sheet under everything turns all 6 x 8 columns, which never end; one above turns none. */
  @Test
  void columnsEndAtTheTopOfTheBox() {
    double[] under = {-50, -50, -9, 90, -50, -9, 0, 90, -9};
    VoxelBody turned = body(List.of(under), 192, 0, 0, 0, 4, 6, 8);
    assertThat(turned.inside().isEmpty()).isTrue();
    assertThat(turned.brokenColumns()).isEqualTo(6 * 8);
    double[] above = {-50, -50, 19, 90, -50, 19, 0, 90, 19};
    VoxelBody untouched = body(List.of(above), 192, 0, 0, 0, 4, 6, 8);
    assertThat(untouched.inside().isEmpty()).isTrue();
    assertThat(untouched.brokenColumns()).isZero();
  }

  /** Half the columns of 4 x 6 are turned at their foot, and lie beside such as are not. */
  @Test
  void columnsAreTakenEachForItself() {
    double[] under = {0, 0, -9, 4, 0, -9, 4, 3, -9};
    double[] beside = {0, 0, -9, 4, 3, -9, 0, 3, -9};
    VoxelBody body = body(List.of(under, beside), 192, 0, 0, 0, 4, 6, 8);
    assertThat(body.inside().isEmpty()).isTrue();
    assertThat(body.brokenColumns()).isEqualTo(4 * 3);
  }
}
