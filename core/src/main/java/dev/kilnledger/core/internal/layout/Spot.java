package dev.kilnledger.core.internal.layout;

/**
 * The middle of a body seen from above.
 *
 * @param x along the container's length, from its middle
 * @param y across it, from its middle
 * @param turned whether it is turned by a quarter
 */
public record Spot(double x, double y, boolean turned) {
  /** {@return its distance from the middle} */
  public double fromMiddle() {
    return Math.hypot(x, y);
  }
}
