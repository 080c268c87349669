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
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.MetricPrefix;
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
import org.jspecify.annotations.Nullable;
import si.uom.quantity.Density;
import si.uom.quantity.DynamicViscosity;
import si.uom.quantity.MassFlowRate;
import si.uom.quantity.VolumetricFlowRate;
import tech.units.indriya.unit.Units;

/**
 * The scales of the shipped units, in one table that is filled once and never changes. Units from
 * elsewhere are resolved each time and never kept, so hostile unit text cannot grow memory.
 *
 * <p>Of each kind the unit most often asked for stands last, as that is where a search begins.
 */
final class UnitScales {
  private static final List<UnitScale<?>> SHIPPED = new ArrayList<>();

  private static final Unit<Temperature> FAHRENHEIT_UNIT =
      Units.KELVIN.multiply(5).divide(9).shift(459.67);

  static final UnitScale<Length> MICROMETRE =
      ship(
          UnitScale.proportional(Kind.LENGTH, MetricPrefix.MICRO(Units.METRE), "um", "µm", 1, 1e6));
  static final UnitScale<Length> CENTIMETRE =
      ship(
          UnitScale.proportional(Kind.LENGTH, MetricPrefix.CENTI(Units.METRE), "cm", "cm", 1, 100));
  static final UnitScale<Length> METRE = ship(Kind.LENGTH.siScale());
  static final UnitScale<Length> INCH =
      ship(
          UnitScale.proportional(
              Kind.LENGTH, Units.METRE.multiply(254).divide(10000), "[in_i]", "in", 127, 5000));
  static final UnitScale<Length> MILLIMETRE =
      ship(
          UnitScale.proportional(
              Kind.LENGTH, MetricPrefix.MILLI(Units.METRE), "mm", "mm", 1, 1000));
  static final UnitScale<Area> SQUARE_CENTIMETRE =
      ship(
          UnitScale.proportional(
              Kind.AREA, Units.SQUARE_METRE.divide(10_000), "cm2", "cm²", 1, 10000));
  static final UnitScale<Area> SQUARE_METRE = ship(Kind.AREA.siScale());
  static final UnitScale<Area> SQUARE_MILLIMETRE =
      ship(
          UnitScale.proportional(
              Kind.AREA, Units.SQUARE_METRE.divide(1_000_000), "mm2", "mm²", 1, 1e6));
  static final UnitScale<Volume> CUBIC_MILLIMETRE =
      ship(
          UnitScale.proportional(
              Kind.VOLUME, Units.CUBIC_METRE.divide(1_000_000_000), "mm3", "mm³", 1, 1e9));
  static final UnitScale<Volume> MILLILITRE =
      ship(
          UnitScale.proportional(Kind.VOLUME, MetricPrefix.MILLI(Units.LITRE), "mL", "mL", 1, 1e6));
  static final UnitScale<Volume> LITRE =
      ship(UnitScale.proportional(Kind.VOLUME, Units.LITRE, "L", "L", 1, 1000));
  static final UnitScale<Volume> CUBIC_METRE = ship(Kind.VOLUME.siScale());
  static final UnitScale<Volume> CUBIC_CENTIMETRE =
      ship(
          UnitScale.proportional(
              Kind.VOLUME, Units.CUBIC_METRE.divide(1_000_000), "cm3", "cm³", 1, 1e6));
  static final UnitScale<Mass> MILLIGRAM =
      ship(UnitScale.proportional(Kind.MASS, MetricPrefix.MILLI(Units.GRAM), "mg", "mg", 1, 1e6));
  static final UnitScale<Mass> KILOGRAM = ship(Kind.MASS.siScale());
  static final UnitScale<Mass> POUND =
      ship(
          UnitScale.proportional(
              Kind.MASS,
              Units.KILOGRAM.multiply(45_359_237).divide(100_000_000),
              "[lb_av]",
              "lb",
              45_359_237,
              1e8));
  static final UnitScale<Mass> OUNCE =
      ship(
          UnitScale.proportional(
              Kind.MASS,
              Units.KILOGRAM.multiply(45_359_237L).divide(1_600_000_000L),
              "[oz_av]",
              "oz",
              45_359_237,
              1.6e9));
  static final UnitScale<Mass> GRAM =
      ship(UnitScale.proportional(Kind.MASS, Units.GRAM, "g", "g", 1, 1000));
  static final UnitScale<Time> SECOND = ship(Kind.TIME.siScale());
  static final UnitScale<Time> MINUTE =
      ship(UnitScale.proportional(Kind.TIME, Units.MINUTE, "min", "min", 60, 1));
  static final UnitScale<Time> DAY =
      ship(UnitScale.proportional(Kind.TIME, Units.DAY, "d", "d", 86400, 1));
  static final UnitScale<Time> HOUR =
      ship(UnitScale.proportional(Kind.TIME, Units.HOUR, "h", "h", 3600, 1));
  static final UnitScale<Temperature> KELVIN = ship(Kind.TEMPERATURE.siScale());
  static final UnitScale<Temperature> FAHRENHEIT =
      ship(
          UnitScale.shifted(
              Kind.TEMPERATURE, FAHRENHEIT_UNIT, "[degF]", "°F", 5, 9, new BigDecimal("459.67")));
  static final UnitScale<Temperature> CELSIUS =
      ship(
          UnitScale.shifted(
              Kind.TEMPERATURE, Units.CELSIUS, "Cel", "°C", 1, 1, new BigDecimal("273.15")));
  static final UnitScale<TemperatureDifference> KELVIN_DIFFERENCE =
      ship(Kind.TEMPERATURE_DIFFERENCE.siScale());
  static final UnitScale<TemperatureDifference> FAHRENHEIT_DIFFERENCE =
      ship(
          UnitScale.proportional(
              Kind.TEMPERATURE_DIFFERENCE,
              Kind.TEMPERATURE_DIFFERENCE.siUnit().multiply(5).divide(9),
              "[degR]",
              "°F (difference)",
              5,
              9));
  static final UnitScale<HeatingRate> KELVIN_PER_MINUTE =
      ship(
          UnitScale.proportional(
              Kind.HEATING_RATE, Kind.HEATING_RATE.siUnit().divide(60), "K/min", "K/min", 1, 60));
  static final UnitScale<HeatingRate> FAHRENHEIT_PER_HOUR =
      ship(
          UnitScale.proportional(
              Kind.HEATING_RATE,
              Kind.HEATING_RATE.siUnit().divide(6480),
              "[degR]/h",
              "°F/h",
              1,
              6480));
  static final UnitScale<HeatingRate> KELVIN_PER_HOUR =
      ship(
          UnitScale.proportional(
              Kind.HEATING_RATE, Kind.HEATING_RATE.siUnit().divide(3600), "K/h", "K/h", 1, 3600));
  static final UnitScale<Density> KILOGRAM_PER_CUBIC_METRE = ship(Kind.DENSITY.siScale());
  static final UnitScale<Density> GRAM_PER_CUBIC_CENTIMETRE =
      ship(
          UnitScale.proportional(
              Kind.DENSITY, Kind.DENSITY.siUnit().multiply(1000), "g/cm3", "g/cm³", 1000, 1));
  static final UnitScale<LinearDensity> GRAM_PER_METRE =
      ship(
          UnitScale.proportional(
              Kind.LINEAR_DENSITY,
              Kind.LINEAR_DENSITY.siUnit().divide(1000),
              "g/m",
              "g/m",
              1,
              1000));
  static final UnitScale<Energy> JOULE = ship(Kind.ENERGY.siScale());
  static final UnitScale<Energy> MEGAJOULE =
      ship(UnitScale.proportional(Kind.ENERGY, MetricPrefix.MEGA(Units.JOULE), "MJ", "MJ", 1e6, 1));
  static final UnitScale<Energy> KILOWATT_HOUR =
      ship(
          UnitScale.proportional(
              Kind.ENERGY, Units.JOULE.multiply(3_600_000), "kW.h", "kWh", 3.6e6, 1));
  static final UnitScale<SpecificEnergy> JOULE_PER_GRAM =
      ship(
          UnitScale.proportional(
              Kind.SPECIFIC_ENERGY,
              Kind.SPECIFIC_ENERGY.siUnit().multiply(1000),
              "J/g",
              "J/g",
              1000,
              1));
  static final UnitScale<SpecificEnergy> KILOWATT_HOUR_PER_KILOGRAM =
      ship(
          UnitScale.proportional(
              Kind.SPECIFIC_ENERGY,
              Kind.SPECIFIC_ENERGY.siUnit().multiply(3_600_000),
              "kW.h/kg",
              "kWh/kg",
              3.6e6,
              1));
  static final UnitScale<Power> WATT = ship(Kind.POWER.siScale());
  static final UnitScale<Power> KILOWATT =
      ship(UnitScale.proportional(Kind.POWER, MetricPrefix.KILO(Units.WATT), "kW", "kW", 1000, 1));
  static final UnitScale<SpecificHeatCapacity> JOULE_PER_KILOGRAM_KELVIN =
      ship(Kind.SPECIFIC_HEAT_CAPACITY.siScale());
  static final UnitScale<ThermalConductivity> WATT_PER_METRE_KELVIN =
      ship(Kind.THERMAL_CONDUCTIVITY.siScale());
  static final UnitScale<ConductivitySlope> WATT_PER_METRE_KELVIN_SQUARED =
      ship(Kind.CONDUCTIVITY_SLOPE.siScale());
  static final UnitScale<ThermalDiffusivity> SQUARE_MILLIMETRE_PER_SECOND =
      ship(
          UnitScale.proportional(
              Kind.THERMAL_DIFFUSIVITY,
              Kind.THERMAL_DIFFUSIVITY.siUnit().divide(1_000_000),
              "mm2/s",
              "mm²/s",
              1,
              1e6));
  static final UnitScale<HeatTransferCoefficient> WATT_PER_SQUARE_METRE_KELVIN =
      ship(Kind.HEAT_TRANSFER_COEFFICIENT.siScale());
  static final UnitScale<LinearExpansion> MICROMETRE_PER_METRE_KELVIN =
      ship(
          UnitScale.proportional(
              Kind.LINEAR_EXPANSION,
              Kind.LINEAR_EXPANSION.siUnit().divide(1_000_000),
              "um/(m.K)",
              "µm/(m·K)",
              1,
              1e6));
  static final UnitScale<AmountOfSubstance> MOLE = ship(Kind.AMOUNT_OF_SUBSTANCE.siScale());
  static final UnitScale<MolarEnergy> KILOJOULE_PER_MOLE =
      ship(
          UnitScale.proportional(
              Kind.MOLAR_ENERGY,
              Kind.MOLAR_ENERGY.siUnit().multiply(1000),
              "kJ/mol",
              "kJ/mol",
              1000,
              1));
  static final UnitScale<MolarMass> GRAM_PER_MOLE =
      ship(
          UnitScale.proportional(
              Kind.MOLAR_MASS, Kind.MOLAR_MASS.siUnit().divide(1000), "g/mol", "g/mol", 1, 1000));
  static final UnitScale<Pressure> PASCAL = ship(Kind.PRESSURE.siScale());
  static final UnitScale<Pressure> BAR =
      ship(
          UnitScale.proportional(
              Kind.PRESSURE, Units.PASCAL.multiply(100_000), "bar", "bar", 1e5, 1));
  static final UnitScale<Pressure> ATMOSPHERE =
      ship(
          UnitScale.proportional(
              Kind.PRESSURE, Units.PASCAL.multiply(101_325), "atm", "atm", 101_325, 1));
  static final UnitScale<Speed> MILLIMETRE_PER_SECOND =
      ship(
          UnitScale.proportional(
              Kind.SPEED, Units.METRE_PER_SECOND.divide(1000), "mm/s", "mm/s", 1, 1000));
  static final UnitScale<VolumetricFlowRate> CUBIC_METRE_PER_HOUR =
      ship(
          UnitScale.proportional(
              Kind.VOLUME_FLOW, Kind.VOLUME_FLOW.siUnit().divide(3600), "m3/h", "m³/h", 1, 3600));
  static final UnitScale<MassFlowRate> GRAM_PER_HOUR =
      ship(
          UnitScale.proportional(
              Kind.MASS_FLOW, Kind.MASS_FLOW.siUnit().divide(3_600_000), "g/h", "g/h", 1, 3.6e6));
  static final UnitScale<Frequency> PER_SECOND = ship(Kind.FREQUENCY.siScale());
  static final UnitScale<DynamicViscosity> PASCAL_SECOND = ship(Kind.DYNAMIC_VISCOSITY.siScale());
  static final UnitScale<ElectricCurrent> AMPERE = ship(Kind.ELECTRIC_CURRENT.siScale());
  static final UnitScale<ElectricPotential> VOLT = ship(Kind.ELECTRIC_POTENTIAL.siScale());
  static final UnitScale<Dimensionless> ONE = ship(Kind.RATIO.siScale());
  static final UnitScale<Dimensionless> PERCENT =
      ship(UnitScale.proportional(Kind.RATIO, Units.PERCENT, "%", "%", 1, 100));
  static final UnitScale<MassFraction> MASS_FRACTION = ship(Kind.MASS_FRACTION.siScale());
  static final UnitScale<MassFraction> MASS_PERCENT =
      ship(
          UnitScale.proportional(
              Kind.MASS_FRACTION,
              Kind.MASS_FRACTION.siUnit().divide(100),
              "%",
              "% by mass",
              1,
              100));
  static final UnitScale<VolumeFraction> VOLUME_FRACTION = ship(Kind.VOLUME_FRACTION.siScale());
  static final UnitScale<VolumeFraction> PARTS_PER_MILLION =
      ship(
          UnitScale.proportional(
              Kind.VOLUME_FRACTION,
              Kind.VOLUME_FRACTION.siUnit().divide(1_000_000),
              "[ppm]",
              "ppm",
              1,
              1e6));
  static final UnitScale<VolumeFraction> VOLUME_PERCENT =
      ship(
          UnitScale.proportional(
              Kind.VOLUME_FRACTION,
              Kind.VOLUME_FRACTION.siUnit().divide(100),
              "%",
              "% by volume",
              1,
              100));

