package dev.kilnledger.costing.outfit;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import java.util.List;

/**
 * How some equipment did at an aim.
 *
 * @param step how far it got before something stood in the way; the last step if nothing did
 * @param peak the peak of the route in kelvin, zero where there is none
 * @param scale the largest part, in thousandths of the part wanted; zero if it failed
 * @param parts the most parts of one firing, zero if it failed
 * @param blocking the findings that stood in the way
 */
record Trial(int step, double peak, int scale, int parts, List<Finding> blocking) {
  /** A thousand of these are the part wanted. */
  static final int WHOLE = 1000;

  /** No part is followed beyond a thousand times its size. */
  static final int LARGEST = 1000 * WHOLE;

  Trial {
    blocking = List.copyOf(blocking);
  }

  static Trial failed(int step, List<Finding> blocking) {
    return new Trial(step, 0, 0, 0, blocking);
  }

  boolean passed() {
    return blocking.isEmpty();
  }

  /** Whether it failed later, or with less in the way. */
  boolean closerThan(Trial other) {
    return step == other.step ? blocking.size() < other.blocking.size() : step > other.step;
  }

  static List<Finding> worseThan(Severity accepted, List<Finding> findings) {
    return findings.stream().filter(found -> found.severity().compareTo(accepted) > 0).toList();
  }
}
