package dev.kilnledger.costing.uncertainty;

/** Hears how far a simulation is. It is called by the thread that started the simulation. */
@FunctionalInterface
public interface Progress {
  /**
   * Some more is done.
   *
   * @param fraction how much of all that may have to be done, from 0 to 1, never less than before
   */
  void at(double fraction);

  /** {@return somebody who does not listen} */
  static Progress unheard() {
    return fraction -> {};
  }
}
