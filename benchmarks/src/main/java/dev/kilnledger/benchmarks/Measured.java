package dev.kilnledger.benchmarks;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;

/**
 * What one variant took.
 *
 * @param variant {@code Class.method}
 * @param nanoseconds mean time of one call
 * @param error half the width of the 99.9 % interval of the mean in nanoseconds, NaN for a single
 *     shot
 * @param bytes bytes allocated by one call
 */
record Measured(String variant, double nanoseconds, double error, double bytes) {

  static Measured of(RunResult run) {
    Result<?> time = run.getPrimaryResult();
    double unit = nanosecondsIn(time.getScoreUnit());
    Result<?> allocated = run.getSecondaryResults().get("gc.alloc.rate.norm");
    return new Measured(
        variant(run.getParams().getBenchmark()),
        time.getScore() * unit,
        time.getScoreError() * unit,
        allocated == null ? Double.NaN : allocated.getScore());
  }

  /** {@return class and method of a benchmark's full name} */
  static String variant(String fullName) {
    int method = fullName.lastIndexOf('.');
    return fullName.substring(fullName.lastIndexOf('.', method - 1) + 1);
  }

  /** {@return how many nanoseconds a time per call in the unit is} */
  static double nanosecondsIn(String scoreUnit) {
    TimeUnit unit =
        switch (scoreUnit) {
          case "ns/op" -> TimeUnit.NANOSECONDS;
          case "us/op" -> TimeUnit.MICROSECONDS;
          case "ms/op" -> TimeUnit.MILLISECONDS;
          case "s/op" -> TimeUnit.SECONDS;
          default ->
              throw new IllegalArgumentException(
                  "the unit "
                      + scoreUnit
                      + " is refused; accepted are ns/op, us/op, ms/op and s/op");
        };
    return unit.toNanos(1);
  }
}
