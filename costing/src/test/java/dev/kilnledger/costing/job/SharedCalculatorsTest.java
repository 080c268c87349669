package dev.kilnledger.costing.job;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.millimetres;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.document.CoreDocuments;
import dev.kilnledger.core.document.Document;
import dev.kilnledger.core.equipment.ChargePart;
import dev.kilnledger.core.equipment.PatternArranger;
import dev.kilnledger.core.equipment.RoundCavity;
import dev.kilnledger.core.equipment.Spacing;
import dev.kilnledger.core.gcode.GCodeReader;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.ledger.Ledger;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.purchase.Need;
import dev.kilnledger.costing.purchase.PurchasePlanner;
import dev.kilnledger.costing.uncertainty.MonteCarlo;
import dev.kilnledger.costing.uncertainty.Trials;
import dev.kilnledger.costing.uncertainty.Triangular;
import dev.kilnledger.costing.uncertainty.UncertainInput;
import dev.kilnledger.thermal.check.FiringCheck;
import dev.kilnledger.thermal.densification.Densification;
import dev.kilnledger.thermal.densification.DensificationRun;
import dev.kilnledger.thermal.densification.DensityReading;
import dev.kilnledger.thermal.densification.SinteringCurveFit;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.kinetics.TemperatureHistory;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Kind;
import dev.kilnledger.units.UcumText;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

/**
 * One calculator, and one forecast that computes its parts when they are first asked for, used by
 * many threads that start together, give what a single thread gets.
 */
class SharedCalculatorsTest {
  private static final int THREADS = 12;
  private static final Job JOB =
      FiftyJobs.rows()
          .filter(row -> row.name().equals("copper, all known"))
          .findFirst()
          .orElseThrow()
          .job();

  /** Runs a work on all threads, again and again, and holds each answer against the first one. */
  private static <T> void same(int times, Callable<T> work) throws Exception {
    T alone = work.call();
    List<Callable<T>> works = new ArrayList<>(Collections.nCopies(THREADS * times, work));
    for (T answer : together(works)) {
      assertThat(answer).isEqualTo(alone);
    }
  }

