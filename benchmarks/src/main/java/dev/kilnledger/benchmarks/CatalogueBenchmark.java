package dev.kilnledger.benchmarks;

import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.costing.job.CheckedFiring;
import dev.kilnledger.costing.job.Job;
import dev.kilnledger.costing.job.WholeJob;
import dev.kilnledger.examples.WindowWorkshop;
import dev.kilnledger.examples.catalogue.BatchSummary;
import dev.kilnledger.examples.catalogue.CatalogueBatch;
import dev.kilnledger.examples.catalogue.PricedCatalogue;
import dev.kilnledger.examples.catalogue.WorkshopPricing;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A catalogue of 1,000 rows of one part in a heap of 64 MB, read, priced and written by the batch
 * on one thread, against the same job answered as often in a loop, its firing computed once in
 * both. Other rows cost more by the firings they need.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx64m")
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class CatalogueBenchmark {
  int rows = 1000;

  private byte[] catalogue = {};

  /** Writes the catalogue. */
  @Setup
  public void write() {
    StringBuilder text =
        new StringBuilder("name,volume (cm3),x (mm),y (mm),z (mm),thickest section (mm),alloy\n");
    for (int row = 1; row <= rows; row++) {
      text.append("latch cam,2,30,18,8,5,tin bronze 90/10\n");
    }
    catalogue = text.toString().getBytes(StandardCharsets.UTF_8);
  }

  /**
   * {@return what became of the catalogue}
   *
   * @throws IOException never
   */
  @Benchmark
  public BatchSummary batch() throws IOException {
    return new CatalogueBatch(new WorkshopPricing(PricedCatalogue.workshop()), CurrencyUnit.EUR, 1)
        .run(
            new ByteArrayInputStream(catalogue),
            catalogue.length,
            Writer.nullWriter(),
            Progress.unheard());
  }

  /** {@return what the same parts use up} */
  @Benchmark
  public BigMoney loop() {
    WholeJob wholeJob = WholeJob.standard();
    Job job = WindowWorkshop.latchCams(1);
    CheckedFiring firing = wholeJob.check(wholeJob.setup(job));
    BigMoney usage = BigMoney.zero(CurrencyUnit.EUR);
    for (int row = 1; row <= rows; row++) {
      usage = usage.plus(wholeJob.answer(job, firing).statement().usage().total());
    }
    return usage;
  }
}
