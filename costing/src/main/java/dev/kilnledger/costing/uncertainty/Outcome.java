package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import javax.measure.quantity.Dimensionless;
import org.jspecify.annotations.Nullable;

/** The values that a simulation has drawn for one figure, and what they say about it. */
public final class Outcome implements Serializable {
  private static final long serialVersionUID = 1;

  /** The values in the order in which they were drawn. */
  private final double[] draws;

  private transient volatile double @Nullable [] sorted;

  /** Takes over draws, one or more, each a number. */
  Outcome(double[] draws) {
    this.draws = draws;
  }

  /** {@return how many values were drawn} */
  public int size() {
    return draws.length;
  }

  /** {@return the values in the order in which they were drawn} */
  public DoubleStream draws() {
    return Arrays.stream(draws);
  }

  /** {@return the mean of the values: the estimate (JCGM 101, 7.6)} */
  public double mean() {
    return draws().sum() / draws.length;
  }

  /**
   * {@return the standard deviation of the values, over their number less one: the standard
   * uncertainty (JCGM 101, 7.6); 0 of a single value}
   */
  public double standardDeviation() {
    double mean = mean();
    double squares = draws().map(value -> (value - mean) * (value - mean)).sum();
    return draws.length == 1 ? 0 : Math.sqrt(squares / (draws.length - 1));
  }

  /** {@return the standard deviation of {@link #mean} as an estimate} */
  public double standardError() {
    return standardDeviation() / Math.sqrt(draws.length);
  }

  /** {@return the value that half of all values do not exceed} */
  public double median() {
    return quantile(0.5);
  }

  /**
   * The value that a share of all values does not exceed.
   *
   * @param share the share, more than 0 and up to 1
   * @return the smallest value of which that holds
   * @throws IllegalArgumentException if the share is out of range
   */
  public double quantile(Amount<Dimensionless> share) {
    new Problems("quantile")
        .require(
            share.si() > 0 && share.si() <= 1,
            "share is " + share + "; accepted is more than 0 and up to 1")
        .refuseIfAny();
    return quantile(share.si());
  }

  private double quantile(double share) {
    return sorted()[Numbers.rank(share, draws.length) - 1];
  }

  /**
   * The share of the values up to one.
   *
   * @param value the value
   * @return the share that does not exceed it: a probability
   */
  public Amount<Dimensionless> probabilityUpTo(double value) {
    return Amounts.ratio((double) Numbers.upTo(value, sorted()) / draws.length);
  }

  /**
   * The interval that leaves out as many values below as above.
   *
   * @param coverage the share of the values in it, more than 0 and less than 1
   * @return the interval (JCGM 101, 7.7.2)
   * @throws IllegalArgumentException if the share is out of range
   */
  public CoverageInterval interval(Amount<Dimensionless> coverage) {
    int inside = inside(coverage);
    return interval((draws.length - inside + 1) / 2, inside, coverage);
  }

  /**
   * The shortest interval that holds so many values.
   *
   * @param coverage the share of the values in it, more than 0 and less than 1
   * @return the interval, the lowest if several are as short (JCGM 101, 7.7.4)
   * @throws IllegalArgumentException if the share is out of range
   */
  public CoverageInterval shortestInterval(Amount<Dimensionless> coverage) {
    int inside = inside(coverage);
    double[] values = sorted();
    int best = 1;
    for (int r = 2; r + inside <= values.length; r++) {
      if (values[r + inside - 1] - values[r - 1] < values[best + inside - 1] - values[best - 1]) {
        best = r;
      }
    }
    return interval(best, inside, coverage);
  }

  private int inside(Amount<Dimensionless> coverage) {
    new Problems("coverage interval")
        .require(
            coverage.si() > 0 && coverage.si() < 1,
            "coverage is " + coverage + "; accepted is more than 0 and less than 1")
        .refuseIfAny();
    return (int) Math.floor(coverage.si() * draws.length + 0.5);
  }

  /** From the r-th value to the (r + q)-th, as far as there are so many. */
  private CoverageInterval interval(int r, int q, Amount<Dimensionless> coverage) {
    double[] values = sorted();
    int low = Math.max(1, Math.min(r, values.length));
    int high = Math.max(1, Math.min(low + q, values.length));
    return CoverageInterval.of(values[low - 1], values[high - 1], coverage);
  }

  /**
   * Equally wide bars from the lowest to the highest value, for a chart.
   *
   * @param bars how many, 1 or more; a single one where all values are the same
   * @return the bars, each with the number of values in it; a value on a border counts in the
   *     higher bar, the highest in the last
   * @throws IllegalArgumentException if there are none
   */
  public List<HistogramBar> histogram(int bars) {
    new Problems("histogram")
        .require(bars >= 1, "bars is " + bars + "; accepted is 1 or more")
        .refuseIfAny();
    double[] values = sorted();
    double low = values[0];
    double width = (values[values.length - 1] - low) / bars;
    if (width == 0) {
      return List.of(HistogramBar.of(low, low, values.length));
    }
    int[] counts = new int[bars];
    for (double value : values) {
      counts[Math.min(bars - 1, (int) ((value - low) / width))]++;
    }
    List<HistogramBar> histogram = new ArrayList<>();
    for (int bar = 0; bar < bars; bar++) {
      histogram.add(HistogramBar.of(low + bar * width, low + (bar + 1) * width, counts[bar]));
    }
    return List.copyOf(histogram);
  }

  /**
   * Quantiles at equal steps of the share, for a chart: the share up to each value.
   *
   * @param points how many, 1 or more; with 20, the quantiles of 5 %, 10 % ... 100 %
   * @return the points, the lowest first
   * @throws IllegalArgumentException if there are none
   */
  public List<QuantilePoint> quantiles(int points) {
    new Problems("quantiles")
        .require(points >= 1, "points is " + points + "; accepted is 1 or more")
        .refuseIfAny();
    List<QuantilePoint> quantiles = new ArrayList<>();
    for (int point = 1; point <= points; point++) {
      double share = (double) point / points;
      quantiles.add(QuantilePoint.of(Amounts.ratio(share), quantile(share)));
    }
    return List.copyOf(quantiles);
  }

  /** Every value over a number. */
  Outcome dividedBy(double divisor) {
    return new Outcome(draws().map(value -> value / divisor).toArray());
  }

  private double[] sorted() {
    double[] values = sorted;
    if (values == null) {
      // Two threads may both sort, to the same end.
      values = draws.clone();
      Arrays.sort(values);
      sorted = values;
    }
    return values;
  }

  @Override
  public boolean equals(Object other) {
    return this == other || (other instanceof Outcome that && Arrays.equals(draws, that.draws));
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(draws);
  }

  /** The number of values with their median and 90 % interval. */
  @Override
  public String toString() {
    return draws.length
        + " values, median "
        + Numbers.text(median())
        + ", 5 to 95 % "
        + Numbers.text(quantile(0.05))
        + " to "
        + Numbers.text(quantile(0.95));
  }
}
