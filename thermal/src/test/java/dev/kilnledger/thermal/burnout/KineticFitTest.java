package dev.kilnledger.thermal.burnout;

import static dev.kilnledger.thermal.kinetics.Frequencies.perSecond;
import static dev.kilnledger.units.Amounts.kelvin;
import static dev.kilnledger.units.Amounts.kelvinDifference;
import static dev.kilnledger.units.Amounts.kelvinPerMinute;
import static dev.kilnledger.units.Amounts.kilojoulesPerMole;
import static dev.kilnledger.units.Amounts.massFraction;
import static dev.kilnledger.units.Amounts.milligrams;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.seconds;
import static dev.kilnledger.units.TradeUnits.KELVIN_PER_MINUTE;
import static dev.kilnledger.units.TradeUnits.KILOJOULE_PER_MOLE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.thermal.kinetics.TemperatureHistory;
import dev.kilnledger.units.quantity.MolarEnergy;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import javax.measure.quantity.Dimensionless;
import org.junit.jupiter.api.Test;

class KineticFitTest {
  private static final KineticFit FIT = KineticFit.standard();
  private static final BinderKinetics TRUTH = PublishedKinetics.polyMethylMethacrylate().get(0);

  private static List<LossPeak> peaks(double[] rates, double[] temperatures) {
    List<LossPeak> peaks = new ArrayList<>();
    for (int i = 0; i < rates.length; i++) {
      peaks.add(LossPeak.of(kelvinPerMinute(rates[i]), kelvin(temperatures[i])));
    }
    return peaks;
  }

  // Peaks read off the runs of one laboratory in the MaCFP database (poly(methyl methacrylate) in
  // nitrogen); regression, standard error and t of 5 degrees of freedom by SciPy.
  @Test
  void kissingersLineThroughPublishedPeaksIsThatOfOtherSoftware() {
    KissingerFit fit =
        FIT.kissingerOfPeaks(
            peaks(
                new double[] {1, 2, 5, 10, 20, 50, 100},
                new double[] {604.9, 611.8, 623.8, 633.9, 642.2, 653.5, 662.9}));
    assertThat(fit.activationEnergy().expected().in(KILOJOULE_PER_MOLE))
        .isCloseTo(250.49, within(0.005));
    assertThat(fit.logPreExponential().expected().si()).isCloseTo(43.239, within(5e-4));
    double half =
        fit.activationEnergy().span().high().in(KILOJOULE_PER_MOLE)
            - fit.activationEnergy().expected().in(KILOJOULE_PER_MOLE);
    assertThat(half).isCloseTo(2.5705818356363146 * 4.12429585240043, within(1e-6));
    // Student's t of 5 degrees of freedom, 0.95 one-sided: 2.015 in every table
    KissingerFit narrower = new KineticFit(ratio(0.9)).kissingerOfPeaks(fit.peaks());
    assertThat(
            narrower.activationEnergy().span().high().in(KILOJOULE_PER_MOLE)
                - narrower.activationEnergy().expected().in(KILOJOULE_PER_MOLE))
        .isCloseTo(2.015 * 4.12429585240043, within(5e-4 * 4.2));
    assertThat(fit.findings().get(0).severity()).isEqualTo(Severity.PASSED);
    assertThat(fit.findings().get(0).message())
        .startsWith("the activation energy is 250.5 kJ/mol, at 95 % confidence from 239.9 to 261.1")
        .endsWith(" kJ/mol");
    // ASTM E698 reads the same kinetics off the same line.
    assertThat(fit.step().activationEnergy()).isEqualTo(fit.activationEnergy().expected());
  }

