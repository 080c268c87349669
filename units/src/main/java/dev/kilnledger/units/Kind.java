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
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Dimension;
import javax.measure.Quantity;
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
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.AlternateUnit;
import tech.units.indriya.unit.Units;

/**
 * What an amount is an amount of. Kinds tell apart what dimensions cannot: a temperature from a
 * temperature difference (both in kelvin), a mass fraction from a volume fraction (both without
 * dimension).
 *
 * @param <Q> the JSR 385 quantity of this kind
 */
public final class Kind<Q extends Quantity<Q>> {
  /** Length, in metre. */
  public static final Kind<Length> LENGTH = new Kind<>("length", Units.METRE, "m", "m");

  /** Area, in square metre. */
  public static final Kind<Area> AREA = new Kind<>("area", Units.SQUARE_METRE, "m2", "m²");

  /** Volume, in cubic metre. */
  public static final Kind<Volume> VOLUME = new Kind<>("volume", Units.CUBIC_METRE, "m3", "m³");

  /** Mass, in kilogram. */
  public static final Kind<Mass> MASS = new Kind<>("mass", Units.KILOGRAM, "kg", "kg");

  /** Time, in second. */
  public static final Kind<Time> TIME = new Kind<>("time", Units.SECOND, "s", "s");

  /** Thermodynamic temperature as a point on a scale, in kelvin, never below zero. */
  public static final Kind<Temperature> TEMPERATURE =
      new Kind<>("temperature", Units.KELVIN, "K", "K", true);

  /** Temperature difference, in kelvin. */
  public static final Kind<TemperatureDifference> TEMPERATURE_DIFFERENCE =
      alternate("temperature difference", Units.KELVIN, "K", "K");

  /** Heating rate, in kelvin per second. */
  public static final Kind<HeatingRate> HEATING_RATE =
      composed("heating rate", Units.KELVIN.divide(Units.SECOND), "K/s", "K/s");

  /** Density, in kilogram per cubic metre. */
  public static final Kind<Density> DENSITY =
      composed("density", Units.KILOGRAM.divide(Units.CUBIC_METRE), "kg/m3", "kg/m³");

  /** Mass per length, in kilogram per metre. */
  public static final Kind<LinearDensity> LINEAR_DENSITY =
      composed("mass per length", Units.KILOGRAM.divide(Units.METRE), "kg/m", "kg/m");

  /** Energy, in joule. */
  public static final Kind<Energy> ENERGY = new Kind<>("energy", Units.JOULE, "J", "J");

  /** Energy per mass, in joule per kilogram. */
  public static final Kind<SpecificEnergy> SPECIFIC_ENERGY =
      composed("energy per mass", Units.JOULE.divide(Units.KILOGRAM), "J/kg", "J/kg");

  /** Power, in watt. */
  public static final Kind<Power> POWER = new Kind<>("power", Units.WATT, "W", "W");

  /** Specific heat capacity, in joule per kilogram and kelvin. */
  public static final Kind<SpecificHeatCapacity> SPECIFIC_HEAT_CAPACITY =
      composed(
          "specific heat capacity",
          Units.JOULE.divide(Units.KILOGRAM.multiply(Units.KELVIN)),
          "J/(kg.K)",
          "J/(kg·K)");

  /** Thermal conductivity, in watt per metre and kelvin. */
  public static final Kind<ThermalConductivity> THERMAL_CONDUCTIVITY =
      composed(
          "thermal conductivity",
          Units.WATT.divide(Units.METRE.multiply(Units.KELVIN)),
          "W/(m.K)",
          "W/(m·K)");

  /** Change of thermal conductivity with temperature, in watt per metre and kelvin squared. */
  public static final Kind<ConductivitySlope> CONDUCTIVITY_SLOPE =
      composed(
          "conductivity slope",
          Units.WATT.divide(Units.METRE.multiply(Units.KELVIN.pow(2))),
          "W/(m.K2)",
          "W/(m·K²)");

