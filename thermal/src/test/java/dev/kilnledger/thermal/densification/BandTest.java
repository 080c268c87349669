package dev.kilnledger.thermal.densification;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvin;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kilojoulesPerMole;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.volumeFraction;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.kinetics.ArrheniusIntegral;
import dev.kilnledger.thermal.kinetics.TemperatureHistory;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import javax.measure.quantity.Dimensionless;
import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The band of a forecast against the propagation of errors, with differences for derivatives. */
class BandTest {
  private static final double REFERENCE = 1250;
  private static final double HOT = 1273.15;

  /** Of Q in 100 kJ/mol, a at the reference temperature, ln b and the density before sintering. */
  private static final double[][] COVARIANCE = {
    {4e-4, 1e-3, 2e-4, -1e-5},
    {1e-3, 1e-2, -5e-4, 4e-5},
    {2e-4, -5e-4, 2.5e-3, 2e-5},
    {-1e-5, 4e-5, 2e-5, 1e-5}
  };

  private static FittedSinteringCurve.Builder fitted() {
    List<Double> flat = new ArrayList<>();
    for (double[] row : COVARIANCE) {
      Arrays.stream(row).forEach(flat::add);
    }
    SinteringCurve curve =
        SinteringCurve.builder()
            .name("invented powder")
            .activationEnergy(kilojoulesPerMole(300))
            .base(SinteringCurve.Base.NATURAL)
            .location(ratio(-26))
            .width(ratio(0.8))
            .initialDensity(volumeFraction(0.6))
            .range(Span.of(celsius(800), celsius(1350)))
            .source(Source.user("invented for the tests"))
            .build();
    return FittedSinteringCurve.builder()
        .curve(curve)
        .activationEnergy(Estimate.exactly(curve.activationEnergy()))
        .location(Estimate.exactly(curve.location()))
        .width(Estimate.exactly(curve.width()))
        .initialDensity(Estimate.exactly(curve.initialDensity()))
        .confidence(ratio(0.95))
        .scatter(volumeFraction(0.004))
        .degreesOfFreedom(10)
        .densities(Span.of(volumeFraction(0.6), volumeFraction(0.9)))
        .reference(kelvin(REFERENCE))
        .covariance(flat);
  }

  private static TemperatureHistory hold(double hours) {
    return TemperatureHistory.of(Profile.from(kelvin(HOT)).hold(hours(hours)).build());
  }

