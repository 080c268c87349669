package dev.kilnledger.thermal.burnout;

import static dev.kilnledger.units.TradeUnits.KELVIN_PER_MINUTE;
import static dev.kilnledger.units.TradeUnits.KILOJOULE_PER_MOLE;
import static dev.kilnledger.units.TradeUnits.PERCENT;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.kinetics.ArrheniusIntegral;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.HeatingRate;
import dev.kilnledger.units.quantity.MolarEnergy;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import javax.measure.quantity.Dimensionless;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Fits kinetics to a user's own thermogravimetry at three or more heating rates b:
 *
 * <pre>
 * Kissinger                     ln(b / Tp²) = ln(A R / E) - E / (R Tp)
 * Kissinger-Akahira-Sunose      ln(b / T²)  = const - E / (R T), T at one conversion
 * Friedman                      ln(da/dt)   = ln(A f(a)) - E / (R T), at one conversion a
 * </pre>
 *
 * <p>(Kissinger, Anal. Chem. 29 (1957) 1702; ASTM E698 and E2890 use the first; Friedman, J. Polym.
 * Sci. C 6 (1964) 183; all from memory.) They are straight lines in 1 / T; intervals are by
 * Student's t at n - 2 degrees of freedom, normal scatter assumed. The rate of each run is computed
 * from its time column. The first holds exactly for first order; the second is approximate by a
 * small share of E at x = E / R T above 20, and where E changes as the loss goes on it tells the
 * mean up to there; the third supposes nothing and is the more sensitive to noise, as it needs the
 * slope of the loss. Energies by the two that agree tell of one reaction ({@link #agreement}).
 *
 * <p>Example: peaks at 604.9, 611.8, 623.8, 633.9, 642.2, 653.5 and 662.9 K at 1, 2, 5, 10, 20, 50
 * and 100 K/min give 250.49 kJ/mol and ln A of 43.239.
 */
public final class KineticFit {
  /** The fewest heating rates. */
  public static final int FEWEST_RATES = 3;

  /** How far apart two heating rates must lie to count as two, as a factor. */
  public static final double APART = 1.2;

  private static final double ROUNDING = 1e-9;
  private static final double KNOWN_WITHIN = 0.1;
  private static final double ONE_STEP_WITHIN = 0.2;
  private static final Source INTERVAL =
      Source.commonPractice("confidence interval of the slope; 10 % of E is a usable fit");
  private static final Source ONE_STEP =
      Source.fromMemory(
          "Vyazovkin et al., ICTAC recommendations, Thermochim. Acta 520 (2011) 1: energies that"
              + " vary by more than 10 to 20 % of their mean tell of several steps");
  private static final double APPROXIMATE_WITHIN = 0.02;
  private static final Source APPROXIMATION =
      Source.recomputed("2/x2 of E, from the asymptotic series of the temperature integral");
  private static final KineticFit STANDARD = new KineticFit(Amounts.ratio(0.95));

  private final Amount<Dimensionless> confidence;

  /**
   * A fit at a confidence of the caller's choice.
   *
   * @param confidence above 0 and below 1, two-sided
   * @throws IllegalArgumentException if the confidence lies outside
   */
  public KineticFit(Amount<Dimensionless> confidence) {
    new Problems("kinetic fit")
        .require(
            confidence.si() > 0 && confidence.si() < 1,
            "confidence is " + confidence + "; accepted is above 0 and below 1")
        .refuseIfAny();
    this.confidence = confidence;
  }

  /** {@return the fit at a confidence of 0.95} */
  public static KineticFit standard() {
    return STANDARD;
  }

  /**
   * Kissinger's method on whole runs.
   *
   * @param runs the runs
   * @return activation energy and pre-exponential factor with their intervals
   * @throws IllegalArgumentException if there are fewer than three heating rates
   */
  public KissingerFit kissinger(List<Thermogravimetry> runs) {
    return kissingerOfPeaks(runs.stream().map(Thermogravimetry::peak).toList());
  }

  /**
   * Kissinger's method on peaks read elsewhere.
   *
   * @param peaks heating rates with their peak temperatures
   * @return activation energy and pre-exponential factor with their intervals
   * @throws IllegalArgumentException if there are fewer than three heating rates, or the peaks do
   *     not rise with the rate
   */
  public KissingerFit kissingerOfPeaks(List<LossPeak> peaks) {
    requireRates(peaks.stream().map(LossPeak::heatingRate).toList());
    StraightLine line =
        line(
            peaks.stream().mapToDouble(peak -> peak.heatingRate().si()).toArray(),
            peaks.stream().mapToDouble(peak -> peak.temperature().si()).toArray());
    double t = t(line);
    double slope = line.slope();
    double log = line.intercept() + Math.log(-slope);
    // d ln A = d intercept + d slope / slope
    double variance =
        line.varianceOfIntercept()
            + line.varianceOfSlope() / (slope * slope)
            + 2 * line.covariance() / slope;
    double half = t * Math.sqrt(Math.max(0, variance));
    Estimate<MolarEnergy> energy = energy(line, t);
    return KissingerFit.builder()
        .activationEnergy(energy)
        .logPreExponential(
            Estimate.of(Amounts.ratio(log - half), Amounts.ratio(log), Amounts.ratio(log + half)))
        .confidence(confidence)
        .peaks(peaks)
        .addFindings(known(energy, peaks.size()))
        .build();
  }

  /**
   * The activation energy at 10, 20 ... 90 % conversion.
   *
   * @param runs the runs
   * @return the energies with their intervals, and whether they agree
   * @throws IllegalArgumentException if there are fewer than three heating rates
   */
  public IsoconversionalFit isoconversional(List<Thermogravimetry> runs) {
    requireRates(runs.stream().map(Thermogravimetry::heatingRate).toList());
    List<SmoothedLoss> losses = runs.stream().map(SmoothedLoss::new).toList();
    double[] rates = losses.stream().mapToDouble(SmoothedLoss::kelvinPerSecond).toArray();
    List<EnergyAtConversion> energies = new ArrayList<>();
    double least = Double.POSITIVE_INFINITY;
    for (int tenths = 1; tenths <= 9; tenths++) {
      double conversion = tenths / 10.0;
      double[] kelvin = losses.stream().mapToDouble(loss -> loss.kelvinAt(conversion)).toArray();
      StraightLine line = line(rates, kelvin);
      least = Math.min(least, -line.slope() / Arrays.stream(kelvin).max().orElseThrow());
      energies.add(
          ImmutableEnergyAtConversion.of(Amounts.massFraction(conversion), energy(line, t(line))));
    }
    return ImmutableIsoconversionalFit.of(
        energies, confidence, oneStep(energies, runs.size()), approximate(least, runs.size()));
  }

  /**
   * The activation energy at 10, 20 ... 90 % conversion by the rate of the loss, without the
   * approximation of {@link #isoconversional} and without supposing that the heating is even.
   *
   * @param runs the runs
   * @return the energies with their intervals, and whether they agree
   * @throws IllegalArgumentException if there are fewer than three heating rates, or the smoothed
   *     loss of a run stands still on the way
   */
  public IsoconversionalFit friedman(List<Thermogravimetry> runs) {
    requireRates(runs.stream().map(Thermogravimetry::heatingRate).toList());
    List<SmoothedLoss> losses = runs.stream().map(SmoothedLoss::new).toList();
    List<EnergyAtConversion> energies = new ArrayList<>();
    for (int tenths = 1; tenths <= 9; tenths++) {
      double conversion = tenths / 10.0;
      double[] kelvin = losses.stream().mapToDouble(loss -> loss.kelvinAt(conversion)).toArray();
      double[] rates = losses.stream().mapToDouble(loss -> loss.rateAt(conversion)).toArray();
      requireLoss(runs, rates, conversion);
      StraightLine line =
          falling(
              reciprocals(kelvin), Arrays.stream(rates).map(Math::log).toArray(), kelvin, rates);
      energies.add(
          ImmutableEnergyAtConversion.of(Amounts.massFraction(conversion), energy(line, t(line))));
    }
    return ImmutableIsoconversionalFit.of(
        energies, confidence, oneStep(energies, runs.size()), exact(runs.size()));
  }

  /**
   * Whether two methods tell the same of the same runs: for one reaction they do; where the energy
   * changes as the loss goes on, that of an integral method lags behind that of a differential one.
   *
   * @param integral the energies by {@link #isoconversional}
   * @param differential the energies by {@link #friedman}
   * @return passed where they are nowhere more than a tenth apart or each in the interval of the
   *     other, else a warning
   * @throws IllegalArgumentException if they are not at the same conversions
   */
  public Finding agreement(IsoconversionalFit integral, IsoconversionalFit differential) {
    return MethodAgreement.of(integral, differential);
  }

  private static void requireLoss(
      List<Thermogravimetry> runs, double[] perSecond, double conversion) {
    Problems problems = new Problems("kinetic fit");
    for (int i = 0; i < perSecond.length; i++) {
      problems.require(
          perSecond[i] > 0,
          "the smoothed loss of run "
              + (i + 1)
              + " (\""
              + runs.get(i).name()
              + "\") rises by "
              + perSecond[i]
              + " 1/s at a conversion of "
              + conversion
              + "; accepted is more than zero, to be had by wider smoothing");
    }
    problems.refuseIfAny();
  }

  private double t(StraightLine line) {
    return TDistribution.of(line.degreesOfFreedom())
        .inverseSurvivalProbability((1 - confidence.si()) / 2);
  }

  private static StraightLine line(double[] kelvinPerSecond, double[] kelvin) {
    double[] y = new double[kelvin.length];
    for (int i = 0; i < y.length; i++) {
      y[i] = Math.log(kelvinPerSecond[i] / (kelvin[i] * kelvin[i]));
    }
    return falling(reciprocals(kelvin), y, kelvin, kelvinPerSecond);
  }

  private static double[] reciprocals(double[] kelvin) {
    return Arrays.stream(kelvin).map(t -> 1 / t).toArray();
  }

  private static StraightLine falling(double[] x, double[] y, double[] kelvin, double[] perSecond) {
    StraightLine line = new StraightLine(x, y);
    if (!(line.slope() < 0)) {
      throw new IllegalArgumentException(
          "kinetic fit: the temperatures "
              + Arrays.toString(kelvin)
              + " K do not rise with the heating rates "
              + Arrays.toString(perSecond)
              + " K/s; accepted are runs that go hotter the faster they are");
    }
    return line;
  }

  private static Estimate<MolarEnergy> energy(StraightLine line, double t) {
    double expected = -line.slope() * ArrheniusIntegral.GAS_CONSTANT / 1000;
    double half = t * Math.sqrt(line.varianceOfSlope()) * ArrheniusIntegral.GAS_CONSTANT / 1000;
    return Estimate.of(
        Amounts.kilojoulesPerMole(expected - half),
        Amounts.kilojoulesPerMole(expected),
        Amounts.kilojoulesPerMole(expected + half));
  }

  private static void requireRates(List<Amount<HeatingRate>> rates) {
    List<Amount<HeatingRate>> sorted = rates.stream().sorted().toList();
    int different = 0;
    double last = 0;
    for (Amount<HeatingRate> rate : sorted) {
      if (rate.si() >= last * APART * (1 - ROUNDING)) {
        different++;
        last = rate.si();
      }
    }
    new Problems("kinetic fit")
        .require(
            different >= FEWEST_RATES,
            "the runs have "
                + different
                + " different heating rates ("
                + String.join(
                    ", ", sorted.stream().map(rate -> rate.format(KELVIN_PER_MINUTE, 2)).toList())
                + "); accepted are "
                + FEWEST_RATES
                + " or more, each 1.2 times the one below or more")
        .refuseIfAny();
  }

  private Finding known(Estimate<MolarEnergy> energy, int runs) {
    double half = energy.span().high().subtract(energy.expected()).ratio(energy.expected());
    boolean known = half <= KNOWN_WITHIN;
    return BurnOutFinding.ACTIVATION_ENERGY
        .about(runs + " runs")
        .severity(known ? Severity.PASSED : Severity.WARNING)
        .message(
            "the activation energy is "
                + energy.expected().format(KILOJOULE_PER_MOLE, 1)
                + ", at "
                + confidence.format(PERCENT, 0)
                + " confidence from "
                + energy.span().format(KILOJOULE_PER_MOLE, 1)
                + (known ? "" : ": too little to extrapolate far from the rates of the runs"))
        .measured(Amounts.ratio(half))
        .limit(Amounts.ratio(KNOWN_WITHIN))
        .basis(INTERVAL)
        .build();
  }

  /** The slope of ln(b/T2) is that of the exact integral but for about 2/x2 of it, x = E/RT. */
  private static Finding approximate(double leastExponent, int runs) {
    double error = 2 / (leastExponent * leastExponent);
    boolean good = error <= APPROXIMATE_WITHIN;
    return BurnOutFinding.METHOD_RANGE
        .about(runs + " runs")
        .severity(good ? Severity.PASSED : Severity.UNDETERMINED)
        .message(
            "the approximation of the temperature integral costs up to "
                + Amounts.ratio(error).format(PERCENT, 1)
                + " of the activation energy"
                + (good ? "" : ": take the differential method"))
        .measured(Amounts.ratio(error))
        .limit(Amounts.ratio(APPROXIMATE_WITHIN))
        .basis(APPROXIMATION)
        .build();
  }

  private static Finding exact(int runs) {
    return BurnOutFinding.METHOD_RANGE
        .about(runs + " runs")
        .severity(Severity.PASSED)
        .message("the differential method approximates no integral; it takes smooth runs")
        .basis(APPROXIMATION)
        .build();
  }

  private static Finding oneStep(List<EnergyAtConversion> energies, int runs) {
    List<Amount<MolarEnergy>> sorted =
        energies.stream()
            .map(energy -> energy.activationEnergy().expected())
            .sorted(Comparator.naturalOrder())
            .toList();
    Amount<MolarEnergy> low = sorted.get(0);
    Amount<MolarEnergy> high = sorted.get(sorted.size() - 1);
    double mean = sorted.stream().mapToDouble(Amount::si).average().orElseThrow();
    double variation = (high.si() - low.si()) / mean;
    boolean one = variation <= ONE_STEP_WITHIN;
    return BurnOutFinding.ONE_STEP
        .about(runs + " runs")
        .severity(one ? Severity.PASSED : Severity.WARNING)
        .message(
            "the activation energy goes from "
                + low.format(KILOJOULE_PER_MOLE, 1)
                + " to "
                + high.format(KILOJOULE_PER_MOLE, 1)
                + " as the loss goes on"
                + (one ? "" : ": more than one step is at work"))
        .measured(Amounts.ratio(variation))
        .limit(Amounts.ratio(ONE_STEP_WITHIN))
        .basis(ONE_STEP)
        .build();
  }
}
