package dev.kilnledger.core.part;

import dev.kilnledger.core.finding.FindingCode;

/** What is checked about a part and its passage. */
public enum PartFinding implements FindingCode {
  /** Whether the feedstock holds enough metal for the brown part to keep its shape. */
  SOLIDS_LOADING("solids-loading"),
  /** Whether the part becomes denser at all. */
  DENSIFICATION("densification"),
  /** Whether the shrinkage lies where that of injection-moulded parts does. */
  MOULDING_SHRINKAGE("moulding-shrinkage"),
  /** Whether the relative density stated lies in the alloy's range. */
  FINAL_RELATIVE_DENSITY("final-relative-density"),
  /** Whether the shrinkage measured fits the relative density expected. */
  MEASURED_SHRINKAGE("measured-shrinkage"),
  /** Whether the coupons tell how well the mean shrinkage is known. */
  SHRINKAGE_CALIBRATION("shrinkage-calibration"),
  /** Whether a fired part is as dense as expected. */
  FIRED_DENSITY("fired-density"),
  /** Whether open pores were sealed before weighing in water. */
  OPEN_PORES_SEALED("open-pores-sealed"),
  /** Whether the binder has left a debound part. */
  BINDER_LEFT("binder-left"),
  /** Whether an overhang carries its own weight while the binder is soft or gone. */
  OVERHANG("overhang"),
  /** Whether an unsupported span does. */
  UNSUPPORTED_SPAN("unsupported-span"),
  /** Whether the foot of the part carries what stands on it. */
  OWN_WEIGHT("own-weight"),
  /** Whether the part is too tall for its width to stand. */
  SLENDERNESS("slenderness"),
  /** Whether all that hangs free is stated. */
  SUPPORT_STATED("support-stated");

  private final String code;

  PartFinding(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
