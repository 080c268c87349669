package dev.kilnledger.thermal.kinetics;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
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

  private final DoubleBinaryOperator logMean;
  private final double[] seconds;
  private final double[] kelvin;
  private final double[] logs;

  RunningIntegral(DoubleBinaryOperator logMean, TemperatureHistory history) {
    List<TemperaturePoint> points = history.points();
    this.logMean = logMean;
    seconds = points.stream().mapToDouble(point -> point.time().si()).toArray();
    kelvin = points.stream().mapToDouble(point -> point.temperature().si()).toArray();
    logs = new double[seconds.length];
    logs[0] = Double.NEGATIVE_INFINITY;
    for (int i = 1; i < logs.length; i++) {
      logs[i] = logSum(logs[i - 1], logOver(i - 1, seconds[i], kelvin[i]));
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
    return logs[logs.length - 1];
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
    return time == seconds[i] ? logs[i] : logSum(logs[i], logOver(i, time, temperatureOn(i, time)));
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

  private double logOver(int line, double untilSeconds, double untilKelvin) {
    return Math.log(untilSeconds - seconds[line])
        + logMean.applyAsDouble(kelvin[line], untilKelvin);
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