  private static final IdentityHashMap<Unit<?>, UnitScale<?>> BY_UNIT = byUnit();
  private static final Map<Kind<?>, Map<String, UnitScale<?>>> BY_CODE = byCode();

  private UnitScales() {}

  private static <Q extends Quantity<Q>> UnitScale<Q> ship(UnitScale<Q> scale) {
    SHIPPED.add(scale);
    if (!scale.equals(scale.kind().siScale())) {
      scale.kind().ship(scale);
    }
    return scale;
  }

  private static IdentityHashMap<Unit<?>, UnitScale<?>> byUnit() {
    // By identity: kelvin the point and kelvin the difference would otherwise be hard to tell
    // apart.
    IdentityHashMap<Unit<?>, UnitScale<?>> map = new IdentityHashMap<>();
    SHIPPED.forEach(scale -> map.putIfAbsent(scale.unit(), scale));
    return map;
  }

  private static Map<Kind<?>, Map<String, UnitScale<?>>> byCode() {
    Map<Kind<?>, Map<String, UnitScale<?>>> map = new HashMap<>();
    SHIPPED.forEach(
        scale ->
            map.computeIfAbsent(scale.kind(), kind -> new HashMap<>())
                .putIfAbsent(scale.ucum(), scale));
    return map;
  }

