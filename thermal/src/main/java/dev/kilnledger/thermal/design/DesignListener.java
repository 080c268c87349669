package dev.kilnledger.thermal.design;

/** Told how far a design has got, on the thread that designs. */
@FunctionalInterface
public interface DesignListener {
  /**
   * Something was tried.
   *
   * @param fraction an estimate of how much of the search is done, never falling, 1 at its end
   * @param evaluations how many checks were made
   */
  void progressed(double fraction, int evaluations);
}
