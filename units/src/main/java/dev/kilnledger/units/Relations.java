package dev.kilnledger.units;

import dev.kilnledger.units.quantity.HeatingRate;
import dev.kilnledger.units.quantity.LinearDensity;
import dev.kilnledger.units.quantity.LinearExpansion;
import dev.kilnledger.units.quantity.MassFraction;
import dev.kilnledger.units.quantity.SpecificEnergy;
import dev.kilnledger.units.quantity.SpecificHeatCapacity;
import dev.kilnledger.units.quantity.TemperatureDifference;
import dev.kilnledger.units.quantity.ThermalConductivity;
import dev.kilnledger.units.quantity.ThermalDiffusivity;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.util.Arrays;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import si.uom.quantity.Density;

/**
 * The formulas in which one kind of quantity becomes another, typed so that no caller has to assert
 * what came out. Results are in the coherent SI unit unless stated otherwise.
 *
 * <p>A result that is not finite, as after a division by zero, is refused with an {@link
 * IllegalArgumentException} that names both the result and what went in.
 */
public final class Relations {
  // Constants, as the scales of the shipped units are, and not asked of the kind for each result.
  private static final UnitScale<LinearDensity> KILOGRAM_PER_METRE = Kind.LINEAR_DENSITY.siScale();
  private static final UnitScale<HeatingRate> KELVIN_PER_SECOND = Kind.HEATING_RATE.siScale();
  private static final UnitScale<ThermalDiffusivity> SQUARE_METRE_PER_SECOND =
      Kind.THERMAL_DIFFUSIVITY.siScale();

  private Relations() {}

  /**
   * The mass of a volume: density times volume.
   *
   * @param density the density
   * @param volume the volume
   * @return the mass of a volume
   */
  public static Amount<Mass> massOf(Amount<Density> density, Amount<Volume> volume) {
    return result(density.si() * volume.si(), UnitScales.KILOGRAM, density, volume);
  }

  /**
   * The volume of a mass: mass over density.
   *
   * @param mass the mass
   * @param density the density, not zero
   * @return the volume of a mass
   */
  public static Amount<Volume> volumeOf(Amount<Mass> mass, Amount<Density> density) {
    return result(mass.si() / density.si(), UnitScales.CUBIC_METRE, mass, density);
  }

  /**
   * The density of a body: mass over volume.
   *
   * @param mass the mass
   * @param volume the volume, not zero
   * @return the density of a body
   */
  public static Amount<Density> densityOf(Amount<Mass> mass, Amount<Volume> volume) {
    return result(mass.si() / volume.si(), UnitScales.KILOGRAM_PER_CUBIC_METRE, mass, volume);
  }

  /**
   * The mass of one constituent of a mixture.
   *
   * @param whole the mass of the mixture
   * @param fraction the share of the constituent
   * @return the mass of one constituent of a mixture
   */
  public static Amount<Mass> massShare(Amount<Mass> whole, Amount<MassFraction> fraction) {
    return result(whole.si() * fraction.si(), UnitScales.KILOGRAM, whole, fraction);
  }

  /**
   * The share of a constituent in the mass of a mixture.
   *
   * @param constituent the mass of the constituent
   * @param whole the mass of the mixture, not zero
   * @return the share of a constituent in the mass of a mixture
   */
  public static Amount<MassFraction> massFractionOf(Amount<Mass> constituent, Amount<Mass> whole) {
    return result(constituent.si() / whole.si(), UnitScales.MASS_FRACTION, constituent, whole);
  }

  /**
   * The volume of one constituent of a body.
   *
   * @param whole the volume of the body
   * @param fraction the share of the constituent
   * @return the volume of one constituent of a body
   */
  public static Amount<Volume> volumeShare(Amount<Volume> whole, Amount<VolumeFraction> fraction) {
    return result(whole.si() * fraction.si(), UnitScales.CUBIC_METRE, whole, fraction);
  }

  /**
   * The share of a constituent in the volume of a body.
   *
   * @param constituent the volume of the constituent
   * @param whole the volume of the body, not zero
   * @return the share of a constituent in the volume of a body
   */
  public static Amount<VolumeFraction> volumeFractionOf(
      Amount<Volume> constituent, Amount<Volume> whole) {
    return result(constituent.si() / whole.si(), UnitScales.VOLUME_FRACTION, constituent, whole);
  }

  /**
   * The relative density of a body, which is the volume fraction of its solid.
   *
   * @param density the density of the body
   * @param full the density without pores, not zero
   * @return the relative density of a body, which is the volume fraction of its solid
   */
  public static Amount<VolumeFraction> relativeDensityOf(
      Amount<Density> density, Amount<Density> full) {
    return result(density.si() / full.si(), UnitScales.VOLUME_FRACTION, density, full);
  }

  /**
   * The area of a rectangle.
   *
   * @param length one side
   * @param width the other side
   * @return the area of a rectangle
   */
  public static Amount<Area> areaOf(Amount<Length> length, Amount<Length> width) {
    return result(length.si() * width.si(), UnitScales.SQUARE_METRE, length, width);
  }

