package dev.kilnledger.thermal.densification;

import static dev.kilnledger.units.TradeUnits.KILOJOULE_PER_MOLE;
import static dev.kilnledger.units.TradeUnits.PERCENT;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.densification.LevenbergMarquardt.Evaluation;
import dev.kilnledger.thermal.densification.LevenbergMarquardt.Optimum;
import dev.kilnledger.thermal.kinetics.ArrheniusIntegral;
import dev.kilnledger.thermal.kinetics.RunningIntegral;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.MolarEnergy;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Fits a sintering curve, activation energy and sigmoid together, to the densities of several runs
 * by least squares (Levenberg and Marquardt).
 *
 * <p>The start is found by trying activation energies from 50 to 1200 kJ/mol, each with the
 * straight line that {@code ln((rho - rho0) / (1 - rho)) = (ln Theta - a) / b} is (Blaine, Park and
 * German, J. Am. Ceram. Soc. 92 (2009) 1403, abstract). Intervals are linearised at the optimum and
 * use Student's t, scatter taken as normal, even and independent; the readings of one dilatometer
 * run are not quite independent, so true intervals are wider.
 *
 * <p>Example: exact readings of a powder of 300 kJ/mol on ramps of 60, 200 and 600 K/h to 1300 °C
 * give 300.0 kJ/mol back.
 */
public final class SinteringCurveFit {
  /** The fewest runs. */
  public static final int FEWEST_RUNS = 2;

  /** The fewest readings of all runs together. */
  public static final int FEWEST_READINGS = 10;

  private static final double KNOWN_WITHIN = 0.2;
  private static final double LOWEST_ENERGY = 5e4;
  private static final double HIGHEST_ENERGY = 1.2e6;
  private static final int TRIED = 24;
  private static final double BELOW_LOWEST = 0.002; // rho0 to start from, under the lowest reading
  private static final double CLEAR_OF_ENDS = 0.01;
  private static final SinteringCurveFit STANDARD = new SinteringCurveFit(Amounts.ratio(0.95));

  private final Amount<Dimensionless> confidence;

  /**
   * A fit at a confidence of the caller's choice.
   *
   * @param confidence above 0 and below 1, two-sided
   * @throws IllegalArgumentException if the confidence lies outside
   */
  public SinteringCurveFit(Amount<Dimensionless> confidence) {
    new Problems("sintering curve fit")
        .require(
            confidence.si() > 0 && confidence.si() < 1,
            "confidence is " + confidence + "; accepted is above 0 and below 1")
        .refuseIfAny();
    this.confidence = confidence;
  }

  /** {@return the fit at a confidence of 0.95} */
  public static SinteringCurveFit standard() {
    return STANDARD;
  }

