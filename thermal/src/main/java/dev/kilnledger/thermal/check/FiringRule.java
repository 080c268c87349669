package dev.kilnledger.thermal.check;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.thermal.firing.FiringForecast;
import java.util.List;

/**
 * One thing that a firing is held against. A rule always answers, with a finding of severity {@code
 * PASSED} where all is well and {@code UNDETERMINED} where it lacks an input. Rules hold no state
 * that changes.
 */
@FunctionalInterface
public interface FiringRule {
  /**
   * Holds a firing against this rule.
   *
   * @param forecast the firing, computed as far as it is asked for
   * @return what was found, at least one finding
   */
  List<Finding> check(FiringForecast forecast);
}