  /** Thermal diffusivity, in square metre per second. */
  public static final Kind<ThermalDiffusivity> THERMAL_DIFFUSIVITY =
      composed("thermal diffusivity", Units.SQUARE_METRE.divide(Units.SECOND), "m2/s", "m²/s");

  /** Heat transfer coefficient, in watt per square metre and kelvin. */
  public static final Kind<HeatTransferCoefficient> HEAT_TRANSFER_COEFFICIENT =
      composed(
          "heat transfer coefficient",
          Units.WATT.divide(Units.SQUARE_METRE.multiply(Units.KELVIN)),
          "W/(m2.K)",
          "W/(m²·K)");

  /** Relative change of length per kelvin, in reciprocal kelvin. */
  public static final Kind<LinearExpansion> LINEAR_EXPANSION =
      composed("linear expansion", Units.KELVIN.inverse(), "K-1", "1/K");

  /** Amount of substance, in mole. */
  public static final Kind<AmountOfSubstance> AMOUNT_OF_SUBSTANCE =
      new Kind<>("amount of substance", Units.MOLE, "mol", "mol");

  /** Molar energy, in joule per mole. */
  public static final Kind<MolarEnergy> MOLAR_ENERGY =
      composed("molar energy", Units.JOULE.divide(Units.MOLE), "J/mol", "J/mol");

  /** Molar mass, in kilogram per mole. */
  public static final Kind<MolarMass> MOLAR_MASS =
      composed("molar mass", Units.KILOGRAM.divide(Units.MOLE), "kg/mol", "kg/mol");

  /** Pressure, in pascal. */
  public static final Kind<Pressure> PRESSURE = new Kind<>("pressure", Units.PASCAL, "Pa", "Pa");

  /** Speed, in metre per second. */
  public static final Kind<Speed> SPEED = new Kind<>("speed", Units.METRE_PER_SECOND, "m/s", "m/s");

  /** Volume flow, in cubic metre per second. */
  public static final Kind<VolumetricFlowRate> VOLUME_FLOW =
      composed("volume flow", Units.CUBIC_METRE.divide(Units.SECOND), "m3/s", "m³/s");

  /** Mass flow, in kilogram per second. */
  public static final Kind<MassFlowRate> MASS_FLOW =
      composed("mass flow", Units.KILOGRAM.divide(Units.SECOND), "kg/s", "kg/s");

  /** Number per time, such as the rate of a reaction, in reciprocal second. */
  public static final Kind<Frequency> FREQUENCY =
      composed("frequency", Units.SECOND.inverse(), "s-1", "1/s");

  /** Dynamic viscosity, in pascal second. */
  public static final Kind<DynamicViscosity> DYNAMIC_VISCOSITY =
      composed("dynamic viscosity", Units.PASCAL.multiply(Units.SECOND), "Pa.s", "Pa·s");

  /** Electric current, in ampere. */
  public static final Kind<ElectricCurrent> ELECTRIC_CURRENT =
      new Kind<>("electric current", Units.AMPERE, "A", "A");

  /** Electric potential, in volt. */
  public static final Kind<ElectricPotential> ELECTRIC_POTENTIAL =
      new Kind<>("electric potential", Units.VOLT, "V", "V");

  /** A bare ratio, such as a linear shrinkage or an oversize factor. */
  public static final Kind<Dimensionless> RATIO = new Kind<>("ratio", AbstractUnit.ONE, "1", "");

  /** Mass fraction, in kilogram per kilogram. */
  public static final Kind<MassFraction> MASS_FRACTION =
      alternate("mass fraction", AbstractUnit.ONE, "kg/kg", "kg/kg");

  /** Volume fraction, in cubic metre per cubic metre. */
  public static final Kind<VolumeFraction> VOLUME_FRACTION =
      alternate("volume fraction", AbstractUnit.ONE, "m3/m3", "m³/m³");

  private final String name;
  private final boolean point;
  private final UnitScale<Q> siScale;

