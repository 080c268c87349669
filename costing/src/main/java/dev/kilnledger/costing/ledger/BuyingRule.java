package dev.kilnledger.costing.ledger;

/** When packs are bought. */
public enum BuyingRule {
  /** Each part causes the packs that its own shortage makes necessary. */
  AS_NEEDED("as needed"),
  /** All packs for the n parts of a statement are bought at the start, with the first of them. */
  PLANNED_FOR_N("planned for n");

  private final String words;

  BuyingRule(String words) {
    this.words = words;
  }

  /** {@return the rule for people, lower case} */
  public String words() {
    return words;
  }
}
