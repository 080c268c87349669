package dev.kilnledger.costing.uncertainty;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.costing.ledger.FixturePlan.book;
import static dev.kilnledger.costing.ledger.FixturePlan.consumed;
import static dev.kilnledger.costing.ledger.FixturePlan.offer;
import static dev.kilnledger.units.Amounts.cubicMillimetres;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.litres;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.TradeUnits.GRAM;
import static dev.kilnledger.units.TradeUnits.KILOGRAM;
import static dev.kilnledger.units.TradeUnits.LITRE;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.resource.Aged;
import dev.kilnledger.costing.resource.ChargeRule;
import dev.kilnledger.costing.resource.Consumed;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.RunDown;
import dev.kilnledger.costing.resource.Tails;
import dev.kilnledger.costing.yield.FailureRule;
import dev.kilnledger.costing.yield.Failures;
import dev.kilnledger.costing.yield.Stage;
import dev.kilnledger.costing.yield.StageYield;
import dev.kilnledger.units.Amount;
import java.util.List;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

/**
 * Counts that lie on a whole number, or next to one: doubles miss it by their last digits, and what
 * is right follows from decimals, by hand. Each pack costs 1, so that the cash is their number.
 */
class KernelDecisionsTest {
  private static Failures.Builder failures(Stage stage, double parts, double charges) {
    return Failures.builder()
        .addStages(
            StageYield.builder()
                .stage(stage)
                .parts(ratio(parts))
                .charges(ratio(charges))
                .source(INVENTED)
                .build());
  }

  private static LedgerPlan.Builder plan(Resource resource, Amount<?> pack) {
    return LedgerPlan.builder()
        .prices(book().offers(List.of(offer(resource.item(), pack, "1").build())).build())
        .addResources(resource)
        .partsPerFiring(1);
  }

  /** A pack for each event of a driver. */
  private static LedgerPlan.Builder counting(Driver driver) {
    return plan(consumed("wax", driver, kilograms(1)).build(), kilograms(1));
  }

  private static CashKernel kernel(UncertainPlan plan) {
    return new CashKernel(
        new DrawnPlan(plan), plan.failsAtRandom(), RandomSource.XO_SHI_RO_256_PP.create(1L));
  }

  private static double packs(LedgerPlan.Builder plan, long parts) {
    return packs(UncertainPlan.of(plan.build(), List.of()), parts);
  }

  private static double packs(UncertainPlan plan, long parts, double... drawn) {
    CashKernel kernel = kernel(plan);
    kernel.start(drawn);
    kernel.through(parts);
    assertThat(kernel.metered).isZero();
    return kernel.packs;
  }

  private static UncertainPlan with(LedgerPlan.Builder plan, UncertainInput input) {
    return UncertainPlan.of(plan.build(), List.of(input));
  }

  /** 1 / 0.333333333333 is a little more than 3, and 1 / 0.333333333334 a little less. */
  @Test
  void startsAsManyPartsAsDecimalsAskFor() {
    LedgerPlan.Builder prints = counting(Driver.PART);
    assertThat(packs(prints.failures(failures(Stage.PRINT, 0.333333333333, 1).build()), 1))
        .isEqualTo(4);
    assertThat(packs(prints.failures(failures(Stage.PRINT, 0.333333333334, 1).build()), 1))
        .isEqualTo(3);
    // 21 / 0.7 = 30, which doubles take for 30.000000000000004.
    assertThat(packs(prints.failures(failures(Stage.PRINT, 0.7, 1).build()), 21)).isEqualTo(30);
    assertThat(packs(prints.failures(failures(Stage.PRINT, 0.7, 1).build()), 22)).isEqualTo(32);
  }

  /** For one charge that comes out (1 - z) / z are lost: a little more than two, or less. */
  @Test
  void losesAsManyChargesAsDecimalsAskFor() {
    LedgerPlan.Builder firings = counting(Driver.FIRING);
    assertThat(packs(firings.failures(failures(Stage.SINTER, 1, 0.333333333333).build()), 1))
        .isEqualTo(4);
    assertThat(packs(firings.failures(failures(Stage.SINTER, 1, 0.333333333334).build()), 1))
        .isEqualTo(3);
  }

