package dev.kilnledger.costing.ledger;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.book;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.core.source.Input;
import dev.kilnledger.costing.resource.ChargeRule;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Wearing;
import dev.kilnledger.costing.yield.AfterFailure;
import dev.kilnledger.costing.yield.FailureRule;
import dev.kilnledger.costing.yield.Failures;
import dev.kilnledger.costing.yield.Stage;
import dev.kilnledger.costing.yield.StageYield;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Where nothing else is named, expected values are worked out by hand beside each check. */
class FailuresTest {
  private static final Ledger LEDGER = Ledger.standard();

  @ParameterizedTest
  @EnumSource(
      value = FailureRule.class,
      names = {"PLANNED_STARTS", "EXPECTED_VALUES"})
  void carriesEarlierCostIntoALateLoss(FailureRule rule) {
    // Made for this project: 41.98, from sum c_i / prod_{j >= i} y_j: 10 / 0.8379 + 2 / 0.882 +
    // 25 / 0.9 = 41.97994987.
    LedgerPlan plan = steps(failures(rule, "95", "98", "90").build(), 1);
    assertThat(LEDGER.usage(plan).total().rounded(8, RoundingMode.HALF_UP))
        .isEqualByComparingTo(eur("41.97994987"));
    // With 0.95 x 0.84 x 0.88 = 0.70224 good (published), a print at 1 costs 1 / 0.70224.
    LedgerPlan rolled = steps(failures(rule, "95", "84", "88").build(), 1);
    assertThat(LEDGER.usage(rolled).lines().get(0).packs().setScale(12, RoundingMode.HALF_UP))
        .isEqualTo(BigDecimal.TEN.divide(new BigDecimal("0.70224"), 12, RoundingMode.HALF_UP));
  }

  @Test
  void startsWholePartsOrTheirMean() {
    // ceil(3 / 0.9) = 4 sintered, ceil(4 / 0.98) = 5 debound, ceil(5 / 0.95) = 6 printed.
    LedgerPlan planned = steps(failures(FailureRule.PLANNED_STARTS, "95", "98", "90").build(), 1);
    assertThat(LEDGER.through(planned, 3).total()).isEqualByComparingTo(eur("170"));
    assertThat(LEDGER.through(planned, 3).lines().get(0).formula())
        .isEqualTo(
            "packs(n) = max(0, x), x = (quantity x ceil(ceil(ceil(n / sintering yield) / debinding"
                + " yield) / printing yield) - stock) / content");
    assertThat(LEDGER.through(planned, 3).lines().get(0).inputs())
        .extracting(Input::name)
        .contains("printing yield", "debinding yield", "sintering yield");
    LedgerPlan expected = steps(failures(FailureRule.EXPECTED_VALUES, "95", "98", "90").build(), 1);
    assertThat(LEDGER.through(expected, 3).total().rounded(4, RoundingMode.HALF_UP))
        .isEqualByComparingTo(eur("125.9398")); // 3 x 41.97994987
    assertThat(LEDGER.through(expected, 3).lines().get(0).formula())
        .contains("n / sintering yield / debinding yield / printing yield");
  }

  @Test
  void repeatsWhatFailedOrPrintsItAnew() {
    Failures.Builder half = failures(FailureRule.PLANNED_STARTS, "100", "100", "50");
    assertThat(LEDGER.through(steps(half.build(), 1), 4).total())
        .isEqualByComparingTo(eur("296")); // 8 x (10 + 2 + 25)
    Failures repeated =
        Failures.builder()
            .addStages(
                StageYield.builder()
                    .stage(Stage.SINTER)
                    .parts(percent(50))
                    .afterFailure(AfterFailure.REPEATED)
                    .source(INVENTED)
                    .build())
            .build();
    assertThat(LEDGER.through(steps(repeated, 1), 4).total())
        .isEqualByComparingTo(eur("248")); // 4 x (10 + 2) + 8 x 25
  }

  @Test
  void losesEveryPartOfALostFiring() {
    // 8 parts at 4 a charge: 2 good charges, and 2 x 0.2 / 0.8 = 0.5 lost, so 1: 12 parts, 3
    // firings.
    Failures lost =
        Failures.builder()
            .addStages(
                StageYield.builder()
                    .stage(Stage.SINTER)
                    .charges(percent(80))
                    .source(INVENTED)
                    .build())
            .build();
    assertThat(LEDGER.through(steps(lost, 4), 8).total()).isEqualByComparingTo(eur("444"));
    LedgerPlan firing =
        LedgerPlan.builder()
            .prices(book().build())
            .addResources(consumed("carbon", Driver.FIRING, grams(500)).build())
            .partsPerFiring(4)
            .failures(lost)
            .build();
    assertThat(LEDGER.through(firing, 8).lines().get(0).count())
        .isEqualTo(BigInteger.TWO); // 1.5 kg
    assertThat(LEDGER.through(firing, 8).lines().get(0).formula())
        .contains(
            "(ceil(n / parts per firing) + ceil(ceil(n / parts per firing) x (1 - charge yield of"
                + " sintering) / charge yield of sintering))");
    // In the long run 1 / (4 x 0.8) firings a part of 0.5 kg at 22: 3.4375.
    assertThat(LEDGER.usage(firing).total()).isEqualByComparingTo(eur("3.4375"));
  }

