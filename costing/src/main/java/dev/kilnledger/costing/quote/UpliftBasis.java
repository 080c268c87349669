package dev.kilnledger.costing.quote;

/** Of what an uplift is a share. */
public enum UpliftBasis {
  /** A share of the price: price = cost / (1 - margin). */
  MARGIN("margin"),
  /** A share of the cost: price = cost x (1 + markup). */
  MARKUP("markup");

  private final String words;

  UpliftBasis(String words) {
    this.words = words;
  }

  /** {@return the word for people} */
  public String words() {
    return words;
  }
}
