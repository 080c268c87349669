package dev.kilnledger.costing.uncertainty;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleSupplier;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.LogNormalDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TriangularDistribution;
import org.apache.commons.statistics.distribution.UniformContinuousDistribution;
import org.apache.commons.statistics.distribution.WeibullDistribution;

/** What is computed of a distribution. */
interface Law {
  double mean();

  double variance();

  /** The smallest value that a share p of all values does not exceed. */
  double quantile(double p);

  /** The share of all values up to one. */
  double upTo(double value);

  /** Values drawn one after the other. */
  DoubleSupplier sampler(UniformRandomProvider random);

  static Law of(Distribution distribution) {
    if (distribution instanceof Normal normal) {
      return new Continuous(NormalDistribution.of(normal.mean(), normal.standardDeviation()));
    }
    if (distribution instanceof Rectangular rectangular) {
      return new Continuous(
          UniformContinuousDistribution.of(rectangular.low(), rectangular.high()));
    }
    if (distribution instanceof Triangular triangular) {
      return new Continuous(
          TriangularDistribution.of(triangular.low(), triangular.mode(), triangular.high()));
    }
    if (distribution instanceof Pert pert) {
      double width = pert.high() - pert.low();
      double alpha = 1 + 4 * (pert.mode() - pert.low()) / width;
      double beta = 1 + 4 * (pert.high() - pert.mode()) / width;
      return new Linear(new Continuous(BetaDistribution.of(alpha, beta)), pert.low(), width);
    }
    if (distribution instanceof LogNormal logNormal) {
      double v = logNormal.coefficientOfVariation();
      double variance = Math.log1p(v * v);
      return new Continuous(
          LogNormalDistribution.of(Math.log(logNormal.mean()) - variance / 2, Math.sqrt(variance)));
    }
    if (distribution instanceof Beta beta) {
      return new Continuous(BetaDistribution.of(beta.alpha(), beta.beta()));
    }
    if (distribution instanceof Binomial binomial) {
      return new Counted(BinomialDistribution.of(binomial.trials(), binomial.chance()));
    }
    if (distribution instanceof Weibull weibull) {
      return new Continuous(WeibullDistribution.of(weibull.shape(), weibull.scale()));
    }
    if (distribution instanceof Scaled scaled) {
      return new Linear(of(scaled.base()), 0, scaled.factor());
    }
    return new Listed((Empirical) distribution);
  }

  /** The median of each input. */
  static double[] medians(List<UncertainInput> inputs) {
    return inputs.stream().mapToDouble(input -> input.distribution().median()).toArray();
  }

  /** A law of the statistics library. */
  record Continuous(ContinuousDistribution law) implements Law {
    @Override
    public double mean() {
      return law.getMean();
    }

    @Override
    public double variance() {
      return law.getVariance();
    }

    @Override
    public double quantile(double p) {
      return law.inverseCumulativeProbability(p);
    }

    @Override
    public double upTo(double value) {
      return law.cumulativeProbability(value);
    }

    @Override
    public DoubleSupplier sampler(UniformRandomProvider random) {
      return law.createSampler(random)::sample;
    }
  }

  /** A law of counts. */
  record Counted(BinomialDistribution law) implements Law {
    @Override
    public double mean() {
      return law.getMean();
    }

    @Override
    public double variance() {
      return law.getVariance();
    }

    @Override
    public double quantile(double p) {
      return law.inverseCumulativeProbability(p);
    }

    @Override
    public double upTo(double value) {
      return value < 0 ? 0 : law.cumulativeProbability((int) Math.min(value, Integer.MAX_VALUE));
    }

    @Override
    public DoubleSupplier sampler(UniformRandomProvider random) {
      return law.createSampler(random)::sample;
    }
  }

  /** Another law, moved and stretched. */
  record Linear(Law law, double shift, double factor) implements Law {
    @Override
    public double mean() {
      return shift + factor * law.mean();
    }

    @Override
    public double variance() {
      return factor * factor * law.variance();
    }

    @Override
    public double quantile(double p) {
      return shift + factor * law.quantile(p);
    }

    @Override
    public double upTo(double value) {
      return law.upTo((value - shift) / factor);
    }

    @Override
    public DoubleSupplier sampler(UniformRandomProvider random) {
      DoubleSupplier base = law.sampler(random);
      return () -> shift + factor * base.getAsDouble();
    }
  }

  /** A list of values, each as likely as the others. */
  final class Listed implements Law {
    private final double[] sorted;

    Listed(Empirical empirical) {
      sorted = empirical.values().stream().mapToDouble(Double::doubleValue).sorted().toArray();
    }

    @Override
    public double mean() {
      return Arrays.stream(sorted).sum() / sorted.length;
    }

    @Override
    public double variance() {
      double mean = mean();
      return Arrays.stream(sorted).map(v -> (v - mean) * (v - mean)).sum() / sorted.length;
    }

    @Override
    public double quantile(double p) {
      return sorted[Numbers.rank(p, sorted.length) - 1];
    }

    @Override
    public double upTo(double value) {
      return (double) Numbers.upTo(value, sorted) / sorted.length;
    }

    @Override
    public DoubleSupplier sampler(UniformRandomProvider random) {
      return () -> sorted[random.nextInt(sorted.length)];
    }
  }
}
