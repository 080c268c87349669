package dev.kilnledger.core.finding;

import static dev.kilnledger.units.Amounts.celsius;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.source.Source;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class FindingTest {
  private enum Code implements FindingCode {
    PEAK_BELOW_SOLIDUS;

    @Override
    public String code() {
      return "peak-below-solidus";
    }
  }

  private static Finding.Builder finding() {
    return Finding.builder()
        .code(Code.PEAK_BELOW_SOLIDUS)
        .severity(Severity.STOP)
        .basis(Source.user("own rule"));
  }

  @Test
  void carriesWhatWasMeasuredAndTheLimit() {
    Finding finding =
        finding()
            .subject("copper")
            .message("The peak lies above the solidus.")
            .measured(celsius(1100))
            .limit(celsius(1084.62))
            .build();
    assertThat(finding.measured()).contains(celsius(1100));
    assertThat(finding.limit()).contains(celsius(1084.62));
    assertThat(finding.code().code()).isEqualTo("peak-below-solidus");
    assertThat(finding().subject("a").message("b").build().measured()).isEmpty();
  }

  @Test
  void opensToWhatWasMeasuredAndTheLimit() {
    Finding.Builder copper = finding().subject("copper").message("too hot");
    Explanation bare = copper.build().explanation();
    assertThat(bare.what()).isEqualTo("copper, peak-below-solidus");
    assertThat(bare.shown()).isEqualTo("stop: too hot");
    assertThat(bare.formula()).isEmpty();
    assertThat(bare.children()).isEmpty();
    Explanation compared =
        copper.measured(celsius(1100)).limit(celsius(1084)).build().explanation();
    assertThat(compared.formula()).contains("measured against limit");
    assertThat(compared.at("measured").value()).isEqualTo(celsius(1100));
    assertThat(compared.at("limit").value()).isEqualTo(celsius(1084));
    assertThat(compared.at("limit").source()).contains(Source.user("own rule"));
  }

  @Test
  void refusesBlankTextAndTellsAllOfIt() {
    assertThatThrownBy(() -> finding().subject("").message(" ").build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "finding peak-below-solidus: subject is blank; accepted is any text; and message is"
                + " blank; accepted is any text");
  }

  @Test
  void severitiesRiseFromPassedToStop() {
    assertThat(Severity.values())
        .isEqualTo(
            new Severity[] {
              Severity.PASSED, Severity.NOTE, Severity.UNDETERMINED, Severity.WARNING, Severity.STOP
            });
  }

  @Test
  void cautionsAreShortAndSourced() {
    assertThat(Arrays.stream(Caution.values()).map(Caution::text))
        .allSatisfy(text -> assertThat(text).endsWith(".").hasSizeBetween(60, 330));
    assertThat(List.of(Caution.values())).allSatisfy(each -> assertThat(each.source()).isNotNull());
    // 29 CFR 1910.1000 table Z-1 and 29 CFR 1910.1053.
    assertThat(Caution.CARBON_MONOXIDE.text()).contains("50 ppm");
    assertThat(Caution.MINERAL_DUST.text()).contains("0.05 mg/m3");
  }
}