  /**
   * ln A = c + ln(-s) for the line c + s / T: with dc and ds normal its variance is var c + var s /
   * s2 + 2 cov / s, and cov = - mean(1/T) var s (any textbook); t of 5 degrees of freedom by SciPy.
   */
  @Test
  void theIntervalOfThePreExponentialFactorFollowsFromTheLine() {
    double[] rates = {1, 2, 5, 10, 20, 50, 100};
    double[] kelvins = {604.9, 611.8, 623.8, 633.9, 642.2, 653.5, 662.9};
    double[] x = new double[7];
    double[] y = new double[7];
    for (int i = 0; i < 7; i++) {
      x[i] = 1 / kelvins[i];
      y[i] = Math.log(rates[i] / 60 / (kelvins[i] * kelvins[i]));
    }
    double mean = Arrays.stream(x).average().orElseThrow();
    double height = Arrays.stream(y).average().orElseThrow();
    double spread = 0;
    double slope = 0;
    for (int i = 0; i < 7; i++) {
      spread += (x[i] - mean) * (x[i] - mean);
      slope += (x[i] - mean) * (y[i] - height);
    }
    slope /= spread;
    double squares = 0;
    for (int i = 0; i < 7; i++) {
      squares += Math.pow(y[i] - height - slope * (x[i] - mean), 2);
    }
    // var s = s2 / spread, var c = s2 (1 / n + mean2 / spread)
    double slopeVariance = squares / 5 / spread;
    double variance =
        squares / 5 * (1 / 7.0 + mean * mean / spread)
            + slopeVariance / (slope * slope)
            - 2 * mean * slopeVariance / slope;
    Estimate<Dimensionless> log = FIT.kissingerOfPeaks(peaks(rates, kelvins)).logPreExponential();
    double half = 2.5705818356363146 * Math.sqrt(variance);
    assertThat(log.span().high().si() - log.expected().si()).isCloseTo(half, within(1e-6 * half));
    assertThat(log.expected().si() - log.span().low().si()).isCloseTo(half, within(1e-6 * half));
  }

  // Another laboratory's peaks on the same powder, same source.
  @Test
  void anotherLaboratoryDisagreesBeyondEitherInterval() {
    KissingerFit fit =
        FIT.kissingerOfPeaks(
            peaks(
                new double[] {3.05, 10.30, 21.09, 32.38},
                new double[] {621.0, 637.9, 650.5, 658.6}));
    assertThat(fit.activationEnergy().expected().in(KILOJOULE_PER_MOLE))
        .isCloseTo(203.2, within(0.05));
  }

  // Computed with mpmath from 150 kJ/mol and 1e9 1/s; the peaks are rounded to 0.001 K.
  @Test
  void exactPeaksGiveTheEnergyBack() {
    KissingerFit fit =
        FIT.kissingerOfPeaks(
            peaks(new double[] {0.5, 1, 5}, new double[] {630.710, 645.314, 681.881}));
    // 0.0005 K on 51 K between the ends: 1e-5 of E.
    assertThat(fit.activationEnergy().expected().in(KILOJOULE_PER_MOLE))
        .isCloseTo(150, within(0.003));
    assertThat(fit.logPreExponential().expected().si()).isCloseTo(Math.log(1e9), within(5e-4));
  }

  /** A run as a balance would log it, by the closed form; its name lies about its rate. */
  private static Thermogravimetry run(double kelvinPerMinute, double noise, long seed) {
    Random random = new Random(seed);
    TemperatureHistory ramp = BurnOutTest.ramp(480, 760, kelvinPerMinute(kelvinPerMinute));
    double end = ramp.end().time().si();
    List<MassReading> readings = new ArrayList<>();
    for (int i = 0; i <= 560; i++) {
      double time = end * i / 560;
      BurnOutPoint point = BurnOut.standard().at(TRUTH, ramp, seconds(time));
      readings.add(
          MassReading.of(
              seconds(time),
              point.temperature(),
              milligrams(2 + 8 * point.remaining().si() + noise * random.nextGaussian())));
    }
    return Thermogravimetry.builder().name("run at 10 K/min").readings(readings).build();
  }

  @Test
  void theRateComesFromTheTimeColumnAndThePeakFromTheMass() {
    Thermogravimetry run = run(20.1, 0, 1);
    assertThat(run.heatingRate().in(KELVIN_PER_MINUTE)).isCloseTo(20.1, within(1e-9));
    assertThat(run.peak().heatingRate()).isEqualTo(run.heatingRate());
    double exact =
        BurnOut.standard()
            .along(TRUTH, BurnOutTest.ramp(480, 760, kelvinPerMinute(20.1)))
            .peak()
            .temperature()
            .si();
    assertThat(run.peak().temperature().si())
        .isCloseTo(exact, within(0.25)); // stated in smoothing()
    double half =
        BurnOut.standard()
            .reaching(TRUTH, BurnOutTest.ramp(480, 760, kelvinPerMinute(20.1)), massFraction(0.5))
            .orElseThrow()
            .temperature()
            .si();
    assertThat(run.temperatureAt(massFraction(0.5)).si()).isCloseTo(half, within(0.05));
  }

