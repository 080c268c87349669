package dev.kilnledger.thermal.design;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.fahrenheit;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvin;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.minutes;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.thermal.Workbench;
import dev.kilnledger.thermal.design.ProgrammeForm.Ramps;
import dev.kilnledger.thermal.design.ProgrammeForm.Scale;
import dev.kilnledger.thermal.profile.Profile;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A programme in whole numbers; every figure is arithmetic done by hand. */
class ProgrammeTest {
  private static final ProgrammeForm BY_TIME = ProgrammeForm.of(Scale.CELSIUS, Ramps.BY_TIME);
  private static final ProgrammeForm BY_RATE = ProgrammeForm.of(Scale.CELSIUS, Ramps.BY_RATE);

  /**
   * 20 to 220 °C in 100 min, an hour, to 820 °C in 150 min, a hold of nothing, to 420 °C in 200.
   */
  private static final Programme TIMED =
      new Programme(BY_TIME, 20, List.of())
          .then(220, 100)
          .then(220, 60)
          .then(820, 150)
          .then(820, 0)
          .then(420, 200);

  /** The same by 120, 240 and 120 degrees an hour. */
  private static final Programme RATED =
      new Programme(BY_RATE, 20, List.of())
          .then(220, 100)
          .then(220, 60)
          .then(820, 150)
          .then(820, 0)
          .then(420, 200);

  private static void moves(Programme programme, int... targetsAndPaces) {
    assertThat(
            programme.moves().stream()
                .flatMapToInt(move -> IntStream.of(move.target(), move.pace()))
                .toArray())
        .containsExactly(targetsAndPaces);
  }

  @Test
  void tellsItsMoves() {
    moves(TIMED, 220, 100, 220, 60, 820, 150, 820, 0, 420, 200);
    moves(RATED, 220, 120, 220, 60, 820, 240, 820, 0, 420, 120);
    for (Programme programme : List.of(TIMED, RATED)) {
      assertThat(IntStream.range(0, 5).mapToDouble(programme::minutes))
          .containsExactly(100.0, 60.0, 150.0, 0.0, 200.0);
      assertThat(programme.minutes()).isEqualTo(510);
      assertThat(programme.peak()).isEqualTo(820);
      assertThat(programme.last()).isEqualTo(420);
      assertThat(IntStream.range(0, 5).map(programme::before))
          .containsExactly(20, 220, 220, 820, 820);
      assertThat(IntStream.range(0, 5).map(programme::degrees))
          .containsExactly(200, 0, 600, 0, 400);
      assertThat(IntStream.range(0, 5).mapToObj(programme::isHold))
          .containsExactly(false, true, false, true, false);
      assertThat(IntStream.range(0, 5).mapToObj(programme::isHeating))
          .containsExactly(true, false, true, false, false);
      assertThat(IntStream.range(0, 5).mapToObj(programme::isCooling))
          .containsExactly(false, false, false, false, true);
      assertThat(IntStream.range(0, 5).mapToObj(programme::isSegment))
          .containsExactly(true, true, true, false, true);
      assertThat(programme.fastestHeating()).isEqualTo(240);
      assertThat(programme.profile())
          .isEqualTo(
              Profile.from(celsius(20))
                  .rampOver(celsius(220), minutes(100))
                  .hold(minutes(60))
                  .rampOver(celsius(820), minutes(150))
                  .rampOver(celsius(420), minutes(200))
                  .build());
    }
    Programme cooling = new Programme(BY_TIME, 900, List.of()).then(100, 60);
    assertThat(cooling.fastestHeating()).isZero();
    assertThat(cooling.peak()).isEqualTo(900);
    assertThat(new Programme(BY_TIME, 20, List.of()).last()).isEqualTo(20);
  }

  /**
   * In no less time: 100.2 min are 101, 200 degrees in 100.2 min 119 an hour; ramps take a minute.
   */
  @Test
  void roundsToTheSlowerSide() {
    moves(new Programme(BY_TIME, 20, List.of()).then(220, 100.2).then(221, 0), 220, 101, 221, 1);
    moves(
        new Programme(BY_RATE, 20, List.of()).then(220, 100.2).then(221, 200).then(221, 0.4),
        220,
        119,
        221,
        1,
        221,
        1);
  }

  /** No whole degree below absolute zero: -273.15 °C, -459.67 °F. */
  @Test
  void beginsNoColderThanCanBe() {
    Profile coldest = Profile.from(kelvin(0)).rampTo(celsius(100), kelvinPerHour(100)).build();
    assertThat(BY_TIME.rounded(coldest).start()).isEqualTo(celsius(-273));
    assertThat(ProgrammeForm.of(Scale.FAHRENHEIT, Ramps.BY_TIME).rounded(coldest).start())
        .isEqualTo(fahrenheit(-459));
    assertThat(
            BY_TIME
                .rounded(
                    Profile.from(celsius(-270)).rampTo(celsius(100), kelvinPerHour(100)).build())
                .start())
        .isEqualTo(celsius(-270));
  }

