package dev.kilnledger.units;

import dev.kilnledger.units.quantity.ConductivitySlope;
import dev.kilnledger.units.quantity.HeatTransferCoefficient;
import dev.kilnledger.units.quantity.HeatingRate;
import dev.kilnledger.units.quantity.LinearDensity;
import dev.kilnledger.units.quantity.LinearExpansion;
import dev.kilnledger.units.quantity.MassFraction;
import dev.kilnledger.units.quantity.MolarEnergy;
import dev.kilnledger.units.quantity.MolarMass;
import dev.kilnledger.units.quantity.SpecificEnergy;
import dev.kilnledger.units.quantity.SpecificHeatCapacity;
import dev.kilnledger.units.quantity.TemperatureDifference;
import dev.kilnledger.units.quantity.ThermalConductivity;
import dev.kilnledger.units.quantity.ThermalDiffusivity;
import dev.kilnledger.units.quantity.VolumeFraction;
import javax.measure.Unit;
import javax.measure.quantity.AmountOfSubstance;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import si.uom.quantity.Density;
import si.uom.quantity.DynamicViscosity;
import si.uom.quantity.MassFlowRate;
import si.uom.quantity.VolumetricFlowRate;

/**
 * The units the trade uses. Each is a plain JSR 385 unit; factors are exact by definition (SI
 * Brochure, 9th ed.; NIST SP 811, 2008, appendix B for the inch, the pound and the degree
 * Fahrenheit). Any other JSR 385 unit of the right dimension is accepted wherever these are.
 */
public final class TradeUnits {
  /** The micrometre. */
  public static final Unit<Length> MICROMETRE = UnitScales.MICROMETRE.unit();

  /** The millimetre. */
  public static final Unit<Length> MILLIMETRE = UnitScales.MILLIMETRE.unit();

  /** The centimetre. */
  public static final Unit<Length> CENTIMETRE = UnitScales.CENTIMETRE.unit();

  /** The metre. */
  public static final Unit<Length> METRE = UnitScales.METRE.unit();

  /** The international inch, 25.4 mm. */
  public static final Unit<Length> INCH = UnitScales.INCH.unit();

  /** The square millimetre. */
  public static final Unit<Area> SQUARE_MILLIMETRE = UnitScales.SQUARE_MILLIMETRE.unit();

  /** The square centimetre. */
  public static final Unit<Area> SQUARE_CENTIMETRE = UnitScales.SQUARE_CENTIMETRE.unit();

  /** The square metre. */
  public static final Unit<Area> SQUARE_METRE = UnitScales.SQUARE_METRE.unit();

  /** The cubic millimetre. */
  public static final Unit<Volume> CUBIC_MILLIMETRE = UnitScales.CUBIC_MILLIMETRE.unit();

  /** The cubic centimetre. */
  public static final Unit<Volume> CUBIC_CENTIMETRE = UnitScales.CUBIC_CENTIMETRE.unit();

  /** The millilitre. */
  public static final Unit<Volume> MILLILITRE = UnitScales.MILLILITRE.unit();

  /** The litre. */
  public static final Unit<Volume> LITRE = UnitScales.LITRE.unit();

  /** The cubic metre. */
  public static final Unit<Volume> CUBIC_METRE = UnitScales.CUBIC_METRE.unit();

  /** The milligram. */
  public static final Unit<Mass> MILLIGRAM = UnitScales.MILLIGRAM.unit();

  /** The gram. */
  public static final Unit<Mass> GRAM = UnitScales.GRAM.unit();

  /** The kilogram. */
  public static final Unit<Mass> KILOGRAM = UnitScales.KILOGRAM.unit();

  /** The avoirdupois pound, 0.45359237 kg. */
  public static final Unit<Mass> POUND = UnitScales.POUND.unit();

  /** The avoirdupois ounce, a sixteenth of a pound. */
  public static final Unit<Mass> OUNCE = UnitScales.OUNCE.unit();

