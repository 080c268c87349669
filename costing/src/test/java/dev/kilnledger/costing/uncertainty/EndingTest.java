package dev.kilnledger.costing.uncertainty;

import static dev.kilnledger.costing.ledger.FixturePlan.INVENTED;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.core.progress.Progress;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Why trials and rows end, and how many of them there are then. */
class EndingTest {
  private static final List<UncertainInput> WIDE =
      List.of(UncertainInput.of("x", LogNormal.of(1, 8), INVENTED));
  private static final Model ITSELF = values -> values[0];

  /** Interrupts the thread that tells it. */
  private static Progress impatientFrom(double fraction) {
    return told -> {
      if (told >= fraction) {
        Thread.currentThread().interrupt();
      }
    };
  }

  /** Interrupts its own thread with one of its values. */
  private static Model interruptingAt(int which) {
    int[] evaluations = {0};
    return values -> {
      evaluations[0]++;
      if (evaluations[0] == which) {
        Thread.currentThread().interrupt();
      }
      return values[0];
    };
  }

  /** Of 25,000 trials two batches of 10,000 can be made; so wide a spread needs many more. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void givesUpAfterTheLastWholeBatch(int threads) {
    for (int most : new int[] {20_000, 25_000}) {
      TrialRecord made =
          new MonteCarlo(threads).simulate(WIDE, ITSELF, Trials.untilStable(most, 1)).trials();
      assertThat(made.ending()).isEqualTo(Ending.NOT_STABLE);
      assertThat(made.made()).isEqualTo(20_000);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void isCompleteIfInterruptedWithItsLastTrial(int threads) {
    TrialRecord trials =
        new MonteCarlo(threads, impatientFrom(1))
            .simulate(WIDE, ITSELF, Trials.fixed(128, 1))
            .trials();
    assertThat(Thread.interrupted()).isTrue();
    assertThat(trials).isEqualTo(TrialRecord.of(Trials.fixed(128, 1), 128, Ending.ALL_MADE));
    TrialRecord rows =
        new SobolAnalysis(threads, impatientFrom(1))
            .indices("x", WIDE, ITSELF, Trials.fixed(128, 1))
            .trials();
    assertThat(Thread.interrupted()).isTrue();
    assertThat(rows.made()).isEqualTo(128);
    assertThat(rows.ending()).isEqualTo(Ending.ALL_MADE);
  }

  /** Interrupted in the hundredth of a thousand trials of a block, it looks at the 128th. */
  @Test
  void endsWithinABlock() {
    TrialRecord trials =
        new MonteCarlo(1).simulate(WIDE, interruptingAt(100), Trials.fixed(64_000, 1)).trials();
    assertThat(Thread.interrupted()).isTrue();
    assertThat(trials.made()).isEqualTo(128);
    assertThat(trials.ending()).isEqualTo(Ending.INTERRUPTED);
  }

  /** The value at the median comes first, and then three for each row of one input. */
  @Test
  void needsTwoRows() {
    Trials rows = Trials.fixed(128, 1);
    SobolIndices two = new SobolAnalysis(1, impatientFrom(0)).indices("x", WIDE, ITSELF, rows);
    assertThat(Thread.interrupted()).isTrue();
    assertThat(two.trials().made()).isEqualTo(2);
    assertThat(two.trials().ending()).isEqualTo(Ending.INTERRUPTED);
    for (int evaluation : new int[] {1, 3}) { // before the first row, and within it
      assertThatThrownBy(
              () -> new SobolAnalysis(1).indices("x", WIDE, interruptingAt(evaluation), rows))
          .isInstanceOf(CancellationException.class)
          .hasMessage("interrupted before the second row was drawn");
      assertThat(Thread.interrupted()).isTrue();
    }
  }

  @Test
  void tellsANumberOutOfRangeOnce() {
    assertThatThrownBy(() -> Trials.untilStable(0, 1))
        .hasMessage("trials: number is 0; accepted is from 1 to 10000000");
    assertThat(Trials.untilStable(20_000, 1).number()).isEqualTo(20_000);
    assertThat(Trials.fixed(1, 1).number()).isEqualTo(1);
    assertThat(Trials.fixed(10_000_000, 1).number()).isEqualTo(10_000_000);
  }
}
