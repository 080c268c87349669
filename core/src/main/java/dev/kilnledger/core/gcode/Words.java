package dev.kilnledger.core.gcode;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/** Counts words by their name; no more different ones than fit. */
final class Words {
  private static final int MOST = 1000;
  private static final String OTHER = "other";

  private final Map<String, long[]> counts = new TreeMap<>();

  void count(String word) {
    long[] count = counts.get(word);
    if (count == null) {
      count = counts.computeIfAbsent(counts.size() < MOST ? word : OTHER, unseen -> new long[1]);
    }
    count[0]++;
  }

  Map<String, Long> counts() {
    Map<String, Long> result = new TreeMap<>();
    counts.forEach((word, count) -> result.put(word, count[0]));
    return Collections.unmodifiableMap(result);
  }
}
