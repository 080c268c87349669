package dev.kilnledger.thermal.internal;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.hours;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.ProfileBuilder;
import org.junit.jupiter.api.Test;

class PeakHoldTest {
  private static ProfileBuilder toPeak() {
    return Profile.from(celsius(20)).rampOver(celsius(1000), hours(5));
  }

  @Test
  void changesTheLastOfTheLongest() {
    ProfileBuilder twice =
        toPeak().hold(hours(1)).rampOver(celsius(900), hours(1)).rampOver(celsius(1000), hours(1));
    PeakHold hold = PeakHold.of(twice.hold(hours(1)).build());
    assertThat(hold.seconds()).isEqualTo(3600);
    assertThat(hold.with(7200))
        .isEqualTo(
            toPeak()
                .hold(hours(1))
                .rampOver(celsius(900), hours(1))
                .rampOver(celsius(1000), hours(1))
                .hold(hours(2))
                .build());
  }

  @Test
  void changesTheFirstSegmentWhereThatIsTheLongestHold() {
    Profile profile =
        Profile.from(celsius(1000))
            .hold(hours(2))
            .rampOver(celsius(900), hours(1))
            .rampOver(celsius(1000), hours(1))
            .hold(hours(1))
            .build();
    assertThat(PeakHold.of(profile).seconds()).isEqualTo(7200);
    assertThat(PeakHold.of(Profile.from(celsius(1000)).hold(hours(2)).build()).seconds())
        .isEqualTo(7200);
  }

  @Test
  void leavesShorterAndColderHoldsAsTheyAre() {
    Profile profile =
        Profile.from(celsius(20))
            .rampOver(celsius(600), hours(2))
            .hold(hours(9))
            .rampOver(celsius(1000), hours(3))
            .hold(hours(2))
            .rampOver(celsius(900), hours(1))
            .rampOver(celsius(1000), hours(1))
            .hold(hours(1))
            .build();
    assertThat(PeakHold.of(profile).seconds()).isEqualTo(7200);
    assertThat(PeakHold.of(profile).with(3 * 3600))
        .isEqualTo(
            Profile.from(celsius(20))
                .rampOver(celsius(600), hours(2))
                .hold(hours(9))
                .rampOver(celsius(1000), hours(3))
                .hold(hours(3))
                .rampOver(celsius(900), hours(1))
                .rampOver(celsius(1000), hours(1))
                .hold(hours(1))
                .build());
  }

  @Test
  void putsOneInWhereThePeakIsFirstReached() {
    ProfileBuilder twice =
        toPeak().rampOver(celsius(900), hours(1)).rampOver(celsius(1000), hours(1));
    PeakHold none = PeakHold.of(twice.rampOver(celsius(20), hours(5)).build());
    assertThat(none.seconds()).isZero();
    assertThat(none.with(3600))
        .isEqualTo(
            toPeak()
                .hold(hours(1))
                .rampOver(celsius(900), hours(1))
                .rampOver(celsius(1000), hours(1))
                .rampOver(celsius(20), hours(5))
                .build());
  }

  @Test
  void putsOneInAfterAllTheHeating() {
    ProfileBuilder stepped =
        Profile.from(celsius(20)).rampOver(celsius(600), hours(2)).hold(hours(1));
    PeakHold none = PeakHold.of(stepped.rampOver(celsius(1000), hours(3)).build());
    assertThat(none.with(3600))
        .isEqualTo(
            Profile.from(celsius(20))
                .rampOver(celsius(600), hours(2))
                .hold(hours(1))
                .rampOver(celsius(1000), hours(3))
                .hold(hours(1))
                .build());
  }

  @Test
  void putsOneInAtTheStartWhereThatIsThePeak() {
    Profile cooling = Profile.from(celsius(1000)).rampOver(celsius(20), hours(5)).build();
    assertThat(PeakHold.of(cooling).with(3600))
        .isEqualTo(
            Profile.from(celsius(1000)).hold(hours(1)).rampOver(celsius(20), hours(5)).build());
    ProfileBuilder back =
        Profile.from(celsius(1000))
            .rampOver(celsius(900), hours(1))
            .rampOver(celsius(1000), hours(1));
    assertThat(PeakHold.of(back.build()).with(3600))
        .as("reached first where it starts, and again at the end")
        .isEqualTo(
            Profile.from(celsius(1000))
                .hold(hours(1))
                .rampOver(celsius(900), hours(1))
                .rampOver(celsius(1000), hours(1))
                .build());
  }

  @Test
  void leavesTheHoldOutWhereItIsOfNoTime() {
    assertThat(PeakHold.of(toPeak().hold(hours(1)).build()).with(0)).isEqualTo(toPeak().build());
    assertThat(PeakHold.of(toPeak().build()).with(0)).isEqualTo(toPeak().build());
    // there is no profile without a segment
    Profile nothingElse = Profile.from(celsius(1000)).hold(hours(1)).build();
    assertThat(PeakHold.of(nothingElse).with(0).duration().si()).isEqualTo(1);
    assertThat(PeakHold.of(nothingElse).with(0.5).duration().si()).isEqualTo(1);
    assertThat(PeakHold.of(nothingElse).with(60).duration().si()).isEqualTo(60);
  }
}
