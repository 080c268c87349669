package dev.kilnledger.thermal.chance;

/** What is not known exactly of a firing. */
public enum FiringInput {
  /** How much hotter the charge's place is than that of the thermocouple, in K. */
  KILN_OFFSET("the offset of the kiln"),
  /** How much too high the thermocouple reads when new, as a share of its tolerance. */
  THERMOCOUPLE("the tolerance of the thermocouple"),
  /** How much higher it reads than when it was new, in K. */
  DRIFT("the drift of the thermocouple"),
  /** The conductivity of the packing over the one expected. */
  PACKING_CONDUCTIVITY("the conductivity of the packing"),
  /** The metal's share of the feedstock's mass. */
  METAL_SHARE("the metal in the feedstock"),
  /** Which of several kinetics of the binder is right. */
  KINETICS("the choice among the kinetics of the binder"),
  /** The activation energy of the binder over the one stated. */
  BINDER_ENERGY("the activation energy of the binder"),
  /** The activation energy of sintering; with it move, by their correlation, the other numbers. */
  SINTERING_ENERGY("the activation energy of sintering"),
  /** Where the sintering curve lies, for a given activation energy. */
  CURVE_LOCATION("the place of the sintering curve"),
  /** How wide the sintering curve is, for a given place. */
  CURVE_WIDTH("the width of the sintering curve"),
  /** The density before sintering, for all else given. */
  INITIAL_DENSITY("the density before sintering"),
  /** By how much one part differs from the sintering curve. */
  DENSITY_SCATTER("the scatter about the sintering curve");

  private final String words;

  FiringInput(String words) {
    this.words = words;
  }

  /** {@return the input for people, lower case} */
  public String words() {
    return words;
  }
}
