package dev.kilnledger.thermal.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Times above a temperature along straight lines, by hand. */
class FeltTest {
  private static Felt every100Seconds(double... kelvin) {
    double[] seconds = new double[kelvin.length];
    for (int i = 0; i < seconds.length; i++) {
      seconds[i] = 100 * i;
    }
    return new Felt(seconds, kelvin);
  }

  private static void longest(double expected, double... kelvin) {
    assertThat(every100Seconds(kelvin).longestAbove(400)).isCloseTo(expected, within(1e-9));
  }

  @Test
  void takesTheLongestStretch() {
    // from 50 to 225 s, and from 450 to 600 s
    longest(175, 300, 500, 500, 100, 300, 500, 400);
    // from 0 to 150 s, and from 250 to 425 s
    longest(175, 400, 500, 300, 500, 500, 100);
    // from 0 to 150 s, and from 350 to 450 s
    longest(150, 400, 500, 300, 300, 500, 300);
  }

  @Test
  void countsOnToTheEnd() {
    longest(50, 300, 500);
    longest(100, 500, 500);
    longest(250, 300, 500, 450, 450);
  }

  @Test
  void isNoneWhereItDoesNotGetThereOrOnlyTouchesIt() {
    longest(0, 300, 399, 300);
    longest(0, 400, 300);
    longest(0, 300, 400, 300);
  }

  @Test
  void isOneStretchWhereItComesDownToTheLimitItself() {
    longest(100, 300, 400, 400);
    longest(200, 500, 400, 500);
  }

  @Test
  void findsTheHottest() {
    assertThat(every100Seconds(700, 300, 650).hottest()).isEqualTo(700);
    assertThat(every100Seconds(300, 500, 400).hottest()).isEqualTo(500);
    assertThat(every100Seconds(300, 400, 500).hottest()).isEqualTo(500);
  }
}
