package dev.kilnledger.costing.uncertainty;

import static dev.kilnledger.units.Amounts.percent;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Figures of a few values, by hand; intervals as JCGM 101 (2008), 7.7, defines them. */
class OutcomeTest {
  private static Outcome upTo(int most) {
    return new Outcome(IntStream.rangeClosed(1, most).mapToDouble(i -> i).toArray());
  }

  /** Mean 20 / 5 = 4; 1 + 9 + 4 + 36 + 0 = 50 over 4 is 12.5. */
  @Test
  void spreadsAroundItsMean() {
    Outcome five = new Outcome(new double[] {3, 1, 2, 10, 4});
    assertThat(five.mean()).isEqualTo(4);
    assertThat(five.standardDeviation()).isCloseTo(Math.sqrt(12.5), within(1e-15));
    assertThat(five.standardError()).isCloseTo(Math.sqrt(2.5), within(1e-15));
    assertThat(five.median()).isEqualTo(3);
    // by hand: 1e9 and 0, 1, 3 more, whose squares about 4/3 sum to 42/9
    Outcome far = new Outcome(new double[] {1e9, 1e9 + 1, 1e9 + 3});
    assertThat(far.standardDeviation()).isCloseTo(Math.sqrt(42 / 9.0 / 2), within(1e-6));
    assertThat(Empirical.of(1e9, 1e9 + 1, 1e9 + 3).variance())
        .isCloseTo(42 / 9.0 / 3, within(1e-6));
    Outcome one = new Outcome(new double[] {7});
    assertThat(one.standardDeviation()).isZero();
    assertThat(one.median()).isEqualTo(7);
  }

  /** q is the integer part of p M + 1/2, and r that of (M - q + 1) / 2: [y(r), y(r + q)]. */
  @Test
  void leavesOutAsManyBelowAsAbove() {
    // M = 10: q = 5, r = 3; q = 8, r = 1; M = 20, p = 0.8: q = 16, r = 2.
    assertThat(upTo(10).interval(percent(50))).isEqualTo(CoverageInterval.of(3, 8, percent(50)));
    assertThat(upTo(10).interval(percent(80))).isEqualTo(CoverageInterval.of(1, 9, percent(80)));
    assertThat(upTo(20).interval(percent(80))).isEqualTo(CoverageInterval.of(2, 18, percent(80)));
    // p M = 4.5 is rounded up to q = 5.
    assertThat(upTo(9).interval(percent(50))).isEqualTo(CoverageInterval.of(2, 7, percent(50)));
  }

  /** M = 10 and q = 5: of the five intervals from y(r) to y(r + 5) the lowest of the shortest. */
  @Test
  void findsTheLowestOfTheShortestIntervals() {
    assertThat(upTo(10).shortestInterval(percent(50)))
        .isEqualTo(CoverageInterval.of(1, 6, percent(50)));
    Outcome high = new Outcome(new double[] {0, 10, 20, 30, 40, 41, 42, 43, 44, 45});
    assertThat(high.shortestInterval(percent(50)))
        .isEqualTo(CoverageInterval.of(40, 45, percent(50)));
    Outcome middle = new Outcome(new double[] {0, 10, 20, 21, 22, 23, 24, 25, 44, 80});
    assertThat(middle.shortestInterval(percent(50)))
        .isEqualTo(CoverageInterval.of(20, 25, percent(50)));
    Outcome low = new Outcome(new double[] {1, 2, 3, 4, 5, 6, 16, 26, 36, 46});
    assertThat(low.shortestInterval(percent(50))).isEqualTo(CoverageInterval.of(1, 6, percent(50)));
  }

  /**
   * From 10 to 18 in four bars of 2; a border counts in the higher bar, the highest in the last.
   */
  @Test
  void countsInBarsOfOneWidth() {
    Outcome six = new Outcome(new double[] {18, 10, 12, 13, 14, 11});
    assertThat(six.histogram(4))
        .containsExactly(
            HistogramBar.of(10, 12, 2),
            HistogramBar.of(12, 14, 2),
            HistogramBar.of(14, 16, 1),
            HistogramBar.of(16, 18, 1));
    assertThat(six.histogram(1)).containsExactly(HistogramBar.of(10, 18, 6));
    assertThat(new Outcome(new double[] {5, 5, 5}).histogram(4))
        .containsExactly(HistogramBar.of(5, 5, 3));
  }

  @Test
  void hasQuantilesAtEqualSteps() {
    assertThat(upTo(10).quantiles(5))
        .extracting(point -> point.share().si() + " " + point.value())
        .containsExactly("0.2 2.0", "0.4 4.0", "0.6 6.0", "0.8 8.0", "1.0 10.0");
    assertThat(upTo(10).quantiles(1)).containsExactly(QuantilePoint.of(ratio(1), 10));
    assertThat(upTo(10).quantile(percent(100))).isEqualTo(10);
    assertThat(upTo(10).probabilityUpTo(3.5)).isEqualTo(ratio(0.3));
  }

  @Test
  void isToldAndComparedByItsValues() {
    assertThat(upTo(10)).isEqualTo(upTo(10)).hasSameHashCodeAs(upTo(10)).isNotEqualTo(upTo(9));
    assertThat(upTo(10).hashCode()).isNotEqualTo(upTo(9).hashCode());
    assertThat(upTo(100).toString()).startsWith("100 values, median 50").contains("5 to 95 %");
  }

  @Test
  void refusesSharesAndNumbersOutOfRange() {
    Outcome ten = upTo(10);
    for (double share : new double[] {0, 1}) {
      assertThatThrownBy(() -> ten.interval(ratio(share)))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageStartingWith("coverage interval: coverage is ")
          .hasMessageEndingWith("; accepted is more than 0 and less than 1");
    }
    assertThatThrownBy(() -> ten.quantile(ratio(0)))
        .hasMessage("quantile: share is 0; accepted is more than 0 and up to 1");
    assertThatThrownBy(() -> ten.histogram(0))
        .hasMessage("histogram: bars is 0; accepted is 1 or more");
    assertThatThrownBy(() -> ten.quantiles(0))
        .hasMessage("quantiles: points is 0; accepted is 1 or more");
  }
}