  @Test
  void cleanRunsGiveTheKineticsBack() {
    List<Thermogravimetry> runs = List.of(run(2, 0, 1), run(5, 0, 2), run(10, 0, 3), run(20, 0, 4));
    KissingerFit kissinger = FIT.kissinger(runs);
    // A peak off by 0.05 K at one end of 45 K moves E by 0.1 %.
    assertThat(kissinger.activationEnergy().expected().in(KILOJOULE_PER_MOLE))
        .isCloseTo(191, within(0.4));
    IsoconversionalFit fit = FIT.isoconversional(runs);
    for (EnergyAtConversion at : fit.energies()) {
      // The method's own error at x = 36 is some 0.1 % of E (Starink 2003, from memory).
      assertThat(at.activationEnergy().expected().in(KILOJOULE_PER_MOLE))
          .isCloseTo(191, within(0.8));
    }
    assertThat(fit.energies()).hasSize(9);
    assertThat(fit.finding().severity()).isEqualTo(Severity.PASSED);
    assertThat(fit.finding().message()).endsWith(" kJ/mol as the loss goes on");
    assertThat(fit.range().message()).endsWith(" % of the activation energy");
  }

  @Test
  void noisyRunsGiveAnIntervalThatHoldsTheTruth() {
    int held = 0;
    int heldAtHalf = 0;
    for (int seed = 0; seed < 20; seed++) {
      List<Thermogravimetry> runs = new ArrayList<>();
      for (double rate : new double[] {2, 5, 10, 20, 40}) {
        runs.add(run(rate, 0.01, 100L * seed + (long) rate)); // 10 µg on 8 mg
      }
      if (FIT.kissinger(runs).activationEnergy().span().contains(kilojoulesPerMole(191))) {
        held++;
      }
      if (FIT.isoconversional(runs)
          .energies()
          .get(4)
          .activationEnergy()
          .span()
          .contains(kilojoulesPerMole(191))) {
        heldAtHalf++;
      }
    }
    // 95 % of 20 is 19; fewer than 16 has a probability of 0.3 % (binomial).
    assertThat(held).isGreaterThanOrEqualTo(16);
    assertThat(heldAtHalf).isGreaterThanOrEqualTo(16);
  }

  /**
   * Three rates, no noise: Friedman's method has no approximation of its own. What is left is the
   * smoothing, whose parabola flattens the rate where it bends, alike at all rates but for the
   * width of the peak, which grows as the square of the temperature: 0.5 % of E. KAS is 0.1 % off
   * by itself, so the two agree within 0.6 %.
   */
  @Test
  void friedmansMethodGivesTheEnergyBackFromThreeCleanRuns() {
    List<Thermogravimetry> runs = List.of(run(2, 0, 1), run(8, 0, 2), run(32, 0, 3));
    IsoconversionalFit friedman = FIT.friedman(runs);
    IsoconversionalFit integral = FIT.isoconversional(runs);
    assertThat(friedman.energies()).hasSize(9);
    for (int i = 0; i < 9; i++) {
      double energy = friedman.energies().get(i).activationEnergy().expected().si();
      assertThat(energy).isCloseTo(191_000, within(0.005 * 191_000));
      assertThat(energy)
          .isCloseTo(
              integral.energies().get(i).activationEnergy().expected().si(),
              within(0.006 * 191_000));
    }
    assertThat(friedman.finding().severity()).isEqualTo(Severity.PASSED);
    Finding agreement = FIT.agreement(integral, friedman);
    assertThat(agreement.severity()).isEqualTo(Severity.PASSED);
    assertThat(agreement.measured().orElseThrow().si()).isLessThan(0.006);
  }

