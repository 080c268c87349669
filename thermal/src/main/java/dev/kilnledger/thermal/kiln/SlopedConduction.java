package dev.kilnledger.thermal.kiln;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.WallLayer;
import dev.kilnledger.thermal.internal.ConductivityLine;

/**
 * Conduction through a wall whose conductivities change with temperature: from node to node flows
 * {@code A (K(T_i) - K(T_i+1)) / dx} with K the integral of k, which is exact for a straight line
 * in the steady state. Each implicit stage is solved by Newton's method, whose error is squared
 * from step to step: where the last one moved by less than 1e-7 K, what is left is below rounding.
 */
final class SlopedConduction implements WallConduction {
  private static final double SETTLED = 1e-7; // K
  private static final int MOST_ITERATIONS = 50;

  private final ConductivityLine[] lines; // of the cell from node i to i + 1
  private final double[] areaPerWidth; // m
  private final double[] capacity; // J/K
  private final double film; // W/K
  private final double ambient;

  SlopedConduction(Kiln kiln, int cellsInALayer, double[] capacity, double ambient) {
    double area = kiln.innerSurface().si();
    int cells = capacity.length - 1;
    this.lines = new ConductivityLine[cells];
    this.areaPerWidth = new double[cells];
    for (int i = 0; i < cells; i++) {
      WallLayer layer = kiln.wall().get(i / cellsInALayer);
      lines[i] = i % cellsInALayer == 0 ? new ConductivityLine(layer, kiln) : lines[i - 1];
      areaPerWidth[i] = area * cellsInALayer / layer.thickness().si();
    }
    this.capacity = capacity;
    this.film = kiln.outsideFilm().si() * area;
    this.ambient = ambient;
  }

  @Override
  public double[] flows(double[] t) {
    double[] flow = new double[t.length];
    for (int i = 0; i < lines.length; i++) {
      double heat = outwards(t, i);
      flow[i] -= heat;
      flow[i + 1] += heat;
    }
    flow[t.length - 1] += film * (2 * ambient - t[t.length - 1]);
    return flow;
  }

  private double outwards(double[] t, int i) {
    return areaPerWidth[i] * (lines[i].integral(t[i]) - lines[i].integral(t[i + 1]));
  }

  @Override
  public double intoWall(double[] start, double[] middle, double[] end) {
    return HeatedWall.weighted(outwards(start, 0), outwards(middle, 0), outwards(end, 0));
  }

  @Override
  public double[] solve(
      double[] right, double implicit, boolean led, double chamber, double[] near) {
    double[] t = near.clone();
    if (led) {
      t[0] = chamber;
    }
    for (int i = 0; i < MOST_ITERATIONS; i++) {
      if (correct(t, right, implicit, led) < SETTLED) {
        break;
      }
    }
    return t;
  }

  /** One step of Newton's method, in place. Returns the greatest correction, K. */
  private double correct(double[] t, double[] right, double implicit, boolean led) {
    int n = t.length;
    double[] above = new double[n];
    double[] open = new double[n];
    double fromInside = 0; // W
    double perInner = 0; // of what comes from inside: how it changes with the inner node, W/K
    double perOuter = 0; // and with the outer one, less than zero
    for (int i = 0; i < n; i++) {
      boolean skin = i == n - 1;
      double outwards = skin ? film * t[i] : outwards(t, i);
      double slope = skin ? film : areaPerWidth[i] * lines[i].at(t[i]);
      double slopeOfNext = skin ? 0 : -areaPerWidth[i] * lines[i].at(t[i + 1]);
      if (i == 0 && led) {
        above[0] = 0;
        open[0] = 0;
      } else {
        double below = i == 0 ? 0 : -implicit * perInner;
        double residual = right[i] - capacity[i] * t[i] + implicit * (fromInside - outwards);
        double pivot =
            capacity[i] + implicit * (slope - perOuter) - (i == 0 ? 0 : below * above[i - 1]);
        above[i] = implicit * slopeOfNext / pivot;
        open[i] = (residual - (i == 0 ? 0 : below * open[i - 1])) / pivot;
      }
      fromInside = outwards;
      perInner = slope;
      perOuter = slopeOfNext;
    }
    double greatest = 0;
    for (int i = n - 1; i >= 0; i--) {
      double correction = open[i] - (i < n - 1 ? above[i] * open[i + 1] : 0);
      open[i] = correction;
      t[i] += correction;
      greatest = Math.max(greatest, Math.abs(correction));
    }
    return greatest;
  }
}
