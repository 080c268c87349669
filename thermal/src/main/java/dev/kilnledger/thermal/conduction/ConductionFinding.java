package dev.kilnledger.thermal.conduction;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.FindingCode;

/** What models of conduction find. */
public enum ConductionFinding implements FindingCode {
  /** How far the core is behind the kiln. */
  CORE_LAG("core-lag"),
  /** Whether the core gets as hot as the kiln. */
  CORE_REACHES_PEAK("core-reaches-peak"),
  /** Whether the core is hot for as long as asked. */
  CORE_SOAK("core-soak"),
  /** Whether the profile stays where the properties were stated. */
  PROPERTIES_STATED("properties-stated"),
  /** How well the conductivity is known. */
  CONDUCTIVITY_KNOWN("conductivity-known"),
  /** Whether the surface or the inside decides how fast heat gets in. */
  SURFACE_CONTACT("surface-contact"),
  /** Whether a powder bed lies in the range of its correlation. */
  BED_IN_RANGE("bed-in-range");

  private final String code;

  ConductionFinding(String code) {
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
