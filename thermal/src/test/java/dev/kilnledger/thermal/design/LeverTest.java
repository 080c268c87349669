package dev.kilnledger.thermal.design;

import static dev.kilnledger.thermal.design.Lever.Kind.COLDER;
import static dev.kilnledger.thermal.design.Lever.Kind.COLDER_AT_SLOWER;
import static dev.kilnledger.thermal.design.Lever.Kind.FASTER;
import static dev.kilnledger.thermal.design.Lever.Kind.HOTTER;
import static dev.kilnledger.thermal.design.Lever.Kind.HOTTER_AT_SLOWER;
import static dev.kilnledger.thermal.design.Lever.Kind.SLOWER;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.thermal.design.ProgrammeForm.Ramps;
import dev.kilnledger.thermal.design.ProgrammeForm.Scale;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What can be changed about a programme; every figure is arithmetic done by hand. */
class LeverTest {
  /** 200 K at 2 K/min and 600 K at 4 K/min, half an hour of hold. */
  private static final Programme TIMED = bent(Ramps.BY_TIME, 100, 150);

  private static final Programme RATED = bent(Ramps.BY_RATE, 100, 150);

  /** The slower ramp last: 4 and 2 K/min. */
  private static final Programme SLOW_LAST = bent(Ramps.BY_TIME, 50, 300);

  private static Programme bent(Ramps ramps, double first, double second) {
    return new Programme(ProgrammeForm.of(Scale.CELSIUS, ramps), 20, List.of())
        .then(220, first)
        .then(820, second)
        .then(820, 30);
  }

  /** With a hold between the ramps, and cooling. */
  private static final Programme STEPPED =
      new Programme(ProgrammeForm.of(Scale.CELSIUS, Ramps.BY_TIME), 20, List.of())
          .then(220, 100)
          .then(220, 60)
          .then(820, 150)
          .then(820, 30)
          .then(420, 200);

  private static void pulls(Lever.Kind kind, Programme programme, int steps, int... expected) {
    assertThat(
            new Lever(kind, 0)
                .pulled(programme, steps).orElseThrow().moves().stream()
                    .flatMapToInt(move -> IntStream.of(move.target(), move.pace()))
                    .toArray())
        .containsExactly(expected);
  }

  @Test
  void changesOneThing() {
    pulls(FASTER, TIMED, 7, 220, 93, 820, 150, 820, 30);
    pulls(SLOWER, TIMED, 7, 220, 107, 820, 150, 820, 30);
    // 230 K at 2 K/min, 570 K at 4 K/min in 142.5 min
    pulls(HOTTER, TIMED, 30, 250, 115, 820, 143, 820, 30);
    // 170 K at 2 K/min, 630 K at 4 K/min in 157.5 min
    pulls(COLDER, TIMED, 30, 190, 85, 820, 158, 820, 30);
    pulls(HOTTER, RATED, 30, 250, 120, 820, 240, 820, 30);
  }

  /** What is handed over between ramps goes at the slower of both rates, here 2 K/min. */
  @Test
  void handsOverToTheSlowerRamp() {
    pulls(HOTTER_AT_SLOWER, SLOW_LAST, 30, 250, 115, 820, 285, 820, 30);
    pulls(HOTTER_AT_SLOWER, TIMED, 30, 250, 115, 820, 143, 820, 30);
    pulls(COLDER_AT_SLOWER, TIMED, 30, 190, 85, 820, 315, 820, 30);
    // 630 K at the 2 K/min that it has
    pulls(COLDER_AT_SLOWER, SLOW_LAST, 30, 190, 43, 820, 315, 820, 30);
  }

  @Test
  void countsTheFewestStepsToATime() {
    Lever faster = new Lever(FASTER, 0);
    assertThat(TIMED.minutes()).isEqualTo(280);
    for (int steps : new int[] {1, 2, 3, 10, 31, 64, 99}) {
      assertThat(faster.stepsTo(TIMED, 280 - steps)).hasValue(steps);
      assertThat(faster.stepsTo(TIMED, 280 - steps + 0.5)).hasValue(steps);
    }
    assertThat(faster.stepsTo(TIMED, 180)).as("a minute is left to the ramp").isEmpty();
    assertThat(new Lever(SLOWER, 0).stepsTo(TIMED, 279)).as("the wrong way").isEmpty();
    // each degree costs half a minute and gains a quarter, or the other way round
    assertThat(new Lever(COLDER, 0).stepsTo(RATED, 275)).hasValue(20);
    assertThat(new Lever(HOTTER, 0).stepsTo(RATED, 275)).isEmpty();
    assertThat(new Lever(COLDER, 0).stepsTo(RATED, 200)).as("200 K are all there are").isEmpty();
  }

