package dev.kilnledger.costing.outfit;

import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.thermal.profile.FiringRoute;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.immutables.value.Value;

/** How an outfit does at one aim. */
@Value.Immutable
@ValueStyle
public interface Capability extends Serializable {
  /** {@return the aim} */
  Aim aim();

  /** {@return the most parts of one firing that pass all checks; zero if the aim is not reached} */
  int partsPerFiring();

  /**
   * {@return the largest sintered envelope of the part's proportions that printer and crucible hold
   * with packing around it, one part at a time, in whole thousandths of the part, rounded down;
   * empty if the aim is not reached. The firing is checked with the part as it is}
   */
  Optional<Envelope> largestEnvelope();

  /** {@return the names of the options that reach it, in catalogue order} */
  List<String> madeWith();

  /** {@return the route they fire, empty if the aim is not reached} */
  Optional<FiringRoute> route();

  /**
   * {@return what was found worth knowing about them, worse than passed; what stands in the way of
   * the closest ones if the aim is not reached}
   */
  List<Finding> findings();

  /** {@return the hazards of the firing} */
  Set<Caution> cautions();

  /** {@return whether the aim is reached} */
  default boolean reached() {
    return partsPerFiring() > 0;
  }

  /** {@return the capability for people, one sentence} */
  default String text() {
    if (!reached()) {
      return aim().name()
          + " is out of reach: "
          + findings().stream().map(Finding::message).collect(Collectors.joining("; "));
    }
    return aim().name()
        + " comes out, "
        + partsPerFiring()
        + " to a firing, up to "
        + largestEnvelope().map(Envelope::format).orElse("")
        + ", with "
        + String.join(", ", madeWith());
  }

  /**
   * Starts one.
   *
   * @return a builder; aim and parts per firing are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Capability} values. */
  final class Builder extends ImmutableCapability.Builder {
    Builder() {}
  }
}
