package dev.kilnledger.costing.uncertainty;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.eur;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.costing.breakeven.BreakEven;
import dev.kilnledger.costing.ledger.BuyingRule;
import dev.kilnledger.costing.ledger.FixturePlan;
import dev.kilnledger.costing.ledger.Ledger;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.ledger.Overhead;
import dev.kilnledger.costing.ledger.OverheadBase;
import dev.kilnledger.costing.ledger.Simulated;
import dev.kilnledger.costing.ledger.TaxPolicy;
import dev.kilnledger.costing.ledger.TaxRule;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.resource.ChargeRule;
import dev.kilnledger.costing.resource.Depreciated;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.yield.FailureRule;
import dev.kilnledger.costing.yield.Failures;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.rng.simple.RandomSource;
import org.joda.money.BigMoney;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The kernel and the ledger are two ways of counting the same: they are held equal here. */
class CashKernelTest {
  private static final Ledger LEDGER = Ledger.standard();

  @Test
  void equalsTheLedgerDrawByDrawOnAFewPlans() {
    equalsTheLedgerDrawByDraw(30);
  }

  @Tag("sampled")
  @Test
  void equalsTheLedgerDrawByDraw() {
    equalsTheLedgerDrawByDraw(800);
  }

  private static void equalsTheLedgerDrawByDraw(int trials) {
    SplittableRandom random = new SplittableRandom(20261125);
    int certain = 0;
    for (int trial = 0; trial < trials; trial++) {
      UncertainPlan uncertain = plan(trial, random);
      CashKernel kernel =
          new CashKernel(
              new DrawnPlan(uncertain), false, RandomSource.XO_SHI_RO_256_PP.create((long) trial));
      long parts = random.nextLong(1, 400);
      if (trial % 2 == 0) {
        kernel.keep(1);
        kernel.keep(parts);
      }
      for (int draw = 0; draw < 4; draw++) {
        double[] drawn = RandomInputs.draw(uncertain.inputs(), random);
        LedgerPlan plan = uncertain.with(Arrays.stream(drawn).boxed().toList());
        kernel.start(drawn);
        String where = "trial " + trial + " draw " + draw + " parts " + parts;
        isClose(where + " first", kernel.packs + kernel.metered, LEDGER.through(plan, 1).total());
        if (parts > 1) {
          kernel.through(parts - 1);
          double before = kernel.packs + kernel.metered;
          double meteredBefore = kernel.metered;
          kernel.through(parts);
          double last =
              plan.buying() == BuyingRule.PLANNED_FOR_N
                  ? kernel.metered - meteredBefore
                  : kernel.packs + kernel.metered - before;
          isClose(where + " last", last, LEDGER.part(plan, parts, parts).total());
        }
        isClose(where, kernel.packs + kernel.metered, LEDGER.through(plan, parts).total());
        isClose(where + " usage", kernel.usage(), LEDGER.usage(plan).total());
        certain++;
      }
    }
    assertThat(certain).isEqualTo(4 * trials);
  }

