package dev.kilnledger.costing.ledger;

/** What is worth what has been bought and is left over. */
public enum LeftoverRule {
  /** Nothing is deducted for it. */
  NOT_VALUED("not valued"),
  /** The share of its price that it is of a pack; what is owned or stranded is worth nothing. */
  COST_SHARE("at its share of the cost"),
  /** As at its share of the cost, but for what will not be used within its shelf life. */
  COST_SHARE_WITHIN_SHELF_LIFE("at its share of the cost within its shelf life");

  private final String words;

  LeftoverRule(String words) {
    this.words = words;
  }

  /** {@return the rule for people, lower case} */
  public String words() {
    return words;
  }
}
