package dev.kilnledger.thermal.design;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.thermal.check.FiringReport;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.List;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/**
 * The fastest route found for a task, as the controller takes it, and what the check says of just
 * that route.
 */
@Value.Immutable
@ValueStyle
public interface ProfileDesign extends Serializable {
  /** {@return what it was designed for} */
  DesignTask task();

  /** {@return the stages in the order of the route} */
  List<StageDesign> stages();

  /**
   * {@return what the check says of this route, followed by what the design asks beside it: that
   * the kiln follows the programme, where the check does not ask that itself, and what the task
   * asks}
   */
  FiringReport report();

  /** {@return findings worse than accepted that no profile tried did better at} */
  List<Finding> unmended();

  /** {@return limits of which no profile tried keeps both; empty where the rest can be kept} */
  List<Contradiction> contradictions();

  /** {@return what there is to know of the design itself} */
  List<Finding> notes();

  /** {@return how many times the check was asked} */
  int evaluations();

  /**
   * {@return the time of all stages until the kiln may be opened, which is what the search makes
   * short; where nothing is known of the kiln's wall, that of the programmes}
   */
  Amount<Time> untilOpening();

  /**
   * {@return whether the search came to its end; if not, it was interrupted or had used up its
   * evaluations, and this is the best so far}
   */
  boolean finished();

  /** {@return the route} */
  default FiringRoute route() {
    return FiringRoute.of(stages().stream().map(StageDesign::stage).toList());
  }

  /** {@return how long all programmes take, programmed cooling included} */
  default Amount<Time> duration() {
    return route().duration();
  }

  /** {@return the findings worse than the task accepts} */
  default List<Finding> failing() {
    return report().findings().stream()
        .filter(finding -> finding.severity().compareTo(task().accepted()) > 0)
        .toList();
  }

  /** {@return whether nothing is worse than the task accepts} */
  default boolean passes() {
    return failing().isEmpty();
  }

  /**
   * Starts one.
   *
   * @return an empty builder
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link ProfileDesign} values. */
  final class Builder extends ImmutableProfileDesign.Builder {
    Builder() {}
  }
}
