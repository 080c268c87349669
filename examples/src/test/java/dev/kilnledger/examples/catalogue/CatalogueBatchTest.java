package dev.kilnledger.examples.catalogue;

import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.TradeUnits.GRAM;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.joda.money.CurrencyUnit.EUR;

import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.costing.job.JobAnswer;
import dev.kilnledger.costing.job.WholeJob;
import dev.kilnledger.examples.WindowWorkshop;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.joda.money.BigMoney;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CatalogueBatchTest {
  private static final String HEADER =
      "name,volume (cm3),x (mm),y (mm),z (mm),thickest section (mm),alloy\n";
  private static final Path CATALOGUE = Path.of("src/test/resources/catalogue.csv");

  @TempDir private Path directory;

  /**
   * A price that follows from the row alone and never ends in decimals: a seventh of its volume.
   */
  private static PricedRow seventh(CatalogueRow row) {
    BigDecimal volume = new BigDecimal(row.part().finishedVolume().orElseThrow().si() * 1e6);
    BigMoney price = BigMoney.of(EUR, volume.divide(BigDecimal.valueOf(7), MathContext.DECIMAL128));
    return new PricedRow(grams(1), price, price, Severity.PASSED, List.of());
  }

  private static byte[] catalogue(int rows) {
    StringBuilder text = new StringBuilder(HEADER);
    for (int row = 1; row <= rows; row++) {
      text.append("part ").append(row).append(',').append(1 + row % 10);
      text.append(",50,50,50,5,copper\n");
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static BatchSummary run(CatalogueBatch batch, byte[] catalogue, Writer prices)
      throws IOException {
    return batch.run(
        new ByteArrayInputStream(catalogue), catalogue.length, prices, Progress.unheard());
  }

  @Test
  void pricesAndTotalsAreTheSameForAnyNumberOfThreads() throws IOException {
    byte[] catalogue = catalogue(3000);
    StringWriter one = new StringWriter();
    BatchSummary alone =
        run(new CatalogueBatch(CatalogueBatchTest::seventh, EUR, 1), catalogue, one);
    for (int threads : new int[] {2, 8}) {
      StringWriter several = new StringWriter();
      assertThat(
              run(
                  new CatalogueBatch(CatalogueBatchTest::seventh, EUR, threads),
                  catalogue,
                  several))
          .isEqualTo(alone);
      assertThat(several.toString()).isEqualTo(one.toString());
    }
    // 300 times the volumes 1 to 10, a seventh of it
    assertThat(alone.usage().getAmount().doubleValue()).isEqualTo(300 * 55 / 7.0);
    assertThat(alone.priced()).isEqualTo(3000);
    assertThat(alone.throughLine()).isEqualTo(3001);
  }

  /** Never more rows on the way than a few for each thread, however long the catalogue is. */
  @Test
  void aLongCatalogueIsReadNoFurtherThanItIsPriced() throws IOException {
    AtomicInteger read = new AtomicInteger();
    AtomicInteger ahead = new AtomicInteger();
    int rows = 20_000;
    InputStream endless =
        new InputStream() {
          private final byte[] header = HEADER.getBytes(StandardCharsets.UTF_8);
          private final byte[] line = "a,1,50,50,50,5,copper\n".getBytes(StandardCharsets.UTF_8);
          private int at;

          @Override
          public int read() {
            int place = at++ - header.length;
            if (place < 0) {
              return header[place + header.length];
            }
            if (place % line.length == 0 && read.incrementAndGet() > rows) {
              return -1;
            }
            return line[place % line.length];
          }

          @Override
          public int read(byte[] bytes, int from, int length) {
            int one = read();
            if (one < 0) {
              return -1;
            }
            bytes[from] = (byte) one;
            return 1;
          }
        };
    AtomicInteger written = new AtomicInteger();
    Writer nowhere =
        new Writer() {
          @Override
          public void write(char[] text, int from, int length) {
            ahead.accumulateAndGet(read.get() - written.incrementAndGet(), Math::max);
          }

          @Override
          public void flush() {}

          @Override
          public void close() {}
        };
    BatchSummary summary =
        new CatalogueBatch(CatalogueBatchTest::seventh, EUR, 2)
            .run(endless, Long.MAX_VALUE, nowhere, Progress.unheard());
    assertThat(summary.priced()).isEqualTo(rows);
    // 4 rows for each of 2 threads, one being read, and what the reader of characters holds
    assertThat(ahead.get()).isLessThan(8 + 2 + 8192 / 22);
  }

  @Test
  void badRowsAreToldAndGoodOnesPriced() throws IOException {
    Path prices = directory.resolve("prices.csv");
    String told =
        PricedCatalogue.price(
            CATALOGUE, prices, 2, new PrintStream(OutputStream.nullOutputStream()));
    List<String> lines = Files.readAllLines(prices);
    JobAnswer cam = WholeJob.standard().answer(WindowWorkshop.latchCams(1));
    assertThat(lines.get(0))
        .isEqualTo(
            "line,name,filament (g),first part (EUR),usage per part (EUR),worst finding,codes,"
                + "problem");
    assertThat(lines.get(1))
        .startsWith(
            "2,latch cam,"
                + cam.passage().filamentMass().format(GRAM, 4).replace(" g", "")
                + ","
                + cam.statement().firstPart().total().getAmount().toPlainString()
                + ",")
        .contains(",undetermined,");
    assertThat(lines.get(2)).startsWith("3,\"rosette, large\",").endsWith(",");
    assertThat(lines.get(3))
        .isEqualTo(
            "4,hinge plate,,,,,,\"volume (cm3) is \"\"4,5\"\"; accepted is digits with a point,"
                + " such as 12.5; and thickest section (mm) is \"\"\"\"; accepted is digits with a"
                + " point, such as 12.5\"");
    assertThat(lines.get(4)).startsWith("5,").contains("opens a quotation mark in cell 1");
    assertThat(lines.get(5)).contains("accepted is one of [copper, tin bronze 90/10]");
    assertThat(lines.get(6)).startsWith("7,thick,,,,,,").contains("accepted is");
    assertThat(lines.get(7)).startsWith("9,\"'=escutcheon\",").endsWith(",");
    assertThat(lines).hasSize(8);
    assertThat(told).startsWith("3 priced, 4 refused, complete; one of each uses up EUR ");
  }

  @Test
  void interruptedItKeepsWhatIsDone() throws IOException, InterruptedException {
    CountDownLatch fifty = new CountDownLatch(50);
    StringWriter prices = new StringWriter();
    List<BatchSummary> summaries = new ArrayList<>();
    List<Boolean> marks = new ArrayList<>();
    CatalogueBatch slow =
        new CatalogueBatch(
            row -> {
              fifty.countDown();
              pause(2);
              return seventh(row);
            },
            EUR,
            4);
    Thread batch =
        new Thread(
            () -> {
              try {
                summaries.add(run(slow, catalogue(1_000_000), prices));
                marks.add(Thread.currentThread().isInterrupted());
              } catch (IOException e) {
                throw new UncheckedIOException(e);
              }
            });
    batch.setDaemon(true);
    batch.start();
    fifty.await();
    batch.interrupt();
    batch.join(20_000);
    assertThat(batch.isAlive()).isFalse();
    BatchSummary summary = summaries.get(0);
    assertThat(summary.complete()).isFalse();
    assertThat(marks).containsExactly(true);
    // fifty had begun, of which 16 may have been on their way; few were begun after that
    assertThat(summary.priced()).isBetween(34L, 5000L);
    List<String> lines = prices.toString().lines().toList();
    assertThat(lines).hasSize((int) summary.priced() + 1);
    assertThat(lines.get(lines.size() - 1)).startsWith(summary.throughLine() + ",part ");
    assertThat(summary.throughLine()).isEqualTo(summary.priced() + 1);
  }

  /**
   * A row's price is that of its own job, whoever computed the firing and whatever came between.
   */
  @Test
  void rowsThatShareAFiringArePricedAsEachAlone() throws IOException {
    WorkshopPricing shared = new WorkshopPricing(PricedCatalogue.workshop());
    for (String volume : List.of("2", "2.5", "2", "2.5")) {
      String line = "part," + volume + ",30,18,8,5,tin bronze 90/10";
      CsvRecord record =
          new CsvRecords(new ByteArrayInputStream(line.getBytes(StandardCharsets.UTF_8)))
              .next()
              .orElseThrow();
      CatalogueRow row = CatalogueRow.of(record);
      assertThat(shared.apply(row))
          .isEqualTo(new WorkshopPricing(PricedCatalogue.workshop()).apply(row));
    }
  }

  private static void pause(int milliseconds) {
    try {
      Thread.sleep(milliseconds);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Test
  void progressGrowsToOne() throws IOException {
    List<Double> heard = new ArrayList<>();
    byte[] catalogue = catalogue(40);
    new CatalogueBatch(CatalogueBatchTest::seventh, EUR, 3)
        .run(new ByteArrayInputStream(catalogue), catalogue.length, new StringWriter(), heard::add);
    assertThat(heard).isSorted().hasSizeGreaterThan(20).last().isEqualTo(1.0);
    assertThat(heard.get(0)).isGreaterThan(0).isLessThan(0.1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "name;volume\n", "name,volume (mm3)\na,1\n"})
  void anotherHeaderIsRefused(String text) {
    CatalogueBatch batch = new CatalogueBatch(CatalogueBatchTest::seventh, EUR, 1);
    assertThatThrownBy(() -> run(batch, text.getBytes(StandardCharsets.UTF_8), new StringWriter()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("accepted is [name, volume (cm3),");
  }

  @Test
  void recordsThatAreNotWellFormedAreTold() throws IOException {
    byte[] hostile =
        ("\uFEFF"
                + HEADER
                + "x".repeat(50_000)
                + "\r\na,\"b\"c\r\n\r\nn\u00e4he,1,50,50,50,5,copper")
            .getBytes(StandardCharsets.UTF_8);
    StringWriter prices = new StringWriter();
    BatchSummary summary =
        run(new CatalogueBatch(CatalogueBatchTest::seventh, EUR, 1), hostile, prices);
    assertThat(prices.toString())
        .contains("2,,,,,,,is longer than 10000 characters")
        .contains("3,a,,,,,,has a quotation mark inside cell 2 that is not doubled")
        .contains("5,n\u00e4he,1,");
    assertThat(summary.priced()).isEqualTo(1);
    StringWriter latin = new StringWriter();
    run(
        new CatalogueBatch(CatalogueBatchTest::seventh, EUR, 1),
        (HEADER + "n\u00e4he,1,50,50,50,5,copper").getBytes(StandardCharsets.ISO_8859_1),
        latin);
    assertThat(latin.toString()).contains("holds bytes that are not UTF-8");
  }
}
