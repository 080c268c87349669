package dev.kilnledger.costing.resource;

/** What uses a resource up. */
public enum Driver {
  /** Each part made. */
  PART("part", "n"),
  /** Each firing, from the first part of its charge on. */
  FIRING("firing", "ceil(n / parts per firing)");

  private final String word;
  private final String count;

  Driver(String word, String count) {
    this.word = word;
    this.count = count;
  }

  /** {@return the word for people, in the singular} */
  public String word() {
    return word;
  }

  /** {@return the formula of how often it has happened through part n} */
  public String count() {
    return count;
  }

  long partsPerEvent(int partsPerFiring) {
    return this == PART ? 1 : partsPerFiring;
  }
}
