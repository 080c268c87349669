package dev.kilnledger.costing.uncertainty;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.book;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.TradeUnits.GRAM;
import static dev.kilnledger.units.TradeUnits.PERCENT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.costing.breakeven.BreakEven;
import dev.kilnledger.costing.ledger.BuyingRule;
import dev.kilnledger.costing.ledger.FixturePlan;
import dev.kilnledger.costing.ledger.Ledger;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.ledger.RandomStatement;
import dev.kilnledger.costing.ledger.RandomYields;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.resource.Consumed;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.yield.FailureRule;
import dev.kilnledger.costing.yield.Failures;
import dev.kilnledger.costing.yield.Stage;
import dev.kilnledger.costing.yield.StageYield;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.LongAdder;
import java.util.stream.IntStream;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MonteCarloTest {
  private static final MonteCarlo MONTE_CARLO = MonteCarlo.standard();
  private static final double ROOT_3 = Math.sqrt(3);
  private static final Model SUM = values -> values[0] + values[1] + values[2] + values[3];

  @Test
  void addsFourRectangularDistributions() {
    // JCGM 101:2008, 9.2.3 (from memory): mean 0, u 2.00, 95 % interval -3.88 to 3.88. Of a million
    // trials the ends have a standard error near 0.005, u one near 0.0013.
    Simulation sum = MONTE_CARLO.simulate(four(), SUM, Trials.fixed(1_000_000, 1));
    assertThat(sum.outcome().mean()).isCloseTo(0, within(0.01));
    assertThat(sum.outcome().standardError()).isCloseTo(0.002, within(0.00001));
    assertThat(sum.outcome().standardDeviation()).isCloseTo(2.00, within(0.007));
    CoverageInterval interval = sum.outcome().interval(percent(95));
    assertThat(interval.low()).isCloseTo(-3.88, within(0.025));
    assertThat(interval.high()).isCloseTo(3.88, within(0.025));
    CoverageInterval shortest = sum.outcome().shortestInterval(percent(95));
    assertThat(shortest.high() - shortest.low())
        .isLessThanOrEqualTo(interval.high() - interval.low());
    assertThat(sum.trials().text()).isEqualTo("1000000 trials from seed 1, all made");
  }

  @Test
  void stopsWhenTheDigitsAreStable() {
    Simulation sum = MONTE_CARLO.simulate(four(), SUM, Trials.untilStable(5_000_000, 1));
    assertThat(sum.trials().ending()).isEqualTo(Ending.STABLE);
    assertThat(sum.trials().made()).isLessThan(1_000_000).isGreaterThanOrEqualTo(20_000);
    assertThat(sum.trials().made() % 10_000).isZero();
    // The tolerance is 0.05 for u = 2.0 (7.9.2), and averages of the batches have half of it.
    assertThat(sum.outcome().standardDeviation()).isCloseTo(2, within(0.05));
    Trials precise =
        Trials.builder().adaptive(true).number(200_000).seed(1).coverage(ratio(0.999)).build();
    assertThat(precise.batch()).isEqualTo(100_000); // 100 / (1 - 0.999)
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 8})
  void dependsOnTheSeedAndNotOnTheThreads(int threads) {
    UncertainPlan plan = workshop(FailureRule.AT_RANDOM);
    Trials trials = Trials.fixed(3_001, 9);
    UncertainStatement alone = new MonteCarlo(1).statement(plan, 40, trials);
    assertThat(new MonteCarlo(threads).statement(plan, 40, trials)).isEqualTo(alone);
    assertThat(alone.trials().made()).isEqualTo(3_001);
    assertThat(new MonteCarlo(threads).statement(plan, 40, Trials.fixed(3_001, 10)).allParts())
        .isNotEqualTo(alone.allParts());
    assertThat(new MonteCarlo(threads).breakEven(plan, eur("70"), 500, trials))
        .isEqualTo(new MonteCarlo(1).breakEven(plan, eur("70"), 500, trials));
    Trials adaptive = Trials.untilStable(1_000_000, 3);
    assertThat(new MonteCarlo(threads).simulate(four(), SUM, adaptive))
        .isEqualTo(new MonteCarlo(1).simulate(four(), SUM, adaptive));
  }

  @Test
  void isTheLedgerWhereNothingVaries() {
    LedgerPlan plan = FixturePlan.of(1);
    UncertainPlan certain =
        UncertainPlan.of(
            plan, List.of(UncertainInput.price("filament", Empirical.of(60), INVENTED)));
    UncertainStatement four = MONTE_CARLO.statement(certain, 4, Trials.fixed(100, 1));
    // The project's ledger case, worked out by hand: part 1 4,271.40; part 4 108.40; average of 4
    // 1,099.15; usage 39.48.
    assertThat(four.firstPart().median()).isEqualTo(eur("4271.40").toMoney());
    assertThat(four.lastPart().median()).isEqualTo(eur("108.40").toMoney());
    assertThat(four.average().median()).isEqualTo(eur("1099.15").toMoney());
    assertThat(four.usage().median()).isEqualTo(eur("39.48").toMoney());
    assertThat(four.allParts().standardDeviation()).isEqualTo(eur("0.00").toMoney());
    assertThat(four.allParts().probabilityWithin(eur("4396.60")).si()).isEqualTo(1);
    assertThat(four.allParts().probabilityWithin(eur("4396.59")).si()).isZero();
    // First crossing of an outside price of 60 at 203.
    assertThat(MONTE_CARLO.breakEven(certain, eur("60"), 300, Trials.fixed(100, 1)).first())
        .containsOnlyKeys(203L)
        .containsValue(100);
    LedgerPlan planned = LedgerPlan.builder().from(plan).buying(BuyingRule.PLANNED_FOR_N).build();
    UncertainStatement atOnce =
        MONTE_CARLO.statement(UncertainPlan.of(planned, certain.inputs()), 4, Trials.fixed(100, 1));
    assertThat(atOnce.firstPart().median().toBigMoney())
        .isEqualByComparingTo(Ledger.standard().part(planned, 1, 4).total());
    assertThat(atOnce.lastPart().median()).isEqualTo(eur("8.40").toMoney());
  }

  @Test
  void answersWhatABuyerAsks() {
    // A spool at 50 or 70, evenly: part 1 takes one of them, parts 1 to 4 two; usage 0.256 of one.
    LedgerPlan plan = FixturePlan.of(1);
    UncertainPlan uncertain =
        UncertainPlan.of(
            plan, List.of(UncertainInput.price("filament", Empirical.of(50, 70), INVENTED)));
    UncertainStatement four = MONTE_CARLO.statement(uncertain, 4, Trials.fixed(10_000, 1));
    assertThat(four.allParts().interval().low()).isEqualTo(eur("4376.60").toMoney());
    assertThat(four.allParts().interval().high()).isEqualTo(eur("4416.60").toMoney());
    assertThat(four.usage().interval().high()).isEqualTo(eur("42.04").toMoney());
    // Half of 10,000 draws, within five standard errors of 0.005.
    assertThat(four.allParts().probabilityWithin(eur("4376.60")).si())
        .isCloseTo(0.5, within(0.025));
    assertThat(four.allParts().probabilityWithin(eur("4376.59")).si()).isZero();
    assertThat(four.probabilityOfBreakEven(eur("1094.15")).si()).isCloseTo(0.5, within(0.025));
    assertThat(four.allParts().mean().getAmount().doubleValue()).isCloseTo(4396.60, within(1.0));
    assertThat(four.allParts().standardDeviation().getAmount().doubleValue())
        .isCloseTo(20, within(0.1));
    assertThat(four.band(CashFigure.ALL_PARTS).text())
        .isIn(
            "all parts: median EUR 4376.60, 5 to 95 % EUR 4376.60 to 4416.60",
            "all parts: median EUR 4416.60, 5 to 95 % EUR 4376.60 to 4416.60");
    assertThat(four.allParts().outcome().histogram(4))
        .extracting(HistogramBar::count)
        .satisfies(
            counts -> {
              assertThat(counts.get(1) + counts.get(2)).isZero();
              assertThat(counts.get(0) + counts.get(3)).isEqualTo(10_000);
            });
    assertThat(four.allParts().outcome().quantiles(20))
        .hasSize(20)
        .last()
        .isEqualTo(QuantilePoint.of(ratio(1), four.allParts().outcome().quantile(ratio(1))));

    // The exact search of the ledger, once for each price.
    BreakEvenBand breakEven =
        MONTE_CARLO.breakEven(uncertain, eur("60"), 2_000, Trials.fixed(1_000, 1));
    List<Long> expected = new ArrayList<>();
    for (double price : new double[] {50, 70}) {
      expected.add(
          BreakEven.standard()
              .find(uncertain.with(List.of(price)), eur("60"))
              .first()
              .orElseThrow());
    }
    assertThat(breakEven.first()).containsOnlyKeys(expected);
    assertThat(breakEven.probabilityBy(expected.get(1)).si()).isEqualTo(1);
    assertThat(breakEven.probabilityBy(expected.get(1) - 1).si()).isCloseTo(0.5, within(0.08));
    assertThat(breakEven.quantile(percent(99))).hasValue(expected.get(1));
    assertThat(MONTE_CARLO.breakEven(uncertain, eur("60"), 100, Trials.fixed(100, 1)).median())
        .isEmpty();
  }

  @Test
  void drawsOneRateForAllPricesItConverts() {
    LedgerPlan plan = FixturePlan.of(1);
    UncertainPlan shop =
        UncertainPlan.of(
            plan,
            List.of(
                UncertainInput.supplierPrices("supplier A", Empirical.of(1.25), INVENTED),
                UncertainInput.factor(
                    "long firings",
                    List.of("quantity of energy", "quantity of carbon"),
                    Empirical.of(2),
                    INVENTED)));
    // Everything 1.25 times as dear, with 56 kWh a firing and a kilogram of carbon still enough:
    // 1.25 x (4,271.40 + 8.40).
    assertThat(MONTE_CARLO.statement(shop, 1, Trials.fixed(64, 1)).firstPart().median())
        .isEqualTo(eur("5349.75").toMoney());
    assertThat(Ledger.standard().part(shop.with(List.of(1.25, 2.0)), 1).total())
        .isEqualByComparingTo(eur("5349.75"));
  }

  @Test
  void drawsFailuresAtRandomWithYieldsThatAreNotKnown() {
    // 30 good parts at a yield of 0.6: mean 50 starts, variance 30 x 0.4 / 0.36 = 33.3.
    UncertainPlan known = hourly(List.of());
    Trials trials = Trials.fixed(40_000, 1);
    UncertainStatement certain = MONTE_CARLO.statement(known, 30, trials);
    double error = Math.sqrt(30 * 0.4 / 0.36 / 40_000);
    assertThat(certain.allParts().outcome().mean()).isCloseTo(50, within(4 * error));
    RandomStatement simulated = RandomYields.standard().simulate(known.plan(), 30, 40_000, 2);
    assertThat(certain.allParts().outcome().mean())
        .isCloseTo(simulated.mean().getAmount().doubleValue(), within(6 * error));
    // The last of n parts takes 1 / 0.6 starts on average, variance 0.4 / 0.36.
    assertThat(certain.lastPart().outcome().mean())
        .isCloseTo(1 / 0.6, within(4 * Math.sqrt(0.4 / 0.36 / 40_000)));
    // With the yield 0.5 or 0.75, evenly: mean (60 + 40) / 2, and the variance between adds 100 to
    // that within, (60 + 13.33) / 2.
    UncertainPlan unknown =
        hourly(List.of(UncertainInput.partYield(Stage.PRINT, Empirical.of(0.5, 0.75), INVENTED)));
    double sd = Math.sqrt(100 + (30 * 0.5 / 0.25 + 30 * 0.25 / 0.5625) / 2);
    Outcome all = MONTE_CARLO.statement(unknown, 30, trials).allParts().outcome();
    assertThat(all.mean()).isCloseTo(50, within(4 * sd / 200));
    assertThat(all.standardDeviation()).isCloseTo(sd, within(0.02 * sd));
    assertThat(unknown.isCertain()).isFalse();
  }

  /** One hour at 1 for each part printed. */
  private static UncertainPlan hourly(List<UncertainInput> inputs) {
    LedgerPlan plan =
        LedgerPlan.builder()
            .prices(book().addOffers(offer("work", hours(1), "1").metered(true).build()).build())
            .addResources(consumed("work", Driver.PART, hours(1)).build())
            .partsPerFiring(1)
            .failures(
                Failures.builder()
                    .addStages(
                        StageYield.builder()
                            .stage(Stage.PRINT)
                            .parts(percent(60))
                            .source(INVENTED)
                            .build())
                    .build())
            .build();
    return UncertainPlan.builder()
        .plan(plan)
        .inputs(inputs)
        .failureRule(FailureRule.AT_RANDOM)
        .build();
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 4})
  void losesNothingWhenInterrupted(int threads) throws InterruptedException {
    LongAdder evaluations = new LongAdder();
    CountDownLatch underWay = new CountDownLatch(1_000);
    Model slow =
        values -> {
          evaluations.increment();
          underWay.countDown();
          double sum = 0;
          for (int i = 0; i < 20_000; i++) {
            sum += Math.sqrt(i + values[0] * values[0]);
          }
          return sum;
        };
    List<Simulation> partial = new CopyOnWriteArrayList<>();
    List<Boolean> stillInterrupted = new CopyOnWriteArrayList<>();
    Thread thread =
        new Thread(
            () -> {
              partial.add(
                  new MonteCarlo(threads).simulate(four(), slow, Trials.fixed(10_000_000, 1)));
              stillInterrupted.add(Thread.currentThread().isInterrupted());
            });
    thread.start();
    assertThat(underWay.await(20, TimeUnit.SECONDS)).isTrue();
    thread.interrupt();
    thread.join(20_000);
    assertThat(thread.isAlive()).isFalse();
    assertThat(partial.get(0).trials().ending()).isEqualTo(Ending.INTERRUPTED);
    assertThat(partial.get(0).trials().made()).isPositive().isLessThan(10_000_000);
    assertThat(partial.get(0).outcome().size()).isEqualTo(evaluations.intValue());
    assertThat(stillInterrupted).containsExactly(true);
  }

  @Test
  void tellsHowFarItIs() {
    List<Double> heard = new ArrayList<>();
    new MonteCarlo(2, heard::add).simulate(four(), SUM, Trials.fixed(6_400, 1));
    assertThat(heard).hasSize(64).isSorted().last().isEqualTo(1.0);
    // Interrupted by its listener, it stops with what there is.
    MonteCarlo impatient =
        new MonteCarlo(
            2,
            fraction -> {
              if (fraction > 0.4) {
                Thread.currentThread().interrupt();
              }
            });
    Simulation partial = impatient.simulate(four(), SUM, Trials.fixed(6_400, 1));
    assertThat(Thread.interrupted()).isTrue();
    assertThat(partial.trials().made()).isBetween(2_600, 6_400);
    Thread.currentThread().interrupt();
    assertThatThrownBy(
            () ->
                new MonteCarlo(1).statement(workshop(FailureRule.AT_RANDOM), 1, Trials.fixed(1, 1)))
        .isInstanceOf(CancellationException.class);
    assertThat(Thread.interrupted()).isTrue();
  }

  @Test
  void survivesTheWire() throws IOException, ClassNotFoundException {
    UncertainStatement statement =
        MONTE_CARLO.statement(workshop(FailureRule.PLANNED_STARTS), 12, Trials.fixed(200, 4));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(statement);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      UncertainStatement read = (UncertainStatement) in.readObject();
      assertThat(read).isEqualTo(statement);
      assertThat(read.allParts().median()).isEqualTo(statement.allParts().median());
    }
  }

  @Test
  void refusesWhatCannotBeDrawn() {
    UncertainPlan plan = workshop(FailureRule.AT_RANDOM);
    Trials few = Trials.fixed(10, 1);
    assertThatThrownBy(() -> MONTE_CARLO.statement(plan, 0, few))
        .hasMessage("Monte Carlo: parts is 0; accepted is from 1 to 1000000000");
    assertThatThrownBy(() -> MONTE_CARLO.statement(plan, 1_000_000_000, few))
        .hasMessageContaining("more than 100000000 starts are expected; accepted are fewer parts");
    assertThatThrownBy(
            () -> MONTE_CARLO.breakEven(plan, eur("0"), 10, Trials.untilStable(20_000, 1)))
        .hasMessageContaining("outside price is EUR 0; accepted is more than zero in the currency")
        .hasMessageContaining("accepted is a fixed number");
    assertThatThrownBy(() -> MONTE_CARLO.simulate(four(), values -> 1 / 0.0, few))
        .isInstanceOf(ArithmeticException.class)
        .hasMessageContaining("the formula is Infinity for [")
        .hasMessageContaining("accepted is a finite number");
    assertThatThrownBy(() -> Trials.fixed(0, 1))
        .hasMessage("trials: number is 0; accepted is from 1 to 10000000");
    assertThatThrownBy(() -> Trials.untilStable(10_000, 1))
        .hasMessageContaining("number is 10000; accepted is two batches or more, 20000");
    assertThatThrownBy(() -> new MonteCarlo(0)).hasMessageContaining("threads is 0");
    UncertainStatement one = MONTE_CARLO.statement(plan, 1, few);
    assertThatThrownBy(() -> one.allParts().quantile(ratio(0)))
        .hasMessage("quantile: share is 0; accepted is more than 0 and up to 1");
    assertThatThrownBy(
            () -> one.allParts().probabilityWithin(eur("1").withCurrencyUnit(CurrencyUnit.USD)))
        .hasMessage("budget: budget is USD 1; accepted is the currency EUR");
  }

  /** The example of {@link MonteCarlo}. */
  @Test
  void worksThroughTheExample() {
    Offer spool = offer("filament", grams(500), "60").build();
    Consumed use = consumed("filament", Driver.PART, grams(128)).build();
    LedgerPlan plan =
        LedgerPlan.builder()
            .partsPerFiring(1)
            .addResources(use)
            .prices(
                PriceBook.builder()
                    .currency(CurrencyUnit.EUR)
                    .asOf(FixturePlan.TODAY)
                    .addOffers(spool)
                    .build())
            .build();
    UncertainPlan uncertain =
        UncertainPlan.of(
            plan,
            List.of(
                UncertainInput.price("filament", LogNormal.of(60, 0.15), INVENTED),
                UncertainInput.quantity("filament", Pert.of(120, 128, 150), INVENTED).in(GRAM),
                UncertainInput.partYield(Stage.SINTER, Beta.ofTried(17, 20), INVENTED)));
    UncertainStatement parts =
        MonteCarlo.standard().statement(uncertain, 100, Trials.fixed(100_000, 7));
    assertThat(parts.allParts().interval().low().isLessThan(parts.allParts().median())).isTrue();
    // The usage is price x quantity / (500 g x yield), of independent factors: the mean is the
    // product of 60, (120 + 4 x 128 + 150) / 6 / 500 and the mean of 1 / yield, which for a beta
    // distribution is (alpha + beta - 1) / (alpha - 1) = 20 / 16.5. The whole packs for 100 parts
    // come to at most one pack and one start more.
    double mean = 60 * (782 / 6.0) / 500 * 20 / 16.5;
    Outcome usage = parts.usage().outcome();
    assertThat(usage.mean()).isCloseTo(mean, within(5 * usage.standardError()));
    assertThat(parts.average().outcome().mean()).isBetween(mean, mean + 1.5 * 60 / 100);
    double likely = parts.allParts().probabilityWithin(eur("2500")).si();
    assertThat(likely).isBetween(0.9, 1.0);
  }

  private static List<UncertainInput> four() {
    return IntStream.rangeClosed(1, 4)
        .mapToObj(i -> UncertainInput.of("x" + i, Rectangular.of(-ROOT_3, ROOT_3), INVENTED))
        .toList();
  }

  private static UncertainPlan workshop(FailureRule rule) {
    LedgerPlan plan =
        FixturePlan.builder()
            .partsPerFiring(2)
            .failures(
                Failures.builder()
                    .addStages(
                        StageYield.builder()
                            .stage(Stage.SINTER)
                            .parts(percent(90))
                            .charges(percent(95))
                            .source(INVENTED)
                            .build())
                    .build())
            .build();
    return UncertainPlan.builder()
        .plan(plan)
        .addInputs(
            UncertainInput.price("filament", LogNormal.of(60, 0.2), INVENTED),
            UncertainInput.life("crucible", Weibull.of(2, 8), INVENTED),
            UncertainInput.loss("packing powder", Pert.of(2, 5, 12), INVENTED).in(PERCENT),
            UncertainInput.quantity("filament", Triangular.of(120, 128, 150), INVENTED).in(GRAM),
            UncertainInput.partYield(Stage.SINTER, Beta.ofTried(18, 20), INVENTED))
        .failureRule(rule)
        .build();
  }
}
