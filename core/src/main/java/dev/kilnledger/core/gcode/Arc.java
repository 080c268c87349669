package dev.kilnledger.core.gcode;

/**
 * An arc in a plane, from a start to an end about a centre, after RS274/NGC section 3.5.3; in
 * millimetres. The first axis turns towards the second counterclockwise. It is used again for each
 * arc.
 */
final class Arc {
  /**
   * How far the end may lie from the circle: the standard allows 0.002 mm, and four words rounded
   * to 0.001 mm may be off by some more.
   */
  static final double TOLERANCE = 0.01;

  private double centreFirst;
  private double centreSecond;
  private double radius;

  /** From the centre to the start, and to the end. */
  private double fromFirst;

  private double fromSecond;
  private double toFirst;
  private double toSecond;

  private double sweep;

  /** Lays it about a centre given from the start; false where the end does not lie on it. */
  boolean about(
      double startFirst,
      double startSecond,
      double endFirst,
      double endSecond,
      double toCentreFirst,
      double toCentreSecond,
      boolean ccw) {
    radius = distance(toCentreFirst, toCentreSecond);
    centreFirst = startFirst + toCentreFirst;
    centreSecond = startSecond + toCentreSecond;
    fromFirst = -toCentreFirst;
    fromSecond = -toCentreSecond;
    toFirst = endFirst - centreFirst;
    toSecond = endSecond - centreSecond;
    double endRadius = distance(toFirst, toSecond);
    if (radius == 0 || Math.abs(endRadius - radius) > TOLERANCE) {
      return false;
    }
    double across = fromFirst * toSecond - fromSecond * toFirst;
    double along = fromFirst * toFirst + fromSecond * toSecond;
    double turned = Math.atan2(ccw ? across : -across, along);
    // an arc that ends where it starts is a whole circle
    if (startFirst == endFirst && startSecond == endSecond) {
      turned = 2 * Math.PI;
    } else if (turned <= 0) {
      turned += 2 * Math.PI;
    }
    sweep = ccw ? turned : -turned;
    return true;
  }

  /** Lays it with a radius, the longer way round where that is below zero; false if none fits. */
  boolean of(
      double startFirst,
      double startSecond,
      double endFirst,
      double endSecond,
      double radius,
      boolean ccw) {
    double first = endFirst - startFirst;
    double second = endSecond - startSecond;
    double chord = distance(first, second);
    double height = radius * radius - chord * chord / 4;
    if (chord == 0 || height < -TOLERANCE * Math.abs(radius)) {
      return false;
    }
    double side = Math.sqrt(Math.max(0, height)) / chord;
    if (ccw != radius > 0) {
      side = -side;
    }
    double toCentreFirst = first / 2 - side * second;
    double toCentreSecond = second / 2 + side * first;
    return about(startFirst, startSecond, endFirst, endSecond, toCentreFirst, toCentreSecond, ccw);
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
    include(bounds, firstAxis, secondAxis, 1, 0);
    include(bounds, firstAxis, secondAxis, 0, 1);
    include(bounds, firstAxis, secondAxis, -1, 0);
    include(bounds, firstAxis, secondAxis, 0, -1);
  }

  private void include(Bounds bounds, int firstAxis, int secondAxis, double first, double second) {
    double fromStart = fromFirst * second - fromSecond * first;
    double toEnd = first * toSecond - second * toFirst;
    boolean behindStart = sweep > 0 ? fromStart >= 0 : fromStart <= 0;
    boolean beforeEnd = sweep > 0 ? toEnd >= 0 : toEnd <= 0;
    boolean passed =
        Math.abs(sweep) <= Math.PI ? behindStart && beforeEnd : behindStart || beforeEnd;
    if (passed) {
      bounds.include(firstAxis, centreFirst + radius * first);
      bounds.include(secondAxis, centreSecond + radius * second);
    }
  }
}