  /** The scale shipped last, which leads to the others; {@link UnitScales} completes it. */
  private UnitScale<Q> lastShipped;

  private Kind(String name, Unit<Q> siUnit, String ucum, String symbol) {
    this(name, siUnit, ucum, symbol, false);
  }

  private Kind(String name, Unit<Q> siUnit, String ucum, String symbol, boolean point) {
    this.name = name;
    this.point = point;
    this.siScale = UnitScale.coherent(this, siUnit, ucum, symbol);
    this.lastShipped = siScale;
  }

  /** The kind of a unit whose dimension none of the kinds above has. */
  static <Q extends Quantity<Q>> Kind<Q> unnamed(Unit<Q> unit) {
    Unit<Q> siUnit = inBaseUnits(unit);
    String text = siUnit.toString();
    return new Kind<>("quantity in " + text, siUnit, "", text);
  }

  /**
   * The same unit whatever the order of the factors: kilogram times metre, metre times kilogram.
   */
  @SuppressWarnings("unchecked") // a unit of the same dimension measures the same quantity
  private static <Q extends Quantity<Q>> Unit<Q> inBaseUnits(Unit<Q> unit) {
    Map<? extends Dimension, Integer> powers = unit.getDimension().getBaseDimensions();
    Unit<?> product = AbstractUnit.ONE;
    for (Unit<?> base :
        List.of(
            Units.KILOGRAM,
            Units.METRE,
            Units.SECOND,
            Units.AMPERE,
            Units.KELVIN,
            Units.MOLE,
            Units.CANDELA)) {
      Integer power = powers == null ? null : powers.get(base.getDimension());
      product = power == null ? product : product.multiply(base.pow(power));
    }
    return product.getDimension().equals(unit.getDimension())
        ? (Unit<Q>) product
        : unit.getSystemUnit();
  }

  // Composing units loses the quantity in the type.
  @SuppressWarnings("unchecked")
  private static <Q extends Quantity<Q>> Kind<Q> composed(
      String name, Unit<?> siUnit, String ucum, String symbol) {
    return new Kind<>(name, (Unit<Q>) siUnit, ucum, symbol);
  }

  /** A kind that shares its dimension with another gets a unit object of its own. */
  private static <Q extends Quantity<Q>> Kind<Q> alternate(
      String name, Unit<?> parent, String ucum, String symbol) {
    return new Kind<>(name, new AlternateUnit<Q>(parent, symbol), ucum, symbol);
  }

  /**
   * The kind of a name.
   *
   * @param name the exact name, such as {@code "heating rate"}
   * @return the kind among the constants of this class, empty if none has that name
   */
  public static Optional<Kind<?>> named(String name) {
    return Optional.ofNullable(UnitScales.kindNamed(name));
  }

  /**
   * The name in plain words, such as "heating rate".
   *
   * @return the name, lower case
   */
  public String name() {
    return name;
  }

  /**
   * The coherent SI unit of this kind.
   *
   * @return the unit in which an {@link Amount} of this kind keeps its value
   */
  public Unit<Q> siUnit() {
    return siScale.unit();
  }

  UnitScale<Q> siScale() {
    return siScale;
  }

  UnitScale<Q> lastShipped() {
    return lastShipped;
  }

  /** Takes in a scale, while {@link UnitScales} is initialized only. */
  void ship(UnitScale<Q> scale) {
    lastShipped = scale;
  }

  /** Whether amounts of this kind are points on a scale, which can be told apart but not added. */
  boolean isPoint() {
    return point;
  }

  /** Equal when name and SI unit are equal. */
  @Override
  public boolean equals(Object other) {
    return this == other
        || (other instanceof Kind<?> that
            && name.equals(that.name)
            && siScale.unit().equals(that.siScale.unit()));
  }

  @Override
  public int hashCode() {
    return name.hashCode();
  }

  @Override
  public String toString() {
    return name;
  }
}
