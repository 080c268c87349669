package dev.kilnledger.costing.outfit;

/** How many options of a group an outfit holds. */
public enum Choice {
  /** One of them. */
  EXACTLY_ONE("exactly one"),
  /** One of them or none. */
  AT_MOST_ONE("at most one"),
  /** Any of them, none and all included. */
  ANY_NUMBER("any number");

  private final String words;

  Choice(String words) {
    this.words = words;
  }

  /** {@return the rule in words, lower case} */
  public String words() {
    return words;
  }
}
