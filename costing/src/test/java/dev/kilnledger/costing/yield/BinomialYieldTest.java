package dev.kilnledger.costing.yield;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BinomialYieldTest {
  private static final BinomialYield YIELD = BinomialYield.standard();

  @Test
  void multipliesTheYieldsOfTheStages() {
    // Published example of a rolled yield: 0.95 x 0.84 x 0.88 = 0.70224.
    Failures.Builder three =
        Failures.builder().addStages(stage(Stage.PRINT, 0.95), stage(Stage.DEBIND, 0.84));
    assertThat(YIELD.rolled(three.addStages(stage(Stage.SINTER, 0.88)).build()).si())
        .isCloseTo(0.70224, within(1e-15));
    // Of a charge lost one time in five, 0.9 of the parts come out good: 0.8 x 0.9 = 0.72.
    Failures charges =
        Failures.builder()
            .addStages(
                StageYield.builder()
                    .stage(Stage.SINTER)
                    .parts(percent(90))
                    .charges(percent(80))
                    .source(INVENTED)
                    .build())
            .build();
    assertThat(YIELD.rolled(charges).si()).isCloseTo(0.72, within(1e-15));
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
    assertThat(YIELD.rolled(repeated)).isEqualTo(ratio(1));
    assertThat(AfterFailure.REPEATED.words()).isEqualTo("repeated");
    assertThat(AfterFailure.SCRAPPED.words()).isEqualTo("scrapped");
  }

  /** Tables of the binomial distribution, from memory, with the sums done again by hand. */
  @ParameterizedTest
  @CsvSource({
    // P(Bin(12, 0.9) >= 10) = 0.8891, P(Bin(13, 0.9) >= 10) = 0.9658
    "10, 0.9, 0.95, 13",
    "10, 0.9, 0.85, 12",
    // 1 - 0.5^n
    "1, 0.5, 0.96875, 5",
    "1, 0.5, 0.96876, 6",
    "1, 0.001, 0.5, 693", // ln 0.5 / ln 0.999 = 692.8
    "25, 1, 0.999999, 25",
    "100000, 1, 0.5, 100000"
  })
  void startsEnoughForAConfidence(int good, double yield, double confidence, int starts) {
    assertThat(YIELD.starts(good, ratio(yield), ratio(confidence))).isEqualTo(starts);
  }

  @Test
  void refusesWhatIsNoYieldWithAllProblems() {
    assertThatThrownBy(() -> YIELD.starts(0, ratio(0), ratio(1)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "starts for good parts: good parts is 0; accepted is from 1 to 100000; and yield is 0;"
                + " accepted is from 0.001 to 1; and confidence is 1; accepted is from 0.000001 to"
                + " 0.999999");
    assertThatThrownBy(() -> YIELD.starts(100_001, ratio(0.5), ratio(0.5)))
        .hasMessage("starts for good parts: good parts is 100001; accepted is from 1 to 100000");
  }

  @Test
  void refusesAShareOfLostChargesWhereThereAreNone() {
    assertThatThrownBy(
            () ->
                StageYield.builder()
                    .stage(Stage.PRINT)
                    .charges(percent(90))
                    .source(INVENTED)
                    .build())
        .hasMessage(
            "yield of printing: charges is 90 %; accepted is 1, as parts are printed one by one");
    assertThatThrownBy(() -> Failures.builder().rule(FailureRule.AT_RANDOM).build())
        .hasMessageStartingWith("failures: rule is at random; accepted are planned starts and");
    assertThatThrownBy(
            () ->
                Failures.builder()
                    .addStages(stage(Stage.DEBIND, 0.9), stage(Stage.DEBIND, 0.8))
                    .build())
        .hasMessage("failures: debinding is stated 2 times; accepted is once");
  }

  @Test
  void triesEachPartInAFiringOfItsOwnUnlessTold() {
    Failures three = Failures.builder().trialParts(3).build();
    assertThat(three.trialFirings()).isEqualTo(3);
    assertThat(three.isNone()).isFalse();
    assertThat(Failures.none().isNone()).isTrue();
    assertThat(Failures.builder().addStages(stage(Stage.PRINT, 1)).build().isNone()).isTrue();
    assertThat(Failures.builder().addStages(stage(Stage.PRINT, 0.9)).build().isNone()).isFalse();
    assertThat(
            Failures.builder().from(three).addStages(stage(Stage.PRINT, 0.9)).build().trialsOnly())
        .isEqualTo(three);
    assertThatThrownBy(() -> Failures.builder().trialParts(3).trialFirings(4).build())
        .hasMessage(
            "failures: trial firings is 4; accepted is from 1 to the number of trial parts, 3");
    assertThatThrownBy(() -> Failures.builder().trialParts(-1).build())
        .hasMessageContaining("trial parts is -1; accepted is zero or more");
  }

  private static StageYield stage(Stage stage, double yield) {
    return StageYield.builder().stage(stage).parts(ratio(yield)).source(INVENTED).build();
  }
}
