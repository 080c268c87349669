package dev.kilnledger.costing.uncertainty;

/** Why a simulation has ended. */
public enum Ending {
  /** The fixed number of trials was made. */
  ALL_MADE("all made"),
  /** Further trials would not change the digits asked for. */
  STABLE("stable to the digits asked for"),
  /** The most trials were made, and the result is not stable to the digits asked for. */
  NOT_STABLE("not stable to the digits asked for"),
  /** The thread was interrupted. */
  INTERRUPTED("interrupted");

  private final String words;

  Ending(String words) {
    this.words = words;
  }

  /** {@return the ending for people, lower case} */
  public String words() {
    return words;
  }
}
