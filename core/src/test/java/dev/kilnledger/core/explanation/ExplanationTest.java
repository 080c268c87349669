package dev.kilnledger.core.explanation;

import static dev.kilnledger.units.Amounts.cubicCentimetres;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.gramsPerCubicCentimetre;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.core.source.Standing;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.Serializable;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class ExplanationTest {
  private static final Source DRAWING = Source.user("the drawing");

  private static final Explanation DENSITY =
      Explanation.given(
          "density",
          Sourced.of(gramsPerCubicCentimetre(8.93), "at 20 °C", Source.fromMemory("a handbook")));

  private static final Explanation VOLUME =
      Explanation.given("volume", cubicCentimetres(3), DRAWING);

  private static final Explanation MASS =
      Explanation.computed("mass", grams(26.79), "density x volume", DENSITY, VOLUME);

  private static final Explanation TWO =
      Explanation.computed("two parts", grams(53.58), "mass + mass again", MASS, MASS);

  @Test
  void readsAsTheDocumentationShows() {
    assertThat(MASS.text())
        .isEqualTo(
            """
            mass: 26.79 g, from density x volume
              density: 8.93 g/cm³, at 20 °C; a handbook (from memory)
              volume: 3 cm³; the drawing (stated by the user)
            """);
  }

  @Test
  void opensAFigureOnceAndAsDeepAsAsked() {
    assertThat(TWO.text())
        .isEqualTo(
            """
            two parts: 53.58 g, from mass + mass again
              mass: 26.79 g, from density x volume
                density: 8.93 g/cm³, at 20 °C; a handbook (from memory)
                volume: 3 cm³; the drawing (stated by the user)
              mass: 26.79 g, as above
            """);
    assertThat(TWO.text(0)).isEqualTo("two parts: 53.58 g, from mass + mass again\n");
    assertThat(TWO.text(1).lines()).hasSize(3);
  }

  @Test
  void givesOneLineForEachNodeWithItsPlace() {
    assertThat(MASS.outline())
        .containsExactly(
            "mass: 26.79 g, from density x volume",
            "1 density: 8.93 g/cm³, at 20 °C; a handbook (from memory)",
            "2 volume: 3 cm³; the drawing (stated by the user)");
    assertThat(TWO.walk())
        .extracting(ExplanationNode::number)
        .containsExactly("", "1", "1.1", "1.2", "2", "2.1", "2.2");
    assertThat(TWO.walk()).extracting(ExplanationNode::depth).containsExactly(0, 1, 2, 2, 1, 2, 2);
    assertThat(TWO.nodes()).hasSize(7);
  }

  @Test
  void keepsToAHundredColumnsHoweverDeepAndLong() {
    Explanation node =
        Explanation.given("a".repeat(250), ratio(1), Source.user("word ".repeat(60)));
    for (int depth = 0; depth < 60; depth++) {
      node = Explanation.computed("level " + depth, ratio(1), "the one below", node);
    }
    assertThat(node.text().lines()).hasSizeGreaterThan(60).allMatch(l -> l.length() <= 100);
    assertThat(node.outline()).hasSize(61).allMatch(l -> l.length() <= 100);
    assertThat(node.text().replaceAll("\\s", "")).contains("a".repeat(250));
    assertThat(node.outline().get(60)).endsWith(" ...");
  }

  @Test
  void breaksLinesAfterAHundredColumnsAndNotBefore() {
    Source none = Source.user("x");
    String tail = ": 1; x (stated by the user)"; // 27 columns
    String fits = "a".repeat(100 - 27);
    assertThat(Explanation.given(fits, ratio(1), none).text()).isEqualTo(fits + tail + "\n");
    assertThat(Explanation.given("a" + fits, ratio(1), none).text())
        .isEqualTo("a" + fits + ": 1; x (stated by the\n    user)\n");
    assertThat(Explanation.given("a" + fits, ratio(1), none).line()).isEqualTo("a" + fits + tail);
    assertThat(Explanation.given(fits, ratio(1), none).outline()).containsExactly(fits + tail);
    assertThat(Explanation.given("a" + fits, ratio(1), none).outline())
        .containsExactly("a" + fits + tail.substring(0, 22) + " ...");
    // a word of 100 columns fills a line of its own, one of 101 is cut
    String word = "w".repeat(99);
    assertThat(Explanation.given(word, ratio(1), none).text())
        .isEqualTo(word + ":\n    1; x (stated by the user)\n");
    assertThat(Explanation.given("w" + word, ratio(1), none).text())
        .isEqualTo("w" + word + "\n    : 1; x (stated by the user)\n");
  }

  @Test
  void tellsTheWeakestGroundsFirst() {
    Explanation figure =
        Explanation.builder()
            .from(TWO)
            .source(Source.published("a standard"))
            .addChildren(Explanation.given("gap", millimetres(2), Source.commonPractice("potters")))
            .build();
    assertThat(figure.grounds())
        .extracting(Explanation::what)
        .containsExactly("density", "gap", "volume", "two parts");
    assertThat(figure.grounds(Standing.FROM_MEMORY, Standing.COMMON_PRACTICE))
        .extracting(Explanation::what)
        .containsExactly("density", "gap");
    assertThat(figure.grounds(Standing.QUOTED)).isEmpty();
  }

  @Test
  void showsSixDigitsAndNeverLessThanAllBeforeThePoint() {
    assertThat(shown(grams(1 / 3.0))).isEqualTo("0.333333 g");
    assertThat(shown(grams(12345678.9))).isEqualTo("12345679 g");
    assertThat(shown(grams(820))).isEqualTo("820 g");
    assertThat(shown(grams(-2.00000049))).isEqualTo("-2 g");
    assertThat(shown(grams(0))).isEqualTo("0 g");
    assertThat(shown(new BigDecimal("0.000"))).isEqualTo("0");
    assertThat(shown(Span.of(grams(1.5), grams(2)))).isEqualTo("1.5 to 2 g");
    assertThat(shown(Span.of(grams(500), kilograms(1)))).isEqualTo("500 g to 1 kg");
    assertThat(shown(Estimate.of(ratio(1), ratio(2), ratio(3)))).isEqualTo("2 (1 to 3)");
    assertThat(shown(Estimate.exactly(ratio(2)))).isEqualTo("2");
    assertThat(shown(new BigDecimal("0.02777777777777777777"))).isEqualTo("0.0277778");
    assertThat(shown(new BigDecimal("2800"))).isEqualTo("2800");
    assertThat(shown("never")).isEqualTo("never");
  }

  private static String shown(Serializable value) {
    return Explanation.given("it", value, DRAWING).shown();
  }

  @Test
  void findsWhatIsBelowByName() {
    assertThat(TWO.at("mass", "volume")).isEqualTo(VOLUME);
    assertThat(MASS.as("m").at("density")).isEqualTo(DENSITY);
    assertThatThrownBy(() -> TWO.at("mass", "colour"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("mass does not stand on \"colour\"; accepted is one of [density, volume]");
  }

  @Test
  void refusesNodesThatExplainNothing() {
    assertThatThrownBy(() -> Explanation.builder().what("mass").value(grams(1)).build())
        .hasMessage(
            "explanation of mass: there is neither formula nor source; accepted is at least one;"
                + " and there is nothing below it and no source; accepted is at least one");
    assertThatThrownBy(() -> Explanation.computed("mass", grams(1), "density x volume"))
        .hasMessageContaining("there is nothing below it and no source");
    assertThatThrownBy(
            () ->
                Explanation.builder()
                    .what("mass")
                    .value(grams(1))
                    .source(DRAWING)
                    .children(List.of(VOLUME))
                    .build())
        .hasMessageContaining("there is no formula for what is below it; accepted is a formula");
  }

  @Test
  void survivesSerialization() throws Exception {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(TWO);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      assertThat(in.readObject()).isEqualTo(TWO);
    }
  }
}
