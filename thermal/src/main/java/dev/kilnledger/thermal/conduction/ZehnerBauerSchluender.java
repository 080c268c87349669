package dev.kilnledger.thermal.conduction;

import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.units.TradeUnits.CELSIUS;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.ThermalConductivity;
import java.util.List;
import java.util.Locale;
import javax.measure.quantity.Temperature;

/**
 * The effective conductivity of a powder bed by Zehner and Schluender (Chem.-Ing.-Tech. 42 (1970)
 * 933) with the terms of Bauer and Schluender for radiation between grains, thin gas (Knudsen) and
 * flattened contacts, in the form of the VDI Heat Atlas, sec. D6.3.
 *
 * <p>With psi the porosity, kp = ks/kf, B = C ((1 - psi)/psi)^(10/9), kr = 4 s T^3 d / ((2/e - 1)
 * kf), kG the Knudsen factor and phi the flattening:
 *
 * <pre>
 * k/kf = (1 - w) psi [1 / (psi - 1 + 1/kG) + kr] + w [phi kp + (1 - phi) kc],  w = sqrt(1 - psi).
 * </pre>
 *
 * <p>The usual expression for the cell's kc divides by a number N that is zero where kp = B (for kr
 * = 0, kG = 1). With a = kp + kr, D = B (kG + (1 - kG) a) and x = 1 - D/a, in place of N = x a /
 * (kG kp), it becomes, by the expansion of ln(1 - x), and without anything that can vanish below a
 * line,
 *
 * <pre>
 * kc = (kp/a) [ (B+1)/B kr + 2 kG (kp/a) S ],
 * S  = sum over j from 1 of x^(j-1) [ (B-1)/(j+2) + 1/(j+1) ]
 *    = (B-1) (-ln(1-x) - x - x^2/2) / x^3 + (-ln(1-x) - x) / x^2.
 * </pre>
 *
 * <p>The Knudsen factor is kG = 1/(1 + l/d) with l = 2 (2 - g)/g sqrt(2 pi R T/M) kf / (p (2 cp -
 * R/M)) and the accommodation coefficient log10(1/g - 1) = 0.6 - (1000 K/T + 1)/2.8 (VDI Heat
 * Atlas, from memory) for air, and near enough for nitrogen and carbon monoxide.
 *
 * <p>Meant for porosities of 0.25 to 0.7 and kp from 1 to 2000 (from memory: what it was compared
 * with); the result is an estimate within a factor of 1.5.
 *
 * <p>Example: spheres so large that thin gas plays no part, which do not radiate, at a porosity of
 * 0.4 and 100 times as conductive as the gas, conduct 9.417 times as well as the gas.
 */
public final class ZehnerBauerSchluender {
  private static final double FACTOR = 1.5;
  private static final double STEFAN_BOLTZMANN = 5.670374419e-8; // W/(m2 K4), CODATA 2018
  private static final double AIR_GAS_CONSTANT = 8.314462618 / 0.0289652; // J/(kg K)
  private static final double LEAST_POROSITY = 0.25;
  private static final double GREATEST_POROSITY = 0.7;
  private static final double GREATEST_RATIO = 2000;
  private static final double SERIES_BELOW = 0.05;
  private static final Source BASIS =
      Source.fromMemory(
          "VDI Heat Atlas, sec. D6.3: beds of porosity 0.25 to 0.7, solid 1 to 2000 times as"
              + " conductive as the gas");

  private ZehnerBauerSchluender() {}

  /** {@return the model} */
  public static ZehnerBauerSchluender standard() {
    return new ZehnerBauerSchluender();
  }

  /**
   * The conductivity of a bed.
   *
   * @param bed the bed
   * @param temperature its temperature
   * @return an estimate, and whether the bed lies in the range of the model
   */
  public BedConductivity conductivity(PowderBed bed, Amount<Temperature> temperature) {
    double k = effective(bed, temperature.si());
    return ImmutableBedConductivity.of(
        Estimate.of(
            Amounts.wattsPerMetreKelvin(k / FACTOR),
            Amounts.wattsPerMetreKelvin(k),
            Amounts.wattsPerMetreKelvin(k * FACTOR)),
        range(bed, temperature));
  }

  /**
   * Whether the bed lies in the range of the model at every point of a {@linkplain #curve curve}.
   *
   * @param bed the bed
   * @param temperatures the points, one or more
   * @return the finding at the first that does not, or else at the last
   * @throws IllegalArgumentException if there is no point
   */
  public Finding range(PowderBed bed, List<Amount<Temperature>> temperatures) {
    new Problems("range of powder bed " + bed.name())
        .require(!temperatures.isEmpty(), "there is no temperature; accepted is at least one")
        .refuseIfAny();
    return temperatures.stream()
        .map(temperature -> range(bed, temperature))
        .filter(finding -> finding.severity() != PASSED)
        .findFirst()
        .orElseGet(() -> range(bed, temperatures.get(temperatures.size() - 1)));
  }

