package dev.kilnledger.costing.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StabilityTest {
  /** The first three are the examples of JCGM 101:2008, 7.9.2, from memory; the others follow. */
  @ParameterizedTest
  @CsvSource({
    "0.00035, 2, 0.000005",
    "0.00035, 1, 0.00005",
    "2, 1, 0.5",
    "2, 2, 0.05",
    "9.94, 2, 0.05",
    "9.96, 2, 0.5",
    "0.0999, 1, 0.05",
    "1234, 2, 50"
  })
  void takesHalfAUnitOfTheLastDigit(double uncertainty, int digits, double tolerance) {
    assertThat(Stability.tolerance(uncertainty, digits))
        .isCloseTo(tolerance, within(1e-12 * tolerance));
  }

  @Test
  void waitsUntilAllAveragesAgree() {
    // Batches of two values a half apart: mean, standard deviation and ends are these.
    Trials trials = Trials.builder().adaptive(true).number(20_000).seed(1).digits(1).build();
    Stability moving = new Stability(trials, 1);
    moving.add(new double[][] {{0, 10}});
    assertThat(moving.isReached()).isFalse(); // one batch says nothing about agreement
    moving.add(new double[][] {{4, 14}});
    // Means 5 and 9: the average of 7 has the standard deviation 2, and twice that is above 0.5.
    assertThat(moving.isReached()).isFalse();
    Stability standing = new Stability(trials, 1);
    standing.add(new double[][] {{0, 10}});
    standing.add(new double[][] {{0.2, 10.2}});
    // Twice 0.1 is within half a unit of the first digit of u = 5.8.
    assertThat(standing.isReached()).isTrue();
    Stability both = new Stability(trials, 2);
    both.add(new double[][] {{0, 10}, {0, 10}});
    both.add(new double[][] {{0.2, 10.2}, {4, 14}});
    assertThat(both.isReached()).isFalse();
    Stability certain = new Stability(trials, 1);
    certain.add(new double[][] {{3, 3}});
    certain.add(new double[][] {{3, 3}});
    assertThat(certain.isReached()).isTrue();
  }

  /** Two batches of two values each, moved against each other by some distance. */
  private static boolean isReached(double halfWidth, double apart) {
    Trials trials = Trials.builder().adaptive(true).number(20_000).seed(1).digits(1).build();
    Stability figure = new Stability(trials, 1);
    figure.add(new double[][] {{10 - halfWidth, 10 + halfWidth}});
    figure.add(new double[][] {{10 + apart - halfWidth, 10 + apart + halfWidth}});
    return figure.isReached();
  }

  /**
   * Twice the standard deviation of the average of two means is their distance. The standard
   * uncertainty of all four values is sqrt((4 h^2 + d^2) / 3) for a half width h and a distance d;
   * at 0.95 it is rounded to 1, and the tolerance rises from 0.05 to 0.5.
   */
  @Test
  void holdsTheDistanceOfBatchesAgainstTheSpreadOfAll() {
    assertThat(isReached(5, 0.5)).isTrue(); // 0.5 at a spread of 5.8
    assertThat(isReached(5, 0.6)).isFalse();
    assertThat(isReached(0.85, 0.3)).isTrue(); // sqrt(2.98 / 3) = 0.997
    assertThat(isReached(0.8, 0.4)).isTrue(); // sqrt(2.72 / 3) = 0.952
    assertThat(isReached(0.8, 0.3)).isFalse(); // sqrt(2.65 / 3) = 0.940
  }

  @Test
  void oneBatchIsNeverEnough() {
    Trials trials = Trials.builder().adaptive(true).number(20_000).seed(1).digits(1).build();
    Stability certain = new Stability(trials, 1);
    certain.add(new double[][] {{3, 3}});
    assertThat(certain.isReached()).isFalse();
  }
}
