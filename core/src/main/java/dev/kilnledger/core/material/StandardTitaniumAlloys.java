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

/** Titanium and its alloys in the standard library. */
final class StandardTitaniumAlloys {
  private static final CarbonProtection CARBON_IS_WRONG =
      CarbonProtection.builder()
          .suitability(CarbonProtection.Suitability.WRONG)
          .decidingElement(Element.TITANIUM)
          .remark(
              "Carbon is the wrong protection: it would reduce titanium oxide only from 1758 °C,"
                  + " above the melting point, and titanium takes carbon, oxygen and nitrogen into"
                  + " solution and turns brittle; high vacuum or argon, and a cover against"
                  + " contamination, are needed.")
          .source(References.NASA_OXIDE)
          .build();

  static final Alloy GRADE_2 =
      Alloy.builder()
          .name("titanium grade 2")
          .composition(
              Composition.builder()
                  .designation("UNS R50400")
                  .balance(Element.TITANIUM)
                  .putRanges(Element.IRON, Spans.massPercent(0, 0.30))
                  .putRanges(Element.CARBON, Spans.massPercent(0, 0.08))
                  .putNominal(Element.TITANIUM, massPercent(100))
                  .otherLimits(
                      "oxygen up to 0.25 %, nitrogen up to 0.03 %, hydrogen up to 0.015 %; another"
                          + " sheet allows carbon up to 0.10 %")
                  .source(References.TITANIUM_SHEET)
                  .build())
          .fullDensity(
              Sourced.of(
                  kilogramsPerCubicMetre(4510), "room temperature", References.TITANIUM_SHEET))
          .solidus(
              Sourced.of(
                  celsius(1649),
                  "listed as 3000 °F",
                  Source.quoted("commercially pure titanium, publisher not named")))
          .liquidus(
              Sourced.of(
                  celsius(1671),
                  "listed as 3040 °F",
                  Source.quoted("commercially pure titanium, publisher not named")))
          .sinteringWindow(
              Sourced.of(
                  Spans.celsius(1150, 1350),
                  "high vacuum; 1150 °C (Muenya and Manonukul, J. Met. Mater."
                      + " Miner. 20 (2010) 63, abstract) and 1250 °C (German, Materials 6 (2013)"
                      + " 3641) are published, the upper end is from memory",
                  References.MOULDING_BOOK))
          .usualPeak(Sourced.of(celsius(1250), "high vacuum", References.TITANIUM_MOULDING))
          .sinteringHold(
              Sourced.of(Spans.hours(2, 3), "at 1250 °C, vacuum", References.TITANIUM_MOULDING))
          .expectedRelativeDensity(
              Sourced.of(
                  Spans.volumeFraction(0.93, 0.95, 0.97),
                  "high vacuum; 0.95 is published for the alloy with aluminium and vanadium"
                      + " (German, Materials 6 (2013) 3641)",
                  References.MOULDING_BOOK))
          .linearExpansion(
              Sourced.of(
                  micrometresPerMetreKelvin(8.6), "20 to 100 °C", References.CALLISTER_EXPANSION))
          .heatCapacity(Sourced.of(joulesPerKilogramKelvin(523.5), "25 °C", References.NASA_HEAT))
          .hotHeatCapacity(
              Sourced.of(
                  joulesPerKilogramKelvin(702),
                  "mean of 25 to 1250 °C, the change of crystal included",
                  References.NASA_HEAT))
          .powderHardness(
              Sourced.of(Spans.vickers(145, 250), "oxygen hardens it", References.ALLOY_HARDNESS))
          .carbonProtection(CARBON_IS_WRONG)
          .mixtureTolerance(
              Sourced.of(
                  percent(0.6),
                  "nearly pure metal: the spread between handbook tables",
                  Source.commonPractice("chosen for this library")))
          .addCautions(Caution.METAL_POWDER)
          .build();

  static final Alloy ALLOY_6AL_4V =
      Alloy.builder()
          .name("titanium alloy 6Al-4V")
          .composition(
              Composition.builder()
                  .designation("UNS R56400")
                  .balance(Element.TITANIUM)
                  .putRanges(Element.ALUMINIUM, Spans.massPercent(5.5, 6.75))
                  .putRanges(Element.VANADIUM, Spans.massPercent(3.5, 4.5))
                  .putRanges(Element.IRON, Spans.massPercent(0, 0.40))
                  .putRanges(Element.CARBON, Spans.massPercent(0, 0.08))
                  .putNominal(Element.TITANIUM, massPercent(90))
                  .putNominal(Element.ALUMINIUM, massPercent(6))
                  .putNominal(Element.VANADIUM, massPercent(4))
                  .otherLimits("oxygen up to 0.20 %, nitrogen up to 0.05 %, hydrogen up to 0.015 %")
                  .source(Source.fromMemory("ASTM B348, grade 5"))
                  .build())
          .fullDensity(
              Sourced.of(kilogramsPerCubicMetre(4430), "room temperature", References.COMPENDIUM))
          .solidus(Sourced.of(celsius(1604), Source.fromMemory("ASM Handbook, alloy Ti-6Al-4V")))
          .liquidus(Sourced.of(celsius(1660), Source.fromMemory("ASM Handbook, alloy Ti-6Al-4V")))
          .sinteringWindow(
              Sourced.of(Spans.celsius(1200, 1350), "high vacuum", References.MOULDING_BOOK))
          .usualPeak(Sourced.of(celsius(1250), "high vacuum", References.TITANIUM_MOULDING))
          .sinteringHold(
              Sourced.of(Spans.hours(2, 3), "at 1250 °C, vacuum", References.TITANIUM_MOULDING))
          .expectedRelativeDensity(
              Sourced.of(
                  Spans.volumeFraction(0.95, 0.95, 0.98),
                  "high vacuum; 0.95 is published (German, Materials 6 (2013) 3641)",
                  References.MOULDING_BOOK))
          .linearExpansion(
              Sourced.of(
                  micrometresPerMetreKelvin(8.6), "20 to 100 °C", References.CALLISTER_EXPANSION))
          .heatCapacity(
              Sourced.of(
                  joulesPerKilogramKelvin(560),
                  "25 °C; listed between 526 and 610",
                  Source.fromMemory("ASM Handbook, alloy Ti-6Al-4V")))
          .hotHeatCapacity(
              Sourced.of(
                  joulesPerKilogramKelvin(655),
                  "mean of 25 to 900 °C, from 560 at 25 °C and 750 at 900 °C",
                  Source.fromMemory("ASM Handbook, alloy Ti-6Al-4V")))
          .powderHardness(
              Sourced.of(Spans.vickers(300, 400), "oxygen hardens it", References.ALLOY_HARDNESS))
          .carbonProtection(CARBON_IS_WRONG)
          .mixtureTolerance(
              Sourced.of(
                  percent(1.5),
                  "aluminium's table value is its own face-centred crystal, and vanadium is"
                      + " compressed into titanium's",
                  Source.commonPractice("chosen for this library")))
          .addCautions(Caution.METAL_POWDER)
          .build();

  private StandardTitaniumAlloys() {}
}
