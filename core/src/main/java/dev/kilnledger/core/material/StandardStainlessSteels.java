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
import dev.kilnledger.units.Amount;
import javax.measure.quantity.Temperature;

/** Stainless steels in the standard library. */
final class StandardStainlessSteels {
  static final Sourced<Amount<Temperature>> CHROMIUM_REDUCES_ABOVE =
      Sourced.of(
          celsius(1264),
          "pure chromium, 1 bar of carbon monoxide; 1188 °C at 0.35 bar; 1243 °C after emf data; some"
              + " 80 to 95 K lower for chromium in ideal solution",
          References.NASA_OXIDE);

  static final Alloy STEEL_316L =
      Alloy.builder()
          .name("stainless steel 316L")
          .composition(
              Composition.builder()
                  .designation("MIM-316L (wrought: UNS S31603)")
                  .balance(Element.IRON)
                  .putRanges(Element.CHROMIUM, Spans.massPercent(16, 18))
                  .putRanges(Element.NICKEL, Spans.massPercent(10, 14))
                  .putRanges(Element.MOLYBDENUM, Spans.massPercent(2, 3))
                  .putRanges(Element.MANGANESE, Spans.massPercent(0, 2.0))
                  .putRanges(Element.SILICON, Spans.massPercent(0, 1.0))
                  .putRanges(Element.CARBON, Spans.massPercent(0, 0.03))
                  .putNominal(Element.IRON, massPercent(65.75))
                  .putNominal(Element.CHROMIUM, massPercent(17))
                  .putNominal(Element.NICKEL, massPercent(12))
                  .putNominal(Element.MOLYBDENUM, massPercent(2.5))
                  .putNominal(Element.MANGANESE, massPercent(2))
                  .putNominal(Element.SILICON, massPercent(0.75))
                  .otherLimits("other elements 1.0 % in total")
                  .source(References.MOULDING_GRADES)
                  .build())
          .fullDensity(
              Sourced.of(
                  kilogramsPerCubicMetre(8000), "room temperature", References.CALLISTER_DENSITY))
          .solidus(
              Sourced.of(
                  celsius(1375),
                  "other sheets give 1371 to 1390 °C",
                  Source.quoted(
                      "stainless steel 316 and 316L, publisher not named; other sheets differ by 20 K")))
          .liquidus(
              Sourced.of(
                  celsius(1400),
                  "other sheets give 1399 to 1440 °C",
                  Source.quoted(
                      "stainless steel 316 and 316L, publisher not named; other sheets differ by 20 K")))
          .sinteringWindow(
              Sourced.of(
                  Spans.celsius(1250, 1390),
                  "the upper end lies above the solidus, where some liquid helps and the part may"
                      + " slump; 1250 °C and 1380 °C are published",
                  References.MOULDING_BOOK))
          .usualPeak(
              Sourced.of(
                  celsius(1360),
                  "moulded, hydrogen or vacuum; 0.961 of full density was reached at 1250 °C (Ji et"
                      + " al., Mater. Sci. Eng. A 311 (2001) 74, abstract)",
                  References.MOULDING_BOOK))
          .sinteringHold(
              Sourced.of(
                  Spans.hours(1, 3), "90 min at 1250 °C is published", References.PRINTED_HOLD))
          .expectedRelativeDensity(
              Sourced.of(
                  Spans.volumeFraction(0.94, 0.96, 0.98),
                  "vacuum or hydrogen; not shown under carbon in air",
                  Source.published(
                      "Ji et al., Mater. Sci. Eng. A 311 (2001) 74, abstract: 0.961 in vacuum;"
                          + " Hwang et al., Materials 16 (2023) 2144, abstract: 0.946; Materials 17"
                          + " (2024) 110, abstract: above 0.98 in hydrogen")))
          .linearExpansion(
              Sourced.of(
                  micrometresPerMetreKelvin(16.0), "20 to 100 °C", References.CALLISTER_EXPANSION))
          .heatCapacity(
              Sourced.of(
                  joulesPerKilogramKelvin(502),
                  "room temperature, stainless steel 316",
                  References.CALLISTER_HEAT))
          .hotHeatCapacity(
              Sourced.of(
                  joulesPerKilogramKelvin(580),
                  "mean of 25 to 1360 °C, extended from 1000 K; it keeps one crystal throughout,"
                      + " unlike iron",
                  Source.fromMemory(
                      "Incropera et al., Fundamentals of Heat and Mass Transfer, table A.1,"
                          + " stainless steel 316")))
          .powderHardness(Sourced.of(Spans.vickers(150, 200), References.ALLOY_HARDNESS))
          .carbonProtection(
              CarbonProtection.builder()
                  .suitability(CarbonProtection.Suitability.PARTLY)
                  .decidingElement(Element.CHROMIUM)
                  .reducesAbove(CHROMIUM_REDUCES_ABOVE)
                  .remark(
                      "Carbon alone does not protect it: chromium oxidises on the way up, carbides"
                          + " form instead and the 0.03 % of carbon allowed is lost, manganese and"
                          + " silicon stay oxidised, and nitrogen dissolves; hydrogen or vacuum is"
                          + " the usual way.")
                  .source(References.NASA_OXIDE)
                  .build())
          .mixtureTolerance(
              Sourced.of(
                  percent(4),
                  "iron is face-centred, more closely packed, in the alloy and body-centred in the"
                      + " table",
                  Source.commonPractice("chosen for this library")))
          .addCautions(Caution.METAL_POWDER, Caution.NICKEL_CHROMIUM)
          .build();

