package dev.kilnledger.costing.outfit;

/** Why an option is in no outfit that is recommended. */
public enum RejectionReason {
  /** It reaches no aim, whatever stands beside it, or keeps a required one from being reached. */
  FAILS_CHECKS,
  /** What it requires cannot stand beside it. */
  NOT_ALLOWED,
  /** The cheapest outfit with it costs more than the budget. */
  OVER_BUDGET,
  /** Another outfit does as much or more for no more money. */
  BEATEN
}
