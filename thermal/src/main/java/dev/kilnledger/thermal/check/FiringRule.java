package dev.kilnledger.thermal.check;

import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.core.finding.Finding;
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
   * @param setup the firing
   * @return what was found, at least one finding
   */
  List<Finding> check(FiringSetup setup);
}
