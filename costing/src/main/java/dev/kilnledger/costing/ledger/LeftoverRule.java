package dev.kilnledger.costing.ledger;

/** What is worth what has been bought and is left over. */
public enum LeftoverRule {
  /** Nothing is deducted for it. */
  NOT_VALUED("not valued"),
  /**
   * The share of what all packs bought of the item have cost that it is of what they hold; what is
   * owned or stranded is worth nothing.
   */
  COST_SHARE("at its share of the cost"),
  /**
   * As at its share of the cost, but for what will not be used within the shelf life of its offer,
   * of the shortest where it came by several.
   */
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
