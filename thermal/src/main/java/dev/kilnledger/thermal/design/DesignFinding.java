package dev.kilnledger.thermal.design;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.FindingCode;

/** What a design holds against a route beside the check of the firing. */
public enum DesignFinding implements FindingCode {
  /** Whether the peak lies where the task asks for it. */
  PEAK_AS_ASKED("peak-as-asked"),
  /** Whether heating is as slow as is assumed of a kiln whose maker states nothing. */
  HEATING_ASSUMED("heating-assumed"),
  /** That the programme ends hot, and why. */
  COOLING_NOT_PROGRAMMED("cooling-not-programmed"),
  /** That nothing but the sintering window holds the peak up. */
  PEAK_FOR_SPEED("peak-for-speed"),
  /** Whether the search came to its end. */
  SEARCH_ENDED("search-ended");

  private final String code;

  DesignFinding(String code) {
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
