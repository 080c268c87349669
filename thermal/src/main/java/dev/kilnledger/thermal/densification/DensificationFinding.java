package dev.kilnledger.thermal.densification;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.FindingCode;

/** What is found about densification. */
public enum DensificationFinding implements FindingCode {
  /** What the forecast of the density stands on, and whether it reaches so far. */
  SINTERING_CURVE("sintering-curve"),
  /** Whether the density wanted is reached. */
  DENSITY_TARGET("density-target"),
  /** Whether the runs tell the activation energy. */
  SINTERING_ENERGY("sintering-energy"),
  /** Whether what the part feels stays below the solidus. */
  FELT_BELOW_SOLIDUS("felt-below-solidus"),
  /** Whether the part gets more heat than the hottest and longest usual firing gives. */
  OVER_FIRED("over-fired");

  private final String code;

  DensificationFinding(String code) {
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
