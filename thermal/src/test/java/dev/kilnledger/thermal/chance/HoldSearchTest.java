package dev.kilnledger.thermal.chance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Holds for an hour of soak, where the answer is known; good to the minute that is promised. */
class HoldSearchTest {
  private static final double HOUR = 3600;
  private static final double DAY = 24 * HOUR;

  private static void finds(double least, DoubleUnaryOperator soak, double programmed) {
    AtomicInteger asked = new AtomicInteger();
    double hold =
        new HoldSearch(
                seconds -> {
                  asked.incrementAndGet();
                  return soak.applyAsDouble(seconds);
                },
                programmed,
                HOUR)
            .least()
            .orElseThrow();
    assertThat(hold).isBetween(least, least + 60);
    assertThat(soak.applyAsDouble(hold)).isGreaterThanOrEqualTo(HOUR);
    assertThat(asked.get()).as("every try is a forecast of its own").isLessThanOrEqualTo(12);
  }

  /** A core that is ten minutes late needs as much more, whatever was programmed. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1, 600, 4199, 4200, 4201, 4300, 36_000, 100_000})
  void findsTheHoldOfACoreThatIsLate(double programmed) {
    finds(4200, hold -> Math.max(0, hold - 600), programmed);
  }

  /** A soak that grows with the square of the hold, and one that does with its root. */
  @ParameterizedTest
  @ValueSource(doubles = {1000, 5000, 20_000})
  void findsTheHoldWhereTheSoakIsNoLine(double programmed) {
    finds(6000, hold -> hold * hold / 10_000, programmed);
    finds(12_960, hold -> Math.sqrt(hold * 1000), programmed);
  }

  @Test
  void isNoneWhereTheSoakIsThereWithoutAHold() {
    assertThat(new HoldSearch(hold -> HOUR + hold, 3600, HOUR).least()).contains(0.0);
    assertThat(new HoldSearch(hold -> HOUR - 1 + hold, 3600, HOUR).least())
        .as("just so with the second that is the shortest hold")
        .contains(0.0);
  }

  /** Forty hours are found from one of an hour; where two days more do not do it there is none. */
  @Test
  void givesUpAfterTwoDaysMore() {
    finds(40 * HOUR, hold -> hold / 40, 3600);
    assertThat(new HoldSearch(hold -> hold / 1000, 3600, HOUR).least()).isEmpty();
    AtomicInteger longest = new AtomicInteger();
    assertThat(
            new HoldSearch(
                    hold -> {
                      longest.accumulateAndGet((int) hold, Math::max);
                      return 0;
                    },
                    3600,
                    HOUR)
                .least())
        .isEmpty();
    assertThat(longest.get()).as("two days were tried").isGreaterThan((int) (2 * DAY));
  }

  /** Not a number is the answer of what was interrupted, at whichever try. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4})
  void isEmptyWhereInterrupted(int at) {
    for (double programmed : new double[] {600, 36_000}) {
      AtomicInteger asked = new AtomicInteger();
      assertThat(
              new HoldSearch(
                      hold -> asked.incrementAndGet() < at ? hold * hold / 10_000 : Double.NaN,
                      programmed,
                      HOUR)
                  .least())
          .isEmpty();
    }
  }
}
