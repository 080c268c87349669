package dev.kilnledger.core.progress;

/**
 * Hears how far long work has come. It is called now and then by the thread that works, so it
 * should return at once. Work that is told of its progress also stops promptly when its thread is
 * interrupted.
 */
@FunctionalInterface
public interface Progress {
  /**
   * The work has come so far.
   *
   * @param fraction the share that is done, from 0 to 1, never less than told before
   */
  void at(double fraction);

  /** {@return one that does not listen} */
  static Progress unheard() {
    return fraction -> {};
  }

  /**
   * This one for a part of the work: its 0 to 1 become a stretch of the whole.
   *
   * @param from the fraction of the whole at the start of the part
   * @param to the fraction of the whole at its end
   * @return the progress of the part
   */
  default Progress between(double from, double to) {
    return fraction -> at(from + (to - from) * fraction);
  }
}