  @Test
  void fillsAsManyChargesAsDecimalsAskFor() {
    for (Driver driver : List.of(Driver.FIRING, Driver.DEBINDING)) {
      LedgerPlan.Builder charges = counting(driver);
      // 21 / 0.7 = 30 parts, in 30 charges of one or 15 of two.
      charges.failures(failures(Stage.SINTER, 0.7, 1).rule(FailureRule.EXPECTED_VALUES).build());
      assertThat(packs(charges, 21)).isEqualTo(30);
      assertThat(packs(charges.partsPerFiring(2), 21)).isEqualTo(15);
      // Three parts and a trillionth do not go into a charge of three.
      charges
          .partsPerFiring(3)
          .failures(
              failures(Stage.SINTER, 0.333333333333, 1).rule(FailureRule.EXPECTED_VALUES).build());
      assertThat(packs(charges, 1)).as("%s", driver).isEqualTo(2);
      charges.failures(
          failures(Stage.SINTER, 0.333333333334, 1).rule(FailureRule.EXPECTED_VALUES).build());
      assertThat(packs(charges, 1)).isEqualTo(1);
    }
  }

  /** 10 / 0.7 starts of 7 kg each are 100 kg. */
  @Test
  void buysForFractionsOfAStartWhatTheyTake() {
    LedgerPlan.Builder plan =
        plan(consumed("wax", Driver.PART, kilograms(7)).build(), kilograms(1))
            .failures(failures(Stage.PRINT, 0.7, 1).rule(FailureRule.EXPECTED_VALUES).build());
    assertThat(packs(plan, 10)).isEqualTo(100);
    assertThat(packs(plan, 21)).isEqualTo(210);
    UncertainPlan drawn =
        with(plan, UncertainInput.quantity("wax", Empirical.of(7, 9), INVENTED).in(KILOGRAM));
    assertThat(packs(drawn, 10, 7)).isEqualTo(100);
    assertThat(packs(drawn, 21, 7)).isEqualTo(210);
  }

  /** 0.3 kg for each charge of three: 0.1 kg for each part, and for each of two trial charges. */
  @Test
  void buysForSharesOfChargesWhatTheyTake() {
    for (Driver driver : List.of(Driver.FIRING, Driver.DEBINDING)) {
      LedgerPlan.Builder plan =
          plan(consumed("wax", driver, kilograms(0.3)).build(), kilograms(0.1))
              .partsPerFiring(3)
              .charging(ChargeRule.SHARED);
      assertThat(packs(plan, 1)).isEqualTo(1);
      assertThat(packs(plan, 4)).isEqualTo(4);
      plan.failures(Failures.builder().trialParts(2).trialFirings(2).build());
      assertThat(packs(plan, 4)).as("%s", driver).isEqualTo(10);
    }
  }

  /**
   * With a yield of a half two parts of 0.05 kg are printed for each good one, a pack of 0.1 kg.
   */
  @Test
  void countsEachNumberOfPartsThatIsKept() {
    UncertainPlan plan =
        with(
            plan(consumed("wax", Driver.PART, kilograms(0.07)).build(), kilograms(0.1))
                .failures(failures(Stage.PRINT, 0.5, 1).build()),
            UncertainInput.quantity("wax", Empirical.of(0.05, 0.06), INVENTED).in(KILOGRAM));
    CashKernel kernel = kernel(plan);
    kernel.keep(1);
    kernel.keep(10);
    kernel.start(new double[] {0.05});
    assertThat(kernel.packs).isEqualTo(1);
    kernel.through(10);
    assertThat(kernel.packs).isEqualTo(10);
    kernel.through(7);
    assertThat(kernel.packs).isEqualTo(7);
  }

  /** Whatever the plan expects to fail, at random each good part takes a start of its own. */
  @Test
  void buysForEveryStartThatIsDrawn() {
    UncertainPlan plan =
        UncertainPlan.builder()
            .plan(
                plan(consumed("wax", Driver.PART, kilograms(0.2)).build(), kilograms(0.1))
                    .failures(
                        failures(Stage.PRINT, 0.7, 1).rule(FailureRule.EXPECTED_VALUES).build())
                    .build())
            .addInputs(
                UncertainInput.quantity("wax", Empirical.of(0.1, 0.2), INVENTED).in(KILOGRAM),
                UncertainInput.partYield(Stage.PRINT, Empirical.of(0.7, 1), INVENTED))
            .failureRule(FailureRule.AT_RANDOM)
            .build();
    assertThat(packs(plan, 20, 0.1, 0.7)).isGreaterThanOrEqualTo(20);
    assertThat(packs(plan, 20, 0.1, 1)).isEqualTo(20);
  }

