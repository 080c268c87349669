package dev.kilnledger.costing.uncertainty;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.units.Amounts.percent;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.costing.ledger.FixturePlan;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.resource.ChargeRule;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.yield.FailureRule;
import dev.kilnledger.costing.yield.Failures;
import dev.kilnledger.costing.yield.Stage;
import dev.kilnledger.costing.yield.StageYield;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

/**
 * Plans of which half of everything fails, in trials that draw a yield of 1 for all of it: nothing
 * fails then, however the dice fall.
 */
class RandomCourseTest {
  private static final double[] ALL_GOOD = {1, 1, 1, 1, 1};
  private static final double[] HALF = {0.5, 0.5, 0.5, 0.5, 0.5};

  private static RandomCourse course(ChargeRule charging) {
    List<StageYield> stages = new ArrayList<>();
    List<UncertainInput> inputs = new ArrayList<>();
    for (Stage stage : Stage.values()) {
      StageYield.Builder yield =
          StageYield.builder().stage(stage).parts(percent(50)).source(INVENTED);
      inputs.add(UncertainInput.partYield(stage, Empirical.of(0.5, 1), INVENTED));
      if (stage.inCharges()) {
        yield.charges(percent(50));
        inputs.add(UncertainInput.chargeYield(stage, Empirical.of(0.5, 1), INVENTED));
      }
      stages.add(yield.build());
    }
    LedgerPlan plan =
        FixturePlan.builder()
            .partsPerFiring(4)
            .charging(charging)
            .failures(Failures.builder().stages(stages).build())
            .build();
    UncertainPlan uncertain =
        UncertainPlan.builder()
            .plan(plan)
            .inputs(inputs)
            .failureRule(FailureRule.AT_RANDOM)
            .build();
    return new RandomCourse(
        plan, new DrawnPlan(uncertain).binding(), RandomSource.XO_SHI_RO_256_PP.create(1L));
  }

  private static void assertEvents(RandomCourse course, double parts, double charges) {
    assertThat(course.varies()).isTrue();
    assertThat(course.events(Driver.GOOD_PART)).isEqualTo(parts);
    assertThat(course.events(Driver.PART)).isEqualTo(parts);
    assertThat(course.events(Driver.DEBOUND_PART)).isEqualTo(parts);
    assertThat(course.events(Driver.SINTERED_PART)).isEqualTo(parts);
    assertThat(course.events(Driver.DEBINDING)).isEqualTo(charges);
    assertThat(course.events(Driver.FIRING)).isEqualTo(charges);
  }

  /** 201 parts, four to a charge: 51 charges, or 201 fourths of one. */
  @Test
  void followsTheYieldsOfItsTrial() {
    RandomCourse whole = course(ChargeRule.WHOLE);
    whole.start(ALL_GOOD);
    whole.until(201);
    assertEvents(whole, 201, 51);
    assertThat(whole.numerator(Driver.FIRING)).isEqualTo(51);
    RandomCourse shared = course(ChargeRule.SHARED);
    shared.start(ALL_GOOD);
    shared.until(201);
    assertEvents(shared, 201, 50.25);
    assertThat(shared.numerator(Driver.FIRING)).isEqualTo(201);
    assertThat(shared.numerator(Driver.PART)).isEqualTo(201);
    assertThat(shared.perPart(Driver.PART)).isEqualTo(1);
    assertThat(shared.perPart(Driver.FIRING)).isEqualTo(0.25);
  }

  @Test
  void startsEachTrialAnew() {
    RandomCourse course = course(ChargeRule.WHOLE);
    course.start(HALF);
    course.until(201);
    // Two yields of a half at sintering, two at debinding, one at printing.
    assertThat(course.perPart(Driver.SINTERED_PART)).isEqualTo(4);
    assertThat(course.perPart(Driver.PART)).isEqualTo(32);
    assertThat(course.events(Driver.PART)).isGreaterThan(201);
    course.start(ALL_GOOD);
    course.until(201);
    assertEvents(course, 201, 51);
  }
}
