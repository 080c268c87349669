package dev.kilnledger.thermal.kiln;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.WallLayer;
import org.jspecify.annotations.Nullable;

/** Conduction through a wall of constant conductivities: one elimination for steps of a length. */
final class ConstantConduction implements WallConduction {
  private final double[] conductance; // W/K, from node i to i + 1
  private final double[] capacity; // J/K
  private final double film; // W/K
  private final double ambient;
  private @Nullable Elimination whenLed;
  private @Nullable Elimination whenHeated;

  ConstantConduction(Kiln kiln, int cellsInALayer, double[] capacity, double ambient) {
    double area = kiln.innerSurface().si();
    this.conductance = new double[capacity.length - 1];
    for (int i = 0; i < conductance.length; i++) {
      WallLayer layer = kiln.wall().get(i / cellsInALayer);
      double width = layer.thickness().si() / cellsInALayer;
      conductance[i] = layer.conductivity().si() * area / width;
    }
    this.capacity = capacity;
    this.film = kiln.outsideFilm().si() * area;
    this.ambient = ambient;
  }

  @Override
  public double[] flows(double[] t) {
    double[] flow = new double[t.length];
    for (int i = 0; i < conductance.length; i++) {
      double heat = conductance[i] * (t[i] - t[i + 1]);
      flow[i] -= heat;
      flow[i + 1] += heat;
    }
    flow[t.length - 1] += film * (2 * ambient - t[t.length - 1]);
    return flow;
  }

  @Override
  public double intoWall(double[] start, double[] middle, double[] end) {
    return conductance[0]
        * HeatedWall.weighted(start[0] - start[1], middle[0] - middle[1], end[0] - end[1]);
  }

  @Override
  public double[] solve(
      double[] right, double implicit, boolean led, double chamber, double[] near) {
    Elimination elimination = elimination(implicit, led);
    double[] t = new double[right.length];
    t[0] = led ? chamber : right[0] * elimination.inverse[0];
    for (int i = 1; i < t.length; i++) {
      t[i] = (right[i] + implicit * conductance[i - 1] * t[i - 1]) * elimination.inverse[i];
    }
    for (int i = t.length - 2; i >= 0; i--) {
      t[i] -= elimination.above[i] * t[i + 1];
    }
    return t;
  }

  private Elimination elimination(double implicit, boolean led) {
    Elimination last = led ? whenLed : whenHeated;
    if (last != null && last.implicit == implicit) {
      return last;
    }
    Elimination next = new Elimination(implicit, led);
    if (led) {
      whenLed = next;
    } else {
      whenHeated = next;
    }
    return next;
  }

  /** The forward half of the tridiagonal solution, which steps of one length share. */
  private final class Elimination {
    private final double implicit;
    private final double[] above;
    private final double[] inverse;

    Elimination(double implicit, boolean led) {
      int n = capacity.length;
      this.implicit = implicit;
      this.above = new double[n];
      this.inverse = new double[n];
      inverse[0] = led ? 0 : 1 / (capacity[0] + implicit * conductance[0]);
      above[0] = -implicit * conductance[0] * inverse[0];
      for (int i = 1; i < n; i++) {
        double below = -implicit * conductance[i - 1];
        double outwards = i < n - 1 ? conductance[i] : film;
        inverse[i] =
            1 / (capacity[i] + implicit * (conductance[i - 1] + outwards) - below * above[i - 1]);
        above[i] = i < n - 1 ? -implicit * conductance[i] * inverse[i] : 0;
      }
    }
  }
}
