package dev.kilnledger.thermal.design;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.thermal.check.FiringReport;
import dev.kilnledger.thermal.profile.FiringRoute;
import java.io.Serializable;
import java.util.List;
import org.immutables.value.Value;

/** A design beside a route that the user has. */
@Value.Immutable
@ValueStyle
public interface ProfileComparison extends Serializable {
  /** {@return the design} */
  @Value.Parameter
  ProfileDesign design();

  /** {@return the user's route} */
  @Value.Parameter
  FiringRoute route();

  /** {@return what the check says of the user's route, as in {@link ProfileDesign#report()}} */
  @Value.Parameter
  FiringReport report();

  /** {@return the stages in order} */
  @Value.Parameter
  List<StageComparison> stages();

  /** {@return the findings on the user's route worse than the design's task accepts} */
  default List<Finding> failing() {
    return report().findings().stream()
        .filter(finding -> finding.severity().compareTo(design().task().accepted()) > 0)
        .toList();
  }
}
