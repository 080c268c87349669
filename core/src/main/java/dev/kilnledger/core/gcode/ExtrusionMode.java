package dev.kilnledger.core.gcode;

/** What the number after an E means. */
public enum ExtrusionMode {
  /** Where the filament shall be, from where it was last set (M82). */
  ABSOLUTE,
  /** How far it shall move (M83). */
  RELATIVE
}
