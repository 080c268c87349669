package dev.kilnledger.costing.resource;

/** How the price of equipment is charged to the parts that are made on it. */
public enum DepreciationMethod {
  /** In proportion to what is used of its life, until the salvage value is reached. */
  UNITS_OF_PRODUCTION("units of production"),
  /**
   * In equal yearly amounts over its life in years, which the parts of a year share: at a steady
   * yearly use the life is years x yearly use.
   */
  STRAIGHT_LINE("straight line"),
  /**
   * Each year a fixed share of the book value at its start, until the salvage value is reached; the
   * parts of a year share its charge.
   */
  DECLINING_BALANCE("declining balance");

  private final String words;

  DepreciationMethod(String words) {
    this.words = words;
  }

  /** {@return the method for people, lower case} */
  public String words() {
    return words;
  }
}
