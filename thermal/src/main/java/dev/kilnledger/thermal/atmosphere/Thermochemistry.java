package dev.kilnledger.thermal.atmosphere;

import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.units.TradeUnits.KELVIN;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.quantity.Temperature;

/**
 * Heat capacity, enthalpy, entropy and Gibbs energy by the polynomials of NASA/TP-2002-211556; the
 * oxides of chromium, iron and titanium, copper(II) oxide, aluminium, silicon, vanadium and niobium
 * with their lowest oxides by those of NASA TM-4513, which have the same form and reference.
 *
 * <p>Outside the range of a species there is no answer: {@link #state} is empty there and {@link
 * #rangeFinding} says why. A first piece that begins at 300 K is read from 298.15 K on, where the
 * enthalpy has its zero.
 *
 * <p>Example: from 298.15 to 1000 K a mole of copper takes 18 726 J.
 */
public final class Thermochemistry {
  private static final double REFERENCE = 298.15;
  private static final Source PAPER =
      Source.published("McBride, Zehe and Gordon, NASA/TP-2002-211556 (R = 8.314510 J/(mol K))");
  private static final Source MEMORANDUM =
      Source.published("McBride, Gordon and Reno, NASA TM-4513 (R = 8.314510 J/(mol K))");

  private final PolynomialTable table;

  private Thermochemistry(PolynomialTable table) {
    this.table = table;
  }

  /** {@return the thermochemistry of the table that comes with the library} */
  public static Thermochemistry standard() {
    return new Thermochemistry(PolynomialTable.read());
  }

  /**
   * The standard state at a temperature.
   *
   * @param species the species
   * @param temperature the temperature
   * @return the state, empty outside the {@linkplain #range range}
   */
  public Optional<StandardState> state(Species species, Amount<Temperature> temperature) {
    double t = temperature.si();
    return piece(species, t)
        .map(
            piece ->
                StandardState.builder()
                    .species(species)
                    .temperature(temperature)
                    .heatCapacity(
                        Amounts.joulesPerKilogramKelvin(
                            piece.heatCapacity(t) / species.kilogramsPerMole()))
                    .enthalpy(Amounts.kilojoulesPerMole(piece.enthalpy(t) / 1000))
                    .heating(
                        Amounts.kilojoulesPerMole(
                            (piece.enthalpy(t) - referenceEnthalpy(species)) / 1000))
                    .entropyTerm(Amounts.kilojoulesPerMole(t * piece.entropy(t) / 1000))
                    .source(source(species))
                    .build());
  }

  /**
   * The temperatures for which a species is known.
   *
   * @param species the species
   * @return from the lowest to the highest
   */
  public Span<Temperature> range(Species species) {
    List<StandardPolynomial> pieces = table.of(species);
    return Span.of(Amounts.kelvin(begin(pieces)), Amounts.kelvin(pieces.get(pieces.size() - 1).to));
  }

  /**
   * Whether a temperature lies in the range of a species.
   *
   * @param species the species
   * @param temperature the temperature
   * @return passed, or undetermined with the range
   */
  public Finding rangeFinding(Species species, Amount<Temperature> temperature) {
    boolean inside = range(species).contains(temperature);
    return Finding.builder()
        .code(AtmosphereFinding.WITHIN_DATA_RANGE)
        .severity(inside ? PASSED : UNDETERMINED)
        .subject(species.formula())
        .message(
            temperature.format(KELVIN, 1)
                + (inside ? " lies in" : " lies outside")
                + " the data of "
                + species.formula()
                + ", "
                + range(species).format(KELVIN, 1)
                + (inside ? "" : ": no figure is given there"))
        .measured(temperature)
        .basis(source(species))
        .build();
  }

  /**
   * The source of a species.
   *
   * @param species the species
   * @return the report its polynomials are from
   */
  public Source source(Species species) {
    return table.isFromOlderReport(species) ? MEMORANDUM : PAPER;
  }

  /**
   * The sum of coefficient times G over the species of a reaction, J; empty where one of them is
   * not known.
   */
  OptionalDouble reactionEnergy(Reaction reaction, double t) {
    double sum = 0;
    for (Map.Entry<Species, Double> term : reaction.coefficients().entrySet()) {
      Optional<StandardPolynomial> piece = piece(term.getKey(), t);
      if (piece.isEmpty()) {
        return OptionalDouble.empty();
      }
      sum += term.getValue() * piece.get().gibbs(t);
    }
    return OptionalDouble.of(sum);
  }

  private double referenceEnthalpy(Species species) {
    return piece(species, REFERENCE).orElseThrow().enthalpy(REFERENCE);
  }

  private Optional<StandardPolynomial> piece(Species species, double t) {
    List<StandardPolynomial> pieces = table.of(species);
    if (t < begin(pieces)) {
      return Optional.empty();
    }
    for (StandardPolynomial piece : pieces) {
      if (t <= piece.to) {
        return Optional.of(piece);
      }
    }
    return Optional.empty();
  }

  private static double begin(List<StandardPolynomial> pieces) {
    return Math.min(pieces.get(0).from, REFERENCE);
  }
}
