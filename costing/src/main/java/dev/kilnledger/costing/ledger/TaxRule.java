package dev.kilnledger.costing.ledger;

/** What becomes of the sales or value added tax in a ledger. */
public enum TaxRule {
  /** Prices enter as they are offered, with tax or without. */
  AS_PRICED("as priced"),
  /** Tax is added to the prices that come without it: what somebody pays who cannot recover it. */
  ADDED("added to prices without tax"),
  /** Tax is taken out of the prices that hold it: the cost of somebody who recovers it. */
  DEDUCTED("deducted from prices with tax");

  private final String words;

  TaxRule(String words) {
    this.words = words;
  }

  /** {@return the rule for people, lower case} */
  public String words() {
    return words;
  }
}
