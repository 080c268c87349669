package dev.kilnledger.thermal.conduction;

import dev.kilnledger.thermal.profile.Profile;

/** A model of the heat that flows into a charge. */
public interface Conduction {
  /**
   * What the charge feels of a profile that the kiln follows.
   *
   * @param charge the charge
   * @param profile the temperature around it
   * @return temperatures over time, with findings
   * @throws IllegalArgumentException if the model cannot take the charge
   */
  CoreHistory forecast(Charge charge, Profile profile);
}