  /**
   * The area of a circle: pi d² / 4.
   *
   * @param diameter the diameter
   * @return the area of a circle
   */
  public static Amount<Area> areaOfCircle(Amount<Length> diameter) {
    return result(Math.PI / 4 * diameter.si() * diameter.si(), UnitScales.SQUARE_METRE, diameter);
  }

  /**
   * The volume of a prism or cylinder: section times length.
   *
   * @param section the cross-section
   * @param length the length
   * @return the volume of a prism or cylinder
   */
  public static Amount<Volume> volumeOfPrism(Amount<Area> section, Amount<Length> length) {
    return result(section.si() * length.si(), UnitScales.CUBIC_METRE, section, length);
  }

  /**
   * The volume of a box.
   *
   * @param length the length
   * @param width the width
   * @param height the height
   * @return the volume of a box
   */
  public static Amount<Volume> volumeOfBox(
      Amount<Length> length, Amount<Length> width, Amount<Length> height) {
    return result(
        length.si() * width.si() * height.si(), UnitScales.CUBIC_METRE, length, width, height);
  }

  /**
   * The length of a prism or cylinder: volume over section.
   *
   * @param volume the volume
   * @param section the cross-section, not zero
   * @return the length of a prism or cylinder
   */
  public static Amount<Length> lengthOfPrism(Amount<Volume> volume, Amount<Area> section) {
    return result(volume.si() / section.si(), UnitScales.METRE, volume, section);
  }

  /**
   * The mass per length of a strand: density times section.
   *
   * @param density the density
   * @param section the cross-section
   * @return the mass per length of a strand
   */
  public static Amount<LinearDensity> linearDensityOf(
      Amount<Density> density, Amount<Area> section) {
    return result(density.si() * section.si(), KILOGRAM_PER_METRE, density, section);
  }

  /**
   * The length of a strand of a given mass.
   *
   * @param mass the mass
   * @param linearDensity the mass per length, not zero
   * @return the length of a strand of a given mass
   */
  public static Amount<Length> lengthOfStrand(
      Amount<Mass> mass, Amount<LinearDensity> linearDensity) {
    return result(mass.si() / linearDensity.si(), UnitScales.METRE, mass, linearDensity);
  }

  /**
   * The mass of a strand of a given length.
   *
   * @param linearDensity the mass per length
   * @param length the length
   * @return the mass of a strand of a given length
   */
  public static Amount<Mass> massOfStrand(
      Amount<LinearDensity> linearDensity, Amount<Length> length) {
    return result(linearDensity.si() * length.si(), UnitScales.KILOGRAM, linearDensity, length);
  }

  /**
   * How far the second temperature lies above the first; negative if below.
   *
   * @param from the first temperature
   * @param to the second temperature
   * @return how far the second temperature lies above the first; negative if below
   */
  public static Amount<TemperatureDifference> difference(
      Amount<Temperature> from, Amount<Temperature> to) {
    // In one scale the given numbers subtract exactly where their SI values may not.
    UnitScale<Temperature> scale = from.scale();
    double kelvin =
        to.scale().equals(scale)
            ? (to.given() - from.given()) * scale.numerator() / scale.denominator()
            : to.si() - from.si();
    return new Amount<>(kelvin, UnitScales.KELVIN_DIFFERENCE);
  }

  /**
   * The temperature that lies a difference above another, in the unit of the first.
   *
   * @param temperature the temperature to start from
   * @param difference how far to go, negative for down
   * @return the temperature that lies a difference above another, in the unit of the first
   */
  public static Amount<Temperature> shifted(
      Amount<Temperature> temperature, Amount<TemperatureDifference> difference) {
    UnitScale<Temperature> scale = temperature.scale();
    double steps = difference.si() * scale.denominator() / scale.numerator();
    return new Amount<>(temperature.given() + steps, scale);
  }

  /**
   * The time to cover a temperature difference at a constant rate.
   *
   * @param difference the difference to cover
   * @param rate the rate, not zero
   * @return the time to cover a temperature difference at a constant rate
   */
  public static Amount<Time> durationOf(
      Amount<TemperatureDifference> difference, Amount<HeatingRate> rate) {
    return result(difference.si() / rate.si(), UnitScales.SECOND, difference, rate);
  }

  /**
   * The mean rate at which a difference is covered.
   *
   * @param difference the difference covered
   * @param duration the time, not zero
   * @return the mean rate at which a difference is covered
   */
  public static Amount<HeatingRate> rateOf(
      Amount<TemperatureDifference> difference, Amount<Time> duration) {
    return result(difference.si() / duration.si(), KELVIN_PER_SECOND, difference, duration);
  }

  /**
   * The difference covered at a constant rate.
   *
   * @param rate the rate
   * @param duration the time
   * @return the difference covered at a constant rate
   */
  public static Amount<TemperatureDifference> differenceOver(
      Amount<HeatingRate> rate, Amount<Time> duration) {
    return result(rate.si() * duration.si(), UnitScales.KELVIN_DIFFERENCE, rate, duration);
  }

  /**
   * The energy of a constant power: power times time.
   *
   * @param power the power
   * @param duration the time
   * @return the energy of a constant power
   */
  public static Amount<Energy> energyOf(Amount<Power> power, Amount<Time> duration) {
    return result(power.si() * duration.si(), UnitScales.JOULE, power, duration);
  }

