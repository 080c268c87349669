package dev.kilnledger.thermal.check;

import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.SupplyCircuit;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.material.Binder;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.immutables.value.Value;

/** All that decides whether a firing can come out: the material, the part, the route, the kiln. */
@Value.Immutable
@ValueStyle
public interface FiringSetup extends Serializable {
  /** {@return the feedstock the part is printed from} */
  Feedstock feedstock();

  /** {@return the thickest section of the green part, above zero} */
  Amount<Length> thickestSection();

  /** {@return the volume of all green parts of a charge; empty where it is not known} */
  Optional<Amount<Volume>> partsVolume();

  /** {@return the stages the part goes through} */
  FiringRoute route();

  /** {@return the kiln, the same for all stages} */
  Kiln kiln();

  /** {@return the crucible, the same for all stages} */
  Crucible crucible();

  /** {@return the circuit that feeds the kiln; empty where it is not known} */
  Optional<SupplyCircuit> supplyCircuit();

  /** {@return the metal of the feedstock} */
  default Alloy alloy() {
    return feedstock().alloy();
  }

  /** {@return the binder of the feedstock} */
  default Binder binder() {
    return feedstock().binder();
  }

  /**
   * Starts one.
   *
   * @return a builder; all but parts volume and supply circuit is required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link FiringSetup} values. */
  final class Builder extends ImmutableFiringSetup.Builder {
    Builder() {}
  }

  /**
   * Refuses a section that is not above zero.
   *
   * @throws IllegalArgumentException if the thickest section is not above zero
   */
  @Value.Check
  default void check() {
    new Problems("firing setup").positive("thickest section", thickestSection()).refuseIfAny();
  }
}