  /** The second. */
  public static final Unit<Time> SECOND = UnitScales.SECOND.unit();

  /** The minute. */
  public static final Unit<Time> MINUTE = UnitScales.MINUTE.unit();

  /** The hour. */
  public static final Unit<Time> HOUR = UnitScales.HOUR.unit();

  /** The day of 24 hours. */
  public static final Unit<Time> DAY = UnitScales.DAY.unit();

  /** The kelvin, as a point on the thermodynamic scale. */
  public static final Unit<Temperature> KELVIN = UnitScales.KELVIN.unit();

  /** The degree Celsius, as a point on the scale. */
  public static final Unit<Temperature> CELSIUS = UnitScales.CELSIUS.unit();

  /** The degree Fahrenheit, as a point on the scale. */
  public static final Unit<Temperature> FAHRENHEIT = UnitScales.FAHRENHEIT.unit();

  /** The kelvin, as a difference of two temperatures. */
  public static final Unit<TemperatureDifference> KELVIN_DIFFERENCE =
      UnitScales.KELVIN_DIFFERENCE.unit();

  /** The degree Fahrenheit as a difference, 5/9 K; UCUM writes it as the degree Rankine. */
  public static final Unit<TemperatureDifference> FAHRENHEIT_DIFFERENCE =
      UnitScales.FAHRENHEIT_DIFFERENCE.unit();

  /** The kelvin per hour. */
  public static final Unit<HeatingRate> KELVIN_PER_HOUR = UnitScales.KELVIN_PER_HOUR.unit();

  /** The kelvin per minute. */
  public static final Unit<HeatingRate> KELVIN_PER_MINUTE = UnitScales.KELVIN_PER_MINUTE.unit();

  /** The degree Fahrenheit per hour; UCUM writes the degree Rankine. */
  public static final Unit<HeatingRate> FAHRENHEIT_PER_HOUR = UnitScales.FAHRENHEIT_PER_HOUR.unit();

  /** The kilogram per cubic metre. */
  public static final Unit<Density> KILOGRAM_PER_CUBIC_METRE =
      UnitScales.KILOGRAM_PER_CUBIC_METRE.unit();

  /** The gram per cubic centimetre. */
  public static final Unit<Density> GRAM_PER_CUBIC_CENTIMETRE =
      UnitScales.GRAM_PER_CUBIC_CENTIMETRE.unit();

  /** The gram per metre. */
  public static final Unit<LinearDensity> GRAM_PER_METRE = UnitScales.GRAM_PER_METRE.unit();

  /** The joule. */
  public static final Unit<Energy> JOULE = UnitScales.JOULE.unit();

  /** The megajoule. */
  public static final Unit<Energy> MEGAJOULE = UnitScales.MEGAJOULE.unit();

  /** The kilowatt hour. */
  public static final Unit<Energy> KILOWATT_HOUR = UnitScales.KILOWATT_HOUR.unit();

  /** The joule per gram. */
  public static final Unit<SpecificEnergy> JOULE_PER_GRAM = UnitScales.JOULE_PER_GRAM.unit();

  /** The kilowatt hour per kilogram. */
  public static final Unit<SpecificEnergy> KILOWATT_HOUR_PER_KILOGRAM =
      UnitScales.KILOWATT_HOUR_PER_KILOGRAM.unit();

  /** The watt. */
  public static final Unit<Power> WATT = UnitScales.WATT.unit();

  /** The kilowatt. */
  public static final Unit<Power> KILOWATT = UnitScales.KILOWATT.unit();

  /** The joule per kilogram and kelvin. */
  public static final Unit<SpecificHeatCapacity> JOULE_PER_KILOGRAM_KELVIN =
      UnitScales.JOULE_PER_KILOGRAM_KELVIN.unit();

  /** The watt per metre and kelvin. */
  public static final Unit<ThermalConductivity> WATT_PER_METRE_KELVIN =
      UnitScales.WATT_PER_METRE_KELVIN.unit();

