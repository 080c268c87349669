package dev.kilnledger.costing.outfit;

/** Is told how far a plan has got. */
@FunctionalInterface
public interface PlanProgress {
  /**
   * Takes note.
   *
   * @param step what is being done, in words
   * @param done how much of it is done
   * @param total how much there is
   */
  void at(String step, long done, long total);
}
