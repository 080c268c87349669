package dev.kilnledger.thermal.burnout;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.kinetics.ArrheniusIntegral;
import dev.kilnledger.thermal.kinetics.Frequencies;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import dev.kilnledger.units.quantity.HeatingRate;
import dev.kilnledger.units.quantity.MolarEnergy;
import dev.kilnledger.units.quantity.MolarMass;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.io.Serializable;
import javax.measure.quantity.Area;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import org.immutables.value.Value;
import si.uom.quantity.Density;
import si.uom.quantity.DynamicViscosity;

/**
 * The gas pressure in the middle of a wall whose pores are open: one-dimensional, steady at every
 * moment, Darcy's law for an ideal gas,
 *
 * <pre>Pc² - P0² = mu R T S L² / (K M),   S = W d alpha / dt</pre>
 *
 * with L half the wall, or volume over surface for other shapes (Shivashankar and German, as quoted
 * in public research notes), K the permeability, W the binder's mass per volume of the body. So the
 * allowed rate falls with the square of the section and with the binder's share, and rises with the
 * square of the grain. (Lombardo and co-workers, as quoted in public research notes; the algebra is
 * derivable.)
 *
 * <p>It does not cover the time before the pores open, in which the first 4 to 20 % of the binder
 * leave, nor the resistance of the powder bed.
 *
 * <p>Example: K of 1e-15 m², gas of 44 g/mol and 3e-5 Pa s, 450 kg/m³ of binder of 191 kJ/mol that
 * leaves fastest at 650 K, half a section of 2.5 mm, 2 bar allowed in 1 bar: 8.683 K/min.
 */