  @Test
  void leavesToTheLedgerWhatItDoesNotKnow() {
    SplittableRandom random = new SplittableRandom(7);
    for (int trial = 0; trial < 40; trial++) {
      UncertainPlan uncertain = plan(trial, random);
      DrawnPlan drawn = new DrawnPlan(uncertain);
      assertThat(drawn.isPlain()).isTrue();
      long parts = random.nextLong(1, 60);
      double[] values = RandomInputs.draw(uncertain.inputs(), random);
      double[] quick = new double[CashCount.OUTPUTS];
      double[] slow = new double[CashCount.OUTPUTS];
      CashCount.of(drawn, false, parts, RandomSource.XO_SHI_RO_256_PP.create(1L))
          .count(values, quick);
      new LedgerCount(drawn, parts).count(values, slow);
      assertThat(quick).containsExactly(slow, within(0.0005));
    }
    // With shipping, the ledger counts: 7.50 for the order of the first part.
    LedgerPlan shipped =
        FixturePlan.builder()
            .partsPerFiring(1)
            .addShipping(offer("shipping", ratio(1), "7.50").build())
            .build();
    UncertainPlan uncertain =
        UncertainPlan.of(
            shipped, List.of(UncertainInput.price("shipping", Empirical.of(7.5, 12.5), INVENTED)));
    assertThat(new DrawnPlan(uncertain).isPlain()).isFalse();
    MonteCarlo monteCarlo = new MonteCarlo(2);
    Trials trials = Trials.fixed(64, 1);
    UncertainStatement one = monteCarlo.statement(uncertain, 1, trials);
    assertThat(one.allParts().outcome().draws().distinct().sorted())
        .containsExactly(4278.9, 4283.9);
    assertThat(monteCarlo.breakEven(uncertain, eur("60"), 1_000, trials).first().keySet())
        .isSubsetOf(
            BreakEven.standard()
                .find(uncertain.with(List.of(7.5)), eur("60"))
                .first()
                .orElseThrow(),
            BreakEven.standard()
                .find(uncertain.with(List.of(12.5)), eur("60"))
                .first()
                .orElseThrow());
    assertThatThrownBy(
            () -> UncertainPlan.builder().plan(shipped).failureRule(FailureRule.AT_RANDOM).build())
        .hasMessageContaining("failure rule is at random and the plan has shipping")
        .hasMessageContaining("accepted is the rule of the plan, planned starts");
    UncertainInput twice =
        UncertainInput.price("nothing of the kind", Empirical.of(1, 2), INVENTED);
    assertThatThrownBy(
            () ->
                UncertainPlan.builder()
                    .plan(shipped)
                    .failureRule(FailureRule.AT_RANDOM)
                    .inputs(List.of(twice, twice))
                    .build())
        .as("all that is wrong with it")
        .hasMessageContaining("is stated 2 times; accepted is once")
        .hasMessageContaining("nothing of the kind")
        .hasMessageContaining("failure rule is at random and the plan has shipping");
  }

  /** To a tenth of a cent and to eleven digits: doubles hold fifteen, the counts are exact. */
  private static void isClose(String where, double cash, BigMoney ledger) {
    double expected = ledger.getAmount().doubleValue();
    assertThat(cash)
        .as(where)
        .isCloseTo(expected, within(Math.max(0.0005, 1e-11 * Math.abs(expected))));
  }

  private static UncertainPlan plan(int trial, SplittableRandom random) {
    LedgerPlan simulated = new Simulated(random, trial % 3 != 0).plan;
    Depreciated press =
        Depreciated.builder()
            .item("press")
            .driver(random.nextBoolean() ? Driver.PART : Driver.FIRING_TIME)
            .life(trial % 2 == 0 ? hours(300) : ratio(50))
            .driver(trial % 2 == 0 ? Driver.FIRING_TIME : Driver.PART)
            .salvage(eur(trial % 4 == 0 ? "0" : "100"))
            .source(INVENTED)
            .build();
    PriceBook prices =
        PriceBook.builder()
            .from(simulated.prices())
            .addOffers(offer("press", ratio(1), "900").build())
            .build();
    LedgerPlan plan =
        LedgerPlan.builder()
            .from(simulated)
            .shipping(List.of())
            .prices(prices)
            .addResources(press)
            .putAmounts(Driver.FIRING_TIME, hours(3))
            .failures(
                Failures.builder()
                    .from(simulated.failures())
                    .rule(trial % 5 == 0 ? FailureRule.EXPECTED_VALUES : FailureRule.PLANNED_STARTS)
                    .build())
            .charging(trial % 7 == 0 ? ChargeRule.SHARED : ChargeRule.WHOLE)
            .buying(trial % 4 == 1 ? BuyingRule.PLANNED_FOR_N : BuyingRule.AS_NEEDED)
            .overheads(List.of(Overhead.of(OverheadBase.MATERIAL, percent(12), INVENTED)))
            .tax(TaxPolicy.of(TaxRule.DEDUCTED, percent(19), INVENTED))
            .build();
    return UncertainPlan.of(plan, RandomInputs.of(plan, random));
  }
}
