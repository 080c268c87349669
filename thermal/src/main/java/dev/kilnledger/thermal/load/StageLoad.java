package dev.kilnledger.thermal.load;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.immutables.value.Value;

/** What goes into the crucible for one stage, beside the parts. */
@Value.Immutable
@ValueStyle
public interface StageLoad extends Serializable {
  /** {@return the stage} */
  PlannedStage planned();

  /** {@return the height of the packing over the floor, the cover over the parts included} */
  Amount<Length> fillHeight();

  /** {@return the volume of the packing: the cavity up to there, less the parts} */
  Amount<Volume> packingVolume();

  /**
   * {@return its mass: from poured in the lightest grade to tapped in the densest; expected is the
   * middle of the tap density, as parts are packed}
   */
  Estimate<Mass> packingMass();

  /** {@return the getter over it; empty where none is planned or the firing asks for none} */
  Optional<GetterLoad> getter();

  /** {@return what is left up to the rim over packing and getter, the getter poured lightest} */
  Amount<Length> roomLeft();

  /** {@return the stage with the packing expected and the getter laid in} */
  default FiringStage stage() {
    return stage(packingMass().expected());
  }

  /**
   * The stage as weighed.
   *
   * @param packing the mass of the packing, above zero
   * @return the stage with that packing and the getter laid in
   * @throws IllegalArgumentException if the mass is not above zero
   */
  default FiringStage stage(Amount<Mass> packing) {
    FiringStage.Builder stage =
        planned().purpose() == FiringStage.Purpose.DEBINDING
            ? FiringStage.debinding()
            : FiringStage.sintering();
    stage
        .name(planned().name())
        .profile(planned().profile())
        .packing(planned().packing())
        .packingMass(packing);
    getter().ifPresent(load -> stage.getter(load.fill()));
    return stage.build();
  }

  /**
   * Starts one.
   *
   * @return a builder; all but the getter is required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link StageLoad} values. */
  final class Builder extends ImmutableStageLoad.Builder {
    Builder() {}
  }
}
