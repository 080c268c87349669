package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.finding.FindingCode;

/** What is checked about uncertainties; a published name keeps its meaning. */
public enum UncertaintyFinding implements FindingCode {
  /** A result bends too much over the spread of an input to be taken for a straight line. */
  LINEAR_OVER_SPREAD("linear-over-spread");

  private final String code;

  UncertaintyFinding(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
