package dev.kilnledger.core.internal.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * Equal circles in a circle: the best known packings up to 20; beyond, the best of hexagonal and
 * square patterns over a grid of offsets and of rings one within the other, which is a lower bound.
 */
public final class CirclesInCircle {
  /**
   * Offsets tried along each side of a pattern's cell: 12 meet its edges' and triangles' middles.
   */
  private static final int OFFSETS = 12;

  private CirclesInCircle() {}

  /**
   * The most circles found.
   *
   * @param room the radius of the circle in which their middles may lie; below zero holds none
   * @param pitch the least distance of two middles, above zero
   * @return the circles
   */
  public static Layer most(double room, double pitch) {
    if (room < -Layer.ROUNDING) {
      return Layer.none();
    }
    double radius = (Math.max(room, 0) + Layer.ROUNDING) / (pitch / 2) + 1;
    int atMost =
        Math.min(
            UnitCircles.provenMost(radius),
            Layer.oler(Math.PI * room * room, 2 * Math.PI * Math.max(room, 0), pitch));
    int held = UnitCircles.held(radius);
    List<Spot> spots = spots(UnitCircles.middles(held), pitch / 2);
    if (held < UnitCircles.MOST) {
      return new Layer(
          spots, Math.max(held, atMost), true, "the best known packing of circles in a circle");
    }
    return Layer.found(largest(radius, pitch / 2, spots), atMost, "hexagonal rows or rings");
  }

  /** The most of the patterns, in a circle of a radius in units of the circles' own. */
  private static List<Spot> patterns(double radius, double scale) {
    int held = UnitCircles.held(radius);
    List<Spot> spots = spots(UnitCircles.middles(held), scale);
    return held < UnitCircles.MOST ? spots : largest(radius, scale, spots);
  }

  private static List<Spot> largest(double radius, double scale, List<Spot> packing) {
    List<Spot> best = packing;
    for (List<Spot> other :
        List.of(
            lattice(radius, scale, 1, Math.sqrt(3)),
            lattice(radius, scale, 0, 2),
            ring(radius, scale))) {
      best = other.size() > best.size() ? other : best;
    }
    return best;
  }

  /** A ring along the wall, and the most within. */
  private static List<Spot> ring(double radius, double scale) {
    List<Spot> spots = new ArrayList<>(patterns(radius - 2, scale));
    int count = Layer.times(Math.PI, Math.asin(1 / (radius - 1)));
    for (int i = 0; i < count; i++) {
      double angle = 2 * Math.PI * i / count;
      spots.add(
          new Spot(
              scale * (radius - 1) * Math.cos(angle),
              scale * (radius - 1) * Math.sin(angle),
              false));
    }
    return spots;
  }

  /** Rows of pitch 2, the next one shifted and raised, with the best of the offsets. */
  private static List<Spot> lattice(double radius, double scale, double shift, double rise) {
    List<Spot> best = List.of();
    for (int u = 0; u < OFFSETS; u++) {
      for (int v = 0; v < OFFSETS; v++) {
        double x0 = (2.0 * u + shift * v) / OFFSETS;
        double y0 = rise * v / OFFSETS;
        List<Spot> spots = new ArrayList<>();
        int rows = (int) (radius / rise) + 1;
        for (int row = -rows; row <= rows; row++) {
          double y = y0 + row * rise;
          double square = (radius - 1) * (radius - 1) - y * y;
          if (square >= 0) {
            double start = x0 + row * shift;
            double half = Math.sqrt(square);
            for (int i = (int) Math.ceil((-half - start) / 2); start + 2 * i <= half; i++) {
              spots.add(new Spot(scale * (start + 2 * i), scale * y, false));
            }
          }
        }
        best = spots.size() > best.size() ? spots : best;
      }
    }
    return best;
  }

  private static List<Spot> spots(double[] middles, double scale) {
    List<Spot> spots = new ArrayList<>();
    for (int i = 0; i < middles.length; i += 2) {
      spots.add(new Spot(scale * middles[i], scale * middles[i + 1], false));
    }
    return spots;
  }
}
