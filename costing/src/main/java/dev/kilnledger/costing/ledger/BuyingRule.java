package dev.kilnledger.costing.ledger;

/** When packs are bought. */
public enum BuyingRule {
  /** Each part causes the packs that its own shortage makes necessary. */
  AS_NEEDED("as needed");

  private final String words;

  BuyingRule(String words) {
    this.words = words;
  }

  /** {@return the rule for people, lower case} */
  public String words() {
    return words;
  }
}