  @Test
  void takesAShareOfWhatThereIs() {
    assertThat(new Lever(FASTER, 0).stride(TIMED, 0.2)).isEqualTo(20);
    assertThat(new Lever(SLOWER, 1).stride(TIMED, 0.2)).isEqualTo(30);
    // of the ramp that shrinks
    assertThat(new Lever(HOTTER, 0).stride(TIMED, 0.2)).isEqualTo(120);
    assertThat(new Lever(COLDER, 0).stride(TIMED, 0.2)).isEqualTo(40);
    assertThat(new Lever(HOTTER_AT_SLOWER, 0).stride(TIMED, 0.2)).isEqualTo(120);
    assertThat(new Lever(COLDER_AT_SLOWER, 0).stride(TIMED, 0.2)).isEqualTo(40);
    // of 100 degrees at a peak
    assertThat(new Lever(HOTTER, 1).stride(TIMED, 0.06)).isEqualTo(6);
    assertThat(new Lever(COLDER, 1).stride(TIMED, 0.5)).isEqualTo(50);
    for (Lever.Kind kind : Lever.Kind.values()) {
      assertThat(new Lever(kind, 0).stride(TIMED, 1e-6)).isEqualTo(1);
    }
    assertThat(new Lever(HOTTER, 1).stride(TIMED, 1e-6)).isEqualTo(1);
  }

  @Test
  void knowsACornerBetweenRamps() {
    assertThat(new Lever(HOTTER, 0).isBetweenRamps(TIMED)).isTrue();
    assertThat(new Lever(COLDER_AT_SLOWER, 0).isBetweenRamps(TIMED)).isTrue();
    assertThat(new Lever(FASTER, 0).isBetweenRamps(TIMED)).isFalse();
    assertThat(new Lever(HOTTER, 1).isBetweenRamps(TIMED)).as("a hold comes next").isFalse();
    assertThat(new Lever(HOTTER, 2).isBetweenRamps(TIMED)).as("nothing comes next").isFalse();
  }

  @Test
  void listsWhatCanBeChanged() {
    assertThat(Lever.ofHeating(STEPPED))
        .containsExactly(
            new Lever(FASTER, 0),
            new Lever(SLOWER, 0),
            new Lever(HOTTER, 0),
            new Lever(COLDER, 0),
            new Lever(FASTER, 1),
            new Lever(SLOWER, 1),
            new Lever(FASTER, 2),
            new Lever(SLOWER, 2),
            new Lever(HOTTER, 2),
            new Lever(COLDER, 2),
            new Lever(FASTER, 3),
            new Lever(SLOWER, 3));
    assertThat(Lever.handingOver(TIMED))
        .containsExactly(new Lever(HOTTER_AT_SLOWER, 0), new Lever(COLDER_AT_SLOWER, 0));
    Programme endsHot = new Programme(TIMED.form(), 20, TIMED.moves().subList(0, 2));
    assertThat(Lever.handingOver(endsHot)).hasSize(2);
    assertThat(Lever.handingOver(STEPPED)).isEmpty();
  }

  @Test
  void undoesOnlyTheSameThing() {
    assertThat(new Lever(FASTER, 1).undoes(new Lever(SLOWER, 1))).isTrue();
    assertThat(new Lever(HOTTER, 1).undoes(new Lever(COLDER_AT_SLOWER, 1))).isTrue();
    assertThat(new Lever(FASTER, 1).undoes(new Lever(SLOWER, 2))).isFalse();
    assertThat(new Lever(FASTER, 1).undoes(new Lever(COLDER, 1))).isFalse();
  }

  @Test
  void actsOnARampOrAtItsEnd() {
    assertThat(new Lever(FASTER, 3).place()).isEqualTo(6);
    assertThat(new Lever(SLOWER, 3).place()).isEqualTo(6);
    assertThat(new Lever(COLDER, 3).place()).isEqualTo(7);
    assertThat(new Lever(HOTTER_AT_SLOWER, 0).place()).isEqualTo(1);
  }
}
