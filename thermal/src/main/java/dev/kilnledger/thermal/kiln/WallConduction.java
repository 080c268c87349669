package dev.kilnledger.thermal.kiln;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.WallLayer;

/** How heat goes through a wall from node to node, node 0 the chamber, the last the skin; SI. */
interface WallConduction {
  /** The conduction through a kiln's wall, of cells of equal width in each layer. */
  static WallConduction of(Kiln kiln, int cellsInALayer, double[] capacity, double ambient) {
    return kiln.wall().stream().allMatch(WallLayer::isConstant)
        ? new ConstantConduction(kiln, cellsInALayer, capacity, ambient)
        : new SlopedConduction(kiln, cellsInALayer, capacity, ambient);
  }

  /**
   * What flows into each node from its neighbours and, at the skin, from the room, W; the room
   * counted twice, once for the start and once for the middle of the step.
   */
  double[] flows(double[] t);

  /** The mean of what goes from the chamber into the wall over a step, W, by its weights. */
  double intoWall(double[] start, double[] middle, double[] end);

  /**
   * Solves C t - implicit x (flows at t, without the room) = right.
   *
   * @param led whether the chamber's temperature is given
   * @param chamber that temperature
   * @param near temperatures near to the solution
   */
  double[] solve(double[] right, double implicit, boolean led, double chamber, double[] near);
}
