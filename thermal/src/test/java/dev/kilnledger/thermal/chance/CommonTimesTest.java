package dev.kilnledger.thermal.chance;

import static dev.kilnledger.units.Amounts.kelvin;
import static dev.kilnledger.units.Amounts.seconds;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.ProfileBuilder;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Courses brought to the same times, by hand. */
class CommonTimesTest {
  private static final double ROUNDING = 1e-9; // K

  /** 300 K, 400 K at 100 s and up to 150 s, 350 K at 200 s. */
  private static final Profile UP_AND_DOWN =
      Profile.from(kelvin(300))
          .rampOver(kelvin(400), seconds(100))
          .hold(seconds(50))
          .rampOver(kelvin(350), seconds(50))
          .build();

  private static Profile bent(double atMiddle) {
    return Profile.from(kelvin(300))
        .rampOver(kelvin(atMiddle), seconds(100))
        .rampOver(kelvin(500), seconds(100))
        .build();
  }

  private static Profile level() {
    return Profile.from(kelvin(300)).hold(seconds(200)).build();
  }

  @Test
  void keepsEveryCornerOfOneCourse() {
    CommonTimes times = new CommonTimes(List.of(UP_AND_DOWN));
    assertThat(times.seconds).containsExactly(new double[] {0, 100, 150, 200}, within(ROUNDING));
    assertThat(times.kelvin(0))
        .containsExactly(new double[] {300, 400, 400, 350}, within(ROUNDING));
    assertThat(new CommonTimes(List.of(bent(400.01))).seconds).hasSize(3);
  }

  @Test
  void takesTheCornersOfAllAndHoldsTheEndOfTheShorter() {
    Profile shorter = Profile.from(kelvin(300)).rampOver(kelvin(450), seconds(150)).build();
    for (boolean first : new boolean[] {true, false}) {
      CommonTimes times =
          new CommonTimes(first ? List.of(shorter, UP_AND_DOWN) : List.of(UP_AND_DOWN, shorter));
      assertThat(times.seconds).containsExactly(new double[] {0, 100, 150, 200}, within(ROUNDING));
      assertThat(times.kelvin(first ? 0 : 1))
          .containsExactly(new double[] {300, 400, 450, 450}, within(ROUNDING));
      assertThat(times.kelvin(first ? 1 : 0))
          .containsExactly(new double[] {300, 400, 400, 350}, within(ROUNDING));
    }
  }

  /** The straight line is at 400 K in the middle, and 0.05 K either way are left out. */
  @ParameterizedTest
  @CsvSource({"400, 2", "400.04, 2", "399.96, 2", "400.06, 3", "399.94, 3"})
  void leavesOutWhatLiesOnTheLine(double atMiddle, int kept) {
    assertThat(new CommonTimes(List.of(bent(atMiddle), level())).seconds).hasSize(kept);
    assertThat(new CommonTimes(List.of(level(), bent(atMiddle))).seconds).hasSize(kept);
  }

  /** The same on the way down. */
  @ParameterizedTest
  @CsvSource({"400, 2", "400.04, 2", "399.96, 2", "400.06, 3", "399.94, 3"})
  void leavesOutWhatLiesOnTheLineDown(double atMiddle, int kept) {
    Profile down =
        Profile.from(kelvin(500))
            .rampOver(kelvin(atMiddle), seconds(100))
            .rampOver(kelvin(300), seconds(100))
            .build();
    assertThat(new CommonTimes(List.of(down, level())).seconds).hasSize(kept);
  }

  /** What is less than a millisecond apart is one time. */
  @ParameterizedTest
  @CsvSource({"100.0005, 100", "100.002, 100.002"})
  void takesWhatIsNearlyTheSameTimeForOne(double other, double kept) {
    Profile later = Profile.from(kelvin(300)).rampOver(kelvin(400), seconds(other)).build();
    CommonTimes times = new CommonTimes(List.of(UP_AND_DOWN, later));
    assertThat(times.seconds).containsExactly(new double[] {0, kept, 150, 200}, within(ROUNDING));
  }

  /**
   * A parabola T = 300 K + 0.001 t2, known every second: a chord over n seconds is off by 0.001
   * times the product of the two parts, at most 0.049 K for 14 s and 0.056 K for 15 s.
   */
  @Test
  void leavesOutAsManyAsTheToleranceLets() {
    ProfileBuilder parabola = Profile.from(kelvin(300));
    for (int t = 1; t <= 140; t++) {
      parabola.rampOver(kelvin(300 + 0.001 * t * t), seconds(1));
    }
    CommonTimes times = new CommonTimes(List.of(parabola.build(), level()));
    double[] every14 = IntStream.rangeClosed(0, 10).mapToDouble(i -> 14 * i).toArray();
    assertThat(times.seconds).hasSize(12).startsWith(every14).endsWith(200);
  }

  @Test
  void readsACourseAtOtherTimes() {
    assertThat(CommonTimes.at(new double[] {0, 50, 100, 125, 175, 200, 300}, UP_AND_DOWN))
        .containsExactly(new double[] {300, 350, 400, 400, 375, 350, 350}, within(ROUNDING));
  }
}
