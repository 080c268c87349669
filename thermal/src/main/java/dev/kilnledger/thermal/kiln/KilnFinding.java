package dev.kilnledger.thermal.kiln;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.FindingCode;

/** What the heat balance of a kiln checks. */
public enum KilnFinding implements FindingCode {
  /** Whether the kiln gets as hot as programmed. */
  REACHES_PEAK("reaches-peak"),
  /** Whether the kiln follows the programme on heating. */
  FOLLOWS_PROGRAMME("follows-programme"),
  /** How long the kiln must cool before it may be opened. */
  OPENING("opening"),
  /** Whether a stated tolerance of the thermocouple reaches the peak. */
  SENSOR_TOLERANCE("sensor-tolerance");

  private final String code;

  KilnFinding(String code) {
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
