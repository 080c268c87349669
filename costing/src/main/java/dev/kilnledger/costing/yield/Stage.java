package dev.kilnledger.costing.yield;

/** The steps at which a part can fail, in the order in which it passes them. */
public enum Stage {
  /** Printing the green part, one at a time. */
  PRINT("printing", false),
  /** Burning the binder out, a charge at a time. */
  DEBIND("debinding", true),
  /** Sintering the brown part, a charge at a time. */
  SINTER("sintering", true);

  private final String words;
  private final boolean inCharges;

  Stage(String words, boolean inCharges) {
    this.words = words;
    this.inCharges = inCharges;
  }

  /** {@return the name for people, lower case} */
  public String words() {
    return words;
  }

  /** {@return whether parts pass it together, in a charge that can be lost as a whole} */
  public boolean inCharges() {
    return inCharges;
  }
}
