package dev.kilnledger.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;

/** The example runs, tells what it promises, and prints the same wherever it runs. */
class HowSureTheFiringIsTest {
  @Test
  void tellsProbabilitiesDriversAndWhatHelps() {
    Locale before = Locale.getDefault();
    String text;
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      text = HowSureTheFiringIs.text();
    } finally {
      Locale.setDefault(before);
    }
    assertThat(text.lines()).allMatch(line -> line.length() <= 100);
    assertThat(text)
        .contains("10000 draws, seed 1")
        .containsPattern("the core gets its soak +\\d\\d\\.\\d % \\+- 0\\.\\d %")
        .contains("the density wanted is reached                0.0 to 100.0 %")
        .containsPattern("soak, each input alone.*\\n-+\\nthe offset of the kiln ")
        .containsPattern("all programmes hotter: by \\d+ K");
  }
}
