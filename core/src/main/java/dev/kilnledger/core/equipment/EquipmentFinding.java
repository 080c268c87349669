package dev.kilnledger.core.equipment;

import dev.kilnledger.core.finding.FindingCode;

/** What is checked about equipment and a part's passage. */
public enum EquipmentFinding implements FindingCode {
  /** Whether the nozzle is hard enough for the powder. */
  NOZZLE_HARDNESS("nozzle-hardness"),
  /** Whether the nozzle's bore lets filled feedstock through. */
  NOZZLE_BORE("nozzle-bore"),
  /** Whether the green part fits into the printer. */
  BUILD_VOLUME("build-volume"),
  /** Whether brittle filament is warmed on its way to the feeder. */
  FILAMENT_PREHEATER("filament-preheater"),
  /** Whether the parting layer still parts at the sintering peak. */
  PARTING_LAYER("parting-layer"),
  /** Whether the green part fits into the crucible with packing around it. */
  CRUCIBLE_SPACE("crucible-space"),
  /** Whether the kiln's chamber holds the crucible. */
  KILN_SPACE("kiln-space");

  private final String code;

  EquipmentFinding(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
