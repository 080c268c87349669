package dev.kilnledger.examples.report;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jfree.data.xy.XYSeries;

/**
 * Points to be joined by lines, in order of x. A model tells its curves point by point, thousands
 * of them; drawn are those without which the line would move visibly (Ramer, Douglas and Peucker).
 */
final class Curve {
  private final double[] x;
  private final double[] y;

  Curve(double[] x, double[] y) {
    this.x = x.clone();
    this.y = y.clone();
  }

  /** The places across. */
  double[] x() {
    return x.clone();
  }

  /** The places up. */
  double[] y() {
    return y.clone();
  }

  static <P> Curve of(List<P> points, ToDoubleFunction<P> x, ToDoubleFunction<P> y) {
    return new Curve(
        points.stream().mapToDouble(x).toArray(), points.stream().mapToDouble(y).toArray());
  }

  /** The points that keep the line within a tolerance of y. */
  Curve thinned(double tolerance) {
    BitSet kept = new BitSet(x.length);
    kept.set(0);
    kept.set(x.length - 1);
    Deque<int[]> spans = new ArrayDeque<>();
    spans.push(new int[] {0, x.length - 1});
    while (!spans.isEmpty()) {
      int[] span = spans.pop();
      int farthest = farthest(span[0], span[1], tolerance);
      if (farthest > 0) {
        kept.set(farthest);
        spans.push(new int[] {span[0], farthest});
        spans.push(new int[] {farthest, span[1]});
      }
    }
    return new Curve(
        kept.stream().mapToDouble(i -> x[i]).toArray(),
        kept.stream().mapToDouble(i -> y[i]).toArray());
  }

  /** The point farthest above or below the line from one to another, or 0 if all are near. */
  private int farthest(int from, int to, double tolerance) {
    int farthest = 0;
    double most = tolerance;
    for (int i = from + 1; i < to; i++) {
      double share = x[to] == x[from] ? 0 : (x[i] - x[from]) / (x[to] - x[from]);
      double distance = Math.abs(y[i] - y[from] - share * (y[to] - y[from]));
      if (distance > most) {
        most = distance;
        farthest = i;
      }
    }
    return farthest;
  }

  /** The corners of the area between this curve and another, as pairs of x and y. */
  double[] around(Curve other) {
    double[] corners = new double[2 * (x.length + other.x.length)];
    int at = 0;
    for (int i = 0; i < x.length; i++) {
      corners[at++] = x[i];
      corners[at++] = y[i];
    }
    for (int i = other.x.length - 1; i >= 0; i--) {
      corners[at++] = other.x[i];
      corners[at++] = other.y[i];
    }
    return corners;
  }

  XYSeries series(String name) {
    XYSeries series = new XYSeries(name, false, true);
    addTo(series);
    return series;
  }

  void addTo(XYSeries series) {
    for (int i = 0; i < x.length; i++) {
      series.add(x[i], y[i], false);
    }
  }
}
