package dev.kilnledger.costing.comparison;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.List;
import org.immutables.value.Value;

/** The answers of jobs side by side: costs, passage, firing, findings, and why they differ. */
@Value.Immutable
@ValueStyle
public interface JobComparison extends Serializable {
  /** {@return the statements of the jobs, line by line} */
  @Value.Parameter
  StatementComparison costs();

  /** {@return what else differs, scenario by scenario} */
  @Value.Parameter
  List<JobChanges> changes();

  /**
   * A comparison.
   *
   * @param costs the statements of the jobs
   * @param changes what else differs
   * @return the comparison
   */
  static JobComparison of(StatementComparison costs, List<JobChanges> changes) {
    return ImmutableJobComparison.of(costs, changes);
  }

  /**
   * What else than costs differs in a scenario.
   *
   * @param scenario the name of a scenario but the baseline
   * @return what differs
   * @throws IllegalArgumentException if there is no such scenario; the message lists what there is
   */
  default JobChanges changes(String scenario) {
    return changes().stream()
        .filter(changes -> changes.scenario().equals(scenario))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "no scenario \""
                        + scenario
                        + "\"; accepted is one of "
                        + changes().stream().map(JobChanges::scenario).toList()));
  }

  /** {@return the comparison as text of at most 100 columns: costs side by side, then why} */
  default String text() {
    return ComparisonText.of(this);
  }
}
