package dev.kilnledger.core.gcode;

import static dev.kilnledger.units.Amounts.millimetres;

import dev.kilnledger.core.part.Extent;
import java.util.Optional;

/** A box that grows, in millimetres. */
final class Bounds {
  private final double[] low = new double[3];
  private final double[] high = new double[3];

  Bounds() {
    clear();
  }

  void clear() {
    for (int axis = 0; axis < 3; axis++) {
      low[axis] = Double.POSITIVE_INFINITY;
      high[axis] = Double.NEGATIVE_INFINITY;
    }
  }

  void include(double x, double y, double z) {
    include(0, x);
    include(1, y);
    include(2, z);
  }

  void include(int axis, double value) {
    if (value < low[axis]) {
      low[axis] = value;
    }
    if (value > high[axis]) {
      high[axis] = value;
    }
  }

  Optional<Extent> extent() {
    return low[0] > high[0]
        ? Optional.empty()
        : Optional.of(
            Extent.builder()
                .lowX(millimetres(low[0]))
                .lowY(millimetres(low[1]))
                .lowZ(millimetres(low[2]))
                .highX(millimetres(high[0]))
                .highY(millimetres(high[1]))
                .highZ(millimetres(high[2]))
                .build());
  }
}
