package dev.kilnledger.costing.uncertainty;

/** A figure that a statement of n parts answers with. */
public enum CashFigure {
  /** The cash for the first part: whole packs and everything not owned. */
  FIRST_PART("first part"),
  /** The cash for part n alone. */
  LAST_PART("last part"),
  /** The cash for parts 1 to n. */
  ALL_PARTS("all parts"),
  /** The cash for parts 1 to n, divided by n. */
  AVERAGE("average per part"),
  /** What a part uses up in the long run, whatever is bought for it: smooth, without packs. */
  USAGE("usage per part");

  private final String words;

  CashFigure(String words) {
    this.words = words;
  }

  /** {@return the figure for people, lower case} */
  public String words() {
    return words;
  }
}
