package dev.kilnledger.thermal.burnout;

import static dev.kilnledger.units.Amounts.kilojoulesPerMole;
import static dev.kilnledger.units.Amounts.massPercent;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two energies are apart by their difference over their mean; all numbers are invented. */
class MethodAgreementTest {
  private static EnergyAtConversion at(double percent, double kilojoules, double half) {
    return ImmutableEnergyAtConversion.of(
        massPercent(percent),
        Estimate.of(
            kilojoulesPerMole(kilojoules - half),
            kilojoulesPerMole(kilojoules),
            kilojoulesPerMole(kilojoules + half)));
  }

  private static IsoconversionalFit fit(EnergyAtConversion... energies) {
    Finding any =
        BurnOutFinding.ONE_STEP
            .about("test")
            .severity(Severity.PASSED)
            .message("made for the test")
            .basis(Source.user("test"))
            .build();
    return ImmutableIsoconversionalFit.of(List.of(energies), ratio(0.95), any, any);
  }

  /** A tenth is 95 against 105; 90 and 110 are a fifth apart. */
  @ParameterizedTest
  @CsvSource({
    "95, 1, 105, 1, PASSED, ''",
    "94, 1, 106, 1, WARNING, ': the energy changes as the loss goes on, or the runs are noisy'",
    "90, 25, 110, 25, PASSED, ': each in the interval of the other'",
    "90, 25, 110, 1, WARNING, ': the energy changes as the loss goes on, or the runs are noisy'",
    "90, 1, 110, 25, WARNING, ': the energy changes as the loss goes on, or the runs are noisy'"
  })
  void agreesWithinATenthOrWithinBothIntervals(
      double one, double half, double other, double otherHalf, Severity severity, String why) {
    Finding finding =
        KineticFit.standard()
            .agreement(
                fit(at(20, 100, 1), at(50, one, half)),
                fit(at(20, 101, 1), at(50, other, otherHalf)));
    assertThat(finding.severity()).isEqualTo(severity);
    assertThat(finding.measured().orElseThrow().si()).isCloseTo((other - one) / 100, within(1e-12));
    assertThat(finding.message())
        .isEqualTo(
            "at a loss of 50 % by mass the integral method tells "
                + one
                + " kJ/mol and the differential one "
                + other
                + " kJ/mol"
                + why);
  }

  @Test
  void refusesFitsOfOtherConversions() {
    assertThatThrownBy(
            () -> KineticFit.standard().agreement(fit(at(20, 100, 1)), fit(at(30, 100, 1))))
        .hasMessage(
            "kinetic fit: the fits are at different conversions; accepted are two fits of the same"
                + " runs");
  }
}
