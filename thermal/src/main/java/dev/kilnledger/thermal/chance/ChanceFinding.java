package dev.kilnledger.thermal.chance;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.FindingCode;

/** What is found about the chances of a firing. */
public enum ChanceFinding implements FindingCode {
  /** How likely the core gets its soak. */
  CORE_SOAK_CHANCE("core-soak-chance"),
  /** How likely the binder is gone by the end of debinding. */
  BINDER_GONE_CHANCE("binder-gone-chance"),
  /** How likely the density wanted is reached. */
  DENSITY_CHANCE("density-chance"),
  /** How likely the metal stays solid. */
  SOLID_CHANCE("solid-chance"),
  /** What was assumed of an input, for lack of anything better. */
  INPUT_ASSUMED("chance-input-assumed"),
  /** How far the quick model is from the full one. */
  SHORTCUT("chance-shortcut"),
  /** That not all draws were made. */
  DRAWS_MADE("chance-draws-made");

  private final String code;

  ChanceFinding(String code) {
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
