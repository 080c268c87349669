package dev.kilnledger.thermal.energy;

import dev.kilnledger.core.finding.FindingCode;

/** What energy models check. */
public enum EnergyFinding implements FindingCode {
  /** Whether the kiln has the power that the profile asks. */
  POWER_WITHIN_RATING("power-within-rating"),
  /** Whether the firing is slow enough for a wall taken as steady. */
  WALL_NEARLY_STEADY("wall-nearly-steady"),
  /** Whether the kiln can cool as fast as programmed. */
  COOLS_AS_PROGRAMMED("cools-as-programmed"),
  /** Whether the firing keeps to where the wall's conductivities over temperature are known. */
  WALL_CONDUCTIVITY("wall-conductivity");

  private final String code;

  EnergyFinding(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
