package dev.kilnledger.costing.comparison;

import dev.kilnledger.core.internal.ValueStyle;
import java.io.Serializable;
import java.util.List;
import org.immutables.value.Value;

/** What else than costs differs between the answers of two jobs, and on which facts that stands. */
@Value.Immutable
@ValueStyle
public interface JobChanges extends Serializable {
  /** {@return the scenario that is held against the baseline} */
  String scenario();

  /**
   * {@return the facts and inputs that differ below passage and firing: of materials, part,
   * equipment and route, each distinct change once}
   */
  List<Change> facts();

  /** {@return the figures of the passage that differ, such as masses and shrinkage} */
  List<Change> passage();

  /** {@return what a firing takes, where it differs: time, energy line by line, getter} */
  List<Change> firing();

  /** {@return the findings that are new, gone or changed} */
  List<FindingChange> findings();

  /**
   * Starts one.
   *
   * @return a builder; the scenario is required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link JobChanges} values. */
  final class Builder extends ImmutableJobChanges.Builder {
    Builder() {}
  }
}
