package dev.kilnledger.core.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class FacetSumsTest {
  private static FacetSums sums(List<double[]> facets) {
    FacetSums sums = new FacetSums();
    for (double[] f : facets) {
      sums.facet(f[0], f[1], f[2], f[3], f[4], f[5], f[6], f[7], f[8]);
    }
    return sums;
  }

  private static boolean paired(List<double[]> facets) {
    EdgePairs pairs = new EdgePairs();
    for (double[] f : facets) {
      pairs.facet(f[0], f[1], f[2], f[3], f[4], f[5], f[6], f[7], f[8]);
    }
    return pairs.paired();
  }

  private static double[] turned(double[] f) {
    return new double[] {f[0], f[1], f[2], f[6], f[7], f[8], f[3], f[4], f[5]};
  }

  /** A third of base times height, and Heron or Pythagoras for the faces (by hand). */
  @Test
  void tetrahedronHasItsVolumeAndArea() {
    double[] o = {1, 2, 3};
    double[] a = {4, 2, 3};
    double[] b = {1, 6, 3};
    double[] c = {1, 2, 8};
    List<double[]> facets =
        List.of(
            Bodies.facet(o, b, a),
            Bodies.facet(o, a, c),
            Bodies.facet(o, c, b),
            Bodies.facet(a, b, c));
    FacetSums sums = sums(facets);
    assertThat(sums.volume()).isCloseTo(3 * 4 * 5 / 6.0, within(1e-12));
    // 3 x 4 / 2 + 3 x 5 / 2 + 4 x 5 / 2 and half the root of 12^2 + 15^2 + 20^2
    assertThat(sums.area()).isCloseTo(6 + 7.5 + 10 + Math.sqrt(769) / 2, within(1e-12));
    assertThat(sums.facets()).isEqualTo(4);
    assertThat(sums.flat()).isZero();
    assertThat(sums.reaches()).extracting(Reach::low).containsExactly(1.0, 2.0, 3.0);
    assertThat(sums.reaches()).extracting(Reach::high).containsExactly(4.0, 6.0, 8.0);
    assertThat(sums.hasInside()).isTrue();
    assertThat(sums.edges().closed()).isTrue();
    assertThat(sums(facets.stream().map(FacetSumsTest::turned).toList()).volume())
        .isCloseTo(-10, within(1e-12));
  }

  @Test
  void edgesTellHolesFromFacetsThatLookTheOtherWay() {
    List<double[]> box = Bodies.box(0, 0, 0, 1, 2, 3);
    assertThat(sums(box).edges().closed()).isTrue();
    assertThat(paired(box)).isTrue();
    for (int i = 0; i < box.size(); i++) {
      List<double[]> open = new ArrayList<>(box);
      open.remove(i);
      assertThat(sums(open).edges().closed()).isFalse();
      assertThat(paired(open)).isFalse();
      List<double[]> wrong = new ArrayList<>(box);
      wrong.set(i, turned(box.get(i)));
      assertThat(sums(wrong).edges().closed()).isFalse();
      assertThat(paired(wrong)).isTrue();
    }
    // one zero or the other is the same corner
    List<double[]> zeros = new ArrayList<>();
    for (int i = 0; i < box.size(); i++) {
      double[] f = box.get(i).clone();
      for (int j = 0; j < 9; j++) {
        f[j] = f[j] == 0 && i % 2 == 0 ? -0.0 : f[j];
      }
      zeros.add(f);
    }
    assertThat(sums(zeros).edges().closed()).isTrue();
    // a facet that is a line adds nothing
    List<double[]> line = new ArrayList<>(box);
    line.add(new double[] {0, 0, 0, 0, 0, 0, 1, 0, 0});
    assertThat(sums(line).edges().closed()).isTrue();
    assertThat(sums(line).flat()).isEqualTo(1);
  }

  /**
   * What rounding the corners leaves of it, some ten thousandths, has its volume to the last
   * digits.
   */
  @Test
  void bodyFarFromTheOriginCancelsNothing() {
    double x = 1e7 + 1 / 3.0;
    List<double[]> box = Bodies.box(x, x, x, 0.7, 0.3, 0.9);
    double volume = (x + 0.7 - x) * (x + 0.3 - x) * (x + 0.9 - x);
    assertThat(sums(box).volume()).isCloseTo(volume, within(1e-15));
  }

  @Test
  void anyOfThreeReachesFurther() {
    double[][] lows = {{1, 5, 5}, {5, 1, 5}, {5, 5, 1}};
    double[][] highs = {{9, 5, 5}, {5, 9, 5}, {5, 5, 9}};
    for (int i = 0; i < 3; i++) {
      Reach reach = new Reach();
      reach.include(5, 5, 5);
      reach.include(lows[i][0], lows[i][1], lows[i][2]);
      assertThat(reach.low()).isEqualTo(1);
      assertThat(reach.high()).isEqualTo(5);
      reach.include(highs[i][0], highs[i][1], highs[i][2]);
      assertThat(reach.length()).isEqualTo(8);
    }
  }

  @Test
  void cornersMayLieUpToTheFurthestOnBothSides() {
    for (int axis = 0; axis < 3; axis++) {
      for (double end : new double[] {-10, 10}) {
        double[] f = {0, 0, 0, 1, 1, 1, 2, 2, 2};
        f[3 + axis] = end;
        assertThat(sums(List.of(f)).isWithin(10)).isTrue();
        assertThat(sums(List.of(f)).isWithin(9.99)).isFalse();
      }
    }
  }

  @Test
  void whatIsFlatOrTurnedUponItselfHasNoInside() {
    assertThat(sums(Bodies.box(0, 0, 0, 1, 1, 0)).hasInside()).isFalse();
    assertThat(sums(Bodies.box(0, 0, 0, 1e-30, 1e-30, 1e-30)).hasInside()).isFalse();
    assertThat(sums(Bodies.box(0, 0, 0, 1e-10, 1e-10, 1e-10)).hasInside()).isTrue();
    List<double[]> both = new ArrayList<>(Bodies.box(0, 0, 0, 1, 1, 1));
    both.addAll(Bodies.box(0, 0, 0, 1, 1, 1).stream().map(FacetSumsTest::turned).toList());
    assertThat(sums(both).hasInside()).isFalse();
  }

  /**
   * At 2^29 a double has steps of 2^-23. Sides of so many steps are exact there, and so are the
   * differences of corners; their products from the far origin instead would need more digits than
   * there are, and leave errors of 2^29 steps of 2^-53, about 1e-7.
   */
  @Test
  void bodyFarFromTheOriginKeepsItsVolumeToTheLastDigits() {
    double far = 0x1p29;
    double a = 1 + 0x1p-20;
    double b = 1 + 0x1p-21;
    double c = 1 + 0x1p-22;
    for (double[] corner : new double[][] {{far, 0, 0}, {0, -far, 0}, {0, 0, far}}) {
      FacetSums sums =
          sums(Bodies.box(corner[0] + 0x1p-23, corner[1] + 0x1p-23, corner[2] + 0x1p-23, a, b, c));
      // a product and twelve additions, each rounded to 1e-16 of a few
      assertThat(sums.volume()).isCloseTo(a * b * c, within(1e-14));
    }
  }

  /** An edge whose ends are one has no other that would have to fit it. */
  @Test
  void edgeWithoutLengthNeedsNoPair() {
    List<double[]> box = new ArrayList<>(Bodies.box(0, 0, 0, 1, 2, 3));
    box.add(new double[] {5, 5, 5, 5, 5, 5, 6, 5, 5});
    box.add(new double[] {7, 7, 7, 7, 7, 7, 7, 7, 7});
    assertThat(paired(box)).isTrue();
    box.add(new double[] {5, 5, 5, 6, 5, 5, 6, 6, 5});
    assertThat(paired(box)).isFalse();
  }
}
