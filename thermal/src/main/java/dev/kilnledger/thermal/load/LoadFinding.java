package dev.kilnledger.thermal.load;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.FindingCode;

/** What is found when a charge is planned. */
public enum LoadFinding implements FindingCode {
  /** How much packing powder a stage takes. */
  PACKING_MASS("packing-mass"),
  /** How much getter a stage takes. */
  GETTER_MASS("getter-mass"),
  /** Whether the getter has room over the packing. */
  GETTER_ROOM("getter-room"),
  /** Whether the crucible stands the hottest stage. */
  CRUCIBLE_STANDS_PEAK("crucible-stands-peak"),
  /** How many crucibles stand side by side in the kiln. */
  CRUCIBLES_IN_CHAMBER("crucibles-in-chamber");

  private final String code;

  LoadFinding(String code) {
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
