package dev.kilnledger.costing.yield;

/** How failures enter a ledger. */
public enum FailureRule {
  /** Whole parts and charges are started so that on average enough come out: ceil(n / yield). */
  PLANNED_STARTS("planned starts"),
  /** The mean number of parts is started, n / yield, a fraction of a part included. */
  EXPECTED_VALUES("expected values"),
  /** Failures are drawn at random, many times over. */
  AT_RANDOM("at random");

  private final String words;

  FailureRule(String words) {
    this.words = words;
  }

  /** {@return the rule for people, lower case} */
  public String words() {
    return words;
  }
}
