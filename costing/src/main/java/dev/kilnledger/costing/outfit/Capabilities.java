package dev.kilnledger.costing.outfit;

import java.util.List;

/** Puts together what the two sides of an outfit can do. */
final class Capabilities {
  private final List<Aim> aims;
  private final List<double[]> peaks;
  private final List<Measure> measures;

  Capabilities(OutfitQuestion question, List<double[]> peaks) {
    aims = question.aims();
    this.peaks = peaks;
    measures = question.measures();
  }

  /**
   * Whether each aim is reached, 1 or 0, then for each measure how each aim does by it. An aim is
   * reached at a peak that both sides pass.
   */
  int[] of(int[] printing, int[] firing) {
    int count = aims.size();
    int[] capability = new int[count * (1 + measures.size())];
    int peak = 0;
    for (int aim = 0; aim < count; aim++) {
      for (int i = 0; i < peaks.get(aim).length; i++, peak++) {
        int scale = Math.min(printing[peak], firing[2 * peak]);
        if (scale > 0) {
          capability[aim] = 1;
          for (int measure = 0; measure < measures.size(); measure++) {
            int at = count * (1 + measure) + aim;
            int value = measures.get(measure) == Measure.ENVELOPE ? scale : firing[2 * peak + 1];
            capability[at] = Math.max(capability[at], value);
          }
        }
      }
    }
    return capability;
  }

  /** Whether all required aims are reached, and one at least. */
  boolean serves(int[] capability) {
    boolean any = aims.isEmpty();
    for (int aim = 0; aim < aims.size(); aim++) {
      boolean reached = capability[aim] == 1;
      any |= reached;
      if (aims.get(aim).required() && !reached) {
        return false;
      }
    }
    return any;
  }

  /** The caller's score for the aims reached. */
  long score(int[] capability) {
    long score = 0;
    for (int aim = 0; aim < aims.size(); aim++) {
      if (capability[aim] == 1) {
        score = Math.addExact(score, aims.get(aim).score());
      }
    }
    return score;
  }
}
