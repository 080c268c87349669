package dev.kilnledger.core.material;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import si.uom.quantity.Density;

/**
 * The full density of an alloy by the inverse rule of mixtures: {@code 1 / rho = sum(w_i / rho_i) /
 * sum(w_i)} with the mass fractions w and densities rho of the elements.
 *
 * <p>It is the conservation of mass and volume as if each element kept its own crystal (textbook
 * rule; R. M. German, Powder Metallurgy and Particulate Materials Processing, from memory). Where
 * an element takes another crystal in the alloy, as iron does in austenitic steel, the rule is off
 * by some percent; so the handbook's density rules, and the rule checks it against typing errors.
 * Not a model for compounds.
 */
public final class MixtureRule {
  static final Source SOURCE =
      Source.fromMemory(
          "inverse rule of mixtures; German, Powder Metallurgy and Particulate Materials"
              + " Processing");

  private MixtureRule() {}

  /** {@return the rule with the densities of {@link Element}} */
  public static MixtureRule standard() {
    return new MixtureRule();
  }

  /**
   * The density that the nominal composition has by the rule.
   *
   * @param composition the composition; nominal fractions that do not quite add up to 1 are scaled
   * @return the density without pores, about 20 °C
   */
  public Amount<Density> fullDensity(Composition composition) {
    double mass = 0;
    double volume = 0;
    for (var share : composition.nominal().entrySet()) {
      double fraction = share.getValue().si();
      mass += fraction;
      volume += fraction / share.getKey().density().value().si();
    }
    return Amounts.kilogramsPerCubicMetre(mass / volume);
  }

  /**
   * Holds the full density of an alloy against the rule.
   *
   * @param alloy the alloy
   * @return both densities and how far they lie apart
   */
  public MixtureComparison compare(Alloy alloy) {
    return MixtureComparison.of(alloy, fullDensity(alloy.composition()));
  }
}