  /** Su and Johnson's sigmoid at the end of a hold, by the four numbers that were fitted. */
  private static double density(double[] numbers, double hours) {
    double joules = numbers[0] * 1e5;
    double logWork = Math.log(hours * 3600 / HOT) - joules / (ArrheniusIntegral.GAS_CONSTANT * HOT);
    double location = numbers[1] - joules / (ArrheniusIntegral.GAS_CONSTANT * REFERENCE);
    double steps = (logWork - location) / Math.exp(numbers[2]);
    return numbers[3] + (1 - numbers[3]) / (1 + Math.exp(-steps));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.5, 2, 6})
  void followsFromTheScatterAndTheCovariance(double hours) {
    double[] numbers = {
      3, -26 + 3e5 / (ArrheniusIntegral.GAS_CONSTANT * REFERENCE), Math.log(0.8), 0.6
    };
    double[] slope = new double[4];
    for (int i = 0; i < 4; i++) {
      double[] more = numbers.clone();
      double[] less = numbers.clone();
      more[i] += 1e-5;
      less[i] -= 1e-5;
      slope[i] = (density(more, hours) - density(less, hours)) / 2e-5;
    }
    double variance = 0.004 * 0.004;
    for (int i = 0; i < 4; i++) {
      for (int j = 0; j < 4; j++) {
        variance += slope[i] * COVARIANCE[i][j] * slope[j];
      }
    }
    // Student's t for 10 degrees of freedom, 0.975: 2.228 in every table.
    double half = 2.228139 * Math.sqrt(variance);
    DensityForecast forecast = Densification.standard().along(fitted().build(), hold(hours));
    double expected = forecast.density().expected().si();
    assertThat(expected).isCloseTo(density(numbers, hours), within(1e-12));
    // Central differences of 1e-5 are good to about 1e-9 of the slope.
    assertThat(forecast.density().span().high().si() - expected).isCloseTo(half, within(1e-7));
    assertThat(expected - forecast.density().span().low().si()).isCloseTo(half, within(1e-7));
    DensityPoint last = forecast.points().get(forecast.points().size() - 1);
    double logWork = Math.log(hours * 3600 / HOT) - 3e5 / (ArrheniusIntegral.GAS_CONSTANT * HOT);
    assertThat(last.logWork().orElseThrow().si()).isCloseTo(logWork / Math.log(10), within(1e-12));
  }

  /** Where nothing is in doubt the hold expected to do is the one that does for certain. */
  @Test
  void holdIsSafeAsExpectedWhereNothingIsInDoubt() {
    FittedSinteringCurve certain =
        fitted().scatter(volumeFraction(0)).covariance(Collections.nCopies(16, 0.0)).build();
    Profile profile =
        Profile.from(celsius(20)).rampTo(kelvin(HOT), kelvinPerHour(100)).hold(hours(1)).build();
    HoldToDensity more =
        Densification.standard().holdToReach(certain, profile, 2, volumeFraction(0.8));
    assertThat(more.safe().orElseThrow().si() / more.expected().si()).isCloseTo(1, within(1e-8));
    HoldToDensity none =
        Densification.standard().holdToReach(certain, profile, 2, volumeFraction(0.61));
    assertThat(none.expected().si()).as("the ramp does").isZero();
    assertThat(none.safe().orElseThrow().si()).isZero();
    Profile first =
        Profile.from(kelvin(HOT)).hold(hours(1)).coolTo(celsius(20), kelvinPerHour(100)).build();
    HoldToDensity atOnce =
        Densification.standard().holdToReach(certain, first, 1, volumeFraction(0.8));
    assertThat(atOnce.expected().si())
        .as("what the cooling does is what the ramp did")
        .isCloseTo(more.expected().si(), within(1e-9 * more.expected().si()));
    for (int segment : new int[] {0, 1, 3}) {
      assertThatThrownBy(
              () ->
                  Densification.standard()
                      .holdToReach(certain, profile, segment, volumeFraction(0.8)))
          .hasMessage(
              "hold to a density: segment "
                  + segment
                  + " of 2 is no hold; accepted is the number of a hold");
    }
  }

  @Test
  void firingsHotterThanTheCurveWasObservedAreFound() {
    Finding hot =
        Densification.standard()
            .along(
                fitted().build(),
                TemperatureHistory.of(Profile.from(celsius(1400)).hold(hours(1)).build()))
            .findings()
            .get(0);
    assertThat(hot.message())
        .startsWith("the part gets as hot as 1400 °C, and the curve was observed from 800 to 1350")
        .endsWith(": above, another mechanism may set in");
    assertThat(hot.measured()).contains(celsius(1400));
    assertThat(hot.limit()).contains(celsius(1350));
    Finding cold =
        Densification.standard()
            .along(
                fitted().build(),
                TemperatureHistory.of(Profile.from(celsius(700)).hold(hours(1)).build()))
            .findings()
            .get(0);
    assertThat(cold.limit()).contains(celsius(800));
  }

  /** The intervals of a fit, from its covariance and Student's t of an independent library. */
  @Test
  void intervalsOfAFitFollowFromItsCovariance() {
    FittedSinteringCurve fit = fitOfTwoRuns(ratio(0.9));
    double t = new TDistribution(fit.degreesOfFreedom()).inverseCumulativeProbability(0.95);
    List<Double> c = fit.covariance();
    double perEnergy = 1e5 / (ArrheniusIntegral.GAS_CONSTANT * fit.reference().si());
    double location =
        Math.sqrt(perEnergy * perEnergy * c.get(0) - 2 * perEnergy * c.get(1) + c.get(5));
    assertThat(half(fit.activationEnergy()) / (t * Math.sqrt(c.get(0)) * 1e5))
        .isCloseTo(1, within(1e-9));
    // Large terms cancel here.
    assertThat(half(fit.location()) / (t * location)).isCloseTo(1, within(1e-6));
    assertThat(half(fit.initialDensity()) / (t * Math.sqrt(c.get(15)))).isCloseTo(1, within(1e-9));
    assertThat(Math.log(fit.width().span().high().ratio(fit.width().expected())))
        .isCloseTo(t * Math.sqrt(c.get(10)), within(1e-9));
    assertThat(fit.findings().get(0).message())
        .startsWith("the activation energy is ")
        .contains(", at 90 % confidence from ")
        .endsWith(" kJ/mol");
  }

  private static double half(Estimate<?> estimate) {
    return (estimate.span().high().si() - estimate.span().low().si()) / 2;
  }

  /** Two holds of the invented powder, read every few minutes, one reading in two a little high. */
  private static FittedSinteringCurve fitOfTwoRuns(Amount<Dimensionless> confidence) {
    List<DensificationRun> runs = new ArrayList<>();
    for (double hot : new double[] {1000, 1080}) {
      TemperatureHistory history =
          TemperatureHistory.of(
              Profile.from(celsius(20))
                  .rampTo(celsius(hot), kelvinPerHour(300))
                  .hold(hours(6))
                  .build());
      List<DensityReading> readings = new ArrayList<>();
      for (int i = 1; i <= 60; i++) {
        double hours = history.duration().in(HOUR) * i / 60;
        double logWork =
            new ArrheniusIntegral(kilojoulesPerMole(300))
                .workAlong(history)
                .logAt(hours(hours).si());
        double density = fitted().build().curve().densityAt(logWork).si();
        readings.add(
            DensityReading.of(
                hours(hours), volumeFraction(density + (i % 2 == 0 ? 0.002 : -0.002))));
      }
      runs.add(DensificationRun.of("run to " + hot, history, readings));
    }
    return new SinteringCurveFit(confidence).fit("invented powder", runs);
  }

  @Test
  void refusesWhatNoFitGives() {
    assertThatThrownBy(
            () ->
                fitted()
                    .confidence(ratio(1))
                    .degreesOfFreedom(0)
                    .covariance(List.of(-1.0, -2.0, Double.NaN))
                    .build())
        .hasMessage(
            "fitted sintering curve of invented powder: confidence is 1; accepted is above 0 and"
                + " below 1; and degrees of freedom are 0; accepted are 1 or more; and covariance"
                + " has 3 numbers; accepted are 4 rows of 4; and number 1 of the covariance is"
                + " -1.0; accepted are finite numbers, none below zero on the diagonal; and number"
                + " 3 of the covariance is NaN; accepted are finite numbers, none below zero on the"
                + " diagonal");
    List<Double> sixth = new ArrayList<>(Collections.nCopies(16, 0.0));
    sixth.set(5, -1e-9);
    assertThatThrownBy(() -> fitted().confidence(ratio(0)).covariance(sixth).build())
        .hasMessageContaining("confidence is 0; accepted is above 0 and below 1")
        .hasMessageContaining("number 6 of the covariance is -1.0E-9; accepted are finite");
    assertThat(fitted().degreesOfFreedom(1).build().degreesOfFreedom()).isEqualTo(1);
    for (double confidence : new double[] {0, 1}) {
      assertThatThrownBy(() -> new SinteringCurveFit(ratio(confidence)))
          .hasMessage(
              "sintering curve fit: confidence is "
                  + (int) confidence
                  + "; accepted is above 0 and below 1");
    }
    assertThatThrownBy(
            () ->
                SinteringCurve.builder()
                    .from(fitted().build().curve())
                    .initialDensity(volumeFraction(0))
                    .build())
        .hasMessageContaining("accepted is a rise between 0 and 1");
  }
}
