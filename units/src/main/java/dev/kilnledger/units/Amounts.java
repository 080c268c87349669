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
import javax.measure.quantity.AmountOfSubstance;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import si.uom.quantity.Density;
import si.uom.quantity.MassFlowRate;
import si.uom.quantity.VolumetricFlowRate;

/**
 * Amounts that read like speech: {@code grams(46)}, {@code celsius(820)}, {@code
 * kelvinPerHour(60)}. Meant to be imported statically.
 *
 * <p>Every method refuses NaN and infinity with an {@link IllegalArgumentException}, and a
 * temperature below 0 K as well.
 */
public final class Amounts {
  private Amounts() {}

  /**
   * An amount in the unit {@link TradeUnits#MICROMETRE}: micrometre.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Length> micrometres(double number) {
    return new Amount<>(number, UnitScales.MICROMETRE);
  }

  /**
   * An amount in the unit {@link TradeUnits#MILLIMETRE}: millimetre.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Length> millimetres(double number) {
    return new Amount<>(number, UnitScales.MILLIMETRE);
  }

  /**
   * An amount in the unit {@link TradeUnits#CENTIMETRE}: centimetre.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Length> centimetres(double number) {
    return new Amount<>(number, UnitScales.CENTIMETRE);
  }

  /**
   * An amount in the unit {@link TradeUnits#METRE}: metre.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Length> metres(double number) {
    return new Amount<>(number, UnitScales.METRE);
  }

  /**
   * An amount in the unit {@link TradeUnits#INCH}: international inch, 25.4 mm.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Length> inches(double number) {
    return new Amount<>(number, UnitScales.INCH);
  }

  /**
   * An amount in the unit {@link TradeUnits#SQUARE_MILLIMETRE}: square millimetre.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Area> squareMillimetres(double number) {
    return new Amount<>(number, UnitScales.SQUARE_MILLIMETRE);
  }

  /**
   * An amount in the unit {@link TradeUnits#SQUARE_CENTIMETRE}: square centimetre.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Area> squareCentimetres(double number) {
    return new Amount<>(number, UnitScales.SQUARE_CENTIMETRE);
  }

  /**
   * An amount in the unit {@link TradeUnits#SQUARE_METRE}: square metre.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Area> squareMetres(double number) {
    return new Amount<>(number, UnitScales.SQUARE_METRE);
  }

  /**
   * An amount in the unit {@link TradeUnits#CUBIC_MILLIMETRE}: cubic millimetre.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Volume> cubicMillimetres(double number) {
    return new Amount<>(number, UnitScales.CUBIC_MILLIMETRE);
  }

  /**
   * An amount in the unit {@link TradeUnits#CUBIC_CENTIMETRE}: cubic centimetre.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Volume> cubicCentimetres(double number) {
    return new Amount<>(number, UnitScales.CUBIC_CENTIMETRE);
  }

  /**
   * An amount in the unit {@link TradeUnits#MILLILITRE}: millilitre.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Volume> millilitres(double number) {
    return new Amount<>(number, UnitScales.MILLILITRE);
  }

  /**
   * An amount in the unit {@link TradeUnits#LITRE}: litre.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Volume> litres(double number) {
    return new Amount<>(number, UnitScales.LITRE);
  }

  /**
   * An amount in the unit {@link TradeUnits#CUBIC_METRE}: cubic metre.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Volume> cubicMetres(double number) {
    return new Amount<>(number, UnitScales.CUBIC_METRE);
  }

  /**
   * An amount in the unit {@link TradeUnits#MILLIGRAM}: milligram.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Mass> milligrams(double number) {
    return new Amount<>(number, UnitScales.MILLIGRAM);
  }

  /**
   * An amount in the unit {@link TradeUnits#GRAM}: gram.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Mass> grams(double number) {
    return new Amount<>(number, UnitScales.GRAM);
  }

  /**
   * An amount in the unit {@link TradeUnits#KILOGRAM}: kilogram.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Mass> kilograms(double number) {
    return new Amount<>(number, UnitScales.KILOGRAM);
  }

  /**
   * An amount in the unit {@link TradeUnits#POUND}: avoirdupois pound, 0.45359237 kg.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Mass> pounds(double number) {
    return new Amount<>(number, UnitScales.POUND);
  }

  /**
   * An amount in the unit {@link TradeUnits#OUNCE}: avoirdupois ounce, a sixteenth of a pound.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Mass> ounces(double number) {
    return new Amount<>(number, UnitScales.OUNCE);
  }

  /**
   * An amount in the unit {@link TradeUnits#SECOND}: second.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Time> seconds(double number) {
    return new Amount<>(number, UnitScales.SECOND);
  }

  /**
   * An amount in the unit {@link TradeUnits#MINUTE}: minute.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Time> minutes(double number) {
    return new Amount<>(number, UnitScales.MINUTE);
  }

  /**
   * An amount in the unit {@link TradeUnits#HOUR}: hour.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Time> hours(double number) {
    return new Amount<>(number, UnitScales.HOUR);
  }

  /**
   * An amount in the unit {@link TradeUnits#DAY}: day of 24 hours.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Time> days(double number) {
    return new Amount<>(number, UnitScales.DAY);
  }

  /**
   * An amount in the unit {@link TradeUnits#KELVIN}: kelvin, as a point on the thermodynamic scale.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Temperature> kelvin(double number) {
    return new Amount<>(number, UnitScales.KELVIN);
  }

  /**
   * An amount in the unit {@link TradeUnits#CELSIUS}: degree Celsius, as a point on the scale.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Temperature> celsius(double number) {
    return new Amount<>(number, UnitScales.CELSIUS);
  }

  /**
   * An amount in the unit {@link TradeUnits#FAHRENHEIT}: degree Fahrenheit, as a point on the
   * scale.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Temperature> fahrenheit(double number) {
    return new Amount<>(number, UnitScales.FAHRENHEIT);
  }

  /**
   * An amount in the unit {@link TradeUnits#KELVIN_DIFFERENCE}: kelvin, as a difference of two
   * temperatures.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<TemperatureDifference> kelvinDifference(double number) {
    return new Amount<>(number, UnitScales.KELVIN_DIFFERENCE);
  }

  /**
   * An amount in the unit {@link TradeUnits#FAHRENHEIT_DIFFERENCE}: degree Fahrenheit as a
   * difference, 5/9 K.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<TemperatureDifference> fahrenheitDifference(double number) {
    return new Amount<>(number, UnitScales.FAHRENHEIT_DIFFERENCE);
  }

  /**
   * An amount in the unit {@link TradeUnits#KELVIN_PER_HOUR}: kelvin per hour.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<HeatingRate> kelvinPerHour(double number) {
    return new Amount<>(number, UnitScales.KELVIN_PER_HOUR);
  }

  /**
   * An amount in the unit {@link TradeUnits#KELVIN_PER_MINUTE}: kelvin per minute.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<HeatingRate> kelvinPerMinute(double number) {
    return new Amount<>(number, UnitScales.KELVIN_PER_MINUTE);
  }

  /**
   * An amount in the unit {@link TradeUnits#FAHRENHEIT_PER_HOUR}: degree Fahrenheit per hour.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<HeatingRate> fahrenheitPerHour(double number) {
    return new Amount<>(number, UnitScales.FAHRENHEIT_PER_HOUR);
  }

  /**
   * An amount in the unit {@link TradeUnits#KILOGRAM_PER_CUBIC_METRE}: kilogram per cubic metre.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Density> kilogramsPerCubicMetre(double number) {
    return new Amount<>(number, UnitScales.KILOGRAM_PER_CUBIC_METRE);
  }

  /**
   * An amount in the unit {@link TradeUnits#GRAM_PER_CUBIC_CENTIMETRE}: gram per cubic centimetre.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Density> gramsPerCubicCentimetre(double number) {
    return new Amount<>(number, UnitScales.GRAM_PER_CUBIC_CENTIMETRE);
  }

  /**
   * An amount in the unit {@link TradeUnits#GRAM_PER_METRE}: gram per metre.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<LinearDensity> gramsPerMetre(double number) {
    return new Amount<>(number, UnitScales.GRAM_PER_METRE);
  }

  /**
   * An amount in the unit {@link TradeUnits#JOULE}: joule.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Energy> joules(double number) {
    return new Amount<>(number, UnitScales.JOULE);
  }

  /**
   * An amount in the unit {@link TradeUnits#MEGAJOULE}: megajoule.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Energy> megajoules(double number) {
    return new Amount<>(number, UnitScales.MEGAJOULE);
  }

  /**
   * An amount in the unit {@link TradeUnits#KILOWATT_HOUR}: kilowatt hour.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Energy> kilowattHours(double number) {
    return new Amount<>(number, UnitScales.KILOWATT_HOUR);
  }

  /**
   * An amount in the unit {@link TradeUnits#JOULE_PER_GRAM}: joule per gram.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<SpecificEnergy> joulesPerGram(double number) {
    return new Amount<>(number, UnitScales.JOULE_PER_GRAM);
  }

  /**
   * An amount in the unit {@link TradeUnits#KILOWATT_HOUR_PER_KILOGRAM}: kilowatt hour per
   * kilogram.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<SpecificEnergy> kilowattHoursPerKilogram(double number) {
    return new Amount<>(number, UnitScales.KILOWATT_HOUR_PER_KILOGRAM);
  }

  /**
   * An amount in the unit {@link TradeUnits#WATT}: watt.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Power> watts(double number) {
    return new Amount<>(number, UnitScales.WATT);
  }

  /**
   * An amount in the unit {@link TradeUnits#KILOWATT}: kilowatt.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Power> kilowatts(double number) {
    return new Amount<>(number, UnitScales.KILOWATT);
  }

  /**
   * An amount in the unit {@link TradeUnits#JOULE_PER_KILOGRAM_KELVIN}: joule per kilogram and
   * kelvin.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<SpecificHeatCapacity> joulesPerKilogramKelvin(double number) {
    return new Amount<>(number, UnitScales.JOULE_PER_KILOGRAM_KELVIN);
  }

  /**
   * An amount in the unit {@link TradeUnits#WATT_PER_METRE_KELVIN}: watt per metre and kelvin.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<ThermalConductivity> wattsPerMetreKelvin(double number) {
    return new Amount<>(number, UnitScales.WATT_PER_METRE_KELVIN);
  }

  /**
   * An amount in the unit {@link TradeUnits#WATT_PER_METRE_KELVIN_SQUARED}: watt per metre and
   * kelvin squared.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<ConductivitySlope> wattsPerMetreKelvinSquared(double number) {
    return new Amount<>(number, UnitScales.WATT_PER_METRE_KELVIN_SQUARED);
  }

  /**
   * An amount in the unit {@link TradeUnits#SQUARE_MILLIMETRE_PER_SECOND}: square millimetre per
   * second.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<ThermalDiffusivity> squareMillimetresPerSecond(double number) {
    return new Amount<>(number, UnitScales.SQUARE_MILLIMETRE_PER_SECOND);
  }

  /**
   * An amount in the unit {@link TradeUnits#WATT_PER_SQUARE_METRE_KELVIN}: watt per square metre
   * and kelvin.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<HeatTransferCoefficient> wattsPerSquareMetreKelvin(double number) {
    return new Amount<>(number, UnitScales.WATT_PER_SQUARE_METRE_KELVIN);
  }

  /**
   * An amount in the unit {@link TradeUnits#MICROMETRE_PER_METRE_KELVIN}: micrometre per metre and
   * kelvin.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<LinearExpansion> micrometresPerMetreKelvin(double number) {
    return new Amount<>(number, UnitScales.MICROMETRE_PER_METRE_KELVIN);
  }

  /**
   * An amount in the unit {@link TradeUnits#MOLE}: mole.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<AmountOfSubstance> moles(double number) {
    return new Amount<>(number, UnitScales.MOLE);
  }

  /**
   * An amount in the unit {@link TradeUnits#KILOJOULE_PER_MOLE}: kilojoule per mole.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<MolarEnergy> kilojoulesPerMole(double number) {
    return new Amount<>(number, UnitScales.KILOJOULE_PER_MOLE);
  }

  /**
   * An amount in the unit {@link TradeUnits#GRAM_PER_MOLE}: gram per mole.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<MolarMass> gramsPerMole(double number) {
    return new Amount<>(number, UnitScales.GRAM_PER_MOLE);
  }

  /**
   * An amount in the unit {@link TradeUnits#PASCAL}: pascal.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Pressure> pascals(double number) {
    return new Amount<>(number, UnitScales.PASCAL);
  }

  /**
   * An amount in the unit {@link TradeUnits#BAR}: bar, 100 000 Pa.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Pressure> bars(double number) {
    return new Amount<>(number, UnitScales.BAR);
  }

  /**
   * An amount in the unit {@link TradeUnits#ATMOSPHERE}: standard atmosphere, 101 325 Pa.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Pressure> atmospheres(double number) {
    return new Amount<>(number, UnitScales.ATMOSPHERE);
  }

  /**
   * An amount in the unit {@link TradeUnits#MILLIMETRE_PER_SECOND}: millimetre per second.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Speed> millimetresPerSecond(double number) {
    return new Amount<>(number, UnitScales.MILLIMETRE_PER_SECOND);
  }

  /**
   * An amount in the unit {@link TradeUnits#CUBIC_METRE_PER_HOUR}: cubic metre per hour.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<VolumetricFlowRate> cubicMetresPerHour(double number) {
    return new Amount<>(number, UnitScales.CUBIC_METRE_PER_HOUR);
  }

  /**
   * An amount in the unit {@link TradeUnits#GRAM_PER_HOUR}: gram per hour.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<MassFlowRate> gramsPerHour(double number) {
    return new Amount<>(number, UnitScales.GRAM_PER_HOUR);
  }

  /**
   * An amount in the unit {@link TradeUnits#AMPERE}: ampere.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<ElectricCurrent> amperes(double number) {
    return new Amount<>(number, UnitScales.AMPERE);
  }

  /**
   * An amount in the unit {@link TradeUnits#VOLT}: volt.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<ElectricPotential> volts(double number) {
    return new Amount<>(number, UnitScales.VOLT);
  }

  /**
   * An amount in the unit {@link TradeUnits#ONE}: the number one.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Dimensionless> ratio(double number) {
    return new Amount<>(number, UnitScales.ONE);
  }

  /**
   * An amount in the unit {@link TradeUnits#PERCENT}: hundredth.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<Dimensionless> percent(double number) {
    return new Amount<>(number, UnitScales.PERCENT);
  }

  /**
   * An amount in the unit {@link TradeUnits#MASS_FRACTION}: kilogram per kilogram.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<MassFraction> massFraction(double number) {
    return new Amount<>(number, UnitScales.MASS_FRACTION);
  }

  /**
   * An amount in the unit {@link TradeUnits#MASS_PERCENT}: hundredth of the mass.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<MassFraction> massPercent(double number) {
    return new Amount<>(number, UnitScales.MASS_PERCENT);
  }

  /**
   * An amount in the unit {@link TradeUnits#VOLUME_FRACTION}: cubic metre per cubic metre.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<VolumeFraction> volumeFraction(double number) {
    return new Amount<>(number, UnitScales.VOLUME_FRACTION);
  }

  /**
   * An amount in the unit {@link TradeUnits#VOLUME_PERCENT}: hundredth of the volume.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<VolumeFraction> volumePercent(double number) {
    return new Amount<>(number, UnitScales.VOLUME_PERCENT);
  }

  /**
   * An amount in the unit {@link TradeUnits#PARTS_PER_MILLION}: millionth of the volume, as gases
   * in air are given.
   *
   * @param number the number of units, finite
   * @return the amount
   */
  public static Amount<VolumeFraction> partsPerMillion(double number) {
    return new Amount<>(number, UnitScales.PARTS_PER_MILLION);
  }
}
