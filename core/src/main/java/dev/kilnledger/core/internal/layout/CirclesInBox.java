package dev.kilnledger.core.internal.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * Equal circles in a box: the best of square rows and of staggered ones, along either side, the
 * latter also drawn apart so that the rows come closer. A lower bound, but where it reaches Oler's
 * inequality, as a single row does.
 */
public final class CirclesInBox {
  private CirclesInBox() {}

  /**
   * The most circles found.
   *
   * @param length the length of the box in which their middles may lie
   * @param width its width; below zero either of them holds none
   * @param pitch the least distance of two middles, above zero
   * @return the circles
   */
  public static Layer most(double length, double width, double pitch) {
    if (Math.min(length, width) < -Layer.ROUNDING) {
      return Layer.none();
    }
    double a = Math.max(length, 0);
    double b = Math.max(width, 0);
    List<Spot> best = rows(a, b, pitch, Layer.times(a, pitch) + 1, pitch, 0, pitch);
    for (boolean along : new boolean[] {true, false}) {
      double side = along ? a : b;
      for (int count = 1; count <= Layer.times(side, pitch) + 1; count++) {
        best = larger(best, staggered(along, a, b, pitch, count, side / (count - 0.5)));
        if (count > 1) {
          best = larger(best, staggered(along, a, b, pitch, count, side / (count - 1)));
        }
      }
    }
    return Layer.found(best, Layer.oler(a * b, 2 * (a + b), pitch), "square or staggered rows");
  }

  private static List<Spot> staggered(
      boolean along, double a, double b, double pitch, int count, double step) {
    if (step < pitch * (1 - Layer.ROUNDING)) {
      return List.of();
    }
    // rows next to each other touch at an angle, those next but one straight on
    double half = Math.min(step / 2, pitch);
    double rise = Math.max(pitch / 2, Math.sqrt(pitch * pitch - half * half));
    List<Spot> rows = rows(along ? a : b, along ? b : a, step, count, rise, step / 2, pitch);
    return along ? rows : rows.stream().map(s -> new Spot(s.y(), s.x(), false)).toList();
  }

  /** Rows of a count, every second one shifted, and shorter where it would stand out. */
  private static List<Spot> rows(
      double side, double across, double step, int count, double rise, double shift, double pitch) {
    List<Spot> spots = new ArrayList<>();
    double slack = pitch * Layer.ROUNDING;
    int last = Layer.times(across, rise);
    double widest = Math.max((count - 1) * step, last > 0 ? farthest(side, step, count, shift) : 0);
    for (int row = 0; row <= last; row++) {
      double start = row % 2 == 1 ? shift : 0;
      for (int i = 0; i < count && start + i * step <= side + slack; i++) {
        spots.add(new Spot(start + i * step - widest / 2, row * rise - last * rise / 2, false));
      }
    }
    return spots;
  }

  private static double farthest(double side, double step, int count, double shift) {
    double shifted = shift + (count - 1) * step;
    return shifted <= side * (1 + Layer.ROUNDING) ? shifted : (count - 1) * step;
  }

  private static List<Spot> larger(List<Spot> one, List<Spot> other) {
    return other.size() > one.size() ? other : one;
  }
}
