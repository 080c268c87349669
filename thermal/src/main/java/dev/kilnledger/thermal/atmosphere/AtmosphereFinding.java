package dev.kilnledger.thermal.atmosphere;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.FindingCode;

/** What is checked about the gas in the crucible and in the room. */
public enum AtmosphereFinding implements FindingCode {
  /** Whether the data behind an answer reach the temperature asked for. */
  WITHIN_DATA_RANGE("within-data-range"),
  /** Whether carbon keeps an element of the metal bright at a temperature. */
  CARBON_KEEPS_BRIGHT("carbon-keeps-bright"),
  /** Whether the facts of the metal and the thermochemistry say the same. */
  FACTS_AGREE("facts-agree"),
  /** Whether the carbon outlasts the firing. */
  CARBON_LASTS("carbon-lasts"),
  /** How long the metal is hot while carbon is too slow. */
  CARBON_TOO_SLOW("carbon-too-slow"),
  /** Whether the nitrogen that stays matters to the metal. */
  NITROGEN("nitrogen"),
  /** Whether the metal may take up carbon. */
  CARBON_PICK_UP("carbon-pick-up"),
  /** Whether zinc leaves the metal as vapour. */
  ZINC_VAPOUR("zinc-vapour"),
  /** Whether the gas in the crucible can burn when the lid is opened. */
  FLAMMABLE_AT_LID("flammable-at-lid"),
  /** Whether a gas in the room stays below a limit. */
  ROOM_CONCENTRATION("room-concentration");

  private final String code;

  AtmosphereFinding(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  /** Starts a finding with this code. */
  Finding.Builder about(String subject) {
    return Finding.builder().code(this).subject(subject);
  }
}
