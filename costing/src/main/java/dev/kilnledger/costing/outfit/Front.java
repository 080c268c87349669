package dev.kilnledger.costing.outfit;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;

/**
 * Leaves out selections of the same slots that another one beats.
 *
 * <p>One beats another if it costs no more, scores no less and is in no component less capable, and
 * is better in cost or score or precedes in rank; once complete, more capable is enough. While
 * choices are open, a more capable one of equal cost and score that ranks later leaves the other
 * in, since what it can do more may come to nothing; so the first of equals is found exactly.
 */
final class Front {
  private Front() {}

  static List<Selection> open(List<Selection> selections) {
    return unbeaten(selections, Selection.OPEN);
  }

  static List<Selection> complete(List<Selection> selections) {
    return unbeaten(selections, Selection.COMPLETE);
  }

  /** In both orders whoever beats a selection precedes it, so one pass is enough. */
  private static List<Selection> unbeaten(List<Selection> selections, Comparator<Selection> order) {
    List<Selection> sorted = new ArrayList<>(selections);
    sorted.sort(order);
    List<Selection> front = new ArrayList<>();
    Map<IntBuffer, Long> bestScores = new LinkedHashMap<>();
    for (Selection selection : sorted) {
      refuseInterrupted();
      int[] components = components(selection);
      if (!beaten(components, selection.score, bestScores)) {
        front.add(selection);
        bestScores.merge(IntBuffer.wrap(components), selection.score, Math::max);
      }
    }
    return front;
  }

  private static boolean beaten(int[] components, long score, Map<IntBuffer, Long> bestScores) {
    for (Map.Entry<IntBuffer, Long> better : bestScores.entrySet()) {
      if (better.getValue() >= score && noLess(better.getKey().array(), components)) {
        return true;
      }
    }
    return false;
  }

  static boolean noLess(int[] one, int[] other) {
    for (int i = 0; i < one.length; i++) {
      if (one[i] < other[i]) {
        return false;
      }
    }
    return true;
  }

  private static int[] components(Selection selection) {
    int[] all =
        Arrays.copyOf(selection.capability, selection.capability.length + selection.clauses.length);
    System.arraycopy(
        selection.clauses, 0, all, selection.capability.length, selection.clauses.length);
    return all;
  }

  /** A plan that is no longer wanted ends here; the thread stays interrupted. */
  static void refuseInterrupted() {
    if (Thread.currentThread().isInterrupted()) {
      throw new CancellationException(
          "the outfit plan was interrupted; accepted is to let it end, or a smaller catalogue");
    }
  }
}
