package dev.kilnledger.costing.resource;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.percent;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.core.source.Input;
import dev.kilnledger.costing.yield.AfterFailure;
import dev.kilnledger.costing.yield.FailureRule;
import dev.kilnledger.costing.yield.Failures;
import dev.kilnledger.costing.yield.Stage;
import dev.kilnledger.costing.yield.StageYield;
import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Ten good parts, four to a firing, counted by hand: of the parts 80 % pass sintering and 90 %
 * printing, and three of four charges of sintering come out.
 */
class WorkloadTest {
  private static StageYield.Builder stage(Stage stage, double parts, double charges) {
    return StageYield.builder()
        .stage(stage)
        .parts(percent(parts))
        .charges(percent(charges))
        .source(INVENTED);
  }

  private static Failures.Builder failures(AfterFailure sintered) {
    return Failures.builder()
        .addStages(
            stage(Stage.PRINT, 90, 100).build(),
            stage(Stage.SINTER, 80, 75).afterFailure(sintered).build());
  }

  private static void assertCount(Workload workload, Driver driver, String expected) {
    int slash = expected.indexOf('/');
    String number = slash < 0 ? expected : expected.substring(0, slash);
    String divisor = slash < 0 ? "1" : expected.substring(slash + 1);
    Tally tally = workload.tally(driver);
    assertThat(tally.through(10).multiply(new BigInteger(divisor)))
        .as("%s, %s", driver, tally.formula)
        .isEqualTo(new BigInteger(number).multiply(tally.denominator));
  }

  @ParameterizedTest
  @CsvSource({
    // ceil(10 / 0.8) = 13 in ceil(13 / 4) = 4 charges, joined by ceil(4 x 0.25 / 0.75) = 2 lost
    // ones of 4 parts: 21; ceil(21 / 0.9) = 24 prints.
    "WHOLE, PLANNED_STARTS, 21, 6, 6, 24",
    // ceil(13 / 0.75) = 18, 18 / 4 charges; ceil(18 / 0.9) = 20.
    "SHARED, PLANNED_STARTS, 18, 9/2, 9/2, 20",
    // 10 / 0.8 / 0.75 = 50 / 3, in ceil(50 / 12) = 5 charges; 50 / 3 / 0.9 = 500 / 27.
    "WHOLE, EXPECTED_VALUES, 50/3, 5, 5, 500/27",
    "SHARED, EXPECTED_VALUES, 50/3, 25/6, 25/6, 500/27"
  })
  void countsBackFromTheLastStage(
      ChargeRule charging,
      FailureRule rule,
      String sintered,
      String firings,
      String debindings,
      String printed) {
    Workload workload =
        Workload.of(4, charging, failures(AfterFailure.SCRAPPED).rule(rule).build(), Map.of());
    assertCount(workload, Driver.GOOD_PART, "10");
    assertCount(workload, Driver.SINTERED_PART, sintered);
    assertCount(workload, Driver.FIRING, firings);
    assertCount(workload, Driver.DEBOUND_PART, sintered);
    assertCount(workload, Driver.DEBINDING, debindings);
    assertCount(workload, Driver.PART, printed);
  }

  /** What is repeated is asked of its own stage alone: ceil(10 / 0.9) = 12 prints, 3 debindings. */
  @Test
  void asksNothingOfTheStageBeforeForWhatIsRepeated() {
    Workload workload =
        Workload.of(4, ChargeRule.WHOLE, failures(AfterFailure.REPEATED).build(), Map.of());
    assertCount(workload, Driver.SINTERED_PART, "21");
    assertCount(workload, Driver.FIRING, "6");
    assertCount(workload, Driver.DEBINDING, "3");
    assertCount(workload, Driver.PART, "12");
  }

  @Test
  void addsTrialPartsInChargesOfTheirOwn() {
    Workload workload =
        Workload.of(
            4,
            ChargeRule.WHOLE,
            failures(AfterFailure.SCRAPPED).trialParts(3).trialFirings(2).build(),
            Map.of());
    assertCount(workload, Driver.GOOD_PART, "10");
    assertCount(workload, Driver.PART, "27");
    assertCount(workload, Driver.SINTERED_PART, "24");
    assertCount(workload, Driver.FIRING, "8");
    assertThat(workload.inputs(Driver.FIRING))
        .extracting(input -> input.name() + " " + input.value())
        .containsExactly(
            "parts per firing 4",
            "printing yield 90 %",
            "sintering yield 80 %",
            "charge yield of sintering 75 %",
            "trial parts 3",
            "trial firings 2");
    // Good parts are counted, whatever fails.
    assertThat(workload.inputs(Driver.GOOD_PART))
        .extracting(Input::name)
        .containsExactly("parts per firing");
    // Of 21 parts the last charge of four holds one; trial parts are not among them.
    assertThat(workload.partsInLastFiring(10)).isEqualTo(1);
  }

  @Test
  void knowsNoLastFiringOfFractions() {
    Failures expected = failures(AfterFailure.SCRAPPED).rule(FailureRule.EXPECTED_VALUES).build();
    assertThat(Workload.of(4, ChargeRule.WHOLE, expected, Map.of()).partsInLastFiring(10)).isZero();
    assertThat(Workload.of(4).partsInLastFiring(10)).isEqualTo(2);
    assertThat(Workload.of(4).partsInLastFiring(12)).isZero();
  }

  @Test
  void measuresWhatEachEventTakes() {
    Workload workload =
        Workload.of(4, ChargeRule.WHOLE, Failures.none(), Map.of(Driver.FIRING_TIME, hours(2)));
    assertThat(workload.perEvent(Driver.FIRING_TIME)).isEqualByComparingTo("7200"); // s
    assertThat(workload.perEvent(Driver.FIRING)).isEqualByComparingTo("1");
    assertThat(workload.formula(Driver.FIRING)).isEqualTo("ceil(n / parts per firing)");
    assertThat(workload.formula(Driver.FIRING_TIME))
        .isEqualTo("time of a firing x ceil(n / parts per firing)");
    assertThatThrownBy(
            () ->
                Workload.of(
                    1, ChargeRule.WHOLE, Failures.none(), Map.of(Driver.FIRING_TIME, hours(0))))
        .hasMessage("workload: time of a firing is 0 h; accepted is more than zero");
  }

  /** Counts that a long does not hold, on the way or in the end, are as exact as any. */
  @Test
  void countsMoreThanALongHolds() {
    long parts = 3_000_000_000_000_000_001L;
    // (3e18 + 1) / 0.3 = 1e19 + 3.33..., and five trial parts.
    Failures printing =
        Failures.builder().addStages(stage(Stage.PRINT, 30, 100).build()).trialParts(5).build();
    assertThat(
            Workload.of(1, ChargeRule.WHOLE, printing, Map.of()).tally(Driver.PART).through(parts))
        .isEqualTo(new BigInteger("10000000000000000009"));
    // For each charge of ten that comes out nine are lost.
    Failures sintering = Failures.builder().addStages(stage(Stage.SINTER, 100, 10).build()).build();
    Workload workload = Workload.of(1, ChargeRule.WHOLE, sintering, Map.of());
    for (Driver driver : List.of(Driver.FIRING, Driver.SINTERED_PART, Driver.PART)) {
      assertThat(workload.tally(driver).through(parts))
          .isEqualTo(new BigInteger("30000000000000000010"));
    }
  }
}
