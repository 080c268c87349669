package dev.kilnledger.benchmarks;

import org.apache.commons.rng.JumpableUniformRandomProvider;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.ContinuousDistribution.Sampler;
import org.apache.commons.statistics.distribution.LogNormalDistribution;
import org.apache.commons.statistics.distribution.TriangularDistribution;

/**
 * The trials of {@link MonteCarloBenchmark} in one loop over doubles, as one would write it for
 * that one plan. The sub-streams are taken as the library takes them, so that both draw the same.
 */
final class HandWrittenTrials {
  private static final int BLOCKS = 64;

  private final int trials;
  private final long seed;

  HandWrittenTrials(int trials, long seed) {
    this.trials = trials;
    this.seed = seed;
  }

  /** The cash for part 1, part n and all parts, and the usage, of each trial. */
  double[][] run() {
    double[] first = new double[trials];
    double[] last = new double[trials];
    double[] all = new double[trials];
    double[] usage = new double[trials];
    JumpableUniformRandomProvider source =
        (JumpableUniformRandomProvider) RandomSource.XO_SHI_RO_256_PP.create(seed);
    int trial = 0;
    for (int block = 0; block < BLOCKS; block++) {
      UniformRandomProvider random = source.jump();
      Sampler filaments = logNormal(60, 0.15, random);
      Sampler powders = TriangularDistribution.of(15, 18, 24).createSampler(random);
      Sampler carbons = TriangularDistribution.of(18, 22, 30).createSampler(random);
      Sampler energies = logNormal(0.30, 0.2, random);
      Sampler lives = TriangularDistribution.of(3, 6, 10).createSampler(random);
      Sampler shares =
          BetaDistribution.of(1 + 4 * 8 / 30.0, 1 + 4 * 22 / 30.0).createSampler(random);
      Sampler yields = BetaDistribution.of(18, 2).createSampler(random);
      int end = trial + trials / BLOCKS + (block < trials % BLOCKS ? 1 : 0);
      for (; trial < end; trial++) {
        double filament = filaments.sample();
        double powder = powders.sample();
        double carbon = carbons.sample();
        double energy = energies.sample();
        double life = lives.sample();
        double grams = 120 + 30 * shares.sample();
        double yield = yields.sample();
        double one = through(1, filament, powder, carbon, energy, life, grams, yield);
        double n = MonteCarloBenchmark.PARTS;
        double before = through(n - 1, filament, powder, carbon, energy, life, grams, yield);
        all[trial] = through(n, filament, powder, carbon, energy, life, grams, yield);
        first[trial] = one;
        last[trial] = all[trial] - before;
        usage[trial] =
            (filament * grams / 500
                    + (45 / life + powder * 0.09 + carbon * 0.3 + energy * 28)
                        / CostedPart.PARTS_PER_FIRING)
                / yield;
      }
    }
    return new double[][] {first, last, all, usage};
  }

  private static Sampler logNormal(double mean, double variation, UniformRandomProvider random) {
    double variance = Math.log1p(variation * variation);
    return LogNormalDistribution.of(Math.log(mean) - variance / 2, Math.sqrt(variance))
        .createSampler(random);
  }

  private static double through(
      double good,
      double filament,
      double powder,
      double carbon,
      double energy,
      double life,
      double grams,
      double yield) {
    double parts = Math.ceil(good / yield);
    double firings = Math.ceil(parts / CostedPart.PARTS_PER_FIRING);
    return 900
        + 3200
        + 45 * Math.ceil(firings / life)
        + filament * Math.ceil(grams * parts / 500)
        + powder * Math.ceil((1710 + 90 * firings) / 1000)
        + carbon * Math.ceil(300 * firings / 1000)
        + energy * 28 * firings;
  }
}
