package dev.kilnledger.core.equipment;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.SpecificHeatCapacity;
import dev.kilnledger.units.quantity.ThermalConductivity;
import java.io.Serializable;
import javax.measure.quantity.Length;
import org.immutables.value.Value;
import si.uom.quantity.Density;

/** One layer of a kiln's wall, from the inside outwards. */
@Value.Immutable
@ValueStyle
public interface WallLayer extends Serializable {
  /** {@return what it is made of, such as {@code "insulating firebrick"}} */
  String material();

  /** {@return the thickness} */
  Amount<Length> thickness();

  /** {@return the thermal conductivity at the mean temperature of the layer} */
  Amount<ThermalConductivity> conductivity();

  /** {@return the bulk density} */
  Amount<Density> density();

  /** {@return the specific heat capacity} */
  Amount<SpecificHeatCapacity> heatCapacity();

  /**
   * Starts one.
   *
   * @return a builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link WallLayer} values. */
  final class Builder extends ImmutableWallLayer.Builder {
    Builder() {}
  }

  /**
   * Refuses values that are not above zero.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("wall layer " + material())
        .text("material", material())
        .positive("thickness", thickness())
        .positive("conductivity", conductivity())
        .positive("density", density())
        .positive("heat capacity", heatCapacity())
        .refuseIfAny();
  }
}