  /** Faster is fewer minutes, or more degrees an hour; a ramp keeps one of either, a hold none. */
  @Test
  void goesFasterBySteps() {
    moves(TIMED.faster(0, 7).orElseThrow(), 220, 93, 220, 60, 820, 150, 820, 0, 420, 200);
    moves(TIMED.faster(1, -7).orElseThrow(), 220, 100, 220, 67, 820, 150, 820, 0, 420, 200);
    moves(RATED.faster(2, 7).orElseThrow(), 220, 120, 220, 60, 820, 247, 820, 0, 420, 120);
    moves(RATED.faster(1, 60).orElseThrow(), 220, 120, 220, 0, 820, 240, 820, 0, 420, 120);
    assertThat(TIMED.faster(0, 99).orElseThrow().minutes(0)).isEqualTo(1);
    assertThat(TIMED.faster(0, 100)).isEmpty();
    assertThat(RATED.faster(0, -119).orElseThrow().minutes(0)).isEqualTo(12_000);
    assertThat(RATED.faster(0, -120)).isEmpty();
    assertThat(RATED.faster(3, 1)).isEmpty();
    assertThat(TIMED.stepsFor(4, 0.1)).isEqualTo(20);
    assertThat(TIMED.stepsFor(3, 0.1)).isEqualTo(1);
  }

  /**
   * The end of the first ramp and its hold 30 K hotter: 230 K at 2 K/min are 115 min, and from 250
   * to 820 °C 570 K at 4 K/min 142.5, so 143. By rate the rates stay.
   */
  @Test
  void shiftsTheEndOfARampWithItsRates() {
    moves(TIMED.shifted(0, 30).orElseThrow(), 250, 115, 250, 60, 820, 143, 820, 0, 420, 200);
    moves(RATED.shifted(0, 30).orElseThrow(), 250, 120, 250, 60, 820, 240, 820, 0, 420, 120);
    // 570 K in 142.5 min, and from 790 to 420 °C 370 K at 2 K/min
    moves(TIMED.shifted(2, -30).orElseThrow(), 220, 100, 220, 60, 790, 143, 790, 0, 420, 185);
    // the last ramp has none after it
    moves(TIMED.shifted(4, 20).orElseThrow(), 220, 100, 220, 60, 820, 150, 820, 0, 440, 190);
    assertThat(TIMED.shifted(0, -200)).as("no way is left").isEmpty();
    assertThat(TIMED.shifted(0, -201)).as("it would cool").isEmpty();
    assertThat(TIMED.shifted(0, 600)).as("none is left to the next").isEmpty();
    assertThat(TIMED.shifted(0, 601)).isEmpty();
    assertThat(TIMED.shifted(4, 400)).isEmpty();
    assertThat(TIMED.shifted(0, 599)).isPresent();
    assertThat(TIMED.shifted(0, -199)).isPresent();
  }

  /** 600 K as slow as the first ramp's 2 K/min are 300 min; that as slow as 4 K/min stays. */
  @Test
  void isAsSlowAsAnotherRamp() {
    moves(TIMED.asSlow(2, 0), 220, 100, 220, 60, 820, 300, 820, 0, 420, 200);
    moves(RATED.asSlow(2, 0), 220, 120, 220, 60, 820, 120, 820, 0, 420, 120);
    assertThat(TIMED.asSlow(0, 2)).isSameAs(TIMED);
    assertThat(TIMED.asSlow(0, 4)).as("just as slow").isSameAs(TIMED);
  }

  /** 20 to 820 °C in 250 min, which is 192 degrees an hour; then the hold of nothing. */
  @Test
  void joinsTwoRampsIntoOne() {
    Programme two =
        new Programme(BY_TIME, 20, List.of()).then(220, 100).then(820, 150).then(820, 9);
    moves(two.joined(0), 820, 250, 820, 9);
    Programme rated =
        new Programme(BY_RATE, 20, List.of()).then(220, 100).then(820, 150).then(820, 9);
    moves(rated.joined(0), 820, 192, 820, 9);
  }

  /** A hold of nothing goes where heating follows, and stays at the end of all heating. */
  @Test
  void leavesOutIdleHoldsBeforeHeating() {
    Programme idle =
        new Programme(BY_TIME, 20, List.of())
            .then(220, 100)
            .then(220, 0)
            .then(500, 60)
            .then(500, 5)
            .then(820, 60)
            .then(820, 0)
            .then(420, 200)
            .then(420, 0);
    moves(idle.withoutIdleHolds(), 220, 100, 500, 60, 500, 5, 820, 60, 820, 0, 420, 200, 420, 0);
  }

  /** Copper from 950 to 1050 °C, so 1000 °C; bronze from 760 to 870 °C, solidus 845: 815 °C. */
  @Test
  void startsFromTheRulesOfThumb() {
    RuleOfThumb rules = RuleOfThumb.standard();
    assertThat(rules.sintering(Workbench.copper()))
        .isEqualTo(
            Profile.from(celsius(20))
                .rampTo(celsius(1000), kelvinPerHour(100))
                .hold(hours(4))
                .build());
    assertThat(rules.sintering(Workbench.bronze()).peak()).isEqualTo(celsius(815));
    Profile debinding = rules.debinding(Workbench.feedstock(Workbench.copper()).binder());
    assertThat(debinding)
        .isEqualTo(
            Profile.from(celsius(20))
                .rampTo(celsius(250), kelvinPerHour(100))
                .rampTo(celsius(400), kelvinPerHour(10))
                .hold(hours(2))
                .build());
    assertThat(MaterialLibrary.standard().alloys())
        .allSatisfy(
            alloy ->
                assertThat(rules.sintering(alloy).peak().si())
                    .as(alloy.name())
                    .isLessThanOrEqualTo(alloy.solidus().value().si() - 20 + 1e-9));
  }

  @Test
  void tellsDegreesAnHourInItsScale() {
    assertThat(Scale.CELSIUS.degreesPerHour(kelvinPerHour(100))).isCloseTo(100, within(1e-9));
    assertThat(Scale.FAHRENHEIT.degreesPerHour(kelvinPerHour(100))).isCloseTo(180, within(1e-9));
  }
}
