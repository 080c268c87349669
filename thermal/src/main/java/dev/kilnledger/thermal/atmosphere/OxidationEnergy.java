package dev.kilnledger.thermal.atmosphere;

import dev.kilnledger.core.source.Source;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * One published account of the Gibbs energy that an oxide takes per mole of oxygen, and how far it
 * can be trusted.
 */
final class OxidationEnergy {
  /** J/mol O2 at T, empty outside the account's range. */
  private interface Account {
    OptionalDouble at(Thermochemistry thermochemistry, double t);
  }

  final double from;
  final double to;
  final double uncertainty; // J/mol O2
  final Source source;
  private final Account account;

  private OxidationEnergy(
      double from, double to, double uncertainty, Source source, Account account) {
    this.from = from;
    this.to = to;
    this.uncertainty = uncertainty;
    this.source = source;
    this.account = account;
  }

  /** A + B T + C T ln T + D T^2. */
  static final class Formula {
    private final double from;
    private final double to;
    private final double a;
    private final double b;
    private final double c;
    private final double d;

    private Formula(double from, double to, double a, double b, double c, double d) {
      this.from = from;
      this.to = to;
      this.a = a;
      this.b = b;
      this.c = c;
      this.d = d;
    }

    private double at(double t) {
      return a + b * t + c * t * Math.log(t) + d * t * t;
    }
  }

  static Formula line(double from, double to, double a, double b) {
    return curve(from, to, a, b, 0, 0);
  }

  static Formula curve(double from, double to, double a, double b, double c, double d) {
    return new Formula(from, to, a, b, c, d);
  }

  /** A formula, in as many pieces as were published, in ascending order without gaps. */
  static OxidationEnergy of(double uncertainty, Source source, Formula... pieces) {
    List<Formula> all = List.of(pieces);
    double from = all.get(0).from;
    double to = all.get(all.size() - 1).to;
    return new OxidationEnergy(
        from,
        to,
        uncertainty,
        source,
        (thermochemistry, t) ->
            all.stream()
                .filter(piece -> t <= piece.to)
                .mapToDouble(piece -> piece.at(t))
                .findFirst());
  }

  /** The polynomials of the species: (2 m/o) metal + O2 -> (2/o) oxide. */
  static OxidationEnergy of(
      double uncertainty,
      double from,
      double to,
      Species metal,
      Species oxide,
      double metalAtoms,
      double oxygenAtoms) {
    Reaction reaction =
        new Reaction(
            Map.of(
                metal,
                -2 * metalAtoms / oxygenAtoms,
                Species.OXYGEN,
                -1.0,
                oxide,
                2 / oxygenAtoms));
    return new OxidationEnergy(
        from,
        to,
        uncertainty,
        Source.published(
            "NASA/TP-2002-211556 and NASA TM-4513, polynomials of "
                + metal.formula()
                + ", "
                + oxide.formula()
                + " and O2"),
        (thermochemistry, t) -> thermochemistry.reactionEnergy(reaction, t));
  }

  /** J/mol O2. */
  OptionalDouble at(Thermochemistry thermochemistry, double t) {
    return t < from || t > to ? OptionalDouble.empty() : account.at(thermochemistry, t);
  }
}
