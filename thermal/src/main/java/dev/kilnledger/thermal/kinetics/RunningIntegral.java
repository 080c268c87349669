package dev.kilnledger.thermal.kinetics;

import java.util.List;
import java.util.stream.DoubleStream;

/**
 * An integral along a temperature history, from its start to any time in it, as a natural
 * logarithm. Times are seconds as in the history.
 *
 * <p>It adds up over parts, so that cutting a line in two changes nothing, and is the same for a
 * history run backwards.
 *
 * <p>Example: 150 kJ/mol at 650 K gathers a reduced time of 4.60517e-9 s in 1.44829 h, after which
 * 99 % of a binder of 1e9 1/s are gone.
 */
public final class RunningIntegral {
  private static final double SAMPLE_KELVIN = 1;
  private static final double SAMPLE_SECONDS = 300;
  private static final int MOST_SAMPLES = 1000;

  private final LineMean mean;
  private final double[] seconds;
  private final double[] kelvin;
  // The integral up to each point is sums x exp(-A / hottest), which cannot underflow.
  private final double[] hottest; // K, up to there
  private final double[] sums;
  // What the lines that meet at a point ask of it, worked out once: zero where none does.
  private final double[] antiderivatives;

  /**
   * An integral of {@code exp(-A / T)} times a function of T.
   *
   * @param mean the mean of the same on a straight line
   */
  RunningIntegral(LineMean mean, TemperatureHistory history) {
    List<TemperaturePoint> points = history.points();
    int count = points.size();
    this.mean = mean;
    seconds = new double[count];
    kelvin = new double[count];
    hottest = new double[count];
    sums = new double[count];
    antiderivatives = new double[count];
    for (int i = 0; i < count; i++) {
      seconds[i] = points.get(i).time().si();
      kelvin[i] = points.get(i).temperature().si();
      hottest[i] = i == 0 ? kelvin[0] : Math.max(hottest[i - 1], kelvin[i]);
      if (i > 0) {
        prepare(i - 1);
        sums[i] = sum(i - 1, seconds[i], kelvin[i], antiderivatives[i], hottest[i]);
      }
    }
  }

  /** {@return the time of the first point, in s} */
  public double start() {
    return seconds[0];
  }

  /** {@return the time of the last point, in s} */
  public double end() {
    return seconds[seconds.length - 1];
  }

  /** {@return the natural logarithm of the integral over the whole history} */
  public double logAtEnd() {
    return log(sums[sums.length - 1], hottest[hottest.length - 1]);
  }

  /**
   * The integral from the start to a time.
   *
   * @param time in s, from the first to the last point's time
   * @return the natural logarithm of the integral, minus infinity at the start
   * @throws IllegalArgumentException if the time lies outside
   */
  public double logAt(double time) {
    int i = lineAt(time);
    if (time == seconds[i]) {
      return log(sums[i], hottest[i]);
    }
    double now = temperatureOn(i, time);
    double hot = Math.max(hottest[i], now);
    return log(sum(i, time, now, 0, hot), hot);
  }

  /**
   * The temperature at a time.
   *
   * @param time in s, from the first to the last point's time
   * @return the temperature, in K
   * @throws IllegalArgumentException if the time lies outside
   */
  public double kelvinAt(double time) {
    return temperatureOn(lineAt(time), time);
  }

  /**
   * Times at which to draw what happens in an interval: its ends, the points of the history between
   * them, and steps of at most 1 K and 5 min, no more than a thousand to a line.
   *
   * @param from the first time, in s
   * @param to the last time, in s
   * @return the times, in s, ascending
   * @throws IllegalArgumentException if either lies outside the history
   */
  public double[] samples(double from, double to) {
    DoubleStream.Builder times = DoubleStream.builder().add(from);
    double before = from;
    for (double corner : seconds) {
      if (corner > before && corner < to) {
        addLine(times, before, corner);
        before = corner;
      }
    }
    addLine(times, before, to);
    return times.build().toArray();
  }

  private void addLine(DoubleStream.Builder times, double from, double to) {
    double rise = Math.abs(kelvinAt(to) - kelvinAt(from));
    double wanted = Math.max(rise / SAMPLE_KELVIN, (to - from) / SAMPLE_SECONDS);
    int pieces = (int) Math.max(1, Math.min(MOST_SAMPLES, Math.ceil(wanted)));
    for (int i = 1; i < pieces; i++) {
      times.add(from + (to - from) * i / pieces);
    }
    times.add(to);
  }

  /**
   * The natural logarithm of a sum of two numbers given by theirs.
   *
   * @param a the logarithm of one number
   * @param b the logarithm of the other
   * @return the logarithm of the sum
   */
  public static double logSum(double a, double b) {
    double larger = Math.max(a, b);
    return larger == Double.NEGATIVE_INFINITY
        ? larger
        : larger + Math.log1p(Math.exp(Math.min(a, b) - larger));
  }

  private double log(double sum, double hot) {
    return Math.log(sum) - mean.exponent(hot);
  }

  /** Sees to the antiderivatives at both ends of a line, if they are needed. */
  private void prepare(int line) {
    double from = kelvin[line];
    double to = kelvin[line + 1];
    if (from == to) {
      antiderivatives[line + 1] = antiderivatives[line];
    } else if (!mean.isShort(Math.min(from, to), Math.max(from, to))) {
      antiderivatives[line] = known(antiderivatives[line], from);
      antiderivatives[line + 1] = mean.antiderivative(to);
    }
  }

  private double known(double antiderivative, double at) {
    return antiderivative == 0 ? mean.antiderivative(at) : antiderivative;
  }

  /** The sum up to a time on a line, over the exponential at the hottest so far. */
  private double sum(
      int line, double untilSeconds, double untilKelvin, double antiderivative, double hot) {
    double from = kelvin[line];
    double lineCold = Math.min(from, untilKelvin);
    double lineHot = Math.max(from, untilKelvin);
    double before = hottest[line];
    double over;
    double sumOverHot;
    if (mean.isShort(lineCold, lineHot)) {
      over = mean.ofShort(lineCold, lineHot);
      sumOverHot = mean.exponential(before, hot);
    } else {
      double exponential = mean.exponential(lineCold, lineHot);
      double atFrom = known(antiderivatives[line], from);
      double atUntil = known(antiderivative, untilKelvin);
      over =
          from < untilKelvin
              ? mean.ofLong(from, atFrom, untilKelvin, atUntil, exponential)
              : mean.ofLong(untilKelvin, atUntil, from, atFrom, exponential);
      // on the way up it is the same
      sumOverHot =
          before == lineCold && hot == lineHot ? exponential : mean.exponential(before, hot);
    }
    return sums[line] * sumOverHot
        + (untilSeconds - seconds[line]) * over * mean.exponential(lineHot, hot);
  }

  private double temperatureOn(int line, double time) {
    double share = (time - seconds[line]) / (seconds[line + 1] - seconds[line]);
    return kelvin[line] + share * (kelvin[line + 1] - kelvin[line]);
  }

  private int lineAt(double time) {
    int last = seconds.length - 1;
    if (!(time >= seconds[0] && time <= seconds[last])) {
      throw new IllegalArgumentException(
          "running integral: time is "
              + time
              + " s; accepted is from "
              + seconds[0]
              + " s to "
              + seconds[last]
              + " s, where the history is");
    }
    int low = 0;
    int high = last;
    while (high - low > 1) {
      int middle = (low + high) / 2;
      if (seconds[middle] <= time) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
