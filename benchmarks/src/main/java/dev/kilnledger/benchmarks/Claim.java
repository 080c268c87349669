package dev.kilnledger.benchmarks;

/**
 * One row of what the library has to reach: the time of a variant against the time of a peer that
 * does the same work in the same run.
 *
 * @param what the work, as a row of the results names it
 * @param subject the library's variant, {@code Class.method}
 * @param peer what it is held against, {@code Class.method}
 * @param atMost the largest ratio of the subject's time to the peer's: 3 for within three times,
 *     0.05 for twenty times as fast
 */
record Claim(String what, String subject, String peer, double atMost) {
  Claim {
    if (!(atMost > 0)) {
      throw new IllegalArgumentException(
          "a ratio of " + atMost + " for " + what + " is refused; accepted are ratios above 0");
    }
  }
}
