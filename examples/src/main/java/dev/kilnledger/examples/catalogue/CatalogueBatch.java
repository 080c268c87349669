package dev.kilnledger.examples.catalogue;

import static dev.kilnledger.units.TradeUnits.GRAM;

import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.examples.sheet.CsvText;
import java.io.IOException;
import java.io.InputStream;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/**
 * Prices a catalogue row by row. Rows are read, priced by several threads and written in their
 * order, a few of them at a time, so that memory does not grow with the catalogue; totals are added
 * up in the order of the rows, so that they do not depend on the number of threads.
 *
 * <p>A row that cannot be read or priced is written with what is wrong with it, and the others are
 * priced all the same. Interrupted, the batch starts no further row, writes those that are done and
 * returns; the mark of interruption stays.
 */
public final class CatalogueBatch {
  private static final int ROWS_PER_THREAD = 4;
  private static final int DECIMALS = 4;

  private final Function<CatalogueRow, PricedRow> pricing;
  private final CurrencyUnit currency;
  private final int threads;

  /**
   * A batch.
   *
   * @param pricing what prices a row, for several threads at once; throws {@link
   *     IllegalArgumentException} where it cannot
   * @param currency the currency of all prices
   * @param threads how many threads price, 1 to 256
   */
  public CatalogueBatch(
      Function<CatalogueRow, PricedRow> pricing, CurrencyUnit currency, int threads) {
    if (threads < 1 || threads > 256) {
      throw new IllegalArgumentException("threads is " + threads + "; accepted is from 1 to 256");
    }
    this.pricing = pricing;
    this.currency = currency;
    this.threads = threads;
  }

  /**
   * Prices a catalogue.
   *
   * @param catalogue comma-separated values in UTF-8 with the header {@code name,volume (cm3),x
   *     (mm),y (mm),z (mm),thickest section (mm),alloy}
   * @param size how many bytes it has, for the progress
   * @param prices where the prices are written, as comma-separated values; flushed, not closed
   * @param progress hears how far the batch has come
   * @return what became of it
   * @throws IOException if something cannot be read or written
   * @throws IllegalArgumentException if the header is another
   */
  public BatchSummary run(InputStream catalogue, long size, Writer prices, Progress progress)
      throws IOException {
    CsvRecords records = new CsvRecords(catalogue);
    List<String> header = records.next().map(CsvRecord::cells).orElse(List.of());
    if (!header.equals(CatalogueRow.HEADER)) {
      throw new IllegalArgumentException(
          "the catalogue starts with " + header + "; accepted is " + CatalogueRow.HEADER);
    }
    ExecutorService workers = Executors.newFixedThreadPool(threads, CatalogueBatch::daemon);
    try {
      return new Run(records, size, prices, progress).through(workers);
    } finally {
      workers.shutdownNow();
    }
  }

  private static Thread daemon(Runnable work) {
    Thread thread = new Thread(work, "catalogue");
    thread.setDaemon(true);
    return thread;
  }

  /** A row on its way: nothing where the batch was stopped before its turn. */
  private record Waiting(CsvRecord record, Future<Optional<Outcome>> outcome) {}

  /** What a row came to: its price, or else its problem. */
  private record Outcome(Optional<PricedRow> price, String problem) {}

  /** One catalogue on its way through. */
  private final class Run {
    private final CsvRecords records;
    private final long size;
    private final Writer prices;
    private final Progress progress;
    private final Queue<Waiting> waiting = new ArrayDeque<>();
    private volatile boolean stopped;
    private long priced;
    private long refused;
    private long line;
    private BigMoney usage = BigMoney.zero(currency);

    Run(CsvRecords records, long size, Writer prices, Progress progress) {
      this.records = records;
      this.size = size;
      this.prices = prices;
      this.progress = progress;
    }

    BatchSummary through(ExecutorService workers) throws IOException {
      String code = " (" + currency.getCode() + ")";
      prices.write(
          CsvText.line(
              List.of(
                  "line",
                  "name",
                  "filament (g)",
                  "first part" + code,
                  "usage per part" + code,
                  "worst finding",
                  "codes",
                  "problem")));
      boolean complete = true;
      Optional<CsvRecord> next = records.next();
      while (complete && (next.isPresent() || !waiting.isEmpty())) {
        while (next.isPresent() && waiting.size() < ROWS_PER_THREAD * threads) {
          CsvRecord record = next.get();
          waiting.add(new Waiting(record, workers.submit(() -> outcome(record))));
          next = records.next();
        }
        complete = write(waiting.remove());
      }
      if (complete) {
        progress.at(1);
      }
      prices.flush();
      if (stopped) {
        Thread.currentThread().interrupt();
      }
      return new BatchSummary(priced, refused, line, complete, usage);
    }

    private Optional<Outcome> outcome(CsvRecord record) {
      if (stopped) {
        return Optional.empty();
      }
      try {
        return Optional.of(new Outcome(Optional.of(pricing.apply(CatalogueRow.of(record))), ""));
      } catch (IllegalArgumentException e) {
        return Optional.of(new Outcome(Optional.empty(), String.valueOf(e.getMessage())));
      }
    }

    /** Writes a row when it is done; false where the batch was stopped before its turn. */
    private boolean write(Waiting row) throws IOException {
      Optional<Outcome> outcome = done(row);
      if (outcome.isEmpty()) {
        return false;
      }
      line = row.record().line();
      if (outcome.get().price().isPresent()) {
        priced++;
        usage = usage.plus(outcome.get().price().get().usage());
      } else {
        refused++;
      }
      prices.write(CsvText.line(cells(row.record(), outcome.get())));
      progress.at(Math.min(1, (double) row.record().end() / size));
      return true;
    }

    /** Waits for a row; an interruption stops those that have not begun and waits on. */
    private Optional<Outcome> done(Waiting row) {
      while (true) {
        stopped |= Thread.interrupted();
        try {
          return row.outcome().get();
        } catch (InterruptedException e) {
          stopped = true;
        } catch (ExecutionException e) {
          throw new IllegalStateException("line " + row.record().line(), e.getCause());
        }
      }
    }
  }

  private static List<String> cells(CsvRecord record, Outcome outcome) {
    String name = record.cells().isEmpty() ? "" : record.cells().get(0);
    return outcome
        .price()
        .map(
            price ->
                List.of(
                    String.valueOf(record.line()),
                    CsvText.text(name),
                    plain(BigDecimal.valueOf(price.filament().in(GRAM))),
                    plain(price.firstPart().getAmount()),
                    plain(price.usage().getAmount()),
                    price.worst().name().toLowerCase(Locale.ROOT),
                    String.join(" ", price.codes()),
                    ""))
        .orElse(
            List.of(
                String.valueOf(record.line()),
                CsvText.text(name),
                "",
                "",
                "",
                "",
                "",
                CsvText.text(outcome.problem())));
  }

  private static String plain(BigDecimal number) {
    return number.setScale(DECIMALS, RoundingMode.HALF_EVEN).stripTrailingZeros().toPlainString();
  }
}
