package dev.kilnledger.costing.offer;

/** Whether a price holds the sales or value added tax. */
public enum Tax {
  /** The price holds the tax. */
  INCLUDED("included"),
  /** The tax comes on top of the price. */
  EXCLUDED("excluded"),
  /** The offer does not say. */
  UNKNOWN("unknown");

  private final String words;

  Tax(String words) {
    this.words = words;
  }

  /** {@return the word for people, lower case} */
  public String words() {
    return words;
  }
}
