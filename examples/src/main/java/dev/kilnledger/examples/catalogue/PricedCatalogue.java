package dev.kilnledger.examples.catalogue;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvinPerHour;

import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.progress.RemainingTime;
import dev.kilnledger.costing.job.Job;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.examples.WindowWorkshop;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.Profile;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.Writer;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Prices a catalogue in the window workshop, whose equipment and prices are invented: each part as
 * if it were the first job there, in bronze or in copper.
 */
public final class PricedCatalogue {
  private PricedCatalogue() {}

  /**
   * Prices a catalogue. Stopped half-way, it keeps the prices it has.
   *
   * @param arguments the catalogue, where to write the prices, and how many threads to use
   * @throws IOException if a file cannot be read or written
   */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length != 3) {
      throw new IllegalArgumentException(
          arguments.length
              + " arguments; accepted are three: the catalogue, where to write the prices, how"
              + " many threads to use");
    }
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    Thread batch = Thread.currentThread();
    Thread stop = new Thread(() -> interrupt(batch), "stop");
    Runtime.getRuntime().addShutdownHook(stop);
    out.println(
        price(Path.of(arguments[0]), Path.of(arguments[1]), Integer.parseInt(arguments[2]), out));
    if (!Thread.currentThread().isInterrupted()) {
      Runtime.getRuntime().removeShutdownHook(stop);
    }
  }

  /** Stops the batch and waits until it has written what it has. */
  private static void interrupt(Thread batch) {
    batch.interrupt();
    try {
      batch.join(5_000);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  static String price(Path catalogue, Path prices, int threads, PrintStream progress)
      throws IOException {
    RemainingTime remaining = new RemainingTime(System::nanoTime);
    int[] tenths = {0};
    try (InputStream in = Files.newInputStream(catalogue);
        Writer out = Files.newBufferedWriter(prices)) {
      BatchSummary summary =
          new CatalogueBatch(new WorkshopPricing(workshop()), CurrencyUnit.EUR, threads)
              .run(
                  in,
                  Files.size(catalogue),
                  out,
                  fraction -> {
                    remaining.at(fraction);
                    if ((int) (fraction * 10) > tenths[0]) {
                      tenths[0] = (int) (fraction * 10);
                      progress.println(
                          tenths[0] * 10
                              + " %"
                              + remaining
                                  .estimate()
                                  .map(time -> ", about " + time.toSeconds() + " s to go")
                                  .orElse(""));
                    }
                  });
      return told(summary);
    }
  }

  private static String told(BatchSummary summary) {
    return summary.priced()
        + " priced, "
        + summary.refused()
        + " refused, "
        + (summary.complete() ? "complete" : "stopped after line " + summary.throughLine())
        + "; one of each uses up "
        + summary.usage().toMoney(RoundingMode.HALF_EVEN)
        + " in the long run (invented prices)";
  }

  /** {@return the job of each alloy that the workshop works in} */
  public static Map<String, Job> workshop() {
    Job bronze = WindowWorkshop.latchCams(1);
    Job copper = copper(bronze);
    return new TreeMap<>(
        Map.of(
            bronze.feedstock().alloy().name(), bronze, copper.feedstock().alloy().name(), copper));
  }

  private static Job copper(Job bronze) {
    MaterialLibrary materials = MaterialLibrary.standard();
    FiringStage sintering =
        FiringStage.sintering()
            .profile(
                Profile.from(celsius(20))
                    .rampTo(celsius(600), kelvinPerHour(150))
                    .rampTo(celsius(1030), kelvinPerHour(100))
                    .hold(hours(3))
                    .coolTo(celsius(400), kelvinPerHour(50))
                    .coolTo(celsius(200), kelvinPerHour(22))
                    .coolTo(celsius(100), kelvinPerHour(10))
                    .build())
            .packing(materials.packingPowder("alumina"))
            .packingMass(grams(700))
            .getter(materials.getter("granular activated carbon"), grams(60))
            .build();
    Offer filament =
        bronze.prices().offers().stream()
            .filter(offer -> offer.item().equals(bronze.filamentItem()))
            .findFirst()
            .map(
                offer ->
                    Offer.builder()
                        .from(offer)
                        .item("copper filament")
                        .price(Money.of(CurrencyUnit.EUR, 60))
                        .build())
            .orElseThrow();
    return Job.builder()
        .from(bronze)
        .feedstock(materials.feedstock("copper in polylactide, generic"))
        .route(FiringRoute.of(bronze.route().debinding().get(0), sintering))
        .filamentItem("copper filament")
        .prices(PriceBook.builder().from(bronze.prices()).addOffers(filament).build())
        .build();
  }
}
