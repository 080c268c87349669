package dev.kilnledger.thermal.design;

import static dev.kilnledger.thermal.Workbench.bronze;
import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.thermal.Workbench.debinding;
import static dev.kilnledger.thermal.Workbench.kiln;
import static dev.kilnledger.thermal.Workbench.setup;
import static dev.kilnledger.thermal.Workbench.sintering;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.design.ProgrammeForm.Ramps;
import dev.kilnledger.thermal.design.ProgrammeForm.Scale;
import dev.kilnledger.thermal.energy.ChargeItem;
import dev.kilnledger.thermal.energy.EnergyFinding;
import dev.kilnledger.thermal.kiln.TransientKiln;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.Profile;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Guesses by the rates they are documented with: 100 K/h where nothing happens, 30 K/h through the
 * binder, 60 K/h in the upper part of sintering. Arithmetic by hand.
 */
class FirstGuessTest {
  private static final FiringStage DEBINDING = debinding().build();
  private static final FiringStage SINTERING = sintering(1000).build();

  private static Kiln.Builder unwalled(double peak) {
    return kiln(peak).wall(List.of());
  }

  private static DesignTask.Builder task(Alloy alloy, Kiln.Builder kiln) {
    return DesignTask.builder().setup(setup(alloy, 800).kiln(kiln.build()).build());
  }

  private static DesignTask.Builder task() {
    return task(copper(), unwalled(1300));
  }

  private static List<Programme> guesses(DesignTask.Builder task, FiringStage stage) {
    return new FirstGuess(task.build()).of(stage).stream().map(Supplier::get).toList();
  }

  private static void moves(Programme programme, int... targetsAndMinutes) {
    assertThat(programme.start()).isEqualTo(programme.form().scale() == Scale.CELSIUS ? 20 : 68);
    assertThat(
            programme.moves().stream()
                .flatMapToInt(move -> IntStream.of(move.target(), move.pace()))
                .toArray())
        .containsExactly(targetsAndMinutes);
  }

  /** The binder leaves from 250 to 400 °C: 230 K at 100 K/h, and 75 K twice at 30 K/h. */
  @Test
  void takesMoreAndMoreCareOfTheBinder() {
    List<Programme> guesses = guesses(task(), DEBINDING);
    assertThat(guesses).hasSize(5);
    moves(guesses.get(0), 250, 138, 325, 150, 400, 150, 400, 60);
    // a quarter of the rate, 30 K/h before the binder, 40 K beyond, four hours
    moves(guesses.get(1), 250, 460, 345, 760, 440, 760, 440, 240);
    // a sixteenth, so 1.875 K/h throughout
    moves(guesses.get(2), 250, 7360, 325, 2400, 400, 2400, 400, 960);
    // a sixty-fourth, so 0.46875 K/h throughout
    moves(guesses.get(3), 250, 29_440, 325, 9600, 400, 9600, 400, 3840);
    // 80 K beyond
    moves(guesses.get(4), 250, 138, 365, 230, 480, 230, 480, 60);
  }

  @Test
  void goesNoFasterThanTheKiln() {
    Kiln.Builder slow = unwalled(1300).fastestHeating(kelvinPerHour(20));
    moves(guesses(task(copper(), slow), DEBINDING).get(0), 250, 690, 325, 225, 400, 225, 400, 60);
    Kiln.Builder unstated = unwalled(1300).fastestHeating(Optional.empty());
    moves(
        guesses(task(copper(), unstated), DEBINDING).get(0), 250, 138, 325, 150, 400, 150, 400, 60);
  }

  /** In a kiln for 410 °C, and in one for 200 °C, which is below the range of the binder. */
  @Test
  void goesNoHotterThanTheKiln() {
    List<Programme> guesses = guesses(task(copper(), unwalled(410)), DEBINDING);
    assertThat(guesses).extracting(Programme::peak).containsExactly(400, 410, 400, 400, 410);
    moves(
        guesses(task(copper(), unwalled(200)), DEBINDING).get(0),
        199,
        108, // 179 K at 100 K/h
        200,
        2,
        200,
        60);
  }

