package dev.kilnledger.thermal.burnout;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.FindingCode;

/** What is found about the binder's leaving. */
public enum BurnOutFinding implements FindingCode {
  /** How much binder is left at the end. */
  BINDER_REMAINING("binder-remaining"),
  /** Whether the binder leaves at temperatures at which its kinetics were observed. */
  KINETICS_RANGE("kinetics-range"),
  /** How far several kinetics of one binder disagree. */
  KINETICS_SPREAD("kinetics-spread"),
  /** Whether the loss stays as slow as the wall asks. */
  LOSS_RATE("loss-rate"),
  /** Whether the gas pressure in the pores stays below its limit. */
  PORE_PRESSURE("pore-pressure"),
  /** Whether a limit is used where it is known to hold. */
  LIMIT_RANGE("limit-range"),
  /** What the pressure in open pores does not tell: the time before they open. */
  CLOSED_PORES("closed-pores"),
  /** What a powder bed around the part does to it. */
  POWDER_BED("powder-bed"),
  /** Whether the activation energy is known well enough. */
  ACTIVATION_ENERGY("activation-energy"),
  /** Whether one activation energy describes the whole loss. */
  ONE_STEP("one-step"),
  /** Whether an integral and a differential method tell the same activation energy. */
  METHODS_AGREE("methods-agree"),
  /** Whether the approximation of a method of fitting is good enough. */
  METHOD_RANGE("method-range");

  private final String code;

  BurnOutFinding(String code) {
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