  /**
   * Fits a curve.
   *
   * @param name what it is of: powder, green density, atmosphere
   * @param runs two or more runs of unlike course; three heating rates are usual
   * @return the curve with its intervals
   * @throws IllegalArgumentException if there are too few runs or readings, or they do not
   *     determine a curve
   */
  public FittedSinteringCurve fit(String name, List<DensificationRun> runs) {
    int readings = runs.stream().mapToInt(run -> run.readings().size()).sum();
    new Problems("fit of " + name)
        .require(
            runs.size() >= FEWEST_RUNS,
            "runs are " + runs.size() + "; accepted are 2 or more, of unlike course")
        .require(
            readings >= FEWEST_READINGS,
            "readings are " + readings + "; accepted are " + FEWEST_READINGS + " or more")
        .refuseIfAny();
    Data data = new Data(runs);
    Optimum optimum =
        LevenbergMarquardt.fit(data::evaluate, data.target, data.start())
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "fit of "
                            + name
                            + ": the "
                            + runs.size()
                            + " runs with "
                            + readings
                            + " readings determine no curve; accepted are runs of unlike heating"
                            + " rate or hold that densify"));
    double[][] covariance = optimum.covariance();
    int freedom = readings - SigmoidModel.SIZE;
    double variance = optimum.squares() / freedom;
    List<Double> flat = new ArrayList<>();
    for (double[] row : covariance) {
      for (int j = 0; j < row.length; j++) {
        row[j] *= variance;
        flat.add(row[j]);
      }
    }
    return result(name, data, optimum.parameters(), covariance, flat, variance, freedom);
  }

  private FittedSinteringCurve result(
      String name,
      Data data,
      double[] numbers,
      double[][] covariance,
      List<Double> flat,
      double variance,
      int freedom) {
    double t = TDistribution.of(freedom).inverseSurvivalProbability((1 - confidence.si()) / 2);
    double energy = numbers[0] * SigmoidModel.ENERGY / 1000;
    double energyHalf = t * Math.sqrt(covariance[0][0]) * SigmoidModel.ENERGY / 1000;
    double location = data.model.location(numbers);
    double locationHalf =
        t * Math.sqrt(SigmoidModel.variance(data.model.locationGradient(), covariance));
    double width = data.model.width(numbers);
    double widthFactor = Math.exp(t * Math.sqrt(covariance[2][2]));
    double densityHalf = t * Math.sqrt(covariance[3][3]);
    Estimate<MolarEnergy> energies =
        Estimate.of(
            Amounts.kilojoulesPerMole(energy - energyHalf),
            Amounts.kilojoulesPerMole(energy),
            Amounts.kilojoulesPerMole(energy + energyHalf));
    return FittedSinteringCurve.builder()
        .curve(
            SinteringCurve.builder()
                .name(name)
                .activationEnergy(Amounts.kilojoulesPerMole(energy))
                .base(SinteringCurve.Base.NATURAL)
                .location(Amounts.ratio(location))
                .width(Amounts.ratio(width))
                .initialDensity(Amounts.volumeFraction(numbers[3]))
                .range(data.range())
                .source(Source.user("least squares on " + data.runs.size() + " runs"))
                .build())
        .activationEnergy(energies)
        .location(
            Estimate.of(
                Amounts.ratio(location - locationHalf),
                Amounts.ratio(location),
                Amounts.ratio(location + locationHalf)))
        .width(
            Estimate.of(
                Amounts.ratio(width / widthFactor),
                Amounts.ratio(width),
                Amounts.ratio(width * widthFactor)))
        .initialDensity(
            Estimate.of(
                Amounts.volumeFraction(numbers[3] - densityHalf),
                Amounts.volumeFraction(numbers[3]),
                Amounts.volumeFraction(numbers[3] + densityHalf)))
        .confidence(confidence)
        .scatter(Amounts.volumeFraction(Math.sqrt(variance)))
        .degreesOfFreedom(freedom)
        .densities(data.densities())
        .reference(Amounts.kelvin(data.reference))
        .covariance(flat)
        .addFindings(known(name, energies))
        .build();
  }

  private Finding known(String name, Estimate<MolarEnergy> energy) {
    double half = energy.span().high().subtract(energy.expected()).ratio(energy.expected());
    boolean known = half <= KNOWN_WITHIN;
    return DensificationFinding.SINTERING_ENERGY
        .about(name)
        .severity(known ? Severity.PASSED : Severity.WARNING)
        .message(
            "the activation energy is "
                + energy.expected().format(KILOJOULE_PER_MOLE, 0)
                + ", at "
                + confidence.format(PERCENT, 0)
                + " confidence from "
                + energy.span().format(KILOJOULE_PER_MOLE, 0)
                + (known
                    ? ""
                    : ": the runs are too much alike to forecast firings much unlike them"))
        .measured(Amounts.ratio(half))
        .limit(Amounts.ratio(KNOWN_WITHIN))
        .basis(Source.commonPractice("confidence interval; 20 % of Q is a usable fit"))
        .build();
  }

  /** The readings of all runs in one row. */
  private static final class Data {
    private final List<DensificationRun> runs;
    private final double[] target;
    private final double reference;
    private final SigmoidModel model;

    Data(List<DensificationRun> runs) {
      this.runs = runs;
      target =
          runs.stream()
              .flatMap(run -> run.readings().stream())
              .mapToDouble(reading -> reading.density().si())
              .toArray();
      reference =
          runs.stream()
              .mapToDouble(run -> run.history().hottest().temperature().si())
              .average()
              .orElseThrow();
      model = new SigmoidModel(reference);
    }

    Span<VolumeFraction> densities() {
      double low = 1;
      double high = 0;
      for (double density : target) {
        low = Math.min(low, density);
        high = Math.max(high, density);
      }
      return Span.of(Amounts.volumeFraction(low), Amounts.volumeFraction(high));
    }

    /** From the temperature of the first reading of each run up to its hottest. */
    Span<Temperature> range() {
      List<Amount<Temperature>> all = new ArrayList<>();
      for (DensificationRun run : runs) {
        all.add(run.history().temperatureAt(run.readings().get(0).time()));
        all.add(run.history().hottest().temperature());
      }
      List<Amount<Temperature>> sorted = all.stream().sorted().toList();
      return Span.of(sorted.get(0), sorted.get(sorted.size() - 1));
    }

    double[] start() {
      double lowest = densities().low().si() - BELOW_LOWEST;
      double[] best = {};
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i < TRIED; i++) {
        double energy = LOWEST_ENERGY * Math.pow(HIGHEST_ENERGY / LOWEST_ENERGY, i / (TRIED - 1.0));
        Optional<double[]> tried = straightened(energy, lowest);
        double squares = tried.isPresent() ? squares(tried.get()) : Double.POSITIVE_INFINITY;
        if (squares < least) {
          least = squares;
          best = tried.orElseThrow();
        }
      }
      if (best.length == 0) {
        throw new IllegalArgumentException(
            "sintering curve fit: with no activation energy does density rise with the work of"
                + " sintering; accepted are runs that densify");
      }
      return best;
    }

    /** The sigmoid of one energy, from the straight line; empty where density does not rise. */
    private Optional<double[]> straightened(double energy, double initial) {
      double[] logWork = logWork(energy);
      double n = 0;
      double x = 0;
      double y = 0;
      double xx = 0;
      double xy = 0;
      for (int i = 0; i < target.length; i++) {
        double done = target[i] - initial;
        double left = 1 - target[i];
        if (done > CLEAR_OF_ENDS && left > CLEAR_OF_ENDS / 2) {
          double logit = Math.log(done / left);
          n++;
          x += logWork[i];
          y += logit;
          xx += logWork[i] * logWork[i];
          xy += logWork[i] * logit;
        }
      }
      double slope = (xy - x * y / n) / (xx - x * x / n);
      if (!(n > 2 && slope > 0)) {
        return Optional.empty();
      }
      return Optional.of(model.numbers(energy, x / n - y / n / slope, 1 / slope, initial));
    }

    private double[] logWork(double energy) {
      double[] logs = new double[target.length];
      int i = 0;
      ArrheniusIntegral integral = new ArrheniusIntegral(Amounts.kilojoulesPerMole(energy / 1000));
      for (DensificationRun run : runs) {
        RunningIntegral work = integral.workAlong(run.history());
        for (DensityReading reading : run.readings()) {
          logs[i++] = work.logAt(reading.time().si());
        }
      }
      return logs;
    }

    private double squares(double[] numbers) {
      double[] logWork = logWork(numbers[0] * SigmoidModel.ENERGY);
      double sum = 0;
      for (int i = 0; i < target.length; i++) {
        double residual = target[i] - model.density(numbers, logWork[i]);
        sum += residual * residual;
      }
      return sum;
    }

    Evaluation evaluate(double[] numbers) {
      Amount<MolarEnergy> energy =
          Amounts.kilojoulesPerMole(numbers[0] * SigmoidModel.ENERGY / 1000);
      double[] densities = new double[target.length];
      double[][] gradients = new double[target.length][];
      int i = 0;
      for (DensificationRun run : runs) {
        WorkOfSintering work = new WorkOfSintering(energy, run.history());
        for (DensityReading reading : run.readings()) {
          double time = reading.time().si();
          double logWork = work.logAt(time);
          densities[i] = model.density(numbers, logWork);
          gradients[i] = model.gradient(numbers, logWork, work.byEnergyAt(time));
          i++;
        }
      }
      return new Evaluation(densities, gradients);
    }
  }
}
