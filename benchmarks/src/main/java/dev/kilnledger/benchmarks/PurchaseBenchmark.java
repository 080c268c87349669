package dev.kilnledger.benchmarks;

import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.purchase.Need;
import dev.kilnledger.costing.purchase.PurchasePlan;
import dev.kilnledger.costing.purchase.PurchasePlanner;
import dev.kilnledger.units.Amounts;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.joda.money.CurrencyUnit;
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
 * The cheapest order of at least 100,000 pieces out of 20 offers of packs, for twelve price books
 * in turn, as the time depends on how contents mix. The peer is the integer solver of ojAlgo, given
 * the same contents and prices; it answers within the tolerance of its doubles, the library exactly
 * and with the least surplus among equally cheap orders.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class PurchaseBenchmark {
  static final long NEED = 100_000;

  final List<PackProblem> problems =
      IntStream.range(0, 12).mapToObj(i -> PackProblem.random(new Random(i), 20, NEED)).toList();
  final List<PriceBook> prices = problems.stream().map(PurchaseBenchmark::book).toList();
  final List<Need> needs = List.of(Need.of("pellets", Amounts.ratio(NEED)));

  static PriceBook book(PackProblem problem) {
    PriceBook.Builder book = PriceBook.builder().currency(CurrencyUnit.EUR).asOf(CostedPart.TODAY);
    for (int i = 0; i < problem.offers(); i++) {
      book.addOffers(
          CostedPart.offer("pellets", Amounts.ratio((double) problem.content(i)), problem.price(i))
              .supplier("supplier " + i)
              .build());
    }
    return book.build();
  }

  /** {@return the orders by the library} */
  @Benchmark
  public List<PurchasePlan> planner() {
    return prices.stream().map(book -> PurchasePlanner.standard().plan(book, needs)).toList();
  }

  /** {@return the packs of each offer by the integer solver} */
  @Benchmark
  public List<long[]> integerSolver() {
    return problems.stream().map(PackProblem::bySolver).toList();
  }
}
