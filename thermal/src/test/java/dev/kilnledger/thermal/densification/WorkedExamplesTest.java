package dev.kilnledger.thermal.densification;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvin;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kilojoulesPerMole;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.volumeFraction;
import static dev.kilnledger.units.TradeUnits.KILOJOULE_PER_MOLE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.Workbench;
import dev.kilnledger.thermal.kinetics.TemperatureHistory;
import dev.kilnledger.thermal.profile.Profile;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The worked examples of the documentation, one for each model. */
class WorkedExamplesTest {
  /** 1.747442e-10 + 2.189487e-09 s/K, decimal logarithm -8.626310: computed in other software. */
  @Test
  void densificationIsAsDocumented() {
    Profile ramp = Profile.from(kelvin(300)).rampTo(kelvin(1123), kelvinPerHour(150)).build();
    Profile hold = Profile.from(kelvin(1123)).hold(hours(4)).build();
    Profile both =
        Profile.from(kelvin(300)).rampTo(kelvin(1123), kelvinPerHour(150)).hold(hours(4)).build();
    assertThat(Math.exp(logWork(ramp))).isCloseTo(1.747442e-10, within(5e-17));
    assertThat(Math.exp(logWork(hold))).isCloseTo(2.189487e-9, within(5e-16));
    assertThat(logWork(both) / Math.log(10)).isCloseTo(-8.626310, within(5e-7));
  }

  private static double logWork(Profile profile) {
    return Densification.standard().logWork(kilojoulesPerMole(210), TemperatureHistory.of(profile));
  }

  /** 0.6 + 0.4 / (1 + exp(-0.00369 / 0.3)) = 0.80123, by hand. */
  @Test
  void sinteringCurveIsAsDocumented() {
    SinteringCurve curve =
        SinteringCurve.builder()
            .name("invented powder")
            .activationEnergy(kilojoulesPerMole(210))
            .base(SinteringCurve.Base.DECIMAL)
            .location(ratio(-8.63))
            .width(ratio(0.3))
            .initialDensity(volumeFraction(0.6))
            .range(Span.of(celsius(700), celsius(900)))
            .source(Source.user("invented for the test"))
            .build();
    assertThat(curve.densityAt(-8.626310 * Math.log(10)).si()).isCloseTo(0.80123, within(5e-6));
  }

  /** The powder is made up, so its energy is known: 300 kJ/mol. */
  @Test
  void sinteringCurveFitIsAsDocumented() {
    List<DensificationRun> runs = new ArrayList<>();
    for (double rate : new double[] {60, 200, 600}) {
      Profile profile =
          Profile.from(celsius(20)).rampTo(celsius(1300), kelvinPerHour(rate)).build();
      TemperatureHistory history = TemperatureHistory.of(profile);
      List<DensityReading> readings = new ArrayList<>();
      for (int i = 0; i <= 40; i++) {
        double celsius = 900 + 10 * i;
        Profile part =
            Profile.from(celsius(20)).rampTo(celsius(celsius), kelvinPerHour(rate)).build();
        double logWork =
            Densification.standard().logWork(kilojoulesPerMole(300), TemperatureHistory.of(part));
        readings.add(
            DensityReading.of(
                hours((celsius - 20) / rate),
                volumeFraction(0.6 + 0.4 / (1 + Math.exp(-(logWork + 23.5) / 1.3)))));
      }
      runs.add(DensificationRun.of("run", history, readings));
    }
    FittedSinteringCurve fitted = SinteringCurveFit.standard().fit("invented powder", runs);
    assertThat(fitted.activationEnergy().expected().in(KILOJOULE_PER_MOLE))
        .isCloseTo(300, within(0.01)); // readings are exact, the fit converges to 1e-5
  }

  /** 1084.62 - 1070 = 14.6 K, under the margin of 20 K; 30 h at 1040 against 4 h at 1050 °C. */
  @Test
  void densificationLimitsAreAsDocumented() {
    assertThat(severities(1070, 1)).containsExactly(Severity.WARNING, Severity.PASSED);
    assertThat(severities(1040, 1)).containsExactly(Severity.PASSED, Severity.PASSED);
    assertThat(severities(1040, 30)).containsExactly(Severity.PASSED, Severity.WARNING);
  }

  private static List<Severity> severities(double celsius, double hours) {
    Profile firing =
        Profile.from(celsius(20))
            .rampTo(celsius(celsius), kelvinPerHour(200))
            .hold(hours(hours))
            .build();
    return DensificationLimits.standard()
        .check(Workbench.copper(), TemperatureHistory.of(firing))
        .stream()
        .map(Finding::severity)
        .toList();
  }

  /** 104 kJ/mol, boundary diffusion (Frost and Ashby), to 230, 55 kcal/mol of neck growth. */
  @Test
  void sinteringEnergiesAreAsDocumented() {
    assertThat(SinteringEnergies.rangeOf(Workbench.copper()))
        .contains(Span.of(kilojoulesPerMole(104), kilojoulesPerMole(230)));
  }
}