  /** A degree below where sintering might begin, at most: bronze asked for at 420 °C at most. */
  @Test
  void debindsBelowThePeakOfSintering() {
    List<Programme> guesses =
        guesses(
            task(bronze(), unwalled(1300)).peak(Span.of(celsius(405), celsius(420))), DEBINDING);
    assertThat(guesses).extracting(Programme::peak).containsExactly(400, 419, 400, 400, 419);
  }

  @Test
  void takesAsManyRampsAsTheControllerDoes() {
    assertThat(guesses(task().debindingRamps(6), DEBINDING).get(0).moves())
        .extracting(Move::target)
        .containsExactly(250, 280, 310, 340, 370, 400, 400);
    Kiln.Builder three = unwalled(1300).programmeSegments(3);
    moves(guesses(task(copper(), three), DEBINDING).get(0), 250, 138, 400, 300, 400, 60);
    // one segment is no ramp and a hold, but a ramp there must be: 380 K at 100 K/h
    Kiln.Builder one = unwalled(1300).programmeSegments(1);
    moves(guesses(task(copper(), one), DEBINDING).get(0), 400, 228, 400, 60);
    Kiln.Builder unstated = unwalled(1300).programmeSegments(OptionalInt.empty());
    assertThat(guesses(task(copper(), unstated), DEBINDING).get(0).moves()).hasSize(4);
  }

  /** Copper from 950 to 1050 °C for 1 to 4 h: to 700 °C at 100 K/h, on at 60 K/h. */
  @Test
  void triesTheMiddleTheUpperAndTheLowerEndOfTheWindow() {
    List<Programme> guesses = guesses(task(), SINTERING);
    assertThat(guesses)
        .extracting(Programme::peak)
        .containsExactly(1000, 1000, 1000, 1050, 1050, 1050, 950, 950, 950);
    moves(guesses.get(0), 700, 408, 1000, 300, 1000, 240);
    // at 15 K/h throughout, and five times as long
    moves(guesses.get(1), 700, 2720, 1000, 1200, 1000, 1200);
    moves(guesses.get(2), 700, 408, 1000, 300, 1000, 60);
    // 735 and 665 °C are 70 % of the peak; 715, 315, 645 and 285 K
    moves(guesses.get(3), 735, 429, 1050, 315, 1050, 240);
    moves(guesses.get(6), 665, 387, 950, 285, 950, 240);
    // 100 K more each
    moves(
        guesses(task().sinteringRamps(4), SINTERING).get(0),
        700,
        408,
        800,
        100,
        900,
        100,
        1000,
        100,
        1000,
        240);
  }

  /** The solidus of the bronze is 845 °C: 16 K below it is 829 °C. The kilns reach 1020, 900 °C. */
  @Test
  void staysBelowSolidusAndKiln() {
    assertThat(guesses(task(bronze(), unwalled(1300)), SINTERING).get(3).peak()).isEqualTo(829);
    assertThat(guesses(task(copper(), unwalled(1020)), SINTERING))
        .extracting(Programme::peak)
        .containsExactly(985, 985, 985, 1020, 1020, 1020, 950, 950, 950);
    assertThat(guesses(task(copper(), unwalled(900)), SINTERING))
        .extracting(Programme::peak)
        .containsOnly(950);
    // what is asked for is tried as it is
    assertThat(
            guesses(
                task(copper(), unwalled(1020)).peak(Span.of(celsius(1030), celsius(1090))),
                SINTERING))
        .extracting(Programme::peak)
        .containsExactly(1060, 1060, 1060, 1090, 1090, 1090, 1030, 1030, 1030);
  }

  /** 250 and 400 °C are 482 and 752 °F, 40 K 72 degrees; the minutes are the same. */
  @Test
  void guessesInFahrenheitAsWell() {
    DesignTask.Builder task = task().form(ProgrammeForm.of(Scale.FAHRENHEIT, Ramps.BY_TIME));
    List<Programme> guesses = guesses(task, DEBINDING);
    moves(guesses.get(0), 482, 138, 617, 150, 752, 150, 752, 60);
    moves(guesses.get(1), 482, 460, 653, 760, 824, 760, 824, 240);
  }