  /** ln of exact rates of the model itself against 1/T: the slope is -E / R to rounding. */
  @Test
  void exactRatesAtOneConversionLieOnFriedmansLine() {
    double[] x = new double[3];
    double[] y = new double[3];
    double[] rates = {2, 8, 32};
    for (int i = 0; i < 3; i++) {
      BurnOutPoint half =
          BurnOut.standard()
              .reaching(
                  TRUTH, BurnOutTest.ramp(480, 760, kelvinPerMinute(rates[i])), massFraction(0.5))
              .orElseThrow();
      x[i] = 1 / half.temperature().si();
      // da/dt = A exp(-E/RT) (1 - a), by hand
      y[i] = Math.log(2.85e13) - 191_000 / 8.314462618 * x[i] + Math.log(0.5);
      assertThat(Math.log(half.rate().si())).isCloseTo(y[i], within(1e-9));
    }
    assertThat(-new StraightLine(x, y).slope() * 8.314462618).isCloseTo(191_000, within(1e-3));
  }

  /**
   * With noise of 10 µg on 8 mg and three rates: Student's t of one degree of freedom is 12.7, so
   * the interval is wide, and holds the truth in 95 of 100; expected energies scatter by less than
   * 8 %, and lie within 10 % of those of the integral method.
   */
  @Test
  void friedmansIntervalsFromThreeNoisyRunsHoldTheTruth() {
    int held = 0;
    for (int seed = 0; seed < 20; seed++) {
      List<Thermogravimetry> runs = new ArrayList<>();
      for (double rate : new double[] {2, 8, 32}) {
        runs.add(run(rate, 0.01, 100L * seed + (long) rate));
      }
      IsoconversionalFit friedman = FIT.friedman(runs);
      Estimate<MolarEnergy> half = friedman.energies().get(4).activationEnergy();
      held += half.span().contains(kilojoulesPerMole(191)) ? 1 : 0;
      assertThat(half.expected().in(KILOJOULE_PER_MOLE)).isCloseTo(191, within(0.08 * 191));
      assertThat(FIT.agreement(FIT.isoconversional(runs), friedman).severity())
          .isEqualTo(Severity.PASSED);
    }
    assertThat(held).isGreaterThanOrEqualTo(16); // fewer: 0.3 % (binomial)
  }

  @Test
  void twoReactionsAreToldFromOne() {
    List<Thermogravimetry> runs = new ArrayList<>();
    BinderKinetics two =
        BurnOutTest.kinetics(
            DecompositionStep.of(
                kilojoulesPerMole(90), ReactionOrder.first(perSecond(2e5)), massFraction(0.5)),
            DecompositionStep.of(
                kilojoulesPerMole(220), ReactionOrder.first(perSecond(1e15)), massFraction(0.5)));
    for (double rate : new double[] {2, 5, 10, 20}) {
      TemperatureHistory ramp = BurnOutTest.ramp(400, 850, kelvinPerMinute(rate));
      List<MassReading> readings = new ArrayList<>();
      for (int i = 0; i <= 900; i++) {
        double time = ramp.end().time().si() * i / 900;
        BurnOutPoint point = BurnOut.standard().at(two, ramp, seconds(time));
        readings.add(
            MassReading.of(
                seconds(time), point.temperature(), milligrams(2 + point.remaining().si())));
      }
      runs.add(Thermogravimetry.builder().name("two steps").readings(readings).build());
    }
    IsoconversionalFit fit = FIT.isoconversional(runs);
    assertThat(fit.finding().severity()).isEqualTo(Severity.WARNING);
    assertThat(fit.finding().message()).endsWith("more than one step is at work");
    assertThat(fit.energies().get(1).activationEnergy().expected().in(KILOJOULE_PER_MOLE))
        .isCloseTo(90, within(2.0));
    IsoconversionalFit friedman = FIT.friedman(runs);
    assertThat(friedman.finding().severity()).isEqualTo(Severity.WARNING);
    for (int i : new int[] {1, 4, 8}) {
      assertThat(friedman.energies().get(i).activationEnergy().expected().si())
          .as("as on exact rates of the same two reactions, but for the smoothing")
          .isCloseTo(exactFriedman(two, (i + 1) / 10.0), within(0.02 * 220_000));
    }
    assertThat(friedman.energies().get(8).activationEnergy().expected().in(KILOJOULE_PER_MOLE))
        .as("at 90 % only the second is left")
        .isCloseTo(220, within(4.4));
    assertThat(FIT.agreement(fit, friedman).severity()).isEqualTo(Severity.WARNING);
  }