  static final Alloy STEEL_17_4PH =
      Alloy.builder()
          .name("stainless steel 17-4PH")
          .composition(
              Composition.builder()
                  .designation("MIM-17-4PH (wrought: UNS S17400)")
                  .balance(Element.IRON)
                  .putRanges(Element.CHROMIUM, Spans.massPercent(15.5, 17.5))
                  .putRanges(Element.NICKEL, Spans.massPercent(3, 5))
                  .putRanges(Element.COPPER, Spans.massPercent(3, 5))
                  .putRanges(Element.NIOBIUM, Spans.massPercent(0.15, 0.45))
                  .putRanges(Element.MANGANESE, Spans.massPercent(0, 1.0))
                  .putRanges(Element.SILICON, Spans.massPercent(0, 1.0))
                  .putRanges(Element.CARBON, Spans.massPercent(0, 0.07))
                  .putNominal(Element.IRON, massPercent(74.2))
                  .putNominal(Element.CHROMIUM, massPercent(16.5))
                  .putNominal(Element.NICKEL, massPercent(4))
                  .putNominal(Element.COPPER, massPercent(4))
                  .putNominal(Element.NIOBIUM, massPercent(0.3))
                  .putNominal(Element.MANGANESE, massPercent(0.5))
                  .putNominal(Element.SILICON, massPercent(0.5))
                  .otherLimits("tantalum counts with niobium; other elements 1.0 % in total")
                  .source(References.MOULDING_GRADES)
                  .build())
          .fullDensity(
              Sourced.of(
                  kilogramsPerCubicMetre(7780),
                  "room temperature; 7750 to 7810 with the heat treatment",
                  Source.fromMemory("ASM Handbook vol. 1")))
          .solidus(Sourced.of(celsius(1404), Source.fromMemory("ASM Handbook, alloy 17-4PH")))
          .liquidus(Sourced.of(celsius(1440), Source.fromMemory("ASM Handbook, alloy 17-4PH")))
          .sinteringWindow(
              Sourced.of(
                  Spans.celsius(1250, 1380),
                  "1300 to 1360 °C are published",
                  References.MOULDING_BOOK))
          .usualPeak(
              Sourced.of(celsius(1340), "moulded, hydrogen or vacuum", References.MOULDING_BOOK))
          .sinteringHold(
              Sourced.of(Spans.hours(1, 2), "1.5 h is published", References.PRINTED_HOLD))
          .expectedRelativeDensity(
              Sourced.of(
                  Spans.volumeFraction(0.81, 0.87, 0.95),
                  "without hydrogen: 0.81 in vacuum and 0.87 in argon are published; the upper end"
                      + " is from memory, with hydrogen 0.94 to 0.98",
                  Source.fromMemory(
                      "Mater. Sci. Forum (2021) 403-408, abstract, was read for the lower values;"
                          + " German and Bose, Injection Molding of Metals and Ceramics, for the"
                          + " upper end")))
          .linearExpansion(
              Sourced.of(
                  micrometresPerMetreKelvin(10.8),
                  "21 to 93 °C",
                  Source.quoted("stainless steel 17-4 (UNS S17400), publisher not named")))
          .heatCapacity(
              Sourced.of(joulesPerKilogramKelvin(460), "25 °C", Source.fromMemory("ASM Handbook")))
          .hotHeatCapacity(
              Sourced.of(
                  joulesPerKilogramKelvin(658),
                  "mean of 25 to 1340 °C; niobium, manganese and silicon counted as iron",
                  References.NASA_ALLOY_HEAT))
          .powderHardness(Sourced.of(Spans.vickers(250, 350), References.ALLOY_HARDNESS))
          .carbonProtection(
              CarbonProtection.builder()
                  .suitability(CarbonProtection.Suitability.PARTLY)
                  .decidingElement(Element.CHROMIUM)
                  .reducesAbove(CHROMIUM_REDUCES_ABOVE)
                  .remark(
                      "Carbon alone does not protect it: chromium oxidises on the way up, carbides"
                          + " form instead and the 0.07 % of carbon allowed is lost, niobium and"
                          + " silicon stay oxidised, and nitrogen dissolves; hydrogen or vacuum is"
                          + " the usual way.")
                  .source(References.NASA_OXIDE)
                  .build())
          .mixtureTolerance(
              Sourced.of(
                  percent(1.5),
                  "its crystal is nearly iron's own; density moves with the heat treatment",
                  Source.commonPractice("chosen for this library")))
          .addCautions(Caution.METAL_POWDER, Caution.NICKEL_CHROMIUM)
          .build();

  private StandardStainlessSteels() {}
}