  /**
   * The expected conductivity over temperature; {@link #range} tells whether the bed lies in the
   * range of the model.
   *
   * @param bed the bed
   * @param temperatures the points of the curve, ascending
   * @return the curve
   * @throws IllegalArgumentException if the temperatures are none or not ascending
   */
  public PropertyCurve<ThermalConductivity> curve(
      PowderBed bed, List<Amount<Temperature>> temperatures) {
    return PropertyCurve.<ThermalConductivity>builder()
        .addAllTemperatures(temperatures)
        .addAllValues(
            temperatures.stream()
                .map(t -> Amounts.wattsPerMetreKelvin(effective(bed, t.si())))
                .toList())
        .build();
  }

  private static double effective(PowderBed bed, double temperature) {
    double gas = at(bed.gasConductivity(), temperature);
    double emissivity = bed.emissivity().si();
    double radiation =
        emissivity == 0
            ? 0
            : 4
                * STEFAN_BOLTZMANN
                * Math.pow(temperature, 3)
                * bed.grainSize().si()
                / ((2 / emissivity - 1) * gas);
    double solid = at(bed.solidConductivity(), temperature) / gas;
    return gas
        * relative(
            bed.grainForm(), bed.porosity().si(), solid, radiation, knudsen(bed, gas, temperature));
  }

  /**
   * The conductivity of the bed over that of the gas.
   *
   * @param solid that of the solid over that of the gas, kp
   * @param radiation kr
   * @param knudsen kG, above 0 and up to 1
   */
  static double relative(
      GrainForm form, double porosity, double solid, double radiation, double knudsen) {
    return relative(form.formFactor, form.flattening, porosity, solid, radiation, knudsen);
  }

  static double relative(
      double formFactor,
      double flattening,
      double porosity,
      double solid,
      double radiation,
      double knudsen) {
    double b = formFactor * Math.pow((1 - porosity) / porosity, 10.0 / 9);
    double both = solid + radiation;
    double x = 1 - b * (knudsen + (1 - knudsen) * both) / both;
    double share = solid / both;
    double cell =
        share
            * ((b + 1) / b * radiation + 2 * knudsen * share * ((b - 1) * rest(x, 2) + rest(x, 1)));
    double bedded = Math.sqrt(1 - porosity);
    return (1 - bedded) * porosity * (1 / (porosity - 1 + 1 / knudsen) + radiation)
        + bedded * (flattening * solid + (1 - flattening) * cell);
  }

  /** The sum over j from 1 of x^(j-1)/(j + skip), skip being 1 or 2, for x below 1. */
  private static double rest(double x, int skip) {
    if (Math.abs(x) >= SERIES_BELOW) {
      double log = -Math.log1p(-x) - x;
      return skip == 1 ? log / (x * x) : (log - x * x / 2) / (x * x * x);
    }
    double sum = 0;
    double power = 1;
    for (int j = 1; Math.abs(power) > 1e-17; j++) {
      sum += power / (j + skip);
      power *= x;
    }
    return sum;
  }

  private static double knudsen(PowderBed bed, double gas, double temperature) {
    double accommodation = 1 / (1 + Math.pow(10, 0.6 - (1000 / temperature + 1) / 2.8));
    double specificHeat = 3.5 * AIR_GAS_CONSTANT;
    double path =
        2
            * (2 - accommodation)
            / accommodation
            * Math.sqrt(2 * Math.PI * AIR_GAS_CONSTANT * temperature)
            * gas
            / (bed.pressure().si() * (2 * specificHeat - AIR_GAS_CONSTANT));
    return 1 / (1 + path / bed.grainSize().si());
  }

  private static double at(PropertyCurve<ThermalConductivity> curve, double temperature) {
    Antiderivative integral = Antiderivative.ofSlope(curve, 1);
    return integral.slope(integral.piece(temperature, 0), temperature);
  }

  private static Finding range(PowderBed bed, Amount<Temperature> temperature) {
    double porosity = bed.porosity().si();
    double ratio =
        at(bed.solidConductivity(), temperature.si()) / at(bed.gasConductivity(), temperature.si());
    boolean stated =
        bed.solidConductivity().stated().map(span -> span.contains(temperature)).orElse(true)
            && bed.gasConductivity().stated().map(span -> span.contains(temperature)).orElse(true);
    boolean inside =
        porosity >= LEAST_POROSITY
            && porosity <= GREATEST_POROSITY
            && ratio >= 1
            && ratio <= GREATEST_RATIO
            && stated;
    return ConductionFinding.BED_IN_RANGE
        .about(bed.name())
        .severity(inside ? PASSED : UNDETERMINED)
        .message(
            String.format(
                Locale.ROOT,
                "porosity %.2f, solid %.0f times as conductive as the gas, at %s: %s",
                porosity,
                ratio,
                temperature.format(CELSIUS, 0),
                inside
                    ? "an estimate within a factor of 1.5"
                    : stated
                        ? "outside the correlation's range of porosity 0.25 to 0.7 and ratio 1 to"
                            + " 2000"
                        : "outside the range that its conductivities are stated for"))
        .measured(bed.porosity())
        .basis(BASIS)
        .build();
  }
}
