package dev.kilnledger.thermal.kiln;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.TradeUnits.KELVIN_DIFFERENCE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThermocoupleTest {
  /** IEC 60584-1:2013, class 2: max(2.5, 0.0075 t) for K and N, max(1.5, 0.0025 t) for S and R. */
  @ParameterizedTest
  @CsvSource({
    "K, 1000, 7.5",
    "K, 1200, 9.0",
    "K, 100, 2.5",
    "K, -40, 2.5",
    "N, 1000, 7.5",
    "N, -40, 2.5",
    "S, 1300, 3.25",
    "R, 1600, 4.0",
    "S, 0, 1.5"
  })
  void hasTheToleranceOfTheStandard(Thermocouple type, double celsius, double kelvin) {
    assertThat(type.tolerance(celsius(celsius)).orElseThrow().in(KELVIN_DIFFERENCE))
        .isCloseTo(kelvin, within(1e-12));
    Finding finding = type.finding(celsius(celsius));
    assertThat(finding.severity()).isEqualTo(Severity.PASSED);
    assertThat(finding.measured()).isEqualTo(type.tolerance(celsius(celsius)));
    assertThat(finding.message())
        .isEqualTo(
            String.format(
                Locale.ROOT,
                "at %.0f °C a new one of class 2 may read wrong by %s K up or down",
                celsius,
                BigDecimal.valueOf(kelvin).setScale(1, RoundingMode.HALF_UP)));
  }

  @Test
  void typeKHasNoneAbove1200() {
    assertThat(Thermocouple.K.tolerance(celsius(1201))).isEmpty();
    assertThat(Thermocouple.S.tolerance(celsius(-1))).isEmpty();
    Finding finding = Thermocouple.K.finding(celsius(1250));
    assertThat(finding.severity()).isEqualTo(Severity.WARNING);
    assertThat(finding.message())
        .isEqualTo(
            "no tolerance is stated at 1250 °C, only for -40 to 1200 °C: choose a type made for"
                + " it");
  }
}
