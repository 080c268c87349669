package dev.kilnledger.benchmarks;

import java.util.List;

/** What each part of the library has to reach. */
final class Claims {
  private Claims() {}

  /** The rows, in the order of the modules. */
  static final List<Claim> ALL =
      List.of(
          new Claim(
              "amount: volume to mass, one gram added, against a record of a double",
              "AmountBenchmark.amount",
              "AmountBenchmark.recordOfDouble",
              3),
          new Claim(
              "the same against the quantities of the reference implementation",
              "AmountBenchmark.amount",
              "AmountBenchmark.referenceImplementation",
              1.0 / 50));
}
