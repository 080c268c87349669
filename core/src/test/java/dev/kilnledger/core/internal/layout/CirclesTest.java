package dev.kilnledger.core.internal.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CirclesTest {
  /** Best known packings of unit circles in a circle, published to three decimals. */
  private static final double[] PUBLISHED = {
    1, 2, 2.154, 2.414, 2.701, 3, 3, 3.304, 3.613, 3.813, 3.923, 4.029, 4.236, 4.328, 4.521, 4.615,
    4.792, 4.863, 4.863, 5.122
  };

  private static void assertApart(List<Spot> spots, double pitch) {
    for (int i = 0; i < spots.size(); i++) {
      for (int j = 0; j < i; j++) {
        Spot a = spots.get(i);
        Spot b = spots.get(j);
        assertThat(Math.hypot(a.x() - b.x(), a.y() - b.y()))
            .isGreaterThanOrEqualTo(pitch * (1 - 1e-9));
      }
    }
  }

  /** The published figures are cut off or rounded in the third decimal. */
  @Test
  void enclosingCirclesAreThePublishedOnes() {
    for (int n = 1; n <= 20; n++) {
      assertThat(UnitCircles.radius(n)).isCloseTo(PUBLISHED[n - 1], within(0.001));
    }
    // closed forms of the packings, by hand
    assertThat(UnitCircles.radius(3)).isCloseTo(1 + 2 / Math.sqrt(3), within(1e-9));
    assertThat(UnitCircles.radius(11)).isCloseTo(1 + 1 / Math.sin(Math.PI / 9), within(1e-8));
    assertThat(UnitCircles.radius(13)).isCloseTo(2 + Math.sqrt(5), within(1e-8));
    assertThat(UnitCircles.radius(19)).isCloseTo(1 + Math.sqrt(2) + Math.sqrt(6), within(1e-8));
  }

  /** However the middles are rounded: no closer than 2, but for the last bits of a root. */
  @Test
  void circlesOfTheTableDoNotOverlapAtAll() {
    for (int n = 1; n <= 20; n++) {
      double[] middles = UnitCircles.middles(n);
      assertThat(middles).hasSize(2 * n);
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < i; j++) {
          double x = middles[2 * i] - middles[2 * j];
          double y = middles[2 * i + 1] - middles[2 * j + 1];
          assertThat(Math.hypot(x, y)).isGreaterThanOrEqualTo(2 - 2e-15);
        }
      }
    }
  }

  /** A circle that just encloses n holds them, and cannot be said to hold fewer at most. */
  @Test
  void enclosingCircleHoldsWhatItEncloses() {
    for (int n = 1; n <= 20; n++) {
      double radius = UnitCircles.radius(n);
      assertThat(UnitCircles.held(radius)).isGreaterThanOrEqualTo(n);
      assertThat(UnitCircles.provenMost(radius)).isGreaterThanOrEqualTo(n);
    }
  }

  /** Between the published radii of n and n + 1 circles there fit n; 14 to 18 are not proven. */
  @Test
  void provenCountIsThatBetweenThePublishedRadii() {
    for (int n : new int[] {1, 2, 3, 4, 5, 7, 8, 9, 10, 11, 12}) {
      double between = (PUBLISHED[n - 1] + PUBLISHED[n]) / 2;
      assertThat(UnitCircles.provenMost(between)).isEqualTo(n);
    }
    assertThat(UnitCircles.provenMost(0.99)).isZero();
    assertThat(UnitCircles.provenMost(PUBLISHED[12] + 0.001)).isEqualTo(18);
    assertThat(UnitCircles.provenMost(PUBLISHED[18] - 0.001)).isEqualTo(18);
    assertThat(UnitCircles.provenMost(PUBLISHED[18] + 0.001)).isEqualTo(Integer.MAX_VALUE);
  }

  @Test
  void roundFloorHoldsAsManyAsPublished() {
    for (int n = 1; n <= 20; n++) {
      double room = PUBLISHED[n - 1] + 0.001 - 1; // pitch 2: circles of radius 1
      Layer layer = CirclesInCircle.most(room, 2);
      assertThat(layer.spots().size()).isGreaterThanOrEqualTo(n);
      assertThat(CirclesInCircle.most(PUBLISHED[n - 1] - 0.001 - 1, 2).spots().size())
          .isLessThan(n);
    }
  }

  /** 13 and fewer, and 19, are proven: so from R12 on 12 cannot be exceeded below R13. */
  @Test
  void provenPackingsCannotBeExceeded() {
    assertThat(CirclesInCircle.most(3.1, 2).atMost()).isEqualTo(12);
    assertThat(CirclesInCircle.most(3.3, 2).atMost()).isGreaterThan(13);
    assertThat(CirclesInCircle.most(3.86, 2).atMost()).isLessThanOrEqualTo(18);
  }

  @Test
  void circlesNeitherOverlapNorLeaveTheCircle() {
    for (double room = 0; room < 12; room += 0.0937) {
      Layer layer = CirclesInCircle.most(room, 1.7);
      assertApart(layer.spots(), 1.7);
      double limit = room + 2e-9;
      assertThat(layer.spots()).allMatch(spot -> spot.fromMiddle() <= limit);
      assertThat(layer.atMost()).isGreaterThanOrEqualTo(layer.spots().size());
    }
  }

  /**
   * Hexagonal numbers 1 + 3 k (k + 1) fit at a radius of 2 k + 1 (by hand). Best known, from
   * memory: 37 at 6.759, 61 at 8.661, 91 at 10.567; a pattern cannot beat them.
   */
  @ParameterizedTest
  @CsvSource({"37, 7, 6.758", "61, 9, 8.661", "91, 11, 10.56"})
  void largeFloorsHoldHexagonsAndNoMoreThanIsKnown(int n, double hexagon, double best) {
    assertThat(CirclesInCircle.most(hexagon - 1, 2).spots().size()).isGreaterThanOrEqualTo(n);
    assertThat(CirclesInCircle.most(best - 0.002 - 1, 2).spots().size()).isLessThan(n);
  }

  /** Points of the pattern counted one by one, with its points, edges and cells in the middle. */
  @Test
  void largeFloorsHoldThePatternsLaidAboutTheMiddle() {
    double[][] hexagons = {{0, 0}, {1, 0}, {1, 1 / Math.sqrt(3)}};
    double[][] squares = {{0, 0}, {1, 0}, {1, 1}};
    for (double room = 4.2; room < 16; room += 0.23) {
      int found = CirclesInCircle.most(room, 2).spots().size();
      for (double[] middle : hexagons) {
        assertThat(found).isGreaterThanOrEqualTo(counted(room, 1, Math.sqrt(3), middle));
      }
      for (double[] middle : squares) {
        assertThat(found).isGreaterThanOrEqualTo(counted(room, 0, 2, middle));
      }
      assertThat(found).isGreaterThanOrEqualTo(inRings(room));
    }
  }

  /** Rings along the wall of pi / asin(1 / room) circles, and the published ones in the last. */
  private static int inRings(double room) {
    int published = 0;
    while (published < 20 && PUBLISHED[published] + 0.001 <= room + 1) {
      published++;
    }
    return published < 20
        ? published
        : Math.max(20, (int) Math.floor(Math.PI / Math.asin(1 / room)) + inRings(room - 2));
  }

  private static int counted(double room, double shift, double rise, double[] middle) {
    int count = 0;
    for (int row = -20; row <= 20; row++) {
      for (int i = -40; i <= 40; i++) {
        double x = 2 * i + row * shift - middle[0];
        double y = row * rise - middle[1];
        count += Math.hypot(x, y) <= room ? 1 : 0;
      }
    }
    return count;
  }

  /** Oler's inequality by hand: 2 / sqrt(3) x 20 / 1.69 + 18 / 2.6 + 1 = 21.59. */
  @Test
  void olersInequalitySaysHowManyThereCannotBe() {
    assertThat(CirclesInBox.most(5, 4, 1.3).atMost()).isEqualTo(21);
    // 2 / sqrt(3) x 36 pi / 4 + 12 pi / 4 + 1 = 43.07
    assertThat(CirclesInCircle.most(6, 2).atMost()).isEqualTo(43);
  }

  /**
   * Oler's inequality is sharp where the points of the triangular pattern fill the figure: a
   * triangle of side k holds (k + 1)(k + 2) / 2 of them, a hexagon 1 + 3 k (k + 1) (by hand).
   */
  @Test
  void olersInequalityIsSharpForTrianglesAndHexagons() {
    for (int k = 1; k <= 60; k++) {
      double triangle = Math.sqrt(3) / 4 * k * k;
      assertThat(Layer.oler(triangle, 3 * k, 1)).isEqualTo((k + 1) * (k + 2) / 2);
      assertThat(Layer.oler(6 * triangle, 6 * k, 1)).isEqualTo(1 + 3 * k * (k + 1));
    }
  }

  /** The first radius at which the next circle is proven to fit; below 11 the middles are exact. */
  @Test
  void provenPackingsAreProvenUpToTheirRadius() {
    for (int n = 2; n <= 13; n++) {
      double room = UnitCircles.radius(n) - 1;
      assertThat(CirclesInCircle.most(room - 1e-6, 2).atMost()).isLessThan(n);
      assertThat(CirclesInCircle.most(room + 1e-6, 2).atMost()).isGreaterThanOrEqualTo(n);
    }
  }

  /** All lengths ten times as large or as small: the same count, in the same pattern. */
  @ParameterizedTest
  @ValueSource(doubles = {10, 0.1})
  void layersScaleWithTheirLengths(double scale) {
    for (double room = 0.05; room < 9; room += 0.37) {
      Layer layer = CirclesInCircle.most(room, 2);
      Layer scaled = CirclesInCircle.most(room * scale, 2 * scale);
      assertScaled(layer, scaled, scale);
      assertThat(scaled.bestKnown()).isEqualTo(room + 1 < PUBLISHED[19]);
      Layer box = CirclesInBox.most(room, 3.31, 0.9);
      assertScaled(box, CirclesInBox.most(room * scale, 3.31 * scale, 0.9 * scale), scale);
    }
  }

  /** The nanometre that is allowed for rounding does not scale, on either side. */
  private static void assertScaled(Layer layer, Layer scaled, double scale) {
    double nanometres = Layer.ROUNDING * (1 + scale);
    assertThat(scaled.spots()).hasSameSizeAs(layer.spots());
    assertThat(scaled.atMost()).isEqualTo(layer.atMost());
    for (int i = 0; i < layer.spots().size(); i++) {
      Spot spot = layer.spots().get(i);
      assertThat(scaled.spots().get(i).x()).isCloseTo(spot.x() * scale, within(nanometres));
      assertThat(scaled.spots().get(i).y()).isCloseTo(spot.y() * scale, within(nanometres));
    }
  }

  @Test
  void spotIsAsFarFromTheMiddleAsPythagorasSays() {
    assertThat(new Spot(3, -4, false).fromMiddle()).isEqualTo(5);
  }

  @Test
  void nothingFitsIntoNothing() {
    assertThat(CirclesInCircle.most(-0.1, 2).spots()).isEmpty();
    assertThat(CirclesInBox.most(1, -0.1, 2).spots()).isEmpty();
    assertThat(CirclesInCircle.most(0, 2).spots()).hasSize(1);
  }

  /**
   * Largest least distances of n points in a unit square; 1 / sqrt(1/2) and so on in closed form,
   * that of 39, sqrt(1/100 + 1/36), from memory. Just below them the patterns must hold n, just
   * above they cannot.
   */
  @ParameterizedTest
  @CsvSource({"2, 1.414213", "4, 1", "5, 0.707106", "6, 0.600925", "9, 0.5", "39, 0.194365"})
  void squareFloorHoldsAsManyAsIsKnown(int n, double distance) {
    Layer layer = CirclesInBox.most(1, 1, distance);
    assertThat(layer.spots()).hasSize(n);
    assertThat(CirclesInBox.most(1, 1, distance + 1e-3).spots().size()).isLessThan(n);
    assertThat(layer.atMost()).isGreaterThanOrEqualTo(n);
  }

  /**
   * Staggered rows that touch rise by sqrt(3) / 2 (by hand): five of three each where half a circle
   * is left over at the end of a row, otherwise three and two by turns.
   */
  @ParameterizedTest
  @CsvSource({"2.5, 15", "2, 13"})
  void staggeredRowsThatJustFitAreFound(double along, int count) {
    double across = 4 * Math.sqrt(3) / 2;
    for (boolean turned : new boolean[] {false, true}) {
      double x = turned ? across : along;
      double y = turned ? along : across;
      Layer layer = CirclesInBox.most(x, y, 1);
      assertThat(layer.spots()).hasSize(count);
      assertApart(layer.spots(), 1);
      assertThat(layer.spots())
          .allMatch(
              spot -> Math.abs(spot.x()) <= x / 2 + 2e-9 && Math.abs(spot.y()) <= y / 2 + 2e-9);
    }
  }

  @Test
  void circlesNeitherOverlapNorLeaveTheBox() {
    for (double length = 0; length < 9; length += 0.371) {
      for (double width = 0; width < 9; width += 0.293) {
        Layer layer = CirclesInBox.most(length, width, 1.3);
        assertApart(layer.spots(), 1.3);
        double x = length / 2 + 2e-9;
        double y = width / 2 + 2e-9;
        assertThat(layer.spots())
            .allMatch(spot -> Math.abs(spot.x()) <= x && Math.abs(spot.y()) <= y);
        assertThat(layer.atMost()).isGreaterThanOrEqualTo(layer.spots().size());
      }
    }
  }

  /** One row is proven: 8 circles of 10 touch in 70 between the outermost middles. */
  @Test
  void singleRowIsProven() {
    Layer row = CirclesInBox.most(79, 0, 10);
    assertThat(row.spots()).hasSize(8);
    assertThat(row.atMost()).isEqualTo(8);
  }
}
