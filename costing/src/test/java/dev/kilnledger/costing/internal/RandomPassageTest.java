package dev.kilnledger.costing.internal;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.units.Amounts.percent;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.costing.resource.ChargeRule;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.yield.Failures;
import dev.kilnledger.costing.yield.Stage;
import dev.kilnledger.costing.yield.StageYield;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

/** What holds for every course of events, whatever is drawn, and the mean of long ones. */
class RandomPassageTest {
  private static RandomPassage sintering(
      int parts, int charges, int partsPerFiring, ChargeRule rule) {
    Failures failures =
        Failures.builder()
            .addStages(
                StageYield.builder()
                    .stage(Stage.SINTER)
                    .parts(percent(parts))
                    .charges(percent(charges))
                    .source(INVENTED)
                    .build())
            .trialParts(3)
            .trialFirings(2)
            .trialSource(INVENTED)
            .build();
    return new RandomPassage(
        failures, rule, partsPerFiring, RandomSource.XO_SHI_RO_256_PP.create(5L));
  }

  /** Without lost charges all that was sintered, less 3 trial parts, was in charges of 4. */
  @Test
  void firesNoMoreChargesThanItTakes() {
    RandomPassage passage = sintering(60, 100, 4, ChargeRule.WHOLE);
    for (long good = 1; good <= 200; good++) {
      passage.until(good);
      long sintered = passage.events(Driver.SINTERED_PART) - 3;
      assertThat(sintered).isGreaterThanOrEqualTo(good);
      assertThat(passage.events(Driver.FIRING)).isEqualTo((sintered + 3) / 4 + 2);
    }
  }

  /** With one part a firing each part sintered is a firing, lost or not. */
  @Test
  void countsLostChargesAsFirings() {
    RandomPassage passage = sintering(60, 70, 1, ChargeRule.WHOLE);
    for (long good = 1; good <= 200; good++) {
      passage.until(good);
      assertThat(passage.events(Driver.FIRING) - 2)
          .isEqualTo(passage.events(Driver.SINTERED_PART) - 3);
    }
  }

  /**
   * Negative binomial: 2,000 good parts of yield y take 2,000 / y starts, with a standard deviation
   * of sqrt(2,000 (1 - y)) / y; part by part as well as at once.
   */
  @Test
  void comesToTheSameMeanPartByPart() {
    double yield = 0.6 * 0.7;
    double deviation = Math.sqrt(2000 * (1 - yield)) / yield;
    RandomPassage steps = sintering(60, 70, 1, ChargeRule.WHOLE);
    for (long good = 1; good <= 2000; good++) {
      steps.until(good);
      // Nothing happens until there is another good part.
      long before = steps.events(Driver.SINTERED_PART);
      steps.until(good);
      assertThat(steps.events(Driver.SINTERED_PART)).isEqualTo(before);
    }
    RandomPassage once = sintering(60, 70, 1, ChargeRule.WHOLE);
    once.until(2000);
    for (RandomPassage passage : new RandomPassage[] {steps, once}) {
      assertThat((double) passage.events(Driver.SINTERED_PART) - 3)
          .isCloseTo(2000 / yield, within(4 * deviation));
    }
  }
}
