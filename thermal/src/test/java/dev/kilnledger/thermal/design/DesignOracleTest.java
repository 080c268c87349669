package dev.kilnledger.thermal.design;

import static dev.kilnledger.units.TradeUnits.MINUTE;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The designer against brute force: a grid over the same variables, two ramps with their corner,
 * top and hold for each stage, in the thirty firings of {@link SmallCase}. As no limit there spans
 * both stages, the best of the grid is the best of each stage.
 */
class DesignOracleTest {
  private static final int CASES = 30;
  private static final int FEW = 2;
  private static final int[] HOLDS = {
    0, 2, 5, 10, 15, 20, 30, 40, 50, 60, 75, 90, 105, 120, 140, 160, 180, 210, 240, 300, 360, 480,
    600, 800
  };

  private interface Limits {
    double[] of(double[] celsius, double[] hours);
  }

  /** The best of a grid, found without looking at what is no shorter than a bound. */
  private static final class Grid {
    private final double bound;
    private long points;
    private double best = Double.POSITIVE_INFINITY;

    Grid(double boundMinutes) {
      this.bound = boundMinutes;
    }

    void search(Limits limits, double kilnRate, List<Double> corners, List<Double> tops) {
      List<Double> rates = new ArrayList<>();
      for (double rate = kilnRate; rate > 1.5; rate /= 1.14) {
        rates.add(rate);
      }
      for (double top : tops) {
        for (double corner : corners) {
          if (corner >= top) {
            continue;
          }
          for (double first : rates) {
            for (double second : rates) {
              points += HOLDS.length;
              hold(limits, corner, top, (corner - 20) / first, (top - corner) / second);
            }
          }
        }
      }
    }

    /** Longer holds are only longer, so the first that keeps the limits is the best of its row. */
    private void hold(Limits limits, double corner, double top, double first, double second) {
      double ramps = 60 * (first + second);
      // Where the longest worth looking at does not do, none does: every limit that a hold
      // bears on is kept the better the longer it is.
      int last = HOLDS.length - 1;
      while (last >= 0 && ramps + HOLDS[last] >= Math.min(bound, best)) {
        last--;
      }
      if (last < 0 || !kept(limits, corner, top, first, second, HOLDS[last])) {
        return;
      }
      int hold = 0;
      while (!kept(limits, corner, top, first, second, HOLDS[hold])) {
        hold++;
      }
      best = ramps + HOLDS[hold];
    }

    private static boolean kept(
        Limits limits, double corner, double top, double first, double second, int hold) {
      return SmallCase.kept(
          limits.of(
              new double[] {20, corner, top, top},
              new double[] {first, second, hold / 60.0 + 1e-9}));
    }
  }

  private static List<Double> levels(double from, double to, double step) {
    List<Double> levels = new ArrayList<>();
    for (double level = from; level < to + step / 2; level += step) {
      levels.add(level);
    }
    return levels;
  }

  @Tag("sampled")
  @Test
  void noPointOfAGridIsMoreThanFivePercentFasterInThirtyCases() {
    noPointOfAGridIsFaster(FEW, CASES);
  }

  @Test
  void noPointOfAGridIsMoreThanFivePercentFasterInTheFirstCases() {
    noPointOfAGridIsFaster(0, FEW);
  }

  private static void noPointOfAGridIsFaster(int from, int to) {
    for (int seed = from; seed < to; seed++) {
      SmallCase small = new SmallCase(new Random(seed));
      ProfileDesign design = new ProfileDesigner(small.check()).design(small.task());
      assertThat(design.finished()).isTrue();
      assertThat(design.passes()).as("case %s: %s", seed, design.failing()).isTrue();
      long points = 0;
      for (int stage = 0; stage < 2; stage++) {
        double found = design.stages().get(stage).duration().in(MINUTE);
        Grid grid = grid(small, stage, found / 1.05);
        assertThat(grid.best).as("case %s, stage %s: %s min", seed, stage, found).isInfinite();
        points += grid.points;
      }
      assertThat(design.evaluations() * 50L).as("evaluations of case %s", seed).isLessThan(points);
    }
  }

  /** Else the grid could be too coarse to say anything. */
  @Tag("sampled")
  @Test
  void theGridComesNearTheDesign() {
    for (int seed = 0; seed < 10; seed++) {
      SmallCase small = new SmallCase(new Random(seed));
      ProfileDesign design = new ProfileDesigner(small.check()).design(small.task());
      for (int stage = 0; stage < 2; stage++) {
        double found = design.stages().get(stage).duration().in(MINUTE);
        Grid grid = grid(small, stage, 1.2 * found);
        assertThat(grid.best).isBetween(found / 1.05, 1.2 * found);
      }
    }
  }

  private static Grid grid(SmallCase small, int stage, double boundMinutes) {
    Grid grid = new Grid(boundMinutes);
    if (stage == 0) {
      grid.search(
          small::quickDebinding, small.kilnRate, levels(200, 425, 15), levels(300, 500, 20));
    } else {
      double width = (small.highest - small.lowest) / 8;
      grid.search(
          small::sintering,
          small.kilnRate,
          levels(500, small.highest, 35),
          levels(small.lowest, small.highest, width));
    }
    return grid;
  }
}
