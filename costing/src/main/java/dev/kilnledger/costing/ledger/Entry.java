package dev.kilnledger.costing.ledger;

/** What a line stands for. */
public enum Entry {
  /** Whole packs bought. */
  BOUGHT("bought"),
  /** A measure paid as it is used. */
  METERED("metered"),
  /** A share of the price of equipment, charged to the parts and not paid in cash. */
  DEPRECIATED("depreciated"),
  /** What a supplier charges for sending an order. */
  SHIPPED("shipped"),
  /** The share of a pack that a part uses up in the long run, whatever is bought for it. */
  USED("used"),
  /** Packs, or shares of them, that were bought and are left. */
  LEFT("left");

  private final String words;

  Entry(String words) {
    this.words = words;
  }

  /** {@return the word for people, lower case} */
  public String words() {
    return words;
  }
}
