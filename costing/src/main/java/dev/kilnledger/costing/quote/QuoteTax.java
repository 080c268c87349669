package dev.kilnledger.costing.quote;

/** How tax is put on the lines of a quote. Which one applies is for the caller to know. */
public enum QuoteTax {
  /** Each line's net is rounded, its tax is rounded, and the tax is the sum of the lines'. */
  PER_LINE("tax on each line"),
  /**
   * Each line's net is rounded, and the tax on their sum is rounded once, as EN 16931 has it; the
   * lines show their share of it by largest remainder.
   */
  ON_SUM("tax on the sum"),
  /** Each line's gross is rounded, its net is taken out of it, and the tax is the difference. */
  FROM_GROSS("tax taken out of each line's gross");

  private final String words;

  QuoteTax(String words) {
    this.words = words;
  }

  /** {@return the policy in words} */
  public String words() {
    return words;
  }
}