  /** The watt per metre and kelvin squared. */
  public static final Unit<ConductivitySlope> WATT_PER_METRE_KELVIN_SQUARED =
      UnitScales.WATT_PER_METRE_KELVIN_SQUARED.unit();

  /** The square millimetre per second. */
  public static final Unit<ThermalDiffusivity> SQUARE_MILLIMETRE_PER_SECOND =
      UnitScales.SQUARE_MILLIMETRE_PER_SECOND.unit();

  /** The watt per square metre and kelvin. */
  public static final Unit<HeatTransferCoefficient> WATT_PER_SQUARE_METRE_KELVIN =
      UnitScales.WATT_PER_SQUARE_METRE_KELVIN.unit();

  /** The micrometre per metre and kelvin. */
  public static final Unit<LinearExpansion> MICROMETRE_PER_METRE_KELVIN =
      UnitScales.MICROMETRE_PER_METRE_KELVIN.unit();

  /** The mole. */
  public static final Unit<AmountOfSubstance> MOLE = UnitScales.MOLE.unit();

  /** The kilojoule per mole. */
  public static final Unit<MolarEnergy> KILOJOULE_PER_MOLE = UnitScales.KILOJOULE_PER_MOLE.unit();

  /** The gram per mole. */
  public static final Unit<MolarMass> GRAM_PER_MOLE = UnitScales.GRAM_PER_MOLE.unit();

  /** The pascal. */
  public static final Unit<Pressure> PASCAL = UnitScales.PASCAL.unit();

  /** The bar, 100 000 Pa. */
  public static final Unit<Pressure> BAR = UnitScales.BAR.unit();

  /** The standard atmosphere, 101 325 Pa. */
  public static final Unit<Pressure> ATMOSPHERE = UnitScales.ATMOSPHERE.unit();

  /** The millimetre per second. */
  public static final Unit<Speed> MILLIMETRE_PER_SECOND = UnitScales.MILLIMETRE_PER_SECOND.unit();

  /** The cubic metre per hour. */
  public static final Unit<VolumetricFlowRate> CUBIC_METRE_PER_HOUR =
      UnitScales.CUBIC_METRE_PER_HOUR.unit();

  /** The gram per hour. */
  public static final Unit<MassFlowRate> GRAM_PER_HOUR = UnitScales.GRAM_PER_HOUR.unit();

  /** One per second, {@code 1/s}. */
  public static final Unit<Frequency> PER_SECOND = UnitScales.PER_SECOND.unit();

  /** Pascal second, {@code Pa·s}. */
  public static final Unit<DynamicViscosity> PASCAL_SECOND = UnitScales.PASCAL_SECOND.unit();

  /** The ampere. */
  public static final Unit<ElectricCurrent> AMPERE = UnitScales.AMPERE.unit();

  /** The volt. */
  public static final Unit<ElectricPotential> VOLT = UnitScales.VOLT.unit();

  /** The the number one. */
  public static final Unit<Dimensionless> ONE = UnitScales.ONE.unit();

  /** The hundredth. */
  public static final Unit<Dimensionless> PERCENT = UnitScales.PERCENT.unit();

  /** The kilogram per kilogram. */
  public static final Unit<MassFraction> MASS_FRACTION = UnitScales.MASS_FRACTION.unit();

  /** The hundredth of the mass. */
  public static final Unit<MassFraction> MASS_PERCENT = UnitScales.MASS_PERCENT.unit();

  /** The cubic metre per cubic metre. */
  public static final Unit<VolumeFraction> VOLUME_FRACTION = UnitScales.VOLUME_FRACTION.unit();

  /** The hundredth of the volume. */
  public static final Unit<VolumeFraction> VOLUME_PERCENT = UnitScales.VOLUME_PERCENT.unit();

  /** The millionth of the volume, as gases in air are given. */
  public static final Unit<VolumeFraction> PARTS_PER_MILLION = UnitScales.PARTS_PER_MILLION.unit();

  private TradeUnits() {}
}
