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
    "25, 1, 0.999999, 25"
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
  }

  private static StageYield stage(Stage stage, double yield) {
    return StageYield.builder().stage(stage).parts(ratio(yield)).source(INVENTED).build();
  }
}
