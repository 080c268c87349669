package dev.kilnledger.core.internal.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Equal rectangles in a circle, in rows across it, each row all straight or all turned.
 *
 * <p>Exact among such rows: the nearer a row lies to the middle the more it holds, so rows lie gap
 * by gap; and the whole stack can be shifted, without losing any, until one row touches the circle
 * with both its upper corners (or, which is the mirror image, its lower ones). So for every such
 * row the best stack above it and below it is found by dynamic programming over how many straight
 * and turned rows lie between. Among all arrangements it is a lower bound: parts turned by other
 * angles or standing between rows may do better.
 */
public final class RectanglesInCircle {
  private final double radius;
  private final double gap;

  /** Length in the row and height of the row, straight and turned. */
  private final double[][] kinds;

  private RectanglesInCircle(double radius, double length, double width, double gap) {
    this.radius = radius;
    this.gap = gap;
    this.kinds =
        length == width
            ? new double[][] {{length, width}}
            : new double[][] {{length, width}, {width, length}};
  }

  /**
   * The most rectangles found.
   *
   * @param radius the radius of the circle in which they may lie
   * @param length their length
   * @param width their width
   * @param gap the least distance between two of them
   * @return the rectangles
   */
  public static Layer most(double radius, double length, double width, double gap) {
    if (Math.hypot(length, width) / 2 > radius + Layer.ROUNDING) {
      return Layer.none();
    }
    double dilated = radius + gap / 2;
    return Layer.found(
        new RectanglesInCircle(radius + Layer.ROUNDING, length, width, gap).search(),
        Layer.byArea(Math.PI * dilated * dilated, length, width, gap),
        "rows across the circle");
  }

  private List<Spot> search() {
    List<Row> best = List.of();
    for (int kind = 0; kind < kinds.length; kind++) {
      double height = kinds[kind][1];
      for (int count = 1; length(kind, count) <= 2 * radius; count++) {
        double top = chord(length(kind, count));
        if (top >= height / 2) {
          List<Row> rows = new ArrayList<>(new Stack(top + gap).rows());
          for (Row row : new Stack(height + gap - top).rows()) {
            rows.add(new Row(row.kind, -row.bottom - kinds[row.kind][1]));
          }
          rows.add(new Row(kind, top - height));
          best = total(rows) > total(best) ? rows : best;
        }
      }
    }
    return best.stream().flatMap(row -> spots(row).stream()).toList();
  }

  private int total(List<Row> rows) {
    return rows.stream().mapToInt(row -> count(row.kind, row.bottom)).sum();
  }

  private double length(int kind, int count) {
    return count * kinds[kind][0] + (count - 1) * gap;
  }

  /** How far from the middle a chord of a length lies. */
  private double chord(double length) {
    return Math.sqrt(Math.max(0, radius * radius - length * length / 4));
  }

  private int count(int kind, double bottom) {
    double farthest = Math.max(Math.abs(bottom), Math.abs(bottom + kinds[kind][1]));
    if (farthest > radius) {
      return 0;
    }
    double chord = 2 * Math.sqrt(radius * radius - farthest * farthest);
    return Layer.times(chord + gap, kinds[kind][0] + gap);
  }

  private List<Spot> spots(Row row) {
    int count = count(row.kind, row.bottom);
    double step = kinds[row.kind][0] + gap;
    List<Spot> spots = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      spots.add(
          new Spot(
              (i - (count - 1) / 2.0) * step, row.bottom + kinds[row.kind][1] / 2, row.kind == 1));
    }
    return spots;
  }

  private static final class Row {
    private final int kind;
    private final double bottom;

    Row(int kind, double bottom) {
      this.kind = kind;
      this.bottom = bottom;
    }
  }

  /** The best rows from a height upwards. */
  private final class Stack {
    private final double from;
    private final int[][] most;

    Stack(double from) {
      this.from = from;
      int straight = rowsOf(0);
      int turned = kinds.length > 1 ? rowsOf(1) : 0;
      this.most = new int[straight + 1][turned + 1];
      for (int[] row : most) {
        Arrays.fill(row, -1);
      }
    }

    private int rowsOf(int kind) {
      return Math.max(0, Layer.times(radius - from, kinds[kind][1] + gap)) + 1;
    }

    private double at(int straight, int turned) {
      return from
          + straight * (kinds[0][1] + gap)
          + (turned == 0 ? 0 : turned * (kinds[1][1] + gap));
    }

    /** The most that fit when so many rows of each kind lie below. */
    private int most(int straight, int turned) {
      if (most[straight][turned] < 0) {
        int best = 0;
        for (int kind = 0; kind < kinds.length; kind++) {
          best = Math.max(best, with(kind, straight, turned));
        }
        most[straight][turned] = best;
      }
      return most[straight][turned];
    }

    private int with(int kind, int straight, int turned) {
      int here = count(kind, at(straight, turned));
      return here == 0 ? 0 : here + most(straight + 1 - kind, turned + kind);
    }

    List<Row> rows() {
      List<Row> rows = new ArrayList<>();
      int straight = 0;
      int turned = 0;
      while (most(straight, turned) > 0) {
        int kind = with(0, straight, turned) == most(straight, turned) ? 0 : 1;
        rows.add(new Row(kind, at(straight, turned)));
        straight += 1 - kind;
        turned += kind;
      }
      return rows;
    }
  }
}
