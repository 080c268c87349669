package dev.kilnledger.costing.uncertainty;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static dev.kilnledger.units.Amounts.percent;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.costing.ledger.FixturePlan;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.yield.Failures;
import dev.kilnledger.costing.yield.Stage;
import dev.kilnledger.costing.yield.StageYield;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Two parts to a firing, of which 80 % pass sintering. */
class CountedCourseTest {
  private static CountedCourse course(UncertainInput... inputs) {
    LedgerPlan plan =
        FixturePlan.builder()
            .partsPerFiring(2)
            .failures(
                Failures.builder()
                    .addStages(
                        StageYield.builder()
                            .stage(Stage.SINTER)
                            .parts(percent(80))
                            .source(INVENTED)
                            .build())
                    .build())
            .build();
    UncertainPlan uncertain = UncertainPlan.of(plan, List.of(inputs));
    return new CountedCourse(plan, new DrawnPlan(uncertain).binding());
  }

  /** 10 / 0.8 = 12.5. */
  @Test
  void isTheSameInEveryTrialIfNoYieldIsDrawn() {
    CountedCourse course =
        course(UncertainInput.price("filament", Rectangular.of(50, 70), INVENTED));
    assertThat(course.varies()).isFalse();
    course.until(10);
    assertThat(course.events(Driver.PART)).isEqualTo(13);
    assertThat(course.events(Driver.FIRING)).isEqualTo(7);
    assertThat(course.perPart(Driver.PART)).isEqualTo(1.25);
    assertThat(course.perPart(Driver.FIRING)).isEqualTo(0.625);
  }

  @ParameterizedTest
  @EnumSource(Stage.class)
  void differsFromTrialToTrialIfAYieldIsDrawn(Stage stage) {
    assertThat(course(UncertainInput.partYield(stage, Empirical.of(0.5, 1), INVENTED)).varies())
        .isTrue();
    if (stage.inCharges()) {
      CountedCourse course =
          course(UncertainInput.chargeYield(stage, Empirical.of(0.5, 1), INVENTED));
      assertThat(course.varies()).isTrue();
      course.start(new double[] {0.5});
      course.until(8);
      // Each charge that comes out is joined by a lost one: 10 parts in 5 charges, and as many.
      assertThat(course.events(stage == Stage.SINTER ? Driver.FIRING : Driver.DEBINDING))
          .isEqualTo(10);
    }
  }
}
