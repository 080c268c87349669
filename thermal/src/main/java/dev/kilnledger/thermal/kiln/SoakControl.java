package dev.kilnledger.thermal.kiln;

/** What a controller does where a ramp ends and the kiln is not there yet. */
public enum SoakControl {
  /** The programme runs on by the clock. */
  BY_THE_CLOCK,
  /** The programme waits until the kiln is near ("guaranteed soak"), and takes longer. */
  GUARANTEED
}
