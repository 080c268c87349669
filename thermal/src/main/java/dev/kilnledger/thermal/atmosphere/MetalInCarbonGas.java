package dev.kilnledger.thermal.atmosphere;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.core.material.Element.CARBON;
import static dev.kilnledger.core.material.Element.CHROMIUM;
import static dev.kilnledger.core.material.Element.IRON;
import static dev.kilnledger.core.material.Element.TITANIUM;
import static dev.kilnledger.core.material.Element.ZINC;
import static dev.kilnledger.units.TradeUnits.MASS_PERCENT;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.material.Element;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.MassFraction;
import java.util.List;
import java.util.Optional;

/**
 * What the gas of air burnt on carbon does to a metal besides oxidising it: its nitrogen, which
 * carbon does not take, and its carbon; and the zinc that leaves it as vapour.
 *
 * <p>Example: steel 316L, with 17 % of chromium and up to 0.03 % of carbon allowed, gets a warning
 * for either; titanium is stopped; copper passes.
 */
public final class MetalInCarbonGas {
  private static final Amount<MassFraction> MATTERS_FROM = Amounts.massPercent(1);
  private static final Amount<MassFraction> LOW_CARBON = Amounts.massPercent(0.1);
  private static final Source NITRIDES =
      Source.fromMemory(
          "titanium burns to its nitride in nitrogen, chromium dissolves it and forms nitrides;"
              + " any text book of extractive metallurgy");
  private static final Source CARBURISING =
      Source.fromMemory(
          "carbon monoxide over carbon brings iron to saturation with carbon (pack carburising)");

  private static final Source VAPOUR =
      Source.recomputed(
          "vapour of CODATA Key Values (1989) over liquid zinc of NASA TM-4513: 0.025 bar at 900 K,"
              + " 0.12 at 1000 K, 1.0 at 1180 K, pure zinc");

  private MetalInCarbonGas() {}

  /** {@return the check} */
  public static MetalInCarbonGas standard() {
    return new MetalInCarbonGas();
  }

  /**
   * The findings on nitrogen and on carbon pick-up, and where there is 1 % of zinc or more on its
   * vapour.
   *
   * @param alloy the alloy
   * @return two findings or three
   */
  public List<Finding> findings(Alloy alloy) {
    Amount<MassFraction> zinc = nominal(alloy, ZINC);
    return zinc.isLessThan(MATTERS_FROM)
        ? List.of(nitrogen(alloy), carbonPickUp(alloy))
        : List.of(nitrogen(alloy), carbonPickUp(alloy), vapour(alloy, zinc));
  }

  private static Finding vapour(Alloy alloy, Amount<MassFraction> zinc) {
    return AtmosphereFinding.ZINC_VAPOUR
        .about(alloy.name())
        .severity(WARNING)
        .measured(zinc)
        .message(
            "zinc ("
                + zinc.format(MASS_PERCENT, 1)
                + ") boils at 907 °C and leaves the metal as vapour well below, which burns to a"
                + " fume that makes ill: keep it out of the room, and expect the part to lose zinc")
        .basis(VAPOUR)
        .build();
  }

  private static Finding nitrogen(Alloy alloy) {
    Finding.Builder finding = AtmosphereFinding.NITROGEN.about(alloy.name()).basis(NITRIDES);
    Amount<MassFraction> titanium = nominal(alloy, TITANIUM);
    Amount<MassFraction> chromium = nominal(alloy, CHROMIUM);
    if (!titanium.isLessThan(MATTERS_FROM)) {
      return finding
          .severity(alloy.composition().balance() == TITANIUM ? STOP : WARNING)
          .measured(titanium)
          .message(
              "nitrogen stays when carbon has burnt the oxygen away, and titanium ("
                  + titanium.format(MASS_PERCENT, 1)
                  + ") forms its nitride: vacuum or argon is the usual way")
          .build();
    }
    if (!chromium.isLessThan(MATTERS_FROM)) {
      return finding
          .severity(WARNING)
          .measured(chromium)
          .message(
              "nitrogen stays when carbon has burnt the oxygen away, and chromium ("
                  + chromium.format(MASS_PERCENT, 1)
                  + ") takes it up: less of it resists corrosion")
          .build();
    }
    return finding
        .severity(PASSED)
        .message("nitrogen, which stays when carbon has burnt, does nothing to " + alloy.name())
        .build();
  }

  private static Finding carbonPickUp(Alloy alloy) {
    Finding.Builder finding =
        AtmosphereFinding.CARBON_PICK_UP.about(alloy.name()).basis(CARBURISING);
    if (alloy.composition().balance() != IRON) {
      return finding
          .severity(PASSED)
          .message(alloy.name() + " is no steel; carbides of its elements are not looked at here")
          .build();
    }
    Optional<Amount<MassFraction>> most =
        Optional.ofNullable(alloy.composition().ranges().get(CARBON)).map(Span::high);
    boolean low = most.isPresent() && !most.get().isGreaterThan(LOW_CARBON);
    most.ifPresent(finding::limit);
    return finding
        .severity(low ? WARNING : NOTE)
        .message(
            "carbon gives carbon to steel, up to saturation"
                + most.map(m -> "; the grade allows " + m.format(MASS_PERCENT, 2)).orElse("")
                + ": have the carbon of a fired part measured")
        .build();
  }

  private static Amount<MassFraction> nominal(Alloy alloy, Element element) {
    return alloy.composition().nominal().getOrDefault(element, Amounts.massFraction(0));
  }
}
