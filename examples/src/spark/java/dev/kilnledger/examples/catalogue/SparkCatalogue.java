package dev.kilnledger.examples.catalogue;

import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.costing.job.Job;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaSparkContext;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/**
 * Prices a catalogue on Apache Spark as {@link CatalogueBatch} does alone. The jobs of the workshop
 * travel to the machines as they are, being serializable values, each part of the catalogue makes a
 * pricing of its own, and what comes back is a total for each part; decimals add up to the same in
 * any order.
 */
public final class SparkCatalogue {
  private SparkCatalogue() {}

  /**
   * Prices a catalogue alone and on Spark in this machine, and prints both totals and times.
   *
   * @param arguments the catalogue, and how many threads to use
   * @throws IOException if it cannot be read
   */
  public static void main(String[] arguments) throws IOException {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    Path catalogue = Path.of(arguments[0]);
    int threads = Integer.parseInt(arguments[1]);
    try (JavaSparkContext spark = local(threads)) {
      long start = System.nanoTime();
      CatalogueTotals alone = alone(catalogue, threads);
      long between = System.nanoTime();
      CatalogueTotals distributed = price(spark, catalogue, 4 * threads);
      long end = System.nanoTime();
      out.println("alone    " + alone + " in " + (between - start) / 1_000_000 + " ms");
      out.println("on Spark " + distributed + " in " + (end - between) / 1_000_000 + " ms");
    }
  }

  /** A Spark of this machine's own, without a page to watch it. */
  static JavaSparkContext local(int threads) {
    JavaSparkContext spark =
        new JavaSparkContext(
            new SparkConf()
                .setMaster("local[" + threads + "]")
                .setAppName("catalogue")
                .set("spark.driver.host", "localhost")
                .set("spark.driver.bindAddress", "127.0.0.1")
                .set("spark.ui.enabled", "false"));
    spark.setLogLevel("ERROR");
    return spark;
  }

  /** The totals by the plain batch, whose prices go nowhere. */
  static CatalogueTotals alone(Path catalogue, int threads) throws IOException {
    try (InputStream in = Files.newInputStream(catalogue);
        Writer nowhere = Writer.nullWriter()) {
      BatchSummary summary =
          new CatalogueBatch(
                  new WorkshopPricing(PricedCatalogue.workshop()), CurrencyUnit.EUR, threads)
              .run(in, Files.size(catalogue), nowhere, Progress.unheard());
      return new CatalogueTotals(summary.priced(), summary.refused(), summary.usage());
    }
  }

  /** The totals by Spark, which cuts the catalogue into so many parts at least. */
  static CatalogueTotals price(JavaSparkContext spark, Path catalogue, int parts) {
    TreeMap<String, Job> workshop = new TreeMap<>(PricedCatalogue.workshop());
    String header = String.join(",", CatalogueRow.HEADER);
    return spark
        .textFile(catalogue.toUri().toString(), parts)
        .filter(line -> !line.equals(header))
        .mapPartitions(lines -> List.of(totals(workshop, lines)).iterator())
        .reduce(CatalogueTotals::plus);
  }

  private static CatalogueTotals totals(Map<String, Job> workshop, Iterator<String> lines)
      throws IOException {
    WorkshopPricing pricing = new WorkshopPricing(workshop);
    long priced = 0;
    long refused = 0;
    BigMoney usage = BigMoney.zero(CurrencyUnit.EUR);
    while (lines.hasNext()) {
      byte[] line = lines.next().getBytes(StandardCharsets.UTF_8);
      CsvRecord record = new CsvRecords(new ByteArrayInputStream(line)).next().orElse(null);
      if (record != null) {
        try {
          usage = usage.plus(pricing.apply(CatalogueRow.of(record)).usage());
          priced++;
        } catch (IllegalArgumentException e) {
          refused++;
        }
      }
    }
    return new CatalogueTotals(priced, refused, usage);
  }
}
