package dev.kilnledger.thermal.conduction;

import static dev.kilnledger.units.Amounts.kelvin;
import static dev.kilnledger.units.Amounts.wattsPerMetreKelvin;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.ThermalConductivity;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.io.Serializable;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.immutables.value.Value;

/** A bed of grains with gas between them. */
@Value.Immutable
@ValueStyle
public interface PowderBed extends Serializable {
  /** {@return the name, such as {@code "alumina, 100 µm, tapped"}} */
  String name();

  /** {@return the form of the grains} */
  GrainForm grainForm();

  /** {@return the diameter of the grains, above zero} */
  Amount<Length> grainSize();

  /** {@return the share of the volume between the grains, above 0 and below 1} */
  Amount<VolumeFraction> porosity();

  /** {@return the conductivity of the massive solid, above zero} */
  PropertyCurve<ThermalConductivity> solidConductivity();

  /** {@return the emissivity of the grains, from 0 to 1} */
  Amount<Dimensionless> emissivity();

  /**
   * {@return the conductivity of the gas, above zero; of air unless given (Incropera et al., table
   * A.4, from memory), which also does for nitrogen and carbon monoxide}
   */
  @Value.Default
  default PropertyCurve<ThermalConductivity> gasConductivity() {
    return PropertyCurve.<ThermalConductivity>builder()
        .at(kelvin(250), wattsPerMetreKelvin(0.0223))
        .at(kelvin(300), wattsPerMetreKelvin(0.0263))
        .at(kelvin(400), wattsPerMetreKelvin(0.0338))
        .at(kelvin(500), wattsPerMetreKelvin(0.0407))
        .at(kelvin(600), wattsPerMetreKelvin(0.0469))
        .at(kelvin(800), wattsPerMetreKelvin(0.0573))
        .at(kelvin(1000), wattsPerMetreKelvin(0.0667))
        .at(kelvin(1200), wattsPerMetreKelvin(0.0763))
        .at(kelvin(1400), wattsPerMetreKelvin(0.091))
        .at(kelvin(1600), wattsPerMetreKelvin(0.106))
        .build();
  }

  /** {@return the pressure of the gas, above zero; 1 atm unless given} */
  @Value.Default
  default Amount<Pressure> pressure() {
    return Amounts.atmospheres(1);
  }

  /**
   * Starts one.
   *
   * @return a builder; all but gas conductivity and pressure is required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link PowderBed} values. */
  final class Builder extends ImmutablePowderBed.Builder {
    Builder() {}
  }

  /**
   * Refuses what is no bed.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("powder bed " + name())
            .text("name", name())
            .positive("grain size", grainSize())
            .require(
                porosity().si() > 0 && porosity().si() < 1,
                "porosity is " + porosity() + "; accepted is above 0 and below 1")
            .within("emissivity", emissivity(), Amounts.ratio(0), Amounts.ratio(1))
            .positive("pressure", pressure());
    solidConductivity().values().forEach(k -> problems.positive("solid conductivity", k));
    gasConductivity().values().forEach(k -> problems.positive("gas conductivity", k));
    problems.refuseIfAny();
  }
}
