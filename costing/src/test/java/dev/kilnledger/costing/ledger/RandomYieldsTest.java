package dev.kilnledger.costing.ledger;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.book;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.costing.resource.ChargeRule;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.yield.FailureRule;
import dev.kilnledger.costing.yield.Failures;
import dev.kilnledger.costing.yield.Stage;
import dev.kilnledger.costing.yield.StageYield;
import java.math.BigDecimal;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import org.joda.money.BigMoney;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class RandomYieldsTest {
  private static final RandomYields RANDOM = RandomYields.standard();

  @Test
  void equalsTheLedgerDrawByDrawOnAFewPlansWhereNothingFails() {
    equalsTheLedgerDrawByDrawWhereNothingFails(4);
  }

  @Tag("sampled")
  @Test
  void equalsTheLedgerDrawByDrawWhereNothingFails() {
    equalsTheLedgerDrawByDrawWhereNothingFails(60);
  }

  private static void equalsTheLedgerDrawByDrawWhereNothingFails(int trials) {
    SplittableRandom random = new SplittableRandom(3);
    for (int trial = 0; trial < trials; trial++) {
      LedgerPlan failing = new Simulated(random, true).plan;
      LedgerPlan plan =
          LedgerPlan.builder()
              .from(failing)
              .failures(failing.failures().trialsOnly())
              .charging(trial % 2 == 0 ? ChargeRule.WHOLE : ChargeRule.SHARED)
              .buying(trial % 3 == 0 ? BuyingRule.PLANNED_FOR_N : BuyingRule.AS_NEEDED)
              .build();
      long parts = random.nextLong(1, 500);
      BigMoney cash = Ledger.standard().through(plan, parts).total();
      assertThat(RANDOM.simulate(plan, parts, 70, trial).cash())
          .hasSize(70)
          .allSatisfy(
              drawn ->
                  // Shared charges may give quotients without end, of 34 digits.
                  assertThat(drawn.minus(cash).getAmount().abs())
                      .isLessThan(new BigDecimal("1e-20")));
    }
  }

  @Test
  void dependsOnTheSeedAndNotOnTheThreads() throws InterruptedException, ExecutionException {
    LedgerPlan plan = fixture(2);
    RandomStatement alone = in(1, plan, 9);
    assertThat(alone.seed()).isEqualTo(9);
    assertThat(alone.rule().words()).isEqualTo("at random");
    assertThat(in(2, plan, 9)).isEqualTo(alone);
    assertThat(in(7, plan, 9)).isEqualTo(alone);
    assertThat(in(2, plan, 10).cash()).isNotEqualTo(alone.cash());
  }

  private static RandomStatement in(int threads, LedgerPlan plan, long seed)
      throws InterruptedException, ExecutionException {
    ForkJoinPool pool = new ForkJoinPool(threads);
    try {
      return pool.submit(() -> RANDOM.simulate(plan, 40, 1000, seed)).get();
    } finally {
      pool.shutdown();
    }
  }

  @Test
  void meetsTheMeanAndSpreadOfTheNegativeBinomialDistribution() {
    // 30 good parts at a yield of 0.6: mean 30 / 0.6 = 50 starts, variance 30 x 0.4 / 0.36.
    LedgerPlan plan = hourly(StageYield.builder().stage(Stage.PRINT).parts(percent(60)), 1);
    int draws = 40_000;
    RandomStatement random = RANDOM.simulate(plan, 30, draws, 1);
    double variance = 30 * 0.4 / 0.36;
    double error = Math.sqrt(variance / draws);
    assertThat(random.mean().getAmount().doubleValue()).isCloseTo(50, within(4 * error));
    double squares =
        random.cash().stream()
            .mapToDouble(cash -> cash.getAmount().doubleValue() - 50)
            .map(d -> d * d)
            .sum();
    // The variance of a sample variance is near 2 v^2 / draws; the distribution has heavier tails.
    assertThat(squares / draws).isCloseTo(variance, within(6 * variance * Math.sqrt(2.0 / draws)));
    assertThat(random.meanPerPart().getAmount().doubleValue())
        .isCloseTo(50.0 / 30, within(4 * error / 30));
    // P(30 of 30 good) = 0.6^30 = 2.2e-7, and the least is 30 starts.
    assertThat(random.quantile(ratio(0.000001)).isLessThan(eur("30"))).isFalse();
    assertThat(random.within(random.quantile(ratio(0.5))).si()).isBetween(0.5, 0.6);
  }

  @Test
  void losesWholeCharges() {
    // 40 parts at 4 a firing: 10 good charges at a yield of 0.5 take 20 firings, 80 parts, on
    // average.
    LedgerPlan plan = hourly(StageYield.builder().stage(Stage.SINTER).charges(percent(50)), 4);
    RandomStatement random = RANDOM.simulate(plan, 40, 20_000, 5);
    double error = 4 * Math.sqrt(10 * 0.5 / 0.25 / 20_000);
    assertThat(random.mean().getAmount().doubleValue()).isCloseTo(80, within(4 * error));
    assertThat(random.cash())
        .allSatisfy(cash -> assertThat(cash.getAmount().remainder(BigDecimal.valueOf(4))).isZero());
  }

  @Test
  void refusesWhatCannotBeDrawn() {
    assertThatThrownBy(() -> RANDOM.simulate(fixture(1), 0, 0, 1))
        .hasMessage(
            "random yields: parts is 0; accepted is 1 or more; and draws is 0; accepted is from 1"
                + " to 10000000");
    assertThatThrownBy(() -> RANDOM.simulate(fixture(1), 1_000_000_000, 1, 1))
        .hasMessageContaining("more than 100000000 starts are expected; accepted are fewer parts");
    RandomStatement one = RANDOM.simulate(fixture(1), 1, 1, 1);
    assertThatThrownBy(() -> one.quantile(ratio(0)))
        .hasMessageContaining("share is 0; accepted is more than zero");
  }

  /** Of four draws each is a quarter: a half of them does not exceed the second. */
  @Test
  void quantilesAreDraws() {
    RandomStatement four =
        RandomStatement.builder()
            .plan(fixture(1))
            .parts(1)
            .seed(1)
            .addCash(eur("40"), eur("10"), eur("30"), eur("20"))
            .build();
    assertThat(four.quantile(ratio(0.1))).isEqualTo(eur("10"));
    assertThat(four.quantile(ratio(0.5))).isEqualTo(eur("20"));
    assertThat(four.quantile(ratio(0.51))).isEqualTo(eur("30"));
    assertThat(four.quantile(ratio(1))).isEqualTo(eur("40"));
    assertThatThrownBy(() -> RandomStatement.builder().plan(fixture(1)).parts(1).seed(1).build())
        .hasMessage("random statement: there is no draw; accepted is one or more");
  }

  /** 30,000,000 good parts at a yield of 0.5 and lost charges of 0.5 take 120,000,000 starts. */
  @Test
  void countsBothYieldsAgainstTheLimit() {
    LedgerPlan plan =
        hourly(StageYield.builder().stage(Stage.SINTER).parts(percent(50)).charges(percent(50)), 1);
    assertThatThrownBy(() -> RANDOM.simulate(plan, 30_000_000, 1, 1))
        .hasMessage(
            "random yields: for 30000000 parts more than 100000000 starts are expected; accepted"
                + " are fewer parts or higher yields");
    assertThat(RANDOM.simulate(plan, 1, 1, 1).cash()).hasSize(1);
    // At 0.5 each, 25,000,000 good parts take the 100,000,000 starts that are accepted.
    assertThat(RANDOM.simulate(plan, 25_000_000, 1, 1).cash()).hasSize(1);
  }

  /** One hour at 1 for each part printed. */
  private static LedgerPlan hourly(StageYield.Builder yield, int partsPerFiring) {
    return LedgerPlan.builder()
        .prices(book().addOffers(offer("work", hours(1), "1").metered(true).build()).build())
        .addResources(consumed("work", Driver.PART, hours(1)).build())
        .partsPerFiring(partsPerFiring)
        .failures(Failures.builder().addStages(yield.source(INVENTED).build()).build())
        .build();
  }

  private static LedgerPlan fixture(int partsPerFiring) {
    return FixturePlan.builder()
        .partsPerFiring(partsPerFiring)
        .failures(FailuresTest.failures(FailureRule.EXPECTED_VALUES, "95", "98", "90").build())
        .build();
  }
}
