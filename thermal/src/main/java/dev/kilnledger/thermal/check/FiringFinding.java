package dev.kilnledger.thermal.check;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.FindingCode;

/** What the rules for a firing check. */
public enum FiringFinding implements FindingCode {
  /** Whether the peak lies where the metal sinters. */
  PEAK_IN_SINTERING_WINDOW("peak-in-sintering-window"),
  /** Whether the binder's range is passed slowly enough for the wall. */
  DEBINDING_RATE("debinding-rate"),
  /** What the binder gives off. */
  BINDER_FUMES("binder-fumes"),
  /** Whether the kiln gets as hot as the profile and the metal ask. */
  KILN_REACHES_PEAK("kiln-reaches-peak"),
  /** Whether the kiln may stay at the peak as long as the profile asks. */
  KILN_HOLDS_PEAK("kiln-holds-peak"),
  /** Whether the kiln's controller takes as many segments. */
  KILN_SEGMENTS("kiln-segments"),
  /** Whether the kiln may heat as fast. */
  KILN_HEATING_RATE("kiln-heating-rate"),
  /** Whether the crucible stands the peak. */
  CRUCIBLE_TEMPERATURE("crucible-temperature"),
  /** Whether packing, parts and getter have room in the crucible. */
  CHARGE_VOLUME("charge-volume"),
  /** Whether the packing powder stands the peak of its stage. */
  PACKING_TEMPERATURE("packing-temperature"),
  /** Whether the packing powder is good for its stage. */
  PACKING_USE("packing-use"),
  /** Whether carbon is the right getter for the metal. */
  CARBON_SUITS_ALLOY("carbon-suits-alloy"),
  /** Whether there is a getter where the metal needs one. */
  GETTER_LAID_IN("getter-laid-in"),
  /** How long the metal is hot enough to oxidise in a stage without getter. */
  UNPROTECTED_INTERVAL("unprotected-interval"),
  /** Whether the circuit carries the kiln's current for hours. */
  SUPPLY_CURRENT("supply-current"),
  /** Whether the circuit has the kiln's voltage and phases. */
  SUPPLY_VOLTAGE("supply-voltage");

  private final String code;

  FiringFinding(String code) {
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
