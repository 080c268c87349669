package dev.kilnledger.costing.resource;

/** When a piece whose life is not certain is replaced. */
public enum LifeRule {
  /** When it fails. */
  AT_FAILURE("at failure"),
  /** When it fails, or at a stated age if it lasts until then. */
  AT_AGE("at failure or a stated age"),
  /** When it fails, or at the age that makes each use cheapest on average. */
  AT_CHEAPEST_AGE("at failure or the cheapest age");

  private final String words;

  LifeRule(String words) {
    this.words = words;
  }

  /** {@return the rule for people, lower case} */
  public String words() {
    return words;
  }
}
