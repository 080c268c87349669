package dev.kilnledger.costing.offer;

/** To which packs of an order the price of a break applies. */
public enum BreakRule {
  /** To all packs of the order, from the first on, as soon as the order reaches the break. */
  ALL_UNITS("on all packs"),
  /** To the packs from the break on; those before keep the price before. */
  INCREMENTAL("on the packs from there on");

  private final String words;

  BreakRule(String words) {
    this.words = words;
  }

  /** {@return the rule in words, such as "on all packs"} */
  public String words() {
    return words;
  }
}
