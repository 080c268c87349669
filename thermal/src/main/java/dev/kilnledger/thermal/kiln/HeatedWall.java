package dev.kilnledger.thermal.kiln;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.WallLayer;
import java.util.Arrays;
import java.util.List;

/**
 * A chamber and its wall as a chain of nodes: node 0 is the chamber with the charge and the inner
 * face, the last one is the skin. Finite volumes about the nodes, layers meeting at nodes, second
 * order in space. In time TR-BDF2 with gamma = 2 - sqrt 2 (Bank et al., IEEE Trans. Electron
 * Devices 32 (1985) 1992; Hosea and Shampine, Appl. Numer. Math. 20 (1996) 21): second order,
 * L-stable. Heat flows are summed with the weights of the scheme, so that what goes in equals what
 * goes out and what is stored, to rounding.
 */
final class HeatedWall {
  private static final int CELLS_IN_A_LAYER = 60;
  private static final double GAMMA = 2 - Math.sqrt(2);
  private static final double OUTER_WEIGHT = Math.sqrt(2) / 4;
  private static final double INNER_WEIGHT = GAMMA / 2; // of the end, and of the implicit solves

  private final WallConduction conduction;
  private final double[] capacity; // J/K
  private final double[] wallCapacity; // J/K, without the charge
  private final double film; // W/K
  private final double ambient;
  private final int layers;

  private double[] temperatures;
  private double energyIn;
  private double energyLost;

  /**
   * A wall at one temperature.
   *
   * @param chargeCapacity J/K
   * @param ambient K
   * @param start K
   */
  HeatedWall(Kiln kiln, double chargeCapacity, double ambient, double start) {
    List<WallLayer> wall = kiln.wall();
    double area = kiln.innerSurface().si();
    this.layers = wall.size();
    int cells = layers * CELLS_IN_A_LAYER;
    this.wallCapacity = new double[cells + 1];
    for (int i = 0; i < cells; i++) {
      WallLayer layer = wall.get(i / CELLS_IN_A_LAYER);
      double width = layer.thickness().si() / CELLS_IN_A_LAYER;
      double half = layer.density().si() * layer.heatCapacity().si() * area * width / 2;
      wallCapacity[i] += half;
      wallCapacity[i + 1] += half;
    }
    this.capacity = wallCapacity.clone();
    capacity[0] += chargeCapacity;
    this.film = kiln.outsideFilm().si() * area;
    this.ambient = ambient;
    this.conduction = WallConduction.of(kiln, CELLS_IN_A_LAYER, capacity, ambient);
    this.temperatures = new double[cells + 1];
    Arrays.fill(temperatures, start);
  }

  private HeatedWall(HeatedWall other) {
    this.conduction = other.conduction;
    this.wallCapacity = other.wallCapacity;
    this.capacity = other.capacity;
    this.film = other.film;
    this.ambient = other.ambient;
    this.layers = other.layers;
    this.temperatures = other.temperatures.clone();
    this.energyIn = other.energyIn;
    this.energyLost = other.energyLost;
  }

  HeatedWall copy() {
    return new HeatedWall(this);
  }

  double chamber() {
    return temperatures[0];
  }

  double skin() {
    return temperatures[temperatures.length - 1];
  }

  /** What the elements gave since the start, J. */
  double energyIn() {
    return energyIn;
  }

  /** What the skin gave to the room since the start, J. */
  double energyLost() {
    return energyLost;
  }

  /** The heat in each layer above a temperature it began with, J. */
  double[] stored(double start) {
    double[] stored = new double[layers];
    for (int i = 0; i < temperatures.length - 1; i++) {
      int layer = i / CELLS_IN_A_LAYER;
      double mean = (temperatures[i] + temperatures[i + 1]) / 2 - start;
      stored[layer] += layerCellCapacity(layer) * mean;
    }
    return stored;
  }

  /** A cell's capacity from the node in the middle of its layer, J/K. */
  private double layerCellCapacity(int layer) {
    return wallCapacity[layer * CELLS_IN_A_LAYER + CELLS_IN_A_LAYER / 2];
  }

  /** Heats with a power, W, over a time, s. */
  void heat(double power, double time) {
    double[] start = temperatures;
    double[] flowAtStart = conduction.flows(start);
    double[] right = new double[start.length];
    double implicit = INNER_WEIGHT * time;
    for (int i = 0; i < right.length; i++) {
      right[i] = capacity[i] * start[i] + implicit * flowAtStart[i];
    }
    right[0] += 2 * implicit * power;
    double[] middle = conduction.solve(right, implicit, false, 0, start);
    endStep(start, middle, implicit, power, false, 0);
    energyIn += power * time;
    addLoss(start, middle, time);
  }

  /**
   * Leads the chamber to a temperature, K, along a straight line over a time, s.
   *
   * @return the mean power it takes, W, which may be less than zero
   */
  double lead(double to, double time) {
    double[] start = temperatures;
    double from = start[0];
    double[] flowAtStart = conduction.flows(start);
    double[] right = new double[start.length];
    double implicit = INNER_WEIGHT * time;
    for (int i = 0; i < right.length; i++) {
      right[i] = capacity[i] * start[i] + implicit * flowAtStart[i];
    }
    double[] middle = conduction.solve(right, implicit, true, from + GAMMA * (to - from), start);
    endStep(start, middle, implicit, 0, true, to);
    double intoWall = time * conduction.intoWall(start, middle, temperatures);
    double energy = capacity[0] * (to - from) + intoWall;
    energyIn += energy;
    addLoss(start, middle, time);
    return energy / time;
  }

  private void endStep(
      double[] start, double[] middle, double implicit, double power, boolean led, double to) {
    double ofMiddle = 1 / (GAMMA * (2 - GAMMA));
    double ofStart = (1 - GAMMA) * (1 - GAMMA) * ofMiddle;
    double[] right = new double[start.length];
    for (int i = 0; i < right.length; i++) {
      right[i] = capacity[i] * (ofMiddle * middle[i] - ofStart * start[i]);
    }
    right[0] += implicit * power;
    right[right.length - 1] += implicit * film * ambient;
    temperatures = conduction.solve(right, implicit, led, to, middle);
  }

  private void addLoss(double[] start, double[] middle, double time) {
    int skin = temperatures.length - 1;
    energyLost += time * film * (weighted(start[skin], middle[skin], temperatures[skin]) - ambient);
  }

  static double weighted(double start, double middle, double end) {
    return OUTER_WEIGHT * (start + middle) + INNER_WEIGHT * end;
  }
}