  @Test
  void triesBeforeTheFirstGoodPart() {
    Failures trials = Failures.builder().trialParts(3).trialFirings(2).build();
    LedgerPlan plan = steps(trials, 1);
    assertThat(LEDGER.part(plan, 1).total()).isEqualByComparingTo(eur("148")); // 4 x 37
    assertThat(LEDGER.part(plan, 2).total()).isEqualByComparingTo(eur("37"));
    assertThat(LEDGER.through(plan, 1).lines().get(0).formula()).contains("(trial parts + n)");
    LedgerPlan firings = FixturePlan.builder().partsPerFiring(1).failures(trials).build();
    // The crucible of 6 firings serves 2 trials and 4 parts.
    assertThat(LEDGER.part(firings, 4).lines()).extracting(Line::item).doesNotContain("crucible");
    assertThat(LEDGER.part(firings, 5).lines()).extracting(Line::item).contains("crucible");
    assertThat(LEDGER.statement(firings, 1).caveats())
        .extracting(Caveat::code)
        .contains(CaveatCode.YIELD_ASSUMED)
        .doesNotContain(CaveatCode.FAILURES_EXCLUDED);
  }

  @Test
  void sharesAChargeThatIsNotFull() {
    LedgerPlan shared = FixturePlan.builder().partsPerFiring(4).charging(ChargeRule.SHARED).build();
    // 5 parts take 1.25 firings of 28 kWh at 0.30: 10.50, and 375 g of carbon: one pack.
    assertThat(LEDGER.through(shared, 5).lines().get(6).amount()).isEqualByComparingTo(eur("10.5"));
    assertThat(LEDGER.through(shared, 5).lines().get(5).count()).isEqualTo(BigInteger.ONE);
    // The first part needs the whole fill of 1.8 kg all the same.
    assertThat(LEDGER.part(shared, 1).lines().get(4).count()).isEqualTo(BigInteger.TWO);
    assertThat(LEDGER.usage(shared).total())
        .isEqualByComparingTo(eur("21.39")); // fixture, 4 a firing
    assertThat(LEDGER.statement(shared, 5).caveats())
        .extracting(Caveat::code)
        .contains(CaveatCode.CHARGE_SHARED)
        .doesNotContain(CaveatCode.CHARGE_NOT_FULL);
  }

  @Test
  void wearsByTheHour() {
    // A nozzle of 100 h with prints of 6.5 h: 15 prints take 97.5 h, the 16th a second nozzle.
    LedgerPlan.Builder plan =
        LedgerPlan.builder()
            .prices(book().addOffers(offer("nozzle", ratio(1), "12").build()).build())
            .addResources(
                Wearing.builder()
                    .item("nozzle")
                    .driver(Driver.PRINT_TIME)
                    .life(hours(100))
                    .source(INVENTED)
                    .build())
            .partsPerFiring(1);
    LedgerPlan hourly = plan.putAmounts(Driver.PRINT_TIME, hours(6.5)).build();
    assertThat(LEDGER.through(hourly, 15).total()).isEqualByComparingTo(eur("12"));
    assertThat(LEDGER.through(hourly, 16).total()).isEqualByComparingTo(eur("24"));
    assertThat(LEDGER.usage(hourly).total()).isEqualByComparingTo(eur("0.78"));
    assertThat(LEDGER.statement(hourly, 15).stocks().get(0).text()).isEqualTo("2.5 h");
    assertThat(LEDGER.through(hourly, 15).lines().get(0).formula())
        .contains("(time of a print x n - stock) / (life x content)");
    assertThatThrownBy(() -> plan.amounts(Map.of()).build())
        .hasMessageContaining(
            "the time of a print is not stated, by which nozzle is used; accepted is a measure of"
                + " time");
    assertThatThrownBy(() -> plan.putAmounts(Driver.PRINTED_MASS, hours(1)).build())
        .hasMessageContaining("mass of a print is 1 h; accepted is a measure of mass");
  }

  @Test
  void agreesWithAWorkshopThatMakesAFewPlansPartByPart() {
    agreesWithAWorkshopThatMakesRandomPlansPartByPart(20);
  }

  @Tag("sampled")
  @Test
  void agreesWithAWorkshopThatMakesRandomPlansPartByPart() {
    agreesWithAWorkshopThatMakesRandomPlansPartByPart(300);
  }

