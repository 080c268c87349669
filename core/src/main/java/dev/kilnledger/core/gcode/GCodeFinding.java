package dev.kilnledger.core.gcode;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.FindingCode;

/** What the reading of a print programme finds. */
public enum GCodeFinding implements FindingCode {
  /** Whether every line was understood or could be passed over. */
  LINES_UNDERSTOOD("lines-understood"),
  /** Whether the programme says if lengths are in millimetres or inches. */
  LENGTH_UNIT_STATED("length-unit-stated"),
  /** Whether the programme says how the filament's motion is told. */
  EXTRUSION_MODE_STATED("extrusion-mode-stated"),
  /** Whether the filament's position is set before it is used. */
  EXTRUSION_START_SET("extrusion-start-set"),
  /** Whether the least time has all motion in it. */
  MOTION_TIMED("motion-timed"),
  /** Whether all that is extruded lies within the extent. */
  EXTENT_COMPLETE("extent-complete");

  private final String code;

  GCodeFinding(String code) {
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
