package dev.kilnledger.thermal.densification;

import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.material.Element;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.MolarEnergy;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Published activation energies of densification. They are apparent ones, each of one powder; they
 * scatter by factors, so that they serve to bracket a forecast and never to make one.
 *
 * <p>Example: for copper from 104 to 230 kJ/mol.
 */
public final class SinteringEnergies {
  private static final Source DIFFUSION =
      Source.fromMemory("Frost and Ashby, Deformation-Mechanism Maps (1982)");
  private static final Source STEEL_POWDER =
      Source.published("Esmati et al. (2024), doi 10.1016/j.mtcomm.2024.110528, abstract");

  private static final Map<Element, List<Sourced<Span<MolarEnergy>>>> BY_ELEMENT =
      Map.of(
          Element.COPPER,
          List.of(
              fact(
                  230,
                  230,
                  "copper, growth of necks in single layers of powder; 55 kcal/mol",
                  Source.published("study of the sintering of copper powder, abstract")),
              fact(104, 197, "copper, boundary and lattice diffusion", DIFFUSION)),
          Element.IRON,
          List.of(
              fact(25, 162, "316L, binder jetted, 1100 to 1300 °C", STEEL_POWDER),
              fact(490, 623, "316L, binder jetted, above 1300 °C", STEEL_POWDER),
              fact(159, 280, "austenite, boundary and lattice diffusion", DIFFUSION)),
          Element.NICKEL,
          List.of(fact(115, 284, "nickel, boundary and lattice diffusion", DIFFUSION)),
          Element.TUNGSTEN,
          List.of(
              fact(
                  271,
                  359,
                  "tungsten, growth of necks; 315 +- 44",
                  Source.published("Int. J. Refract. Met. Hard Mater. (2018), abstract"))));

  private SinteringEnergies() {}

  /**
   * The activation energies published for metals of an alloy's balance element.
   *
   * @param alloy the alloy
   * @return the intervals with condition and source; empty where none was found
   */
  public static List<Sourced<Span<MolarEnergy>>> of(Alloy alloy) {
    return BY_ELEMENT.getOrDefault(alloy.composition().balance(), List.of());
  }

  /**
   * The range of all energies published for an alloy.
   *
   * @param alloy the alloy
   * @return from the lowest to the highest; empty where none was found
   */
  public static Optional<Span<MolarEnergy>> rangeOf(Alloy alloy) {
    List<Span<MolarEnergy>> spans = of(alloy).stream().map(Sourced::value).toList();
    return spans.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Span.of(
                spans.stream().map(Span::low).min(Comparator.naturalOrder()).orElseThrow(),
                spans.stream().map(Span::high).max(Comparator.naturalOrder()).orElseThrow()));
  }

  private static Sourced<Span<MolarEnergy>> fact(
      double low, double high, String condition, Source source) {
    return Sourced.of(
        Span.of(Amounts.kilojoulesPerMole(low), Amounts.kilojoulesPerMole(high)),
        condition,
        source);
  }
}
