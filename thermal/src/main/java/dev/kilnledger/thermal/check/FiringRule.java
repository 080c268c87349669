package dev.kilnledger.thermal.check;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.thermal.firing.FiringForecast;
import java.util.List;

/**
 * One thing that a firing is held against. A rule answers with a finding of severity {@code PASSED}
 * where all is well and {@code UNDETERMINED} where it lacks an input; only of what the firing does
 * not have, such as carbon, does it say nothing. Rules hold no state that changes.
 */
@FunctionalInterface
public interface FiringRule {
  /**
   * Holds a firing against this rule.
   *
   * @param forecast the firing, computed as far as it is asked for
   * @return what was found; none where the firing does not have what the rule asks about
   */
  List<Finding> check(FiringForecast forecast);
}
