package dev.kilnledger.thermal.profile;

import static dev.kilnledger.units.Amounts.celsius;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.thermal.Law;
import dev.kilnledger.thermal.Workbench;
import dev.kilnledger.thermal.profile.AnyProfile.Programme;
import dev.kilnledger.units.Amounts;
import net.jqwik.api.ForAll;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** What holds for every firing profile, however it is keyed in. */
@Domain(AnyProfile.class)
@Domain(DomainContext.Global.class)
class ProfileLawsTest {
  /** Sums of some dozen times and quotients of degrees, each rounded once. */
  private static final double ROUNDING = 1e-9;

  @Law
  void isTheSameWithASegmentCutInTwo(
      @ForAll Programme programme,
      @ForAll @IntRange(max = 5) int which,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double share,
      @ForAll @IntRange(min = 20, max = 1100) int level) {
    Profile whole = programme.profile();
    Profile cut = programme.cut(which, share);
    double seconds = whole.duration().si();
    assertThat(cut.duration().si()).isCloseTo(seconds, within(ROUNDING * seconds));
    assertThat(cut.peak()).isEqualTo(whole.peak());
    for (double at = 0; at <= 1; at += 0.125) {
      // Just before the end, as the two durations may differ by a rounding.
      var time = Amounts.seconds(at * seconds * (1 - ROUNDING));
      assertThat(cut.temperatureAt(time).si())
          .isCloseTo(whole.temperatureAt(time).si(), within(1e-6));
    }
    assertThat(cut.timeAbove(celsius(level + 0.5)).si())
        .isCloseTo(whole.timeAbove(celsius(level + 0.5)).si(), within(ROUNDING * seconds));
    assertThat(cut.longestTimeAbove(celsius(level + 0.5)).si())
        .isCloseTo(whole.longestTimeAbove(celsius(level + 0.5)).si(), within(ROUNDING * seconds));
    assertThat(cut.fastestHeating().isPresent()).isEqualTo(whole.fastestHeating().isPresent());
    whole
        .fastestHeating()
        .ifPresent(
            rate ->
                assertThat(cut.fastestHeating().orElseThrow().si())
                    .isCloseTo(rate.si(), within(ROUNDING)));
  }

  @Law
  void spendsLessTimeAboveAHigherTemperature(
      @ForAll Programme programme,
      @ForAll @IntRange(min = 20, max = 1100) int level,
      @ForAll @IntRange(max = 200) int higher) {
    Profile profile = programme.profile();
    assertThat(profile.timeAbove(celsius(level + higher)).si())
        .isLessThanOrEqualTo(profile.timeAbove(celsius(level)).si() + ROUNDING);
    assertThat(profile.longestTimeAbove(celsius(level)).si())
        .isBetween(0.0, profile.timeAbove(celsius(level)).si() + ROUNDING);
    assertThat(profile.timeAbove(celsius(level)).si())
        .isLessThanOrEqualTo(profile.duration().si() + ROUNDING);
  }

  @Law
  void staysBetweenItsLowestAndItsPeak(
      @ForAll Programme programme, @ForAll @DoubleRange(max = 1) double share) {
    Profile profile = programme.profile();
    double lowest = profile.segments().stream().mapToDouble(s -> s.end().si()).min().orElseThrow();
    var at = profile.temperatureAt(profile.duration().multiply(share));
    assertThat(at.si())
        .isBetween(Math.min(lowest, profile.start().si()) - 1e-9, profile.peak().si() + 1e-9);
  }

  @Law
  void tellsInItsTableHowLongItTakes(@ForAll Programme programme) {
    Profile profile = programme.profile();
    var rows = profile.rows();
    assertThat(rows.get(rows.size() - 1).elapsed().si())
        .isCloseTo(profile.duration().si(), within(ROUNDING * profile.duration().si()));
  }

  @Law
  void comesBackFromItsBytes(@ForAll Programme programme) throws Exception {
    assertThat(Workbench.thawed(programme.profile())).isEqualTo(programme.profile());
  }
}
