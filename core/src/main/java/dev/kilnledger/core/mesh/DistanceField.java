package dev.kilnledger.core.mesh;

import java.util.BitSet;

/**
 * The largest distance of a cube inside from the nearest one outside, centre to centre: the exact
 * Euclidean distance transform by lower envelopes of parabolas, one axis after the other
 * (Felzenszwalb and Huttenlocher, Theory of Computing 8 (2012) 415, from memory).
 */
final class DistanceField {
  private final int[] count;
  private final float[] squares;

  DistanceField(VoxelBody body) {
    count = new int[] {body.count(0), body.count(1), body.count(2)};
    squares = new float[count[0] * count[1] * count[2]];
    BitSet inside = body.inside();
    // further than any distance, and exact in a float as all squares are
    float far = 1 << 23;
    for (int i = 0; i < squares.length; i++) {
      squares[i] = inside.get(i) ? far : 0;
    }
  }

  /** The largest distance in sides of a cube; zero if nothing is inside. */
  double largest() {
    int plane = count[1] * count[2];
    Line line = new Line(Math.max(count[0], Math.max(count[1], count[2])));
    for (int i = 0; i < count[0] * count[1]; i++) {
      line.transform(squares, i * count[2], 1, count[2]);
    }
    for (int i = 0; i < count[0]; i++) {
      for (int k = 0; k < count[2]; k++) {
        line.transform(squares, i * plane + k, count[2], count[1]);
      }
    }
    for (int i = 0; i < plane; i++) {
      line.transform(squares, i, plane, count[0]);
    }
    float largest = 0;
    for (float square : squares) {
      largest = Math.max(largest, square);
    }
    return Math.sqrt(largest);
  }

  /** One row of cubes along an axis. */
  private static final class Line {
    private final double[] heights;
    private final int[] vertices;
    private final double[] borders;

    Line(int longest) {
      heights = new double[longest];
      vertices = new int[longest];
      borders = new double[longest + 1];
    }

    void transform(float[] values, int first, int step, int length) {
      int last = -1;
      for (int q = 0; q < length; q++) {
        heights[q] = values[first + q * step];
        double border = Double.NEGATIVE_INFINITY;
        while (last >= 0) {
          int v = vertices[last];
          border = (heights[q] + (double) q * q - heights[v] - (double) v * v) / (2.0 * (q - v));
          if (border > borders[last]) {
            break;
          }
          last--;
          border = Double.NEGATIVE_INFINITY;
        }
        last++;
        vertices[last] = q;
        borders[last] = border;
      }
      int at = 0;
      for (int q = 0; q < length; q++) {
        while (at < last && borders[at + 1] < q) {
          at++;
        }
        int v = vertices[at];
        values[first + q * step] = (float) (heights[v] + (double) (q - v) * (q - v));
      }
    }
  }
}
