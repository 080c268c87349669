package dev.kilnledger.costing.outfit;

import java.util.function.IntPredicate;

/** The largest whole number for which something holds that holds for every smaller one. */
final class Bisection {
  private Bisection() {}

  /** From 1 to the most, which stays below 2^30; zero if it does not even hold for 1. */
  static int largest(int most, IntPredicate holds) {
    int low = 0;
    int high = most + 1;
    for (int next = 1; next < high; next *= 2) {
      if (holds.test(next)) {
        low = next;
      } else {
        high = next;
      }
    }
    while (high - low > 1) {
      int middle = (low + high) / 2;
      if (holds.test(middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