@Value.Immutable
@ValueStyle
public non-sealed interface PorePressureLimit extends LossRateLimit, Serializable {
  /** The highest pressure, absolute, that is published as harmless to a debinding part. */
  Amount<Pressure> HIGHEST_PUBLISHED = Amounts.bars(2);

  /** Where that is from. */
  Source PRESSURE_BASIS =
      Source.quoted("1.5 to 2 bar absolute allowed, in public research notes on debinding");

  /** {@return the permeability K of the body, above zero} */
  Amount<Area> permeability();

  /** {@return the viscosity mu of the gas, hot, above zero} */
  Amount<DynamicViscosity> viscosity();

  /** {@return the molar mass M of the gas, above zero} */
  Amount<MolarMass> molarMass();

  /** {@return the mass of binder per volume of the body, W, above zero} */
  Amount<Density> binderPerVolume();

  /** {@return half the wall, or volume over surface, L, above zero} */
  Amount<Length> halfSection();

  /** {@return the pressure around the part, P0; one standard atmosphere by default} */
  @Value.Default
  default Amount<Pressure> ambient() {
    return Amounts.atmospheres(1);
  }

  /** {@return the highest pressure the part stands in its middle, absolute, above the ambient} */
  Amount<Pressure> highest();

  /**
   * The permeability of a body of even grains: {@code eps³ d² / (180 (1 - eps)²)} (Kozeny and
   * Carman, any textbook on porous media).
   *
   * @param grain the diameter d of the grains, above zero
   * @param porosity the share eps of open pores, above 0 and below 1
   * @return the permeability
   * @throws IllegalArgumentException if grain or porosity are out of range
   */
  static Amount<Area> kozenyCarman(Amount<Length> grain, Amount<VolumeFraction> porosity) {
    double pores = porosity.si();
    new Problems("permeability")
        .positive("grain", grain)
        .require(
            pores > 0 && pores < 1, "porosity is " + porosity + "; accepted is above 0 and below 1")
        .refuseIfAny();
    double solid = 1 - pores;
    return Amounts.squareMetres(
        pores * pores * pores * grain.si() * grain.si() / (180 * solid * solid));
  }

  /**
   * A viscosity.
   *
   * @param number the number of pascal seconds, finite
   * @return the amount
   */
  static Amount<DynamicViscosity> pascalSeconds(double number) {
    return Amount.of(number, TradeUnits.PASCAL_SECOND);
  }

  /**
   * The pressure in the middle at a rate of loss.
   *
   * @param rate the rate of conversion, zero or more
   * @param temperature the temperature of the part
   * @return Pc, absolute
   */
  default Amount<Pressure> pressureAt(Amount<Frequency> rate, Amount<Temperature> temperature) {
    double around = ambient().si();
    return Amounts.pascals(
        Math.sqrt(around * around + squaresPerRate(temperature.si()) * rate.si()));
  }

  @Override
  default Amount<Frequency> allowedAt(Amount<Temperature> temperature) {
    return Frequencies.perSecond(squares() / squaresPerRate(temperature.si()));
  }

  /**
   * The heating rate at which a first-order loss just reaches the highest pressure at its peak:
   * {@code e K M Tp (Pmax² - P0²) / (mu W E L²)}, from the height of the peak, about {@code r E /
   * (e R Tp²)}, which is some 5 % low.
   *
   * @param activationEnergy E, above zero
   * @param peak the temperature Tp of the fastest loss
   * @return the heating rate
   */
  default Amount<HeatingRate> criticalHeatingRate(
      Amount<MolarEnergy> activationEnergy, Amount<Temperature> peak) {
    double kelvinSquared = peak.si() * peak.si();
    double perSecond = squares() / squaresPerRate(peak.si());
    double rate =
        perSecond * Math.E * ArrheniusIntegral.GAS_CONSTANT * kelvinSquared / activationEnergy.si();
    return Amounts.kelvinPerHour(rate * 3600);
  }

  private double squares() {
    return highest().si() * highest().si() - ambient().si() * ambient().si();
  }

  private double squaresPerRate(double kelvin) {
    return viscosity().si()
        * ArrheniusIntegral.GAS_CONSTANT
        * kelvin
        * binderPerVolume().si()
        * halfSection().si()
        * halfSection().si()
        / (permeability().si() * molarMass().si());
  }

  /**
   * {@inheritDoc}
   *
   * <p>Pressures published as harmless go up to 2 bar, absolute.
   */
  @Override
  default Finding range(String subject) {
    boolean usual = !highest().isGreaterThan(HIGHEST_PUBLISHED);
    return BurnOutFinding.LIMIT_RANGE
        .about(subject)
        .severity(usual ? Severity.PASSED : Severity.UNDETERMINED)
        .measured(highest())
        .limit(HIGHEST_PUBLISHED)
        .message(
            "parts are taken to stand "
                + highest().format(TradeUnits.BAR, 2)
                + " in their pores, published are up to "
                + HIGHEST_PUBLISHED.format(TradeUnits.BAR, 2)
                + (usual ? "" : ": try a part of your own"))
        .basis(PRESSURE_BASIS)
        .build();
  }

  @Override
  default PorePressureLimit forWall(Amount<Length> wall) {
    return builder().from(this).halfSection(wall.divide(2)).build();
  }

  @Override
  default BurnOutFinding code() {
    return BurnOutFinding.PORE_PRESSURE;
  }

  @Override
  default String tell(BurnOutPoint point) {
    return "the gas in the pores reaches "
        + pressureAt(point.rate(), point.temperature()).format(TradeUnits.BAR, 2)
        + " where "
        + highest().format(TradeUnits.BAR, 2)
        + " is allowed, half a section of "
        + halfSection().format(TradeUnits.MILLIMETRE, 1)
        + " deep";
  }

  /**
   * Starts one.
   *
   * @return a builder; all but the ambient pressure are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link PorePressureLimit} values. */
  final class Builder extends ImmutablePorePressureLimit.Builder {
    Builder() {}
  }

  /**
   * Refuses amounts that are not above zero and a highest pressure up to the ambient one.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("pore pressure limit")
        .positive("permeability", permeability())
        .positive("viscosity", viscosity())
        .positive("molar mass", molarMass())
        .positive("binder per volume", binderPerVolume())
        .positive("half section", halfSection())
        .notNegative("ambient pressure", ambient())
        .require(
            highest().isGreaterThan(ambient()),
            "the highest pressure is "
                + highest()
                + " around which there is "
                + ambient()
                + "; accepted is more than around it")
        .refuseIfAny();
  }
}
