package dev.kilnledger.core.part;

/** What a part looks like from above, as printed. */
public enum Outline {
  /** Anything that its envelope holds. */
  RECTANGULAR,
  /**
   * Within the circle whose diameter is the envelope's greater side in the layer: discs, rings,
   * nuts.
   */
  ROUND
}
