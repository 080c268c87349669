package dev.kilnledger.core.equipment;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.ConductivitySlope;
import dev.kilnledger.units.quantity.SpecificHeatCapacity;
import dev.kilnledger.units.quantity.ThermalConductivity;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.immutables.value.Value;
import si.uom.quantity.Density;

/**
 * One layer of a kiln's wall, from the inside outwards.
 *
 * <p>Its conductivity is constant, or a straight line over temperature: {@code k(T) = k + s (T -
 * T_0)}, with T_0 where k was stated and s the slope.
 *
 * <p>Example: 0.2085 W/(m K) at 590 °C with a slope of 0.00015 W/(m K2) is 0.12 W/(m K) at 0 °C and
 * 0.285 W/(m K) at 1100 °C.
 */
@Value.Immutable
@ValueStyle
public interface WallLayer extends Serializable {
  /** {@return what it is made of, such as {@code "insulating firebrick"}} */
  String material();

  /** {@return the thickness} */
  Amount<Length> thickness();

  /**
   * {@return the thermal conductivity where it was stated: at {@link #conductivityStatedAt()}, or
   * at the mean temperature of the layer in use where there is no slope}
   */
  Amount<ThermalConductivity> conductivity();

  /** {@return the temperature at which the conductivity was stated; required with a slope} */
  Optional<Amount<Temperature>> conductivityStatedAt();

  /** {@return how the conductivity changes with temperature; zero, a constant one, by default} */
  @Value.Default
  default Amount<ConductivitySlope> conductivitySlope() {
    return Amounts.wattsPerMetreKelvinSquared(0);
  }

  /** {@return the bulk density} */
  Amount<Density> density();

  /** {@return the specific heat capacity} */
  Amount<SpecificHeatCapacity> heatCapacity();

  /** {@return whether the conductivity is the same at all temperatures} */
  default boolean isConstant() {
    return conductivitySlope().si() == 0;
  }

  /**
   * The conductivity at a temperature, by the straight line.
   *
   * @param temperature the temperature
   * @return the conductivity, which a line far from where it was stated may take to zero or below
   */
  default Amount<ThermalConductivity> conductivityAt(Amount<Temperature> temperature) {
    return isConstant()
        ? conductivity()
        : Amounts.wattsPerMetreKelvin(
            conductivity().si()
                + conductivitySlope().si()
                    * (temperature.si() - conductivityStatedAt().orElseThrow().si()));
  }

  /**
   * Starts one.
   *
   * @return a builder; material, thickness, conductivity, density and heat capacity are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link WallLayer} values. */
  final class Builder extends ImmutableWallLayer.Builder {
    Builder() {}
  }

  /**
   * Refuses values that are not above zero, and a slope without the temperature it goes out from.
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
        .require(
            isConstant() || conductivityStatedAt().isPresent(),
            "conductivity changes by "
                + conductivitySlope()
                + ", but it is not said at which temperature it is "
                + conductivity()
                + "; accepted is a slope with that temperature")
        .refuseIfAny();
  }
}
