package dev.kilnledger.costing.comparison;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.costing.ledger.Caveat;
import java.io.Serializable;
import java.util.List;
import org.immutables.value.Value;

/** Why a scenario differs from the baseline: what was put in, and what it leaves out. */
@Value.Immutable
@ValueStyle
public interface ScenarioChanges extends Serializable {
  /** {@return the scenario that is held against the baseline} */
  String scenario();

  /** {@return the rules that differ, and the numbers of parts, wanted and per firing} */
  List<Change> rules();

  /** {@return the inputs and prices that differ, item by item, each distinct change once} */
  List<Change> inputs();

  /** {@return the caveats that the baseline does not have} */
  List<Caveat> caveatsNew();

  /** {@return the caveats of the baseline that this scenario does not have} */
  List<Caveat> caveatsGone();

  /**
   * Starts one.
   *
   * @return a builder; the scenario is required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link ScenarioChanges} values. */
  final class Builder extends ImmutableScenarioChanges.Builder {
    Builder() {}
  }
}
