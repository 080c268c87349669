package dev.kilnledger.core.part;

/** The printer's axes: x and y in the layer, z across the layers. */
public enum PrintAxis {
  /** In the layer. */
  X,
  /** In the layer, square to x. */
  Y,
  /** Across the layers. */
  Z
}
