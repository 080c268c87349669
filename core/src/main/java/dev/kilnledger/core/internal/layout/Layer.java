package dev.kilnledger.core.internal.layout;

import java.util.List;

/**
 * Bodies side by side.
 *
 * @param spots where they lie
 * @param atMost how many no arrangement whatever can exceed
 * @param bestKnown whether nothing better is known, though it may exist
 * @param pattern the pattern in words
 */
public record Layer(List<Spot> spots, int atMost, boolean bestKnown, String pattern) {
  /** Beyond a nanometre and beyond the rounding of a quotient nothing is gained. */
  static final double ROUNDING = 1e-9;

  static Layer none() {
    return new Layer(List.of(), 0, true, "nothing");
  }

  static Layer found(List<Spot> spots, int atMost, String pattern) {
    return new Layer(spots, Math.max(atMost, spots.size()), false, pattern);
  }

  /** The whole number of times that a length goes into another one. */
  static int times(double whole, double piece) {
    return (int) Math.floor(whole / piece + ROUNDING);
  }

  /**
   * Oler's inequality (Acta Math. 105 (1961) 19; from memory): of points at least 1 apart a convex
   * figure of area A and perimeter P holds no more than 2/sqrt(3) A + P/2 + 1.
   */
  static int oler(double area, double perimeter, double pitch) {
    return (int)
        Math.floor(
            2 / Math.sqrt(3) * area / (pitch * pitch) + perimeter / (2 * pitch) + 1 + ROUNDING);
  }

  /** Rectangles a gap apart, each with half the gap around it, cannot cover more than there is. */
  static int byArea(double area, double length, double width, double gap) {
    double each = length * width + gap * (length + width) + Math.PI * gap * gap / 4;
    return (int) Math.floor(area / each + ROUNDING);
  }
}
