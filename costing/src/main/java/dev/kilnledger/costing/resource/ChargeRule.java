package dev.kilnledger.costing.resource;

/** What a charge costs that is not full. */
public enum ChargeRule {
  /** A started charge counts as a whole firing, from its first part on. */
  WHOLE("whole firings"),
  /** Other work fills the room that is left and pays its share: n parts take n / p firings. */
  SHARED("shared firings");

  private final String words;

  ChargeRule(String words) {
    this.words = words;
  }

  /** {@return the rule for people, lower case} */
  public String words() {
    return words;
  }
}