  /** 1, 0.9 and 0.81 of a fill may be used, or 1 and 0.85. */
  @Test
  void runsAFillDownToTheDecimalsOfItsMinimum() {
    RunDown powder =
        RunDown.builder()
            .item("powder")
            .fill(kilograms(1))
            .loss(percent(5))
            .minimum(percent(81))
            .source(INVENTED)
            .build();
    UncertainPlan plan =
        with(
            plan(powder, kilograms(1)),
            UncertainInput.loss("powder", Empirical.of(0.1, 0.15), INVENTED));
    assertThat(packs(plan, 3, 0.1)).isEqualTo(1);
    assertThat(packs(plan, 4, 0.1)).isEqualTo(2);
    assertThat(packs(plan, 2, 0.15)).isEqualTo(1);
    assertThat(packs(plan, 3, 0.15)).isEqualTo(2);
  }

  /** A pack of 300 g serves three parts of 100 g, though 0.3 / 0.1 is less than 3 in doubles. */
  @Test
  void servesAsManyPartsAsAPackHolds() {
    Consumed wax = consumed("wax", Driver.PART, grams(120)).tails(Tails.STRANDED).build();
    UncertainInput quantity =
        UncertainInput.quantity("wax", Empirical.of(100, 110), INVENTED).in(GRAM);
    UncertainPlan plan = with(plan(wax, grams(300)), quantity);
    assertThat(packs(plan, 3, 100)).isEqualTo(1);
    assertThat(packs(plan, 4, 100)).isEqualTo(2);
    assertThat(packs(plan, 2, 110)).isEqualTo(1);
    assertThat(packs(plan, 3, 110)).isEqualTo(2);
    Consumed owned = Consumed.builder().from(wax).owned(grams(300)).build();
    assertThat(packs(with(plan(owned, grams(300)), quantity), 3, 100)).isZero();
    assertThat(packs(with(plan(owned, grams(300)), quantity), 4, 100)).isEqualTo(1);
  }

  /** 21 / 0.7 / 0.6 = 50 shared firings of one part, two to a fill. */
  @Test
  void groupsSharesOfChargesByDecimals() {
    Aged powder =
        Aged.builder().item("powder").fill(kilograms(1)).cycles(2).source(INVENTED).build();
    LedgerPlan.Builder plan =
        plan(powder, kilograms(1))
            .charging(ChargeRule.SHARED)
            .failures(failures(Stage.SINTER, 0.7, 0.6).rule(FailureRule.EXPECTED_VALUES).build());
    assertThat(packs(plan, 21)).isEqualTo(25);
  }

  /** What is left of much is as exact: 0.2 kg more than 10,000 t that are there are two packs. */
  @Test
  void takesALargeStockOffExactly() {
    Consumed wax =
        consumed("wax", Driver.PART, kilograms(0.2)).owned(kilograms(10_000_000)).build();
    UncertainPlan plan =
        with(
            plan(wax, kilograms(0.1)),
            UncertainInput.quantity("wax", Empirical.of(0.1, 0.2), INVENTED).in(KILOGRAM));
    assertThat(packs(plan, 100_000_000, 0.1)).isZero();
    assertThat(packs(plan, 100_000_002, 0.1)).isEqualTo(2);
    assertThat(packs(plan, 100_000_003, 0.1)).isEqualTo(3);
  }

  /** A hundredth of a litre are 10,000 cubic millimetres. */
  @Test
  void countsManySmallPacksExactly() {
    Consumed oil = consumed("oil", Driver.PART, litres(0.02)).build();
    UncertainPlan plan =
        with(
            plan(oil, cubicMillimetres(1)),
            UncertainInput.quantity("oil", Empirical.of(0.01, 0.02), INVENTED).in(LITRE));
    assertThat(packs(plan, 999_991, 0.01)).isEqualTo(9_999_910_000.0);
  }
}
