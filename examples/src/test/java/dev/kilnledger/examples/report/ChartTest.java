package dev.kilnledger.examples.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Contrast by the formula of WCAG 2.2 (relative luminance; from memory): 4.5 to 1 for words
 * (1.4.3), 3 to 1 for lines that mean something (1.4.11).
 */
class ChartTest {
  @Test
  void theFormulaGivesWhatTheStandardSaysOfBlackAndWhite() {
    assertThat(contrast(Color.BLACK, Color.WHITE)).isEqualTo(21);
    assertThat(contrast(Color.WHITE, Color.WHITE)).isEqualTo(1);
  }

  @Test
  void wordsAndLinesStandOutFromThePaper() {
    assertThat(contrast(Chart.INK, Color.WHITE)).isGreaterThan(4.5);
    assertThat(contrast(Chart.INK, Chart.SHADE)).isGreaterThan(4.5);
    for (Color line : List.of(Chart.BLUE, Chart.VERMILION, Chart.GREEN)) {
      assertThat(contrast(line, Color.WHITE)).as(line.toString()).isGreaterThan(3);
    }
    // the kiln's line is light, but broad, and has dark ones on it from both sides
    assertThat(contrast(Chart.SKY, Chart.INK)).isGreaterThan(3);
  }

  @Test
  void noTwoFillsLookAlikeInGrey() {
    for (Hatch one : Chart.FILLS) {
      for (Hatch other : Chart.FILLS) {
        if (!one.equals(other) && one.marks().equals(other.marks())) {
          assertThat(contrast(one.color(), other.color()))
              .as(one + " and " + other)
              .isGreaterThan(1.4);
        }
      }
      // the outline tells areas from the paper
      assertThat(contrast(one.color(), Chart.INK)).isGreaterThan(3);
    }
  }

  @Test
  void aLongNameIsCutToItsWidthAndAShortOneIsKept() {
    assertThat(Chart.cut("kiln", 100)).isEqualTo("kiln");
    String cut = Chart.cut("filament ".repeat(40) + "\ud83d\udd25", 100);
    assertThat(cut).startsWith("filament").endsWith("…");
    assertThat(Chart.widthOf(cut)).isLessThanOrEqualTo(100);
  }

  static double contrast(Color one, Color other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(Color color) {
    return 0.2126 * linear(color.getRed())
        + 0.7152 * linear(color.getGreen())
        + 0.0722 * linear(color.getBlue());
  }

  private static double linear(int channel) {
    double share = channel / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }
}