  /** The slope of ln(da/dt) over 1/T at one conversion, by exact rates, in J/mol. */
  private static double exactFriedman(BinderKinetics kinetics, double conversion) {
    double[] rates = {2, 5, 10, 20};
    double[] x = new double[rates.length];
    double[] y = new double[rates.length];
    for (int i = 0; i < rates.length; i++) {
      BurnOutPoint point =
          BurnOut.standard()
              .reaching(
                  kinetics,
                  BurnOutTest.ramp(400, 850, kelvinPerMinute(rates[i])),
                  massFraction(conversion))
              .orElseThrow();
      x[i] = 1 / point.temperature().si();
      y[i] = Math.log(point.rate().si());
    }
    return -new StraightLine(x, y).slope() * 8.314462618;
  }

  /**
   * The slope of ln p(x) is {@code exp(-x) / (x2 p)}: with p(10) = 3.8302404656316e-7 and p(20) =
   * 4.7024282154291e-12 (mpmath) it is 1.18530 and 1.09579, so 1.5 and 0.42 % of E are lost by
   * taking 1 + 2/x; told are up to 2/x2, 2 and 0.5 %.
   */
  @Test
  void theApproximationSaysWhatItCosts() {
    assertThat(Math.exp(-10) / (100 * 3.8302404656316e-7) - 1.2).isBetween(-0.02, -0.01);
    assertThat(Math.exp(-20) / (400 * 4.7024282154291e-12) - 1.1).isBetween(-0.005, -0.004);
    List<Thermogravimetry> runs = List.of(run(2, 0, 1), run(5, 0, 2), run(10, 0, 3));
    Finding integral = FIT.isoconversional(runs).range();
    assertThat(integral.severity()).isEqualTo(Severity.PASSED);
    double x = 191_000 / (8.314462618 * 660); // at the hottest, 90 % at 10 K/min
    assertThat(integral.measured().orElseThrow().si()).isCloseTo(2 / (x * x), within(1e-5));
    assertThat(FIT.friedman(runs).range().severity()).isEqualTo(Severity.PASSED);
    List<Thermogravimetry> wax = new ArrayList<>();
    BinderKinetics flat =
        BurnOutTest.kinetics(
            DecompositionStep.of(kilojoulesPerMole(45), ReactionOrder.first(perSecond(10))));
    for (double rate : new double[] {2, 5, 10}) {
      TemperatureHistory ramp = BurnOutTest.ramp(300, 1500, kelvinPerMinute(rate));
      List<MassReading> readings = new ArrayList<>();
      for (int i = 0; i <= 600; i++) {
        BurnOutPoint point =
            BurnOut.standard().at(flat, ramp, seconds(ramp.end().time().si() * i / 600));
        readings.add(
            MassReading.of(
                point.time(), point.temperature(), milligrams(2 + point.remaining().si())));
      }
      wax.add(Thermogravimetry.builder().name("flat").readings(readings).build());
    }
    Finding far = FIT.isoconversional(wax).range();
    assertThat(far.severity()).isEqualTo(Severity.UNDETERMINED);
    assertThat(far.message()).endsWith("take the differential method");
  }

  /** Peaks that lie 10 K off a line of 200 kJ/mol tell hardly more than its size. */
  @Test
  void anEnergyHardlyKnownIsFound() {
    KissingerFit fit =
        FIT.kissingerOfPeaks(peaks(new double[] {2, 5, 12, 30}, new double[] {610, 640, 640, 670}));
    assertThat(fit.findings().get(0).severity()).isEqualTo(Severity.WARNING);
    assertThat(fit.findings().get(0).message())
        .endsWith(" kJ/mol: too little to extrapolate far from the rates of the runs");
  }

  /** 2.4 is 1.2 times 2 and 2.88 is 1.2 times 2.4, whatever their doubles say. */
  @Test
  void ratesJustFarEnoughApartAreTaken() {
    assertThat(
            FIT.kissingerOfPeaks(peaks(new double[] {2, 2.4, 2.88}, new double[] {610, 614, 618}))
                .findings())
        .isNotEmpty();
  }