  /** All shipped scales, in the order of their definition. */
  static List<UnitScale<?>> shipped() {
    return List.copyOf(SHIPPED);
  }

  /** The scale of a unit, its kind being the first one shipped with the unit's dimension. */
  @SuppressWarnings("unchecked") // the table holds for each unit a scale of the unit's quantity
  static <Q extends Quantity<Q>> UnitScale<Q> of(Unit<Q> unit) {
    UnitScale<?> known = BY_UNIT.get(unit);
    if (known != null) {
      return (UnitScale<Q>) known;
    }
    for (UnitScale<?> candidate : SHIPPED) {
      if (candidate.unit().getDimension().equals(unit.getDimension())) {
        return (UnitScale<Q>) UnitScale.resolve(unit, candidate.kind());
      }
    }
    return UnitScale.resolve(unit, Kind.unnamed(unit));
  }

  /**
   * The scale of a unit for amounts of a given kind.
   *
   * @throws IllegalArgumentException if the unit cannot express the kind
   */
  static <Q extends Quantity<Q>> UnitScale<Q> of(Unit<?> unit, Kind<Q> kind) {
    // There are a handful of each kind, so walking is quicker than a table.
    for (UnitScale<Q> known = kind.lastShipped(); known != null; known = known.before()) {
      if (known.unit() == unit) {
        return known;
      }
    }
    return UnitScale.resolve(unit, kind);
  }

  /** The shipped scale with a UCUM code, or null. */
  @SuppressWarnings("unchecked") // the inner map of a kind holds scales of that kind
  static <Q extends Quantity<Q>> @Nullable UnitScale<Q> ofCode(String code, Kind<Q> kind) {
    return (UnitScale<Q>) BY_CODE.getOrDefault(kind, Map.of()).get(code);
  }

  /** The shipped kind with a name, or null. */
  static @Nullable Kind<?> kindNamed(String name) {
    for (Kind<?> kind : BY_CODE.keySet()) {
      if (kind.name().equals(name)) {
        return kind;
      }
    }
    return null;
  }
}
