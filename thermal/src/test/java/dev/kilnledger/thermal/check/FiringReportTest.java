package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.thermal.Workbench.setup;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.firing.FiringForecast;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FiringReportTest {
  private static final FiringForecast FORECAST = FiringForecast.of(setup(copper(), 1000).build());
  private static final Finding GOOD = found(FiringFinding.PACKING_USE, PASSED);
  private static final Finding LITTLE = found(FiringFinding.BINDER_FUMES, NOTE);
  private static final Finding OPEN = found(FiringFinding.SUPPLY_CURRENT, UNDETERMINED);
  private static final Finding BAD = found(FiringFinding.DEBINDING_RATE, WARNING);
  private static final Finding WORST = found(FiringFinding.DEBINDING_RATE, STOP);

  private static Finding found(FiringFinding code, Severity severity) {
    return code.about("a part")
        .severity(severity)
        .message("as found")
        .basis(Source.user("looked at"))
        .build();
  }

  private static FiringReport report(Finding... findings) {
    return FiringReport.of(List.of(findings), Set.of());
  }

  @Test
  void isAsBadAsItsWorstFinding() {
    assertThat(report().worst()).isEqualTo(PASSED);
    assertThat(report(GOOD).worst()).isEqualTo(PASSED);
    assertThat(report(LITTLE, WORST, BAD).worst()).isEqualTo(STOP);
    assertThat(report(OPEN, LITTLE).worst()).isEqualTo(UNDETERMINED);
  }

  @Test
  void tellsWhatIsAsBadOrWorseInTheOrderOfTheRules() {
    FiringReport report = report(WORST, GOOD, OPEN, BAD, LITTLE);
    assertThat(report.atLeast(PASSED)).containsExactly(WORST, GOOD, OPEN, BAD, LITTLE);
    assertThat(report.atLeast(NOTE)).containsExactly(WORST, OPEN, BAD, LITTLE);
    assertThat(report.atLeast(UNDETERMINED)).containsExactly(WORST, OPEN, BAD);
    assertThat(report.atLeast(WARNING)).containsExactly(WORST, BAD);
    assertThat(report.atLeast(STOP)).containsExactly(WORST);
  }

  @Test
  void tellsWhatHasACode() {
    FiringReport report = report(WORST, GOOD, BAD);
    assertThat(report.of(FiringFinding.DEBINDING_RATE)).containsExactly(WORST, BAD);
    assertThat(report.of(FiringFinding.SUPPLY_VOLTAGE)).isEmpty();
  }

  @Test
  void asksItsRulesInOrder() {
    List<FiringRule> rules = new ArrayList<>(List.of(forecast -> List.of(BAD, GOOD)));
    FiringCheck check = new FiringCheck(rules);
    rules.clear();
    FiringRule more = forecast -> List.of(OPEN);
    assertThat(check.check(FORECAST).findings()).containsExactly(BAD, GOOD);
    assertThat(check.with(more).check(FORECAST).findings()).containsExactly(BAD, GOOD, OPEN);
    assertThat(check.check(FORECAST.setup())).isEqualTo(check.check(FORECAST));
    assertThat(check.check(FORECAST).cautions()).contains(Caution.HOT_WORK, Caution.MINERAL_DUST);
  }

  @ParameterizedTest
  @EnumSource(FiringFinding.class)
  void namesEachFindingInLowerCase(FiringFinding finding) {
    assertThat(finding.code()).isEqualTo(finding.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  /** Published, so that what is stored with it is found again. */
  @Test
  void keepsItsCodes() {
    assertThat(FiringFinding.DEBINDING_RATE.code()).isEqualTo("debinding-rate");
    assertThat(FiringFinding.SUPPLY_VOLTAGE.code()).isEqualTo("supply-voltage");
  }
}