  /**
   * The mean power: energy over time.
   *
   * @param energy the energy
   * @param duration the time, not zero
   * @return the mean power
   */
  public static Amount<Power> meanPower(Amount<Energy> energy, Amount<Time> duration) {
    return result(energy.si() / duration.si(), UnitScales.WATT, energy, duration);
  }

  /**
   * The heat that warms a mass: m c dT.
   *
   * @param mass the mass
   * @param heatCapacity the specific heat capacity, taken as constant
   * @param difference the warming
   * @return the heat that warms a mass
   */
  public static Amount<Energy> heatToWarm(
      Amount<Mass> mass,
      Amount<SpecificHeatCapacity> heatCapacity,
      Amount<TemperatureDifference> difference) {
    return result(
        mass.si() * heatCapacity.si() * difference.si(),
        UnitScales.JOULE,
        mass,
        heatCapacity,
        difference);
  }

  /**
   * The energy of a mass: mass times energy per mass.
   *
   * @param mass the mass
   * @param specific the energy per mass
   * @return the energy of a mass
   */
  public static Amount<Energy> energyOfMass(Amount<Mass> mass, Amount<SpecificEnergy> specific) {
    return result(mass.si() * specific.si(), UnitScales.JOULE, mass, specific);
  }

  /**
   * The steady heat flow through a slab: k A dT / L (Fourier's law).
   *
   * @param conductivity the thermal conductivity
   * @param area the area
   * @param difference the difference between the faces
   * @param thickness the thickness, not zero
   * @return the steady heat flow through a slab
   */
  public static Amount<Power> heatFlow(
      Amount<ThermalConductivity> conductivity,
      Amount<Area> area,
      Amount<TemperatureDifference> difference,
      Amount<Length> thickness) {
    double si = conductivity.si() * area.si() * difference.si() / thickness.si();
    return Double.isFinite(si)
        ? new Amount<>(si, UnitScales.WATT)
        : refused(Kind.POWER, conductivity, area, difference, thickness);
  }

  /**
   * The thermal diffusivity: k / (rho c).
   *
   * @param conductivity the thermal conductivity
   * @param density the density, not zero
   * @param heatCapacity the specific heat capacity, not zero
   * @return the thermal diffusivity
   */
  public static Amount<ThermalDiffusivity> diffusivityOf(
      Amount<ThermalConductivity> conductivity,
      Amount<Density> density,
      Amount<SpecificHeatCapacity> heatCapacity) {
    return result(
        conductivity.si() / (density.si() * heatCapacity.si()),
        SQUARE_METRE_PER_SECOND,
        conductivity,
        density,
        heatCapacity);
  }

  /**
   * The relative change of length on warming: coefficient times difference.
   *
   * @param coefficient the mean coefficient of linear expansion
   * @param difference the warming
   * @return the relative change of length on warming
   */
  public static Amount<Dimensionless> expansionOver(
      Amount<LinearExpansion> coefficient, Amount<TemperatureDifference> difference) {
    return result(coefficient.si() * difference.si(), UnitScales.ONE, coefficient, difference);
  }

  /**
   * The power of a current in phase with its voltage: V I.
   *
   * @param potential the voltage
   * @param current the current
   * @return the power of a current in phase with its voltage
   */
  public static Amount<Power> powerOf(
      Amount<ElectricPotential> potential, Amount<ElectricCurrent> current) {
    return result(potential.si() * current.si(), UnitScales.WATT, potential, current);
  }

  /**
   * The current that a resistive load draws: P / V.
   *
   * @param power the power
   * @param potential the voltage, not zero
   * @return the current that a resistive load draws
   */
  public static Amount<ElectricCurrent> currentOf(
      Amount<Power> power, Amount<ElectricPotential> potential) {
    return result(power.si() / potential.si(), UnitScales.AMPERE, power, potential);
  }

  // One method for each number of inputs: a list of them would be made for every result.
  private static <Q extends Quantity<Q>> Amount<Q> result(
      double si, UnitScale<Q> scale, Amount<?> a) {
    return Double.isFinite(si) ? new Amount<>(si, scale) : refused(scale.kind(), a);
  }

  private static <Q extends Quantity<Q>> Amount<Q> result(
      double si, UnitScale<Q> scale, Amount<?> a, Amount<?> b) {
    return Double.isFinite(si) ? new Amount<>(si, scale) : refused(scale.kind(), a, b);
  }

  private static <Q extends Quantity<Q>> Amount<Q> result(
      double si, UnitScale<Q> scale, Amount<?> a, Amount<?> b, Amount<?> c) {
    return Double.isFinite(si) ? new Amount<>(si, scale) : refused(scale.kind(), a, b, c);
  }

  private static <Q extends Quantity<Q>> Amount<Q> refused(Kind<Q> kind, Amount<?>... inputs) {
    throw new IllegalArgumentException(
        "no finite "
            + kind
            + " follows from "
            + Arrays.toString(inputs)
            + "; accepted are divisors other than zero");
  }
}
