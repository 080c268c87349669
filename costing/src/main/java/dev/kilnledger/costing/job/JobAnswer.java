package dev.kilnledger.costing.job;

import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.firing.FiringUse;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.part.Passage;
import dev.kilnledger.costing.ledger.Statement;
import dev.kilnledger.thermal.energy.RouteEnergy;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.load.LoadPlan;
import java.io.Serializable;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.immutables.value.Value;

/** What a job comes to: the part at each stage, every finding, and the statement of costs. */
@Value.Immutable
@ValueStyle
public interface JobAnswer extends Serializable {
  /** {@return the job answered} */
  Job job();

  /** {@return the part from green to sintered} */
  Passage passage();

  /** {@return how the parts of a charge stand in the crucible, with what packing and getter} */
  LoadPlan load();

  /**
   * {@return the firing computed: kiln, core, binder, density and gas with their curves; what the
   * findings did not need is computed when it is asked for}
   */
  FiringForecast forecast();

  /** {@return the energy forecast, stage by stage; empty where the firing was measured} */
  Optional<RouteEnergy> energy();

  /** {@return what one firing takes, forecast or measured} */
  FiringUse firing();

  /** {@return all findings: passage, printer, crucible, firing; passed ones too} */
  List<Finding> findings();

  /** {@return the hazards of the work} */
  Set<Caution> cautions();

  /** {@return what the parts cost, with caveats} */
  Statement statement();

  /** {@return the severity of the worst finding} */
  default Severity worst() {
    return findings().stream()
        .map(Finding::severity)
        .max(Comparator.naturalOrder())
        .orElse(Severity.PASSED);
  }

  /**
   * The findings that matter at least so much, the worst first.
   *
   * @param least the least severity
   * @return the findings, in their order where they matter alike
   */
  default List<Finding> atLeast(Severity least) {
    return findings().stream()
        .filter(finding -> finding.severity().compareTo(least) >= 0)
        .sorted(Comparator.comparing(Finding::severity).reversed())
        .toList();
  }

  /**
   * Starts one.
   *
   * @return a builder; all attributes but energy and cautions are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link JobAnswer} values. */
  final class Builder extends ImmutableJobAnswer.Builder {
    Builder() {}
  }
}
