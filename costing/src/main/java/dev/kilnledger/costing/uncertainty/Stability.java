package dev.kilnledger.costing.uncertainty;

import java.util.ArrayList;
import java.util.List;

/**
 * Whether batches of trials agree so well that further ones would not change the digits asked for:
 * the adaptive procedure of JCGM 101:2008, 7.9.4, from memory. Estimate, standard uncertainty and
 * both ends of the interval are averaged over the batches; twice the standard deviation of each
 * average has to stay within the numerical tolerance of 7.9.2.
 */
final class Stability {
  private final Trials trials;
  private final List<Figure> figures = new ArrayList<>();

  Stability(Trials trials, int outputs) {
    this.trials = trials;
    for (int i = 0; i < outputs; i++) {
      figures.add(new Figure());
    }
  }

  /** Takes a batch in: for each output, its values. */
  void add(double[][] batch) {
    for (int i = 0; i < batch.length; i++) {
      figures.get(i).add(new Outcome(batch[i]), trials);
    }
  }

  boolean isReached() {
    return figures.stream().allMatch(figure -> figure.isStable(trials.digits()));
  }

  /**
   * Half a unit of the last of so many significant digits: with u = c x 10^l, c being a whole
   * number of that many digits, it is 10^l / 2.
   */
  static double tolerance(double uncertainty, int digits) {
    int exponent = (int) Math.floor(Math.log10(uncertainty)) - digits + 1;
    // Rounding to the digits may carry, as 9.96 becomes 10.
    if (Math.rint(uncertainty / Math.pow(10, exponent)) >= Math.pow(10, digits)) {
      exponent++;
    }
    return Math.pow(10, exponent) / 2;
  }

  /** One output, batch by batch. */
  private static final class Figure {
    private final Average estimate = new Average();
    private final Average uncertainty = new Average();
    private final Average low = new Average();
    private final Average high = new Average();
    private int made;
    private double squares;

    void add(Outcome batch, Trials trials) {
      CoverageInterval interval = batch.interval(trials.coverage());
      double deviation = batch.standardDeviation();
      // The squares about the common mean: those within the batches, and those between their means.
      squares += deviation * deviation * (batch.size() - 1);
      made += batch.size();
      estimate.add(batch.mean());
      uncertainty.add(deviation);
      low.add(interval.low());
      high.add(interval.high());
    }

    boolean isStable(int digits) {
      if (estimate.count < 2) {
        return false;
      }
      double size = (double) made / estimate.count;
      double all = Math.sqrt((squares + size * estimate.squares()) / (made - 1));
      if (all == 0) {
        return true;
      }
      double tolerance = tolerance(all, digits);
      return estimate.isWithin(tolerance)
          && uncertainty.isWithin(tolerance)
          && low.isWithin(tolerance)
          && high.isWithin(tolerance);
    }
  }

  /** An average over the batches (Welford's updating of mean and squares). */
  private static final class Average {
    private int count;
    private double mean;
    private double squares;

    void add(double value) {
      count++;
      double before = value - mean;
      mean += before / count;
      squares += before * (value - mean);
    }

    double squares() {
      return squares;
    }

    boolean isWithin(double tolerance) {
      return 2 * Math.sqrt(squares / (count - 1) / count) <= tolerance;
    }
  }
}
