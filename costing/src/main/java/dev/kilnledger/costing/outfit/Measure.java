package dev.kilnledger.costing.outfit;

/** What counts in comparing outfits, beside their cost and the aims they reach. */
public enum Measure {
  /** The largest part of an aim's proportions that printer and crucible hold. */
  ENVELOPE,
  /** How many parts of an aim one firing holds. */
  PARTS_PER_FIRING
}
