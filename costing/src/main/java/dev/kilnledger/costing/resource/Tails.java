package dev.kilnledger.costing.resource;

/** What becomes of the rest of a pack that is too small for one more use. */
public enum Tails {
  /** It is joined to the next pack, so nothing is lost. */
  JOINED,
  /** It is left over: a 500 g spool gives 3 parts of 128 g and strands 116 g. */
  STRANDED
}
