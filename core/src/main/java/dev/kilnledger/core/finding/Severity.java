package dev.kilnledger.core.finding;

/** How much a finding matters, the least first. */
public enum Severity {
  /** The check was made and passed. */
  PASSED,
  /** Worth knowing; nothing has to change. */
  NOTE,
  /** The check could not be made, for lack of an input or of knowledge. */
  UNDETERMINED,
  /** May spoil the part or the equipment. */
  WARNING,
  /** Will spoil the part, or cannot be done at all. */
  STOP
}
