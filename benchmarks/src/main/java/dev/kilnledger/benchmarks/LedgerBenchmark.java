package dev.kilnledger.benchmarks;

import dev.kilnledger.costing.ledger.Ledger;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.ledger.Statement;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The statement of a plan of seven items: the cash for parts 1, 2 and n, of all, the usage, what is
 * left and when it has to be bought again. The peer is {@linkplain HandWrittenLedger written for
 * this one plan} in decimals, with the same lines and figures; it knows no sources, caveats or
 * other rules. Both are exact. The figures of the plan are prepared before in both.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class LedgerBenchmark {
  final LedgerPlan plan = CostedPart.plan();
  final HandWrittenLedger hand = new HandWrittenLedger();

  long thousand = 1_000;
  long million = 1_000_000;

  /** {@return the statement of the first 1,000 parts} */
  @Benchmark
  public Statement statementOfThousand() {
    return Ledger.standard().statement(plan, thousand);
  }

  /** {@return the statement of the first 1,000,000 parts} */
  @Benchmark
  public Statement statementOfMillion() {
    return Ledger.standard().statement(plan, million);
  }

  /** {@return the figures of the first 1,000 parts by hand} */
  @Benchmark
  public Object byHandOfThousand() {
    return hand.statement(thousand);
  }
}
