package dev.kilnledger.thermal.chance;

/** What has to happen for a firing to come out. */
public enum FiringEvent {
  /** The core is hot enough for as long as asked. */
  CORE_SOAKED("the core gets its soak", ChanceFinding.CORE_SOAK_CHANCE),
  /** Less than 1 % of the binder is left at the end of debinding. */
  BINDER_GONE("the binder is gone by the end of debinding", ChanceFinding.BINDER_GONE_CHANCE),
  /** The part gets as dense as wanted. */
  DENSITY_REACHED("the density wanted is reached", ChanceFinding.DENSITY_CHANCE),
  /** No place in the kiln gets as hot as the metal's solidus; where melt is meant, its liquidus. */
  METAL_SOLID("the metal stays solid", ChanceFinding.SOLID_CHANCE);

  private final String words;
  private final ChanceFinding code;

  FiringEvent(String words, ChanceFinding code) {
    this.words = words;
    this.code = code;
  }

  /** {@return the event for people: "the core gets its soak"} */
  public String words() {
    return words;
  }

  ChanceFinding code() {
    return code;
  }
}
