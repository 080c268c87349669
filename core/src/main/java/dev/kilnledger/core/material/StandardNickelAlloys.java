package dev.kilnledger.core.material;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.joulesPerKilogramKelvin;
import static dev.kilnledger.units.Amounts.kilogramsPerCubicMetre;
import static dev.kilnledger.units.Amounts.massPercent;
import static dev.kilnledger.units.Amounts.micrometresPerMetreKelvin;
import static dev.kilnledger.units.Amounts.percent;

import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;

/** Nickel alloys in the standard library. */
final class StandardNickelAlloys {
  static final Alloy ALLOY_625 =
      Alloy.builder()
          .name("nickel alloy 625")
          .composition(
              Composition.builder()
                  .designation("UNS N06625")
                  .balance(Element.NICKEL)
                  .putRanges(Element.CHROMIUM, Spans.massPercent(20, 23))
                  .putRanges(Element.MOLYBDENUM, Spans.massPercent(8, 10))
                  .putRanges(Element.NIOBIUM, Spans.massPercent(3.15, 4.15))
                  .putRanges(Element.IRON, Spans.massPercent(0, 5))
                  .putRanges(Element.COBALT, Spans.massPercent(0, 1))
                  .putRanges(Element.MANGANESE, Spans.massPercent(0, 0.5))
                  .putRanges(Element.SILICON, Spans.massPercent(0, 0.5))
                  .putRanges(Element.TITANIUM, Spans.massPercent(0, 0.4))
                  .putRanges(Element.ALUMINIUM, Spans.massPercent(0, 0.4))
                  .putRanges(Element.CARBON, Spans.massPercent(0, 0.10))
                  .putNominal(Element.NICKEL, massPercent(62.5))
                  .putNominal(Element.CHROMIUM, massPercent(21.5))
                  .putNominal(Element.MOLYBDENUM, massPercent(9))
                  .putNominal(Element.NIOBIUM, massPercent(3.65))
                  .putNominal(Element.IRON, massPercent(2.5))
                  .putNominal(Element.MANGANESE, massPercent(0.25))
                  .putNominal(Element.SILICON, massPercent(0.2))
                  .putNominal(Element.TITANIUM, massPercent(0.2))
                  .putNominal(Element.ALUMINIUM, massPercent(0.2))
                  .otherLimits(
                      "nickel 58 % or more; tantalum counts with niobium; phosphorus and sulphur up"
                          + " to 0.015 % each")
                  .source(References.NICKEL_ALLOY_SHEET)
                  .build())
          .fullDensity(
              Sourced.of(kilogramsPerCubicMetre(8440), "room temperature", References.COMPENDIUM))
          .solidus(Sourced.of(celsius(1290), "listed as 2350 °F", References.NICKEL_ALLOY_SHEET))
          .liquidus(Sourced.of(celsius(1350), "listed as 2460 °F", References.NICKEL_ALLOY_SHEET))
          .sinteringWindow(
              Sourced.of(
                  Spans.celsius(1250, 1300),
                  "the upper end lies above the solidus, where some liquid helps and the part may"
                      + " slump",
                  References.MOULDING_BOOK))
          .usualPeak(Sourced.of(celsius(1280), References.MOULDING_BOOK))
          .sinteringHold(Sourced.of(Spans.hours(1, 4), References.PRINTED_HOLD))
          .expectedRelativeDensity(
              Sourced.of(
                  Spans.volumeFraction(0.95, 0.97, 0.99),
                  "vacuum or hydrogen; not shown under carbon in air",
                  References.MOULDING_BOOK))
          .linearExpansion(
              Sourced.of(
                  micrometresPerMetreKelvin(12.8), "20 to 100 °C", References.CALLISTER_EXPANSION))
          .heatCapacity(
              Sourced.of(
                  joulesPerKilogramKelvin(410),
                  "room temperature",
                  References.CALLISTER_ALLOY_HEAT))
          .hotHeatCapacity(
              Sourced.of(
                  joulesPerKilogramKelvin(537),
                  "mean of 25 to 1280 °C; niobium counted as molybdenum",
                  References.NASA_ALLOY_HEAT))
          .powderHardness(Sourced.of(Spans.vickers(180, 250), References.ALLOY_HARDNESS))
          .carbonProtection(
              CarbonProtection.builder()
                  .suitability(CarbonProtection.Suitability.PARTLY)
                  .decidingElement(Element.CHROMIUM)
                  .reducesAbove(StandardStainlessSteels.CHROMIUM_REDUCES_ABOVE)
                  .remark(
                      "Carbon alone does not protect it: chromium oxidises on the way up, niobium,"
                          + " titanium and aluminium are never reduced, and nitrides and carbides"
                          + " form; hydrogen or vacuum is the usual way.")
                  .source(References.NASA_OXIDE)
                  .build())
          .mixtureTolerance(
              Sourced.of(
                  percent(1.5),
                  "chromium and molybdenum are body-centred alone and face-centred in the alloy",
                  Source.commonPractice("chosen for this library")))
          .addCautions(Caution.METAL_POWDER, Caution.NICKEL_CHROMIUM)
          .build();

  private StandardNickelAlloys() {}
}
