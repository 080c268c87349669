package dev.kilnledger.thermal.atmosphere;

import dev.kilnledger.core.material.Composition;
import dev.kilnledger.core.material.Element;
import java.util.EnumMap;
import java.util.Map;

/** Atom fractions of a nominal composition; standard atomic weights of IUPAC (2021), abridged. */
final class AtomFractions {
  private AtomFractions() {}

  static Map<Element, Double> of(Composition composition) {
    Map<Element, Double> atoms = new EnumMap<>(Element.class);
    composition
        .nominal()
        .forEach(
            (element, fraction) -> {
              if (fraction.si() > 0) {
                atoms.put(element, fraction.si() / atomicWeight(element));
              }
            });
    double sum = atoms.values().stream().mapToDouble(Double::doubleValue).sum();
    atoms.replaceAll((element, number) -> number / sum);
    return atoms;
  }

  /** In g/mol. */
  static double atomicWeight(Element element) {
    return switch (element) {
      case COPPER -> 63.546;
      case IRON -> 55.845;
      case NICKEL -> 58.693;
      case CHROMIUM -> 51.996;
      case MOLYBDENUM -> 95.95;
      case TITANIUM -> 47.867;
      case TUNGSTEN -> 183.84;
      case COBALT -> 58.933;
      case ALUMINIUM -> 26.982;
      case TIN -> 118.71;
      case ZINC -> 65.38;
      case SILVER -> 107.87;
      case GOLD -> 196.97;
      case MANGANESE -> 54.938;
      case SILICON -> 28.085;
      case VANADIUM -> 50.942;
      case NIOBIUM -> 92.906;
      case CARBON -> 12.011;
      case MAGNESIUM -> 24.305;
    };
  }
}
