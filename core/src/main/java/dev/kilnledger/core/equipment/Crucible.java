package dev.kilnledger.core.equipment;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.material.CrucibleMaterial;
import dev.kilnledger.core.part.Envelope;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.SpecificHeatCapacity;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.immutables.value.Value;

/** The vessel that holds the packing and the parts. */
@Value.Immutable
@ValueStyle
public interface Crucible extends Serializable {
  /** The source of a heat capacity that is given without one. */
  Source AS_ENTERED = Source.user("as entered with the crucible");

  /** {@return the name, such as {@code "round, 120 mm"}} */
  String name();

  /** {@return what it is made of} */
  CrucibleMaterial material();

  /** {@return its inside} */
  Cavity cavity();

  /** {@return the smallest box around it, lid included, if it is known} */
  Optional<Envelope> outside();

  /** {@return its mass with lid} */
  Amount<Mass> mass();

  /** {@return the mean specific heat capacity between room and firing temperature} */
  Sourced<Amount<SpecificHeatCapacity>> heatCapacity();

  /**
   * Starts one.
   *
   * @return a builder; all but the outside is required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Crucible} values. */
  final class Builder extends ImmutableCrucible.Builder {
    Builder() {}

    /**
     * States the mean specific heat capacity, as the user's own figure.
     *
     * @param heatCapacity between room and firing temperature, above zero
     * @return this
     */
    public Builder heatCapacity(Amount<SpecificHeatCapacity> heatCapacity) {
      return heatCapacity(Sourced.of(heatCapacity, AS_ENTERED));
    }
  }

  /**
   * Refuses masses and heat capacities that are not above zero.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("crucible " + name())
        .text("name", name())
        .positive("mass", mass())
        .positive("heat capacity", heatCapacity().value())
        .refuseIfAny();
  }
}
