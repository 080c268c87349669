package dev.kilnledger.benchmarks;

import java.util.Collection;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Measures all in one run, with allocation, and prints the tables of the README. */
public final class Measure {
  private Measure() {}

  /**
   * Runs the benchmarks.
   *
   * @param args JMH's own options, such as a pattern of the benchmarks to run
   * @throws CommandLineOptionException if an option is not JMH's
   * @throws RunnerException if a benchmark fails
   */
  public static void main(String[] args) throws CommandLineOptionException, RunnerException {
    Collection<RunResult> runs =
        new Runner(
                new OptionsBuilder()
                    .parent(new CommandLineOptions(args))
                    .addProfiler(GCProfiler.class)
                    .shouldFailOnError(true)
                    .build())
            .run();
    ResultsTable table = new ResultsTable(runs.stream().map(Measured::of).toList());
    System.out.printf(
        "%n%s %s, %s, %d processors%n%n%s%n%s",
        System.getProperty("java.vm.name"),
        Runtime.version(),
        System.getProperty("os.arch"),
        Runtime.getRuntime().availableProcessors(),
        table.claims(Claims.ALL),
        table.variants());
  }
}