  private static <T> List<T> together(List<? extends Callable<T>> works) throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(THREADS);
    CountDownLatch ready = new CountDownLatch(Math.min(THREADS, works.size()));
    try {
      List<Future<T>> futures = new ArrayList<>();
      for (Callable<T> work : works) {
        futures.add(
            threads.submit(
                () -> {
                  ready.countDown();
                  ready.await();
                  return work.call();
                }));
      }
      List<T> answers = new ArrayList<>();
      for (Future<T> future : futures) {
        answers.add(future.get());
      }
      return answers;
    } catch (ExecutionException e) {
      throw new AssertionError("a thread failed", e.getCause());
    } finally {
      threads.shutdownNow();
    }
  }

  @Test
  void wholeJob() throws Exception {
    WholeJob shared = WholeJob.standard();
    same(
        1,
        () -> {
          JobAnswer answer = shared.answer(JOB);
          return List.of(answer.findings(), answer.cautions(), answer.firing(), answer.statement());
        });
  }

  /** Each thread asks for all parts of one forecast in an order of its own. */
  @Test
  void forecastWhosePartsAreComputedWhenAskedFor() throws Exception {
    FiringForecast shared = WholeJob.standard().answer(JOB).forecast().forRoute(JOB.route());
    List<Callable<Object>> parts =
        List.of(
            () -> shared.coreSoak(),
            () -> shared.felt(),
            () -> shared.burnOut(),
            () -> shared.afterDebinding(),
            () -> shared.lossChecks(),
            () -> shared.density(),
            () -> shared.literatureDensity(),
            () -> shared.energy(),
            () -> shared.carbonMonoxideInRoom(),
            () -> shared.binderGasInRoom(),
            () -> shared.holdForSoak(),
            () -> shared.sintering().get(0).core(),
            () -> shared.debinding().get(0).kiln(),
            () -> FiringCheck.standard().check(shared).findings());
    List<Callable<List<Object>>> works = new ArrayList<>();
    for (int thread = 0; thread < THREADS; thread++) {
      List<Integer> order = new ArrayList<>();
      for (int i = 0; i < parts.size(); i++) {
        order.add(i);
      }
      Collections.shuffle(order, new Random(thread));
      works.add(
          () -> {
            Object[] answers = new Object[parts.size()];
            for (int part : order) {
              answers[part] = parts.get(part).call();
            }
            return List.of(answers);
          });
    }
    List<List<Object>> answers = together(works);
    FiringForecast alone = FiringForecast.of(shared.setup());
    List<Object> expected =
        List.of(
            alone.coreSoak(),
            alone.felt(),
            alone.burnOut(),
            alone.afterDebinding(),
            alone.lossChecks(),
            alone.density(),
            alone.literatureDensity(),
            alone.energy(),
            alone.carbonMonoxideInRoom(),
            alone.binderGasInRoom(),
            alone.holdForSoak(),
            alone.sintering().get(0).core(),
            alone.debinding().get(0).kiln(),
            FiringCheck.standard().check(alone).findings());
    for (List<Object> answer : answers) {
      assertThat(answer).isEqualTo(expected);
    }
  }

  @Test
  void ledgerAndPurchases() throws Exception {
    LedgerPlan plan = WholeJob.standard().answer(JOB).statement().plan();
    same(
        20,
        () ->
            List.of(
                Ledger.standard().statement(plan, 1234),
                Ledger.standard().staircase(plan, 90, 110),
                PurchasePlanner.standard()
                    .plan(
                        plan.prices(),
                        List.of(Need.of("filament", grams(1777)), Need.of("carbon", grams(901))))));
  }

  @Test
  void densificationAndItsFit() throws Exception {
    var curve = JOB.sinteringCurve().orElseThrow();
    TemperatureHistory history = TemperatureHistory.of(JOB.route().sintering().get(0).profile());
    same(20, () -> Densification.standard().along(curve, history));
    List<DensificationRun> runs = new ArrayList<>();
    for (double rate : new double[] {60, 150, 400}) {
      TemperatureHistory ramp =
          TemperatureHistory.of(
              Profile.from(celsius(20)).rampTo(celsius(1050), kelvinPerHour(rate)).build());
      runs.add(
          DensificationRun.of(
              rate + " K/h",
              ramp,
              Densification.standard().along(curve, ramp).points().stream()
                  .filter(point -> point.temperature().isGreaterThan(celsius(700)))
                  .map(point -> DensityReading.of(point.time(), point.density().expected()))
                  .toList()));
    }
    same(2, () -> SinteringCurveFit.standard().fit("from runs", runs));
  }

  /** Bit for bit, whatever the number of its own threads, and from several threads at once. */
  @Test
  void monteCarlo() throws Exception {
    List<UncertainInput> inputs =
        List.of(
            UncertainInput.of("mass", Triangular.of(8, 10, 15), Source.user("invented")),
            UncertainInput.of("price", Triangular.of(1, 2, 4), Source.user("invented")));
    same(
        1,
        () -> {
          List<Object> outcomes = new ArrayList<>();
          for (int threads : new int[] {1, 3}) {
            outcomes.add(
                new MonteCarlo(threads)
                    .simulate(inputs, values -> values[0] * values[1], Trials.fixed(20_000, 7))
                    .outcome());
          }
          assertThat(outcomes.get(1)).isEqualTo(outcomes.get(0));
          return outcomes;
        });
  }

  @Test
  void readersAndDocuments() throws Exception {
    Document<MaterialLibrary> document = CoreDocuments.materials(MaterialLibrary.empty());
    String text = document.text(MaterialLibrary.standard());
    same(
        1,
        () -> {
          MaterialLibrary read = document.read(ByteSource.of(text.getBytes(UTF_8)));
          return List.of(read, document.text(read), document.schema());
        });
    byte[] programme =
        "G21\nM83\nG1 X0 Y0 Z0.2 F1200\nG1 X10 E0.5\nG1 E-2\nG1 E2\nG2 X0 Y0 I-5 E0.5\n"
            .repeat(500)
            .getBytes(UTF_8);
    same(2, () -> GCodeReader.standard().read(ByteSource.of(programme)));
    same(
        20,
        () ->
            List.of(
                UcumText.parse("12.5 g/cm3", Kind.DENSITY),
                UcumText.print(UcumText.parse("3 mm2.kg/s2", Kind.ENERGY)),
                UcumText.parse("820 Cel", Kind.TEMPERATURE)));
  }

  @Test
  void arranger() throws Exception {
    same(
        3,
        () ->
            PatternArranger.standard()
                .most(
                    RoundCavity.of(millimetres(130), millimetres(110)),
                    ChargePart.of(Envelope.of(millimetres(36), millimetres(22), millimetres(10))),
                    Spacing.of(millimetres(10))));
  }
}