  private static void agreesWithAWorkshopThatMakesRandomPlansPartByPart(int trials) {
    SplittableRandom random = new SplittableRandom(20261103);
    for (int trial = 0; trial < trials; trial++) {
      Simulated workshop = new Simulated(random, true);
      ExactCash exact = ExactCash.of(workshop.plan);
      CashLines lines = exact.lines();
      List<BigDecimal> stepped = new ArrayList<>();
      List<BigDecimal> closed = new ArrayList<>();
      long cents = 0;
      for (long part = 1; part <= 120; part++) {
        long cost = workshop.nextPart();
        cents += cost;
        if (part % 7 < 2) {
          stepped.add(BigDecimal.valueOf(cost, 2));
          closed.add(LEDGER.part(workshop.plan, part).total().getAmount().setScale(2));
        }
        // The whole-number cash, its lines around it and the ledger's own total are one.
        assertThat(exact.through(part).multiply(BigInteger.valueOf(100)))
            .as("trial %s part %s", trial, part)
            .isEqualTo(exact.denominator().multiply(BigInteger.valueOf(cents)));
        assertThat(exact.through(part).multiply(lines.scale()))
            .isBetween(
                lines.lowGrowth().multiply(BigInteger.valueOf(part)).add(lines.lowest()),
                lines.highGrowth().multiply(BigInteger.valueOf(part)).add(lines.highest()));
      }
      assertThat(closed).as("trial %s", trial).isEqualTo(stepped);
    }
  }

  @Test
  void repeatsItsPurchasesWithItsPeriod() {
    SplittableRandom random = new SplittableRandom(5);
    for (int trial = 0; trial < 300; trial++) {
      ExactCash exact = ExactCash.of(new Simulated(random, trial % 2 == 0).plan);
      CashLines lines = exact.lines();
      if (lines.period().filter(parts -> parts.bitLength() < Long.SIZE - 1).isPresent()
          && lines.settled() < 1_000_000) {
        long period = lines.period().get().longValueExact();
        assertThat(lines.lowGrowth()).isEqualTo(lines.highGrowth());
        BigInteger rise = lines.lowGrowth().multiply(lines.period().get());
        for (long parts = lines.settled(); parts < lines.settled() + 50; parts++) {
          assertThat(
                  exact
                      .through(parts + period)
                      .subtract(exact.through(parts))
                      .multiply(lines.scale()))
              .as("trial %s", trial)
              .isEqualTo(rise);
        }
      }
    }
  }

  @Test
  void takesNoLongerForAnyNumberOfParts() {
    LedgerPlan plan =
        FixturePlan.builder()
            .partsPerFiring(4)
            .failures(failures(FailureRule.PLANNED_STARTS, "95", "98", "90").trialParts(2).build())
            .build();
    // ceil(1e6 / 0.9) = 1111112; ceil(. / 0.98) = 1133788; ceil(. / 0.95) = 1193462; and 2 trials.
    Statement statement = LEDGER.statement(plan, 1_000_000);
    assertThat(statement.allParts().lines().get(3).count())
        .isEqualTo(BigInteger.valueOf(305_527)); // ceil(1193464 x 128 / 500)
    assertThat(LEDGER.statement(plan, Long.MAX_VALUE).allParts().total().isPositive()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({"0", "-0.5", "1.01"})
  void refusesYieldsThatAreNone(double yield) {
    assertThatThrownBy(
            () ->
                StageYield.builder()
                    .stage(Stage.PRINT)
                    .parts(ratio(yield))
                    .charges(ratio(0.5))
                    .source(INVENTED)
                    .build())
        .hasMessageContaining("parts is ")
        .hasMessageContaining("accepted is from 0.001 to 1")
        .hasMessageContaining("charges is 0.5; accepted is 1, as parts are printed one by one");
  }

  @Test
  void refusesFailuresThatContradictThemselves() {
    StageYield print = StageYield.builder().stage(Stage.PRINT).source(INVENTED).build();
    assertThatThrownBy(
            () ->
                Failures.builder()
                    .rule(FailureRule.AT_RANDOM)
                    .addStages(print, print)
                    .trialParts(2)
                    .trialFirings(3)
                    .build())
        .hasMessageContaining("rule is at random; accepted are planned starts and expected values")
        .hasMessageContaining("printing is stated 2 times; accepted is once")
        .hasMessageContaining(
            "trial firings is 3; accepted is from 1 to the number of trial parts");
    assertThatThrownBy(() -> Failures.builder().trialParts(-1).build())
        .hasMessageContaining("trial parts is -1; accepted is zero or more");
  }

  /** Steps at 10, 2 and 25 a part, each by the hour. */
  private static LedgerPlan steps(Failures failures, int partsPerFiring) {
    return LedgerPlan.builder()
        .prices(book().addOffers(offer("work", hours(1), "1").metered(true).build()).build())
        .addResources(
            consumed("work", Driver.PART, hours(10)).build(),
            consumed("work", Driver.DEBOUND_PART, hours(2)).build(),
            consumed("work", Driver.SINTERED_PART, hours(25)).build())
        .partsPerFiring(partsPerFiring)
        .failures(failures)
        .build();
  }

  static Failures.Builder failures(FailureRule rule, String print, String debind, String sinter) {
    return Failures.builder()
        .rule(rule)
        .addStages(
            part(Stage.PRINT, print), part(Stage.DEBIND, debind), part(Stage.SINTER, sinter));
  }

  private static StageYield part(Stage stage, String percent) {
    return StageYield.builder()
        .stage(stage)
        .parts(percent(Double.parseDouble(percent)))
        .source(INVENTED)
        .build();
  }
}
