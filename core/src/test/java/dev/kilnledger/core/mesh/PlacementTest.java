package dev.kilnledger.core.mesh;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Transforms worked by hand after the 3MF Core Specification (from memory): the twelve numbers are
 * the rows of a matrix of four rows and three columns that the row (x, y, z, 1) is multiplied by.
 */
class PlacementTest {
  /** Its determinant is 1 (50 - 48) - 2 (40 - 42) + 3 (32 - 35) = -3. */
  private static final String MIRRORING = "1 2 3 4 5 6 7 8 10 11 12 13";

  private static Placement parse(String text) {
    Placement placement = Placement.parse(text);
    assertThat(placement).isNotNull();
    return placement;
  }

  private static double[] placed(Placement placement, double x, double y, double z) {
    return new double[] {placement.x(x, y, z), placement.y(x, y, z), placement.z(x, y, z)};
  }

  @Test
  void pointIsTheRowTimesTheMatrix() {
    Placement placement = parse(MIRRORING);
    assertThat(placed(placement, 0, 0, 0)).containsExactly(11, 12, 13);
    assertThat(placed(placement, 1, 0, 0)).containsExactly(12, 14, 16);
    assertThat(placed(placement, 0, 1, 0)).containsExactly(15, 17, 19);
    assertThat(placed(placement, 0, 0, 1)).containsExactly(18, 20, 23);
    // 1 + 8 + 21 + 11, 2 + 10 + 24 + 12, 3 + 12 + 30 + 13
    assertThat(placed(placement, 1, 2, 3)).containsExactly(41, 48, 58);
  }

  @Test
  void withinAnotherIsFirstTheInnerAndThenTheOuter() {
    Placement inner = parse(MIRRORING);
    Placement outer = parse("2 0 1 0 3 0 1 1 1 5 6 7");
    // (41, 48, 58) by the outer: 82 + 58 + 5, 144 + 58 + 6, 41 + 58 + 7
    assertThat(placed(inner.within(outer), 1, 2, 3)).containsExactly(145, 208, 106);
    double[] twoSteps = placed(inner, -3, 5, 7);
    assertThat(placed(inner.within(outer), -3, 5, 7))
        .containsExactly(placed(outer, twoSteps[0], twoSteps[1], twoSteps[2]));
    assertThat(placed(inner.within(Placement.HERE), 1, 2, 3)).containsExactly(41, 48, 58);
    assertThat(placed(Placement.HERE.within(inner), 1, 2, 3)).containsExactly(41, 48, 58);
  }

  @Test
  void mirrorsWhereTheDeterminantIsBelowZero() {
    assertThat(parse(MIRRORING).mirrors()).isTrue();
    // two rows exchanged: the determinant changes its sign, wherever it is shifted
    assertThat(parse("4 5 6 1 2 3 7 8 10 -11 -12 -13").mirrors()).isFalse();
    assertThat(parse("7 8 10 4 5 6 1 2 3 0 0 0").mirrors()).isFalse();
    assertThat(Placement.HERE.mirrors()).isFalse();
    // every term of the determinant alone: an even order of the columns keeps the hand
    assertThat(parse("0 1 0 0 0 1 1 0 0 0 0 0").mirrors()).isFalse();
    assertThat(parse("0 0 1 1 0 0 0 1 0 0 0 0").mirrors()).isFalse();
    assertThat(parse("1 0 0 0 0 1 0 1 0 0 0 0").mirrors()).isTrue();
    assertThat(parse("0 1 0 1 0 0 0 0 1 0 0 0").mirrors()).isTrue();
    assertThat(parse("0 0 1 0 1 0 1 0 0 0 0 0").mirrors()).isTrue();
    // and with factors, of which a quotient would have another sign of the sum:
    // 1 (2 2 - 3 1) = 1, -1 (2 2 - 3 1) = -1, 1 (2 2 - 3 1) = 1
    assertThat(parse("1 0 0 0 2 3 0 1 2 0 0 0").mirrors()).isFalse();
    assertThat(parse("0 1 0 2 0 3 1 0 2 0 0 0").mirrors()).isTrue();
    assertThat(parse("0 0 1 2 3 0 1 2 0 0 0 0").mirrors()).isFalse();
  }

  /** What is flattened has no inside that could come to lie outside. */
  @Test
  void flatteningDoesNotMirror() {
    assertThat(parse("1 0 0 0 1 0 0 0 0 0 0 0").mirrors()).isFalse();
  }

  @Test
  void twelveNumbersMayStandBetweenAnyWhiteSpace() {
    Placement placement = parse(" 1e0 0 0\t0 +1 0\n0 0 1.0  4 5 -6 ");
    assertThat(placed(placement, 1, 1, 1)).containsExactly(5, 6, -5);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "1 0 0 0 1 0 0 0 1 0 0",
        "1 0 0 0 1 0 0 0 1 0 0 0 0",
        "1 0 0 0 1 0 0 0 1 0 0 x",
        "NaN 0 0 0 1 0 0 0 1 0 0 0",
        "1,0,0,0,1,0,0,0,1,0,0,0"
      })
  void anythingElseIsNone(String text) {
    assertThat(Placement.parse(text)).isNull();
  }
}
