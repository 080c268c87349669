package dev.kilnledger.thermal.atmosphere;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import javax.measure.quantity.AmountOfSubstance;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;
import si.uom.quantity.MassFlowRate;

/**
 * Dry air as an ideal gas, n = p V / (R T) with R = 8.314462618 J/(mol K) (CODATA 2018), 0.20946 of
 * it oxygen (ISO 2533), and the carbon that its oxygen takes.
 *
 * <p>Example: a litre at 20 °C and 101 325 Pa holds 0.041571 mol with 0.27862 g of oxygen, which
 * burns 0.1046 g of carbon to dioxide or 0.2092 g to monoxide.
 */
public final class AirGas {
  /** Moles of O2 in a mole of dry air. */
  static final double OXYGEN_SHARE = 0.20946;

  /** Of the carbon burnt to carbon dioxide, per mass of oxygen. */
  static final double CARBON_TO_DIOXIDE =
      Species.GRAPHITE.kilogramsPerMole() / Species.OXYGEN.kilogramsPerMole();

  /** Of the carbon burnt to carbon monoxide, per mass of oxygen. */
  static final double CARBON_TO_MONOXIDE = 2 * CARBON_TO_DIOXIDE;

  private static final double R = 8.314462618;

  /** D(O2-N2) = 2.0e-5 m2/s (T / 293.15 K)^1.75 at 1 atm; from memory. */
  private static final double DIFFUSIVITY = 2.0e-5;

  private static final double DIFFUSIVITY_AT = 293.15;
  private static final double DIFFUSIVITY_POWER = 1.75;

  private final double pressure;

  /**
   * Air at a pressure.
   *
   * @param pressure the pressure, above zero
   * @throws IllegalArgumentException if the pressure is not above zero
   */
  public AirGas(Amount<Pressure> pressure) {
    new Problems("air").positive("pressure", pressure).refuseIfAny();
    this.pressure = pressure.si();
  }

  /** {@return air at 1 atm} */
  public static AirGas standard() {
    return new AirGas(Amounts.atmospheres(1));
  }

  /**
   * The gas in a volume.
   *
   * @param volume the volume
   * @param temperature its temperature
   * @return p V / (R T)
   */
  public Amount<AmountOfSubstance> held(Amount<Volume> volume, Amount<Temperature> temperature) {
    return Amounts.moles(moles(volume.si(), temperature.si()));
  }

  /**
   * The air that a volume draws in when it cools at constant pressure.
   *
   * @param volume the volume
   * @param hot the temperature before
   * @param cold the temperature after
   * @return p V / R (1/T_cold - 1/T_hot); below zero, drawn out, if it is heated
   */
  public Amount<AmountOfSubstance> drawnIn(
      Amount<Volume> volume, Amount<Temperature> hot, Amount<Temperature> cold) {
    return Amounts.moles(moles(volume.si(), cold.si()) - moles(volume.si(), hot.si()));
  }

  /**
   * The oxygen in air.
   *
   * @param air the air
   * @return its mass of oxygen
   */
  public static Amount<Mass> oxygenIn(Amount<AmountOfSubstance> air) {
    return Amounts.grams(1000 * oxygenMass(air.si()));
  }

  /**
   * The carbon that oxygen burns.
   *
   * @param oxygen the mass of oxygen
   * @return from burning to carbon dioxide to burning to carbon monoxide, twice as much, which it
   *     does above about 800 °C
   */
  public static Span<Mass> carbonFor(Amount<Mass> oxygen) {
    return Span.of(oxygen.multiply(CARBON_TO_DIOXIDE), oxygen.multiply(CARBON_TO_MONOXIDE));
  }

  /**
   * The oxygen that diffuses through still air in a gap to where carbon takes it all: D A c / L.
   *
   * @param area the section of the gap
   * @param length its length in the direction of diffusion, above zero
   * @param temperature its temperature
   * @return the mass flow; for a gap of 20 mm2 and 5 mm at 1000 °C it is 0.2414 g/h
   * @throws IllegalArgumentException if the length is not above zero
   */
  public Amount<MassFlowRate> diffusionInflow(
      Amount<Area> area, Amount<Length> length, Amount<Temperature> temperature) {
    new Problems("gap").positive("length", length).refuseIfAny();
    double t = temperature.si();
    double diffusivity = DIFFUSIVITY * Math.pow(t / DIFFUSIVITY_AT, DIFFUSIVITY_POWER);
    double molesPerSecond =
        diffusivity * area.si() * OXYGEN_SHARE * pressure / (R * t) / length.si();
    return Amounts.gramsPerHour(molesPerSecond * Species.OXYGEN.kilogramsPerMole() * 1000 * 3600);
  }

  /** {@return the pressure} */
  Amount<Pressure> pressure() {
    return Amounts.pascals(pressure);
  }

  /** The carbon per mass of oxygen: to dioxide at least, to monoxide at most. */
  static Explanation carbonPerOxygen() {
    return Explanation.given(
        "carbon per oxygen",
        Span.of(Amounts.ratio(CARBON_TO_DIOXIDE), Amounts.ratio(CARBON_TO_MONOXIDE)),
        Source.recomputed("C + O2 = CO2 and 2 C + O2 = 2 CO, IUPAC atomic weights 2021"));
  }

  /** In mol, for m3 and K. */
  double moles(double volume, double t) {
    return pressure * volume / (R * t);
  }

  /** In kg, for mol of air. */
  static double oxygenMass(double airMoles) {
    return airMoles * OXYGEN_SHARE * Species.OXYGEN.kilogramsPerMole();
  }
}
