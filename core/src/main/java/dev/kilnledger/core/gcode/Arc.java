package dev.kilnledger.core.gcode;

import org.jspecify.annotations.Nullable;

/**
 * An arc in a plane, from a start to an end about a centre, after RS274/NGC section 3.5.3; in
 * millimetres. The first axis turns towards the second counterclockwise.
 */
final class Arc {
  /**
   * How far the end may lie from the circle: the standard allows 0.002 mm, and four words rounded
   * to 0.001 mm may be off by some more.
   */
  static final double TOLERANCE = 0.01;

  private final double centreFirst;
  private final double centreSecond;
  private final double radius;
  private final double from;
  private final double sweep;

  private Arc(double centreFirst, double centreSecond, double radius, double from, double sweep) {
    this.centreFirst = centreFirst;
    this.centreSecond = centreSecond;
    this.radius = radius;
    this.from = from;
    this.sweep = sweep;
  }

  /** The arc about a centre given from the start; null where the end is not known to lie on it. */
  static @Nullable Arc about(
      double[] start, double[] end, double toCentreFirst, double toCentreSecond, boolean ccw) {
    double radius = distance(toCentreFirst, toCentreSecond);
    double centreFirst = start[0] + toCentreFirst;
    double centreSecond = start[1] + toCentreSecond;
    double endRadius = distance(end[0] - centreFirst, end[1] - centreSecond);
    if (radius == 0 || !(Math.abs(endRadius - radius) <= TOLERANCE)) {
      return null;
    }
    double from = Math.atan2(-toCentreSecond, -toCentreFirst);
    double to = Math.atan2(end[1] - centreSecond, end[0] - centreFirst);
    double sweep = ccw ? to - from : from - to;
    // an arc that ends where it starts is a whole circle
    if (start[0] == end[0] && start[1] == end[1]) {
      sweep = 2 * Math.PI;
    } else if (sweep <= 0) {
      sweep += 2 * Math.PI;
    }
    return new Arc(centreFirst, centreSecond, radius, from, ccw ? sweep : -sweep);
  }

  /** The arc of a radius, the longer way round where it is below zero; null if there is none. */
  static @Nullable Arc of(double[] start, double[] end, double radius, boolean ccw) {
    double first = end[0] - start[0];
    double second = end[1] - start[1];
    double chord = distance(first, second);
    double height = radius * radius - chord * chord / 4;
    if (chord == 0 || height < -TOLERANCE * Math.abs(radius)) {
      return null;
    }
    double side = Math.sqrt(Math.max(0, height)) / chord;
    if (ccw != radius > 0) {
      side = -side;
    }
    return about(start, end, first / 2 - side * second, second / 2 + side * first, ccw);
  }

  /** Math.hypot takes ten times as long, for the sake of numbers that no programme holds. */
  private static double distance(double first, double second) {
    return Math.sqrt(first * first + second * second);
  }

  double length() {
    return radius * Math.abs(sweep);
  }

  /** Puts the points of the arc where an axis is highest or lowest into a box. */
  void include(Bounds bounds, int firstAxis, int secondAxis) {
    for (int quarter = -6; quarter <= 6; quarter++) {
      double angle = quarter * Math.PI / 2;
      double turned = sweep > 0 ? angle - from : from - angle;
      if (turned >= 0 && turned <= Math.abs(sweep)) {
        bounds.include(firstAxis, centreFirst + radius * Math.cos(angle));
        bounds.include(secondAxis, centreSecond + radius * Math.sin(angle));
      }
    }
  }
}