  @Test
  void takesTheUsersOwnHeating() {
    FirstGuess guess = new FirstGuess(task().build());
    // 580 K at 150 K/h, 400 K at 100 K/h; the kiln's cooling is not known
    moves(guess.own(SINTERING), 600, 232, 600, 30, 1000, 240, 1000, 180);
    FiringStage cooling =
        sintering(1000)
            .profile(Profile.from(celsius(20)).rampOver(celsius(10), hours(1)).build())
            .build();
    moves(guess.own(cooling), 10, 60);
  }

  /**
   * From 1000 to 100 °C in a room of 20 °C in steps of equal ratio: 980 K, sqrt(980 x 80) = 280 K
   * and 80 K above it. Each ramp is one that the kiln can follow, by its own model.
   */
  @Test
  void coolsInStepsThatTheKilnCanFollow() {
    DesignTask.Builder task = task(copper(), kiln(1300)).coolingRamps(2).coolTo(celsius(100));
    Programme own = new FirstGuess(task.build()).own(SINTERING);
    assertThat(own.moves())
        .extracting(Move::target)
        .containsExactly(600, 600, 1000, 1000, 300, 100);
    DesignTask built = task.build();
    assertThat(
            TransientKiln.standard().run(built.setup().kiln(), own.profile(), List.of()).findings())
        .as("an empty kiln cools faster, so it follows all the more")
        .filteredOn(finding -> finding.code() == EnergyFinding.COOLS_AS_PROGRAMMED)
        .extracting(Finding::severity)
        .containsExactly(Severity.PASSED);
    NaturalCooling cooling = new NaturalCooling(built.setup());
    Programme hot = new Programme(own.form(), own.start(), own.moves().subList(0, 4));
    double minutes = cooling.minutes(SINTERING, hot, 300);
    List<ChargeItem> charge =
        ChargeItem.chargeOf(
            SINTERING,
            built.setup().crucible(),
            built.setup().alloy(),
            built.setup().metal().orElseThrow());
    // at most 2 % longer than need be
    assertThat(follows(built, hot.then(300, minutes), charge)).isEqualTo(Severity.PASSED);
    assertThat(follows(built, hot.then(300, minutes / 1.03), charge)).isNotEqualTo(Severity.PASSED);
    // 2 % of slack for what is changed before it, and whole minutes
    assertThat(own.moves().get(4).pace()).isEqualTo((int) Math.ceil(1.02 * minutes - 1e-6));
  }

  private static Severity follows(DesignTask task, Programme programme, List<ChargeItem> charge) {
    return TransientKiln.withSoak(task.setup().soakControl())
        .run(task.setup().kiln(), programme.profile(), charge)
        .findings()
        .stream()
        .filter(finding -> finding.code() == EnergyFinding.COOLS_AS_PROGRAMMED)
        .findFirst()
        .orElseThrow()
        .severity();
  }

  /** 280 K above a room of 68 °F are 572 °F, and 100 °C are 212 °F. */
  @Test
  void coolsInFahrenheitAsWell() {
    DesignTask.Builder task =
        task(copper(), kiln(1300))
            .form(ProgrammeForm.of(Scale.FAHRENHEIT, Ramps.BY_TIME))
            .coolingRamps(2)
            .coolTo(celsius(100));
    assertThat(new FirstGuess(task.build()).own(SINTERING).moves())
        .extracting(Move::target)
        .containsExactly(1112, 1112, 1832, 1832, 572, 212);
  }

  @Test
  void leavesCoolingToTheKilnWhereItIsNotAskedFor() {
    Kiln.Builder walled = kiln(1300);
    Programme plain = new FirstGuess(task(copper(), walled).build()).own(SINTERING);
    assertThat(plain.moves()).extracting(Move::target).containsExactly(600, 600, 1000, 1000);
    // cooled to what is hotter than its end
    FirstGuess hot =
        new FirstGuess(task(copper(), walled).coolingRamps(2).coolTo(celsius(900)).build());
    Programme cold = hot.own(DEBINDING);
    assertThat(hot.cooled(DEBINDING, cold)).isSameAs(cold);
    // a controller of five segments has one left
    Kiln.Builder five = kiln(1300).programmeSegments(5);
    assertThat(
            new FirstGuess(task(copper(), five).coolingRamps(2).coolTo(celsius(100)).build())
                .own(SINTERING)
                .moves())
        .extracting(Move::target)
        .containsExactly(600, 600, 1000, 1000, 100);
  }
}
