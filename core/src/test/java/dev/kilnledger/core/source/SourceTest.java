package dev.kilnledger.core.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.units.Amounts;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class SourceTest {

  @Test
  void citesTextAndStanding() {
    assertThat(Source.published("ISO 2738").cite()).isEqualTo("ISO 2738 (published)");
    assertThat(Source.quoted("ASTM B446").cite())
        .isEqualTo("ASTM B446 (quoted in a public data sheet)");
    assertThat(Source.recomputed("steam tables").cite()).isEqualTo("steam tables (recomputed)");
    assertThat(Source.commonPractice("holds").cite())
        .isEqualTo("holds (common practice, no source)");
    assertThat(Source.fromMemory("handbook").cite()).isEqualTo("handbook (from memory)");
    assertThat(Source.user("own kiln").cite()).isEqualTo("own kiln (stated by the user)");
  }

  @Test
  void everyStandingHasWordsOfItsOwn() {
    assertThat(Arrays.stream(Standing.values()).map(Standing::words))
        .doesNotHaveDuplicates()
        .noneMatch(String::isBlank);
  }

  @Test
  void refusesBlankText() {
    assertThatThrownBy(() -> Source.published(" "))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("source: text is blank; accepted is any text");
  }

  @Test
  void sourcedFactsAreEqualByValueConditionAndSource() {
    Source source = Source.user("own scale");
    Sourced<?> fact = Sourced.of(Amounts.grams(50), source);
    assertThat(fact).isEqualTo(Sourced.of(Amounts.kilograms(0.05), "", source));
    assertThat(fact).isNotEqualTo(Sourced.of(Amounts.grams(50), "dry", source));
    assertThat(fact).isNotEqualTo(Sourced.of(Amounts.grams(50), Source.user("another scale")));
  }
}
