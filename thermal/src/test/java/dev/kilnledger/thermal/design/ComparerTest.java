package dev.kilnledger.thermal.design;

import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.thermal.Workbench.debinding;
import static dev.kilnledger.thermal.Workbench.kiln;
import static dev.kilnledger.thermal.Workbench.setup;
import static dev.kilnledger.thermal.Workbench.sintering;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.thermal.check.FiringCheck;
import dev.kilnledger.thermal.check.FiringReport;
import dev.kilnledger.thermal.design.SegmentComparison.Pace;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.Profile;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A route beside a design, segment by segment; arithmetic by hand. */
class ComparerTest {
  /** 180 K in 1 h, 1 h, 400 K in 4 h, 2 h, and 500 K down in 5 h. */
  private static final Profile DESIGNED =
      Profile.from(celsius(20))
          .rampOver(celsius(200), hours(1))
          .hold(hours(1))
          .rampOver(celsius(600), hours(4))
          .hold(hours(2))
          .rampOver(celsius(100), hours(5))
          .build();

  private static ProfileComparison compare(Profile theirs, Kiln.Builder kiln) {
    DesignTask task = DesignTask.of(setup(copper(), 1000).kiln(kiln.build()).build());
    List<FiringStage> designed =
        List.of(debinding().build(), sintering(1000).profile(DESIGNED).build());
    ProfileDesign design =
        ProfileDesign.builder()
            .task(task)
            .addAllStages(
                designed.stream()
                    .map(stage -> StageDesign.of(stage, List.of(), Optional.empty()))
                    .toList())
            .report(FiringReport.of(List.of(), Set.of()))
            .evaluations(1)
            .untilOpening(hours(1))
            .finished(true)
            .build();
    return new Comparer(design, new FiringCheck(List.of()))
        .with(FiringRoute.of(debinding().build(), sintering(1000).profile(theirs).build()));
  }

  private static void compares(Profile theirs, Row... expected) {
    List<SegmentComparison> segments =
        compare(theirs, kiln(1300).wall(List.of())).stages().get(1).segments();
    assertThat(segments).hasSize(expected.length);
    for (int i = 0; i < expected.length; i++) {
      SegmentComparison segment = segments.get(i);
      assertThat(segment.row().segment()).isEqualTo(theirs.segments().get(i));
      assertThat(segment.theirs().in(HOUR)).isCloseTo(expected[i].theirs, within(1e-9));
      assertThat(segment.designed().map(time -> time.in(HOUR)).orElse(-1.0))
          .isCloseTo(expected[i].designed, within(1e-9));
      assertThat(segment.pace()).isEqualTo(expected[i].pace);
    }
  }

  /** Hours; below zero where the design does not go there. */
  private record Row(double theirs, double designed, Pace pace) {}

  @Test
  void comparesWhatLiesBetweenTheSameTemperatures() {
    compares(
        Profile.from(celsius(20))
            .rampOver(celsius(110), hours(1)) // half of the first ramp
            .rampOver(celsius(400), hours(2)) // its other half, and half of the second
            .hold(hours(1)) // no hold there
            .rampOver(celsius(700), hours(6)) // 200 of 300 K are in the design
            .hold(hours(3)) // at the peak, which is another
            .rampOver(celsius(50), hours(6.5)) // 500 of 650 K are
            .build(),
        new Row(1, 0.5, Pace.SLOWER),
        new Row(2, 2.5, Pace.FASTER),
        new Row(1, -1, Pace.NOT_IN_DESIGN),
        new Row(4, 2, Pace.SLOWER),
        new Row(3, 2, Pace.SLOWER),
        new Row(5, 5, Pace.SAME));
  }

  @Test
  void comparesHoldsAtTheSameTemperature() {
    compares(
        Profile.from(celsius(20))
            .rampOver(celsius(200), hours(1))
            .hold(hours(3))
            .rampOver(celsius(600), hours(4))
            .hold(hours(2))
            .build(),
        new Row(1, 1, Pace.SAME),
        new Row(3, 1, Pace.SLOWER),
        new Row(4, 4, Pace.SAME),
        new Row(2, 2, Pace.SAME));
  }

  /** Up is not down, and beyond its peak the design does not go. */
  @Test
  void tellsWhereTheDesignDoesNotGo() {
    compares(
        Profile.from(celsius(600))
            .rampOver(celsius(800), hours(2))
            .rampOver(celsius(600), hours(2))
            .rampOver(celsius(650), hours(1))
            .build(),
        new Row(2, -1, Pace.NOT_IN_DESIGN),
        new Row(2, -1, Pace.NOT_IN_DESIGN),
        new Row(1, -1, Pace.NOT_IN_DESIGN));
  }

  /** A minute either way is the same. */
  @Test
  void takesWhatIsWithinAMinuteForTheSame() {
    for (double seconds : new double[] {-61, -59, 59, 61}) {
      compares(
          Profile.from(celsius(20))
              .rampOver(celsius(200), hours(1 + seconds / 3600))
              .rampOver(celsius(600), hours(4))
              .build(),
          new Row(
              1 + seconds / 3600,
              1,
              seconds < -60 ? Pace.FASTER : seconds > 60 ? Pace.SLOWER : Pace.SAME),
          new Row(4, 4, Pace.SAME));
    }
  }

  @Test
  void tellsWhenBothCanBeOpenedWhereTheKilnsCoolingIsKnown() {
    Profile same = DESIGNED;
    StageComparison walled = compare(same, kiln(1300)).stages().get(1);
    assertThat(walled.designedUntilOpening()).isPresent();
    assertThat(walled.theirsUntilOpening()).isEqualTo(walled.designedUntilOpening());
    assertThat(walled.designedUntilOpening().orElseThrow().in(HOUR)).isGreaterThanOrEqualTo(13);
    StageComparison unknown = compare(same, kiln(1300).wall(List.of())).stages().get(1);
    assertThat(unknown.designedUntilOpening()).isEmpty();
    assertThat(unknown.theirsUntilOpening()).isEmpty();
  }
}
