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

/** Copper and its alloys in the standard library. */
final class StandardCopperAlloys {
  static final Alloy COPPER =
      Alloy.builder()
          .name("copper")
          .composition(
              Composition.builder()
                  .designation("UNS C11000 (wrought counterpart)")
                  .balance(Element.COPPER)
                  .putNominal(Element.COPPER, massPercent(100))
                  .otherLimits(
                      "copper 99.90 % or more, oxygen usually 0.02 to 0.04 %; the limits of MIM-Cu"
                          + " in ASTM B883-19 have not been seen")
                  .source(Source.fromMemory("ASTM B170; UNS C11000"))
                  .build())
          .fullDensity(
              Sourced.of(
                  kilogramsPerCubicMetre(8960),
                  "about 20 to 25 °C; massive C11000 is listed with 8940",
                  References.HANDBOOK))
          .solidus(
              Sourced.of(
                  celsius(1084.62),
                  "pure; with copper oxide a eutectic melts at about 1066 °C (from memory)",
                  References.HANDBOOK))
          .liquidus(Sourced.of(celsius(1084.62), References.HANDBOOK))
          .sinteringWindow(
              Sourced.of(
                  Spans.celsius(950, 1060),
                  "the upper end, common practice, stays below the eutectic with oxide at 1066 °C",
                  Source.fromMemory("German; ASM Handbook vol. 7: 950 to 1050 °C")))
          .usualPeak(
              Sourced.of(
                  celsius(1030),
                  "far enough below the eutectic with oxide for the scatter of a kiln",
                  Source.commonPractice(
                      "the upper half of the window: moulded copper reached 0.945 at 1050 °C, as"
                          + " quoted in a review")))
          .sinteringHold(Sourced.of(Spans.hours(1, 5), References.PRINTED_HOLD))
          .expectedRelativeDensity(
              Sourced.of(
                  Spans.volumeFraction(0.88, 0.93, 0.96),
                  "reducing gas; under carbon in air expect the lower half (common practice)",
                  Source.published(
                      "Johnson and Tan, Powder Metallurgy 48 (2005) 123, abstract: moulded 0.93 to"
                          + " 0.96; Sadaf et al., binder systems in copper feedstocks, abstract:"
                          + " extruded 0.88 to 0.94")))
          .linearExpansion(
              Sourced.of(
                  micrometresPerMetreKelvin(17.0), "20 to 100 °C", References.CALLISTER_EXPANSION))
          .heatCapacity(Sourced.of(joulesPerKilogramKelvin(384.6), "25 °C", References.NASA_HEAT))
          .hotHeatCapacity(
              Sourced.of(
                  joulesPerKilogramKelvin(436), "mean of 25 to 1030 °C", References.NASA_HEAT))
          .powderHardness(Sourced.of(Spans.vickers(40, 60), "annealed", References.ALLOY_HARDNESS))
          .carbonProtection(
              CarbonProtection.builder()
                  .suitability(CarbonProtection.Suitability.PROTECTS)
                  .decidingElement(Element.COPPER)
                  .reducesAbove(
                      Sourced.of(
                          celsius(89),
                          "1 bar of carbon monoxide; 71 °C at 0.35 bar, as air burnt on carbon gives",
                          References.NASA_OXIDE))
                  .remark(
                      "Equilibrium favours the metal almost from the start, but carbon hardly takes"
                          + " up oxygen below about 650 °C, so copper oxidises on the way there;"
                          + " carbon monoxide does not dissolve, and gas shut in at about 0.92 of"
                          + " full density can raise blisters.")
                  .source(References.NASA_OXIDE)
                  .build())
          .mixtureTolerance(
              Sourced.of(
                  percent(0.6),
                  "pure metal: the spread between handbook tables",
                  Source.commonPractice("chosen for this library")))
          .addCautions(Caution.METAL_POWDER)
          .build();

  static final Alloy TIN_BRONZE =
      Alloy.builder()
          .name("tin bronze 90/10")
          .composition(
              Composition.builder()
                  .designation("UNS C52400")
                  .balance(Element.COPPER)
                  .putRanges(Element.TIN, Spans.massPercent(9.0, 11.0))
                  .putRanges(Element.ZINC, Spans.massPercent(0, 0.20))
                  .putRanges(Element.IRON, Spans.massPercent(0, 0.10))
                  .putNominal(Element.COPPER, massPercent(90))
                  .putNominal(Element.TIN, massPercent(10))
                  .otherLimits(
                      "phosphorus 0.03 to 0.35 %, lead up to 0.05 %; copper and the named elements"
                          + " 99.5 % or more")
                  .source(References.COPPER_ALLOY_DATA)
                  .build())
          .fullDensity(
              Sourced.of(
                  kilogramsPerCubicMetre(8780),
                  "20 °C, listed as 0.317 lb/in3",
                  References.COPPER_ALLOY_DATA))
          .solidus(Sourced.of(celsius(843), "listed as 1550 °F", References.COPPER_ALLOY_DATA))
          .liquidus(Sourced.of(celsius(999), "listed as 1830 °F", References.COPPER_ALLOY_DATA))
          .sinteringWindow(
              Sourced.of(
                  Spans.celsius(780, 840),
                  "prealloyed powder, kept below the solidus; premixed copper and tin powders are"
                      + " sintered at 760 to 870 °C with passing liquid",
                  References.PRESSING_BOOK))
          .usualPeak(
              Sourced.of(
                  celsius(820),
                  "prealloyed powder, below the solidus: bearings of premixed powders take 815 to 860"
                      + " °C",
                  References.PRESSING_BOOK))
          .sinteringHold(
              Sourced.of(Spans.hours(2, 5), "bearings take 15 to 45 min", References.PRINTED_HOLD))
          .expectedRelativeDensity(
              Sourced.of(
                  Spans.volumeFraction(0.72, 0.88, 0.95),
                  "0.72 to 0.90 in pressed bearings; the upper end is common practice",
                  References.PRESSING_BOOK))
          .linearExpansion(
              Sourced.of(
                  micrometresPerMetreKelvin(18.4), "20 to 300 °C", References.COPPER_ALLOY_DATA))
          .heatCapacity(
              Sourced.of(
                  joulesPerKilogramKelvin(377),
                  "20 °C, listed as 0.09 Btu/(lb °F)",
                  References.COPPER_ALLOY_DATA))
          .hotHeatCapacity(
              Sourced.of(
                  joulesPerKilogramKelvin(405),
                  "mean of 25 to 800 °C; solid tin taken up to 225 °C",
                  References.NASA_ALLOY_HEAT))
          .powderHardness(Sourced.of(Spans.vickers(80, 120), References.ALLOY_HARDNESS))
          .carbonProtection(
              CarbonProtection.builder()
                  .suitability(CarbonProtection.Suitability.PROTECTS)
                  .decidingElement(Element.TIN)
                  .reducesAbove(
                      Sourced.of(
                          celsius(641),
                          "pure tin, 1 bar of carbon monoxide; 601 °C at 0.35 bar; tin dissolved in"
                              + " copper is reduced at a lower temperature, not quantified",
                          References.NASA_OXIDE))
                  .remark(
                      "Carbon keeps both metals bright in the sintering window; below about 650 °C it"
                          + " takes up oxygen too slowly, so some oxide forms on the way there.")
                  .source(References.NASA_OXIDE)
                  .build())
          .mixtureTolerance(
              Sourced.of(
                  percent(1.5),
                  "tin packs more closely in copper's crystal than in its own",
                  Source.commonPractice("chosen for this library")))
          .addCautions(Caution.METAL_POWDER)
          .build();

  private StandardCopperAlloys() {}
}
