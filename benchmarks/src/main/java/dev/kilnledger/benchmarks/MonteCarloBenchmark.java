package dev.kilnledger.benchmarks;

import static dev.kilnledger.units.TradeUnits.GRAM;

import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.uncertainty.Beta;
import dev.kilnledger.costing.uncertainty.LogNormal;
import dev.kilnledger.costing.uncertainty.MonteCarlo;
import dev.kilnledger.costing.uncertainty.Pert;
import dev.kilnledger.costing.uncertainty.Trials;
import dev.kilnledger.costing.uncertainty.Triangular;
import dev.kilnledger.costing.uncertainty.UncertainInput;
import dev.kilnledger.costing.uncertainty.UncertainPlan;
import dev.kilnledger.costing.uncertainty.UncertainStatement;
import dev.kilnledger.costing.yield.Failures;
import dev.kilnledger.costing.yield.Stage;
import dev.kilnledger.costing.yield.StageYield;
import dev.kilnledger.units.Amounts;
import java.util.List;
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
 * The cash of 100 parts in 100,000 trials: seven items of which four prices, a life, a quantity and
 * a yield are drawn; the cash for part 1, part n and all, and the usage are kept of each. The peer
 * is {@linkplain HandWrittenTrials one double loop} for this one plan with the same generator and
 * samplers. It counts packs in plain doubles, while the library's counts are those of the ledger to
 * the last pack, so the library is the more accurate of the two.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class MonteCarloBenchmark {
  static final int PARTS = 100;

  final UncertainPlan plan = UncertainPlan.of(counted(), inputs());
  final Trials trials = Trials.fixed(100_000, 7);
  final HandWrittenTrials hand = new HandWrittenTrials(100_000, 7);

  /** The plan of {@link CostedPart} with a sintering that fails now and then. */
  private static LedgerPlan counted() {
    return LedgerPlan.builder()
        .from(CostedPart.plan())
        .failures(
            Failures.builder()
                .addStages(
                    StageYield.builder()
                        .stage(Stage.SINTER)
                        .parts(Amounts.percent(90))
                        .source(CostedPart.INVENTED)
                        .build())
                .build())
        .build();
  }

  private static List<UncertainInput> inputs() {
    return List.of(
        UncertainInput.price("filament", LogNormal.of(60, 0.15), CostedPart.INVENTED),
        UncertainInput.price("packing powder", Triangular.of(15, 18, 24), CostedPart.INVENTED),
        UncertainInput.price("carbon", Triangular.of(18, 22, 30), CostedPart.INVENTED),
        UncertainInput.price("energy", LogNormal.of(0.30, 0.2), CostedPart.INVENTED),
        UncertainInput.life("crucible", Triangular.of(3, 6, 10), CostedPart.INVENTED),
        UncertainInput.quantity("filament", Pert.of(120, 128, 150), CostedPart.INVENTED).in(GRAM),
        UncertainInput.partYield(Stage.SINTER, Beta.of(18, 2), CostedPart.INVENTED));
  }

  /** {@return the statement by one thread, the calling one} */
  @Benchmark
  public UncertainStatement oneThread() {
    return new MonteCarlo(1).statement(plan, PARTS, trials);
  }

  /** {@return the statement by two threads} */
  @Benchmark
  public UncertainStatement twoThreads() {
    return new MonteCarlo(2).statement(plan, PARTS, trials);
  }

  /** {@return the cash by the loop, a row for each figure} */
  @Benchmark
  public double[][] byHand() {
    return hand.run();
  }
}
