package dev.kilnledger.costing.yield;

/** What becomes of a part that has failed at a stage. */
public enum AfterFailure {
  /** It is lost with all that was spent on it, and another is printed. */
  SCRAPPED("scrapped"),
  /** It goes through the same stage again; nothing before that stage is repeated. */
  REPEATED("repeated");

  private final String words;

  AfterFailure(String words) {
    this.words = words;
  }

  /** {@return the word for people, lower case} */
  public String words() {
    return words;
  }
}
