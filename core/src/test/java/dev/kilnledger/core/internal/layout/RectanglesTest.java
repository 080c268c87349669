package dev.kilnledger.core.internal.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RectanglesTest {
  private static final double SLACK = 5e-9;

  private static void assertApart(List<Spot> spots, double length, double width, double gap) {
    for (int i = 0; i < spots.size(); i++) {
      for (int j = 0; j < i; j++) {
        Spot a = spots.get(i);
        Spot b = spots.get(j);
        double x = Math.abs(a.x() - b.x()) - halfX(a, length, width) - halfX(b, length, width);
        double y = Math.abs(a.y() - b.y()) - halfX(a, width, length) - halfX(b, width, length);
        assertThat(Math.max(x, y)).isGreaterThanOrEqualTo(gap - SLACK);
      }
    }
  }

  private static double halfX(Spot spot, double length, double width) {
    return (spot.turned() ? width : length) / 2;
  }

  /**
   * Least radii of a circle around n unit squares, in closed form, from memory: sqrt(1/2),
   * sqrt(5)/2, 5 sqrt(17)/16, sqrt(2), sqrt(10)/2, sqrt(13)/2, sqrt(1105)/16, 3 sqrt(2)/2, sqrt(5).
   */
  @ParameterizedTest
  @CsvSource({
    "1, 0.70711",
    "2, 1.11804",
    "3, 1.28848",
    "4, 1.41422",
    "5, 1.58114",
    "7, 1.80278",
    "9, 2.07760",
    "10, 2.12133",
    "12, 2.23607"
  })
  void roundFloorHoldsAsManySquaresAsIsKnown(int n, double radius) {
    assertThat(RectanglesInCircle.most(radius, 1, 1, 0).spots()).hasSize(n);
    assertThat(RectanglesInCircle.most(2.5 * radius, 2.5, 2.5, 0).spots()).hasSize(n);
    assertThat(RectanglesInCircle.most(radius - 2e-5, 1, 1, 0).spots().size()).isLessThan(n);
  }

  /** Two rows of two squares a gap apart reach 1 + gap / 2 from the middle both ways (by hand). */
  @ParameterizedTest
  @ValueSource(doubles = {1, 0.5})
  void gapsLieBetweenRowsAndBetweenSquaresButNotAtTheWall(double gap) {
    double radius = (1 + gap / 2) * Math.sqrt(2);
    Layer layer = RectanglesInCircle.most(radius, 1, 1, gap);
    assertThat(layer.spots()).hasSize(4);
    assertApart(layer.spots(), 1, 1, gap);
    assertThat(RectanglesInCircle.most(radius - 2e-5, 1, 1, gap).spots().size()).isLessThan(4);
  }

  @Test
  void circleAroundASquareHoldsIt() {
    assertThat(RectanglesInCircle.most(Math.hypot(1, 1) / 2, 1, 1, 0).spots()).hasSize(1);
  }

  /** Every sequence of up to six rows at every offset of a fine grid, counted by brute force. */
  @Test
  void noRowsOnAFineGridHoldMore() {
    double[][] cases = {
      {2.3, 2, 1, 0.1}, {3.1, 1.7, 1.1, 0}, {2.9, 3, 0.8, 0.3}, {3.6, 1.9, 1.3, 0.5}
    };
    for (double[] c : cases) {
      int found = RectanglesInCircle.most(c[0], c[1], c[2], c[3]).spots().size();
      int brute = 0;
      for (double bottom = -c[0]; bottom < 0.5; bottom += 0.004) {
        brute = Math.max(brute, stacked(c, bottom));
      }
      assertThat(found).isGreaterThanOrEqualTo(brute);
    }
  }

  private static int stacked(double[] c, double bottom) {
    int best = 0;
    for (int turned = 0; turned < 2; turned++) {
      double length = turned == 0 ? c[1] : c[2];
      double height = turned == 0 ? c[2] : c[1];
      double farthest = Math.max(Math.abs(bottom), Math.abs(bottom + height));
      if (farthest <= c[0]) {
        double chord = 2 * Math.sqrt(c[0] * c[0] - farthest * farthest);
        int count = (int) Math.floor((chord + c[3]) / (length + c[3]));
        best = Math.max(best, count + stacked(c, bottom + height + c[3]));
      }
    }
    return best;
  }

  @Test
  void rectanglesNeitherOverlapNorLeaveTheCircle() {
    for (double radius = 0.5; radius < 9; radius += 0.173) {
      double length = 1.9;
      double width = 0.7;
      Layer layer = RectanglesInCircle.most(radius, length, width, 0.2);
      assertApart(layer.spots(), length, width, 0.2);
      double limit = radius + SLACK;
      assertThat(layer.spots())
          .allMatch(
              s ->
                  Math.hypot(
                          Math.abs(s.x()) + halfX(s, length, width),
                          Math.abs(s.y()) + halfX(s, width, length))
                      <= limit);
      assertThat(layer.atMost()).isGreaterThanOrEqualTo(layer.spots().size());
    }
  }

  @Test
  void whichSideIsCalledTheLengthDoesNotMatter() {
    for (double length = 3; length < 12; length += 0.71) {
      for (double width = 3; width < 12; width += 0.83) {
        int found = RectanglesInBox.most(length, width, 2.5, 1.1, 0.1).spots().size();
        assertThat(RectanglesInBox.most(length, width, 1.1, 2.5, 0.1).spots()).hasSize(found);
        assertThat(RectanglesInBox.most(width, length, 2.5, 1.1, 0.1).spots()).hasSize(found);
      }
    }
    for (double radius = 1; radius < 6; radius += 0.17) {
      assertThat(RectanglesInCircle.most(radius, 2.5, 1.1, 0.1).spots())
          .hasSameSizeAs(RectanglesInCircle.most(radius, 1.1, 2.5, 0.1).spots());
    }
  }

  /**
   * Each rectangle and the half gap around it, rounded at the corners, cover a x b + g (a + b) + pi
   * g2 / 4; the box with its half gap is as much larger (by hand).
   */
  @Test
  void areaSaysHowManyThereCannotBe() {
    // 8 x 5 + 0.4 x 13 + 0.1257 = 45.33 of 3 x 1.5 + 0.4 x 4.5 + 0.1257 = 6.426: 7.05
    assertThat(RectanglesInBox.most(8, 5, 3, 1.5, 0.4).atMost()).isEqualTo(7);
    // 3 x 2.95 + 5.95 + 0.785 = 15.585 of 1 + 2 + 0.785 = 3.785: 4.12
    assertThat(RectanglesInBox.most(3, 2.95, 1, 1, 1).atMost()).isEqualTo(4);
    // 0.15 x 0.2 is three of 0.1 x 0.1 to the last digit, of which two fit
    assertThat(RectanglesInBox.most(0.15, 0.2, 0.1, 0.1, 0).spots()).hasSize(2);
    assertThat(RectanglesInBox.most(0.15, 0.2, 0.1, 0.1, 0).atMost()).isEqualTo(3);
    // pi x 2 = 6.28 of unit squares; pi x 2.2 x 2.2 = 15.2 of 1 + 0.4 x 2 + 0.1257 = 1.926: 7.9
    assertThat(RectanglesInCircle.most(1.41422, 1, 1, 0).atMost()).isEqualTo(6);
    assertThat(RectanglesInCircle.most(2, 1, 1, 0.4).atMost()).isEqualTo(7);
  }

  @Test
  void nothingFitsIntoNothing() {
    assertThat(RectanglesInBox.most(-1, 5, 1, 1, 0.2)).isEqualTo(Layer.none());
    assertThat(RectanglesInBox.most(0, 0, 1, 1, 2)).isEqualTo(Layer.none());
    assertThat(RectanglesInCircle.most(0.7, 1, 1, 0)).isEqualTo(Layer.none());
  }

  /** Four parts of 3 x 2 go round a hole of 1 x 1 in 5 x 5; rows alone hold three (by hand). */
  @Test
  void pinwheelIsFound() {
    Layer layer = RectanglesInBox.most(5, 5, 3, 2, 0);
    assertThat(layer.spots()).hasSize(4);
    assertThat(layer.atMost()).isEqualTo(4);
    assertApart(layer.spots(), 3, 2, 0);
  }

  /**
   * By hand, 7 x 3 in 32 x 33: two columns of seven (14 x 21), beside them six by three turned (18
   * x 21), above four columns of four (28 x 12) and one turned in the 4 x 12 left over. The
   * straight blocks stand one above the other in the one box, side by side in the other.
   */
  @Test
  void fourBlocksOfDifferentSizesAreFoundInABoxAndInTheSameTurned() {
    int count = 2 * 7 + 6 * 3 + 4 * 4 + 1;
    Layer layer = RectanglesInBox.most(32, 33, 7, 3, 0);
    assertThat(layer.spots()).hasSize(count);
    assertApart(layer.spots(), 7, 3, 0);
    assertThat(RectanglesInBox.most(33, 32, 7, 3, 0).spots()).hasSize(count);
  }

  /**
   * Pallets that the literature solves, from memory: 47 of 7 x 3 in 40 x 25, 41 of 12 x 5 in 57 x
   * 44. Four blocks, without blocks in blocks, may miss one.
   */
  @Test
  void palletsHoldNoMoreThanTheLiteratureSays() {
    assertThat(RectanglesInBox.most(40, 25, 7, 3, 0).spots().size()).isBetween(46, 47);
    assertThat(RectanglesInBox.most(57, 44, 12, 5, 0).spots().size()).isBetween(40, 41);
  }

  /**
   * Whole sizes: an exhaustive search cell by cell finds the true most; up to 7 x 7 it is reached.
   */
  @Test
  void smallBoxesHoldWhatExhaustiveSearchFinds() {
    for (int length = 1; length <= 7; length++) {
      for (int width = 1; width <= length; width++) {
        for (int[] part : new int[][] {{2, 1}, {3, 1}, {2, 2}, {3, 2}, {4, 1}, {4, 3}, {5, 2}}) {
          int found = RectanglesInBox.most(length, width, part[0], part[1], 0).spots().size();
          int exact = exhaustive(new boolean[length][width], 0, 0, part[0], part[1], new int[1]);
          assertThat(found)
              .as("%d x %d in %d x %d", part[0], part[1], length, width)
              .isEqualTo(exact);
          assertThat(RectanglesInBox.most(width, length, part[0], part[1], 0).spots())
              .as("%d x %d in %d x %d", part[0], part[1], width, length)
              .hasSize(exact);
        }
      }
    }
  }

  private static int exhaustive(
      boolean[][] taken, int cell, int laid, int length, int width, int[] best) {
    int columns = taken[0].length;
    int cells = taken.length * columns;
    best[0] = Math.max(best[0], laid);
    int free = 0;
    for (int i = cell; i < cells; i++) {
      free += taken[i / columns][i % columns] ? 0 : 1;
    }
    if (laid + free / (length * width) <= best[0]) {
      return best[0];
    }
    int next = cell;
    while (taken[next / columns][next % columns]) {
      next++;
    }
    int row = next / columns;
    int column = next % columns;
    for (int turned = 0; turned < (length == width ? 1 : 2); turned++) {
      int p = turned == 0 ? length : width;
      int q = turned == 0 ? width : length;
      if (isFree(taken, row, column, p, q)) {
        mark(taken, row, column, p, q, true);
        exhaustive(taken, next + 1, laid + 1, length, width, best);
        mark(taken, row, column, p, q, false);
      }
    }
    exhaustive(taken, next + 1, laid, length, width, best);
    return best[0];
  }

  private static boolean isFree(boolean[][] taken, int row, int column, int p, int q) {
    if (row + p > taken.length || column + q > taken[0].length) {
      return false;
    }
    for (int i = row; i < row + p; i++) {
      for (int j = column; j < column + q; j++) {
        if (taken[i][j]) {
          return false;
        }
      }
    }
    return true;
  }

  private static void mark(boolean[][] taken, int row, int column, int p, int q, boolean value) {
    for (int i = row; i < row + p; i++) {
      for (int j = column; j < column + q; j++) {
        taken[i][j] = value;
      }
    }
  }

  @Test
  void rectanglesNeitherOverlapNorLeaveTheBox() {
    for (double length = 0.5; length < 9; length += 0.61) {
      for (double width = 0.5; width < 9; width += 0.53) {
        Layer layer = RectanglesInBox.most(length, width, 1.9, 0.8, 0.15);
        assertApart(layer.spots(), 1.9, 0.8, 0.15);
        double x = length / 2 + SLACK;
        double y = width / 2 + SLACK;
        assertThat(layer.spots())
            .allMatch(
                s ->
                    Math.abs(s.x()) + halfX(s, 1.9, 0.8) <= x
                        && Math.abs(s.y()) + halfX(s, 0.8, 1.9) <= y);
        assertThat(layer.atMost()).isGreaterThanOrEqualTo(layer.spots().size());
      }
    }
  }
}
