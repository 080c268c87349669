package dev.kilnledger.core.mesh;

import java.util.BitSet;
import java.util.List;

/**
 * A closed mesh as small cubes, inside or not: each facet turns over all cubes above it in the
 * columns that it covers, so that at the end those inside are turned over an odd number of times.
 *
 * <p>Which side of an edge a column lies on is always computed from the edge's lower end to its
 * upper one, so that two facets that share an edge never both have a column on it, or neither.
 */
final class VoxelBody implements FacetConsumer {
  /** So that the cubes of a needle or a sheet do not become too many. */
  private static final double LONGEST_ROW = 2000;

  private final double side;
  private final double[] low;
  private final int[] count = new int[3];
  private final BitSet turned;
  private int brokenColumns;

  /** The cubes of a box, about so many of them, with a rim of one around it. */
  VoxelBody(List<Reach> box, double cubes) {
    double volume = 1;
    double longest = 0;
    for (Reach reach : box) {
      volume *= reach.length();
      longest = Math.max(longest, reach.length());
    }
    side = Math.max(Math.cbrt(volume / cubes), longest / LONGEST_ROW);
    low = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      Reach reach = box.get(axis);
      count[axis] = (int) Math.ceil(reach.length() / side) + 2;
      low[axis] = reach.low() - (count[axis] * side - reach.length()) / 2;
    }
    turned = new BitSet(count[0] * count[1] * count[2]);
  }

  double side() {
    return side;
  }

  int count(int axis) {
    return count[axis];
  }

  private double centre(int axis, int index) {
    return low[axis] + (index + 0.5) * side;
  }

  private int firstAbove(int axis, double value) {
    int index = (int) Math.ceil((value - low[axis]) / side - 0.5);
    return Math.max(0, Math.min(count[axis], index));
  }

  @Override
  public void facet(
      double x1,
      double y1,
      double z1,
      double x2,
      double y2,
      double z2,
      double x3,
      double y3,
      double z3) {
    double nx = (y2 - y1) * (z3 - z1) - (z2 - z1) * (y3 - y1);
    double ny = (z2 - z1) * (x3 - x1) - (x2 - x1) * (z3 - z1);
    double nz = (x2 - x1) * (y3 - y1) - (y2 - y1) * (x3 - x1);
    if (nz == 0) {
      return;
    }
    // one column more on every side: what decides is the side of the edges alone
    int toX = Math.min(count[0], firstAbove(0, Math.max(x1, Math.max(x2, x3))) + 1);
    int toY = Math.min(count[1], firstAbove(1, Math.max(y1, Math.max(y2, y3))) + 1);
    int fromX = Math.max(0, firstAbove(0, Math.min(x1, Math.min(x2, x3))) - 1);
    int fromY = Math.max(0, firstAbove(1, Math.min(y1, Math.min(y2, y3))) - 1);
    for (int i = fromX; i < toX; i++) {
      double x = centre(0, i);
      for (int j = fromY; j < toY; j++) {
        double y = centre(1, j);
        boolean left = isLeft(x, y, x1, y1, x2, y2);
        if (left == isLeft(x, y, x2, y2, x3, y3) && left == isLeft(x, y, x3, y3, x1, y1)) {
          double z = z1 - (nx * (x - x1) + ny * (y - y1)) / nz;
          int k = firstAbove(2, z);
          if (k < count[2]) {
            turned.flip(index(i, j, k));
          }
        }
      }
    }
  }

  private static boolean isLeft(double x, double y, double ax, double ay, double bx, double by) {
    boolean upwards = ax < bx || (ax == bx && ay < by);
    return upwards ? left(x, y, ax, ay, bx, by) : !left(x, y, bx, by, ax, ay);
  }

  private static boolean left(double x, double y, double ax, double ay, double bx, double by) {
    return (bx - ax) * (y - ay) - (by - ay) * (x - ax) >= 0;
  }

  private int index(int i, int j, int k) {
    return (i * count[1] + j) * count[2] + k;
  }

  /** Turns the turning points into cubes; those of a column that never ends are left out. */
  BitSet inside() {
    BitSet inside = new BitSet(turned.size());
    for (int i = 0; i < count[0]; i++) {
      for (int j = 0; j < count[1]; j++) {
        int first = index(i, j, 0);
        int end = first + count[2];
        int from = turned.nextSetBit(first);
        while (from >= 0 && from < end) {
          int to = turned.nextSetBit(from + 1);
          if (to < 0 || to >= end) {
            brokenColumns++;
            inside.clear(first, end);
            break;
          }
          inside.set(from, to);
          from = turned.nextSetBit(to + 1);
        }
      }
    }
    return inside;
  }

  int brokenColumns() {
    return brokenColumns;
  }
}
