package dev.kilnledger.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.costing.uncertainty.CashBand;
import dev.kilnledger.costing.uncertainty.MonteCarlo;
import dev.kilnledger.costing.uncertainty.UncertainStatement;
import java.util.List;
import org.junit.jupiter.api.Test;

class MonteCarloBenchmarkTest {
  private final MonteCarloBenchmark benchmark = new MonteCarloBenchmark();

  /**
   * The library takes quantities and yields to seven digits, or a thousandth of their spread, so a
   * value may differ by 1e-6, and where that decides on a whole pack or start, by a pack. That is
   * rare: with numbers of parts up to 200 and steps of a pack each some 4 parts, in about 200 x
   * 1e-6 of the trials; ten times as many are allowed.
   */
  @Test
  void drawsTheSameCashInEveryVariant() {
    double[][] hand = benchmark.byHand();
    List<CashBand> bands = bands(benchmark.oneThread());
    for (int i = 0; i < hand.length; i++) {
      double[] drawn = bands.get(i).outcome().draws().toArray();
      assertThat(drawn).hasSameSizeAs(hand[i]);
      int apart = 0;
      for (int j = 0; j < drawn.length; j++) {
        apart += Math.abs(drawn[j] - hand[i][j]) > 1e-5 * Math.abs(hand[i][j]) + 1e-6 ? 1 : 0;
      }
      assertThat(apart).as("figure %d", i).isLessThan(drawn.length / 500);
    }
  }

  @Test
  void isTheSameToTheLastBitByAnyNumberOfThreads() {
    List<CashBand> one = bands(benchmark.oneThread());
    for (UncertainStatement other :
        List.of(
            benchmark.twoThreads(),
            new MonteCarlo(8)
                .statement(benchmark.plan, MonteCarloBenchmark.PARTS, benchmark.trials))) {
      for (int i = 0; i < one.size(); i++) {
        assertThat(bands(other).get(i).outcome().draws().toArray())
            .isEqualTo(one.get(i).outcome().draws().toArray());
      }
    }
  }

  private static List<CashBand> bands(UncertainStatement statement) {
    return List.of(
        statement.firstPart(), statement.lastPart(), statement.allParts(), statement.usage());
  }
}
