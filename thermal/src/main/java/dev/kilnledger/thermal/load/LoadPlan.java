package dev.kilnledger.thermal.load;

import dev.kilnledger.core.equipment.Arrangement;
import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.thermal.profile.FiringRoute;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.immutables.value.Value;

/** A charge as planned: where the parts stand, what goes in with them, and what was found. */
@Value.Immutable
@ValueStyle
public interface LoadPlan extends Serializable {
  /** {@return what was asked for} */
  LoadTask task();

  /** {@return the crucible} */
  Crucible crucible();

  /** {@return how the parts stand; empty where not even one fits} */
  Optional<Arrangement> arrangement();

  /** {@return what goes in at each stage; empty where no part fits} */
  List<StageLoad> stages();

  /** {@return what was found} */
  List<Finding> findings();

  /** {@return the hazards that go with it} */
  Set<Caution> cautions();

  /** {@return how many parts are laid in, no more than fit} */
  default int parts() {
    return arrangement().map(Arrangement::parts).orElse(0);
  }

  /** {@return whether the parts asked for and the getter have room, as far as was found} */
  default boolean fits() {
    return findings().stream()
        .allMatch(finding -> finding.severity().compareTo(Severity.WARNING) < 0);
  }

  /**
   * The route with the packing expected and the getter laid in.
   *
   * @return the route
   * @throws IllegalArgumentException if no part fits, or as {@link FiringRoute#of(List)}
   */
  default FiringRoute route() {
    return FiringRoute.of(stages().stream().map(StageLoad::stage).toList());
  }

  /**
   * Starts one.
   *
   * @return an empty builder
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link LoadPlan} values. */
  final class Builder extends ImmutableLoadPlan.Builder {
    Builder() {}
  }
}
