package dev.kilnledger.core.material;

import dev.kilnledger.core.finding.FindingCode;

/** What is checked about materials. */
public enum MaterialFinding implements FindingCode {
  /** The full density against the inverse rule of mixtures. */
  FULL_DENSITY_BY_MIXTURE_RULE("full-density-by-mixture-rule");

  private final String code;

  MaterialFinding(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
