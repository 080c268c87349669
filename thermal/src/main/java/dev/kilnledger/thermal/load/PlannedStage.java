package dev.kilnledger.thermal.load;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.material.Getter;
import dev.kilnledger.core.material.PackingPowder;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.GetterFill;
import dev.kilnledger.thermal.profile.Profile;
import java.io.Serializable;
import java.util.Optional;
import org.immutables.value.Value;

/** A firing of a route of which it is not known yet how much packing and getter it takes. */
@Value.Immutable
@ValueStyle
public interface PlannedStage extends Serializable {
  /** {@return what it is for} */
  FiringStage.Purpose purpose();

  /** {@return its name in findings; the purpose in words by default} */
  @Value.Default
  default String name() {
    return purpose().words();
  }

  /** {@return the programme of the kiln} */
  Profile profile();

  /** {@return the powder around the parts} */
  PackingPowder packing();

  /** {@return the getter over the packing, if any} */
  Optional<Getter> getter();

  /**
   * A stage as it was planned before, its masses left out.
   *
   * @param stage the stage
   * @return the stage to be planned
   */
  static PlannedStage of(FiringStage stage) {
    return new Builder()
        .purpose(stage.purpose())
        .name(stage.name())
        .profile(stage.profile())
        .packing(stage.packing())
        .getter(stage.getter().map(GetterFill::getter))
        .build();
  }

  /**
   * Starts a debinding stage.
   *
   * @return a builder; profile and packing are required
   */
  static Builder debinding() {
    return new Builder().purpose(FiringStage.Purpose.DEBINDING);
  }

  /**
   * Starts a sintering stage.
   *
   * @return a builder; profile and packing are required
   */
  static Builder sintering() {
    return new Builder().purpose(FiringStage.Purpose.SINTERING);
  }

  /** Builds {@link PlannedStage} values. */
  final class Builder extends ImmutablePlannedStage.Builder {
    Builder() {}
  }

  /**
   * Refuses a blank name.
   *
   * @throws IllegalArgumentException if the name is blank
   */
  @Value.Check
  default void check() {
    new Problems("planned stage").text("name", name()).refuseIfAny();
  }
}