  @Test
  void tooFewRatesAreRefused() {
    assertThatThrownBy(
            () ->
                FIT.kissingerOfPeaks(
                    peaks(new double[] {5, 5.5, 20}, new double[] {620, 621, 640})))
        .hasMessage(
            "kinetic fit: the runs have 2 different heating rates (5.00 K/min, 5.50 K/min, 20.00"
                + " K/min); accepted are 3 or more, each 1.2 times the one below or more");
    assertThatThrownBy(() -> FIT.isoconversional(List.of(run(5, 0, 1))))
        .hasMessageContaining("the runs have 1 different heating rates (5.00 K/min)");
    assertThatThrownBy(
            () ->
                FIT.kissingerOfPeaks(peaks(new double[] {5, 10, 20}, new double[] {640, 630, 620})))
        .hasMessageContaining("do not rise with the heating rates");
    assertThatThrownBy(() -> FIT.friedman(List.of(run(5, 0, 1))))
        .hasMessageContaining("the runs have 1 different heating rates (5.00 K/min)");
    for (int confidence : new int[] {0, 1}) {
      assertThatThrownBy(() -> new KineticFit(ratio(confidence)))
          .hasMessage(
              "kinetic fit: confidence is " + confidence + "; accepted is above 0 and below 1");
    }
  }

  /**
   * A balance that drifts back and jumps: the smoothed loss first passes one half on the jump, of
   * 0.1 at one reading, which counts 17/35 there by the weights of Savitzky and Golay, and none in
   * the slope; so the slope is that of the drift, 0.001 of the loss back at each of the readings 6
   * s apart.
   */
  @Test
  void aLossThatStandsStillIsRefusedByFriedmansMethod() {
    double base = 0.5 + 1e-6 - 0.1 * 17 / 35;
    List<MassReading> readings = new ArrayList<>();
    for (int i = 0; i <= 120; i++) {
      double drift = base - 0.001 * (i - 60);
      double conversion =
          i < 40
              ? (base + 0.02) * i / 40
              : i <= 80 ? drift + (i == 60 ? 0.1 : 0) : base - 0.02 + (1.02 - base) * (i - 80) / 40;
      readings.add(
          MassReading.of(seconds(6 * i), kelvin(560 + i), milligrams(10 - 8 * conversion)));
    }
    Thermogravimetry drifting =
        Thermogravimetry.builder()
            .name("drifting")
            .readings(readings)
            .smoothing(kelvinDifference(2))
            .build();
    assertThatThrownBy(() -> FIT.friedman(List.of(run(2, 0, 1), drifting, run(50, 0, 2))))
        .hasMessageMatching(
            "kinetic fit: the smoothed loss of run 2 \\(\"drifting\"\\) rises by -1\\.6.*E-4 1/s at a"
                + " conversion of 0\\.5; accepted is more than zero, to be had by wider smoothing");
  }

  @Test
  void twentyReadingsAreEnough() {
    List<MassReading> readings = run(10, 0, 1).readings();
    assertThat(
            Thermogravimetry.builder()
                .name("coarse")
                .readings(readings.subList(100, 120))
                .build()
                .readings())
        .hasSize(20);
    assertThatThrownBy(
            () ->
                Thermogravimetry.builder()
                    .name("coarse")
                    .readings(readings.subList(100, 119))
                    .build())
        .hasMessage("run coarse: readings are 19; accepted is 20 or more");
    for (int conversion : new int[] {0, 1}) {
      assertThatThrownBy(() -> run(10, 0, 1).temperatureAt(massFraction(conversion)))
          .hasMessage(
              "run run at 10 K/min: conversion is "
                  + conversion
                  + " kg/kg; accepted is above 0 and below 1");
    }
  }

  @Test
  void badRunsAreRefused() {
    assertThatThrownBy(() -> Thermogravimetry.builder().name("short").addReadings().build())
        .hasMessage("run short: readings are 0; accepted is 20 or more");
    List<MassReading> gaining = new ArrayList<>();
    for (int i = 0; i < 25; i++) {
      gaining.add(MassReading.of(seconds(i), kelvin(700 - i), milligrams(10 + i)));
    }
    gaining.add(MassReading.of(seconds(24), kelvin(600), milligrams(50)));
    assertThatThrownBy(
            () -> Thermogravimetry.builder().name("copper in air").readings(gaining).build())
        .hasMessageContaining("reading 26 is at 24 s after one at 24 s")
        .hasMessageContaining("accepted is a run that heats")
        .hasMessageContaining("accepted is a loss. Powder that oxidises gains mass");
  }
}
