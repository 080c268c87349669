package dev.kilnledger.thermal.load;

import dev.kilnledger.core.equipment.ChargePart;
import dev.kilnledger.core.equipment.Spacing;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.part.Passage;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;
import si.uom.quantity.MassFlowRate;

/** A charge to be planned. */
@Value.Immutable
@ValueStyle
public interface LoadTask extends Serializable {
  /** {@return the passage of the part; the crucible is filled with green, then with brown parts} */
  Passage passage();

  /** {@return the part as it is laid in; of any outline and as printed, green, unless given} */
  @Value.Default
  default ChargePart part() {
    return ChargePart.of(passage().green().envelope());
  }

  /** {@return the packing to keep around the parts; its headroom comes on top of the getter} */
  Spacing spacing();

  /** {@return how many parts the charge is to hold, 1 or more; as many as fit where it is empty} */
  OptionalInt parts();

  /** {@return the firings in order, 1 or more} */
  List<PlannedStage> stages();

  /**
   * {@return how much oxygen gets in through lid and packing while it is hot; where it is not known
   * the getter can only be bounded from below}
   */
  Optional<Sourced<Span<MassFlowRate>>> oxygenInflow();

  /**
   * {@return what is laid in of the getter over the most that its carbon may be asked for; half of
   * that again unless given, a margin that has no source}
   */
  @Value.Default
  default Amount<Dimensionless> getterReserve() {
    return Amounts.percent(50);
  }

  /**
   * Starts one.
   *
   * @return a builder; passage, spacing and stages are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link LoadTask} values. */
  final class Builder extends ImmutableLoadTask.Builder {
    Builder() {}

    /**
     * Takes the stages of a route, their masses left out.
     *
     * @param route the route
     * @return this
     */
    public Builder route(FiringRoute route) {
      return stages(route.stages().stream().map(PlannedStage::of).toList());
    }
  }

  /**
   * Refuses tasks that ask for nothing.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("load of " + passage().part().name())
            .require(!stages().isEmpty(), "there is no stage; accepted is 1 or more")
            .notNegative("getter reserve", getterReserve());
    parts()
        .ifPresent(
            parts -> problems.require(parts >= 1, "parts is " + parts + "; accepted is 1 or more"));
    oxygenInflow()
        .ifPresent(inflow -> problems.notNegative("lowest oxygen inflow", inflow.value().low()));
    problems.refuseIfAny();
  }
}
