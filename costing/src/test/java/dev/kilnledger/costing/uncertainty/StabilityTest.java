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
}
