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

/** Tungsten in the standard library. */
final class StandardTungsten {
  private static final Source MOULDED =
      Source.published(
          "Int. J. Refract. Met. Hard Mater. (2009), pure tungsten by injection moulding, abstract");

  static final Alloy TUNGSTEN =
      Alloy.builder()
          .name("tungsten")
          .composition(
              Composition.builder()
                  .designation("UNS R07004")
                  .balance(Element.TUNGSTEN)
                  .putNominal(Element.TUNGSTEN, massPercent(100))
                  .otherLimits("tungsten 99.95 % or more")
                  .source(Source.fromMemory("ASTM B760"))
                  .build())
          .fullDensity(
              Sourced.of(kilogramsPerCubicMetre(19300), "about 20 to 25 °C", References.HANDBOOK))
          .solidus(Sourced.of(celsius(3414), References.HANDBOOK))
          .liquidus(Sourced.of(celsius(3414), References.HANDBOOK))
          .sinteringWindow(
              Sourced.of(
                  Spans.celsius(2000, 2500),
                  "hydrogen; far beyond ordinary kilns, which end near 1300 °C; powder of some 60 nm"
                      + " sinters lower and is not meant here",
                  Source.fromMemory("range of practice around the published 2300 °C")))
          .usualPeak(Sourced.of(celsius(2300), "hydrogen", MOULDED))
          .sinteringHold(Sourced.of(Spans.hours(3, 3), "at 2300 °C, hydrogen", MOULDED))
          .expectedRelativeDensity(
              Sourced.of(
                  Spans.volumeFraction(0.88, 0.93, 0.95),
                  "2300 °C, hydrogen; 0.9286 is published",
                  Source.fromMemory("range of practice around the published 0.9286")))
          .linearExpansion(
              Sourced.of(
                  micrometresPerMetreKelvin(4.5), "20 to 100 °C", References.CALLISTER_EXPANSION))
          .heatCapacity(Sourced.of(joulesPerKilogramKelvin(132.2), "25 °C", References.NASA_HEAT))
          .hotHeatCapacity(
              Sourced.of(
                  joulesPerKilogramKelvin(161), "mean of 25 to 2300 °C", References.NASA_HEAT))
          .powderHardness(Sourced.of(Spans.vickers(350, 500), References.ALLOY_HARDNESS))
          .carbonProtection(
              CarbonProtection.builder()
                  .suitability(CarbonProtection.Suitability.WRONG)
                  .decidingElement(Element.TUNGSTEN)
                  .reducesAbove(
                      Sourced.of(
                          celsius(742),
                          "1 bar of carbon monoxide; 694 °C at 0.35 bar",
                          References.NASA_OXIDE))
                  .remark(
                      "Carbon would reduce the oxide, but turns tungsten into carbide from about"
                          + " 1000 °C, far below its sintering window; hydrogen is needed.")
                  .source(
                      Source.fromMemory(
                          "formation of tungsten carbides; the reduction is recomputed from"
                              + " NASA/TP-2002-211556"))
                  .build())
          .mixtureTolerance(
              Sourced.of(
                  percent(0.6),
                  "pure metal: the spread between handbook tables",
                  Source.commonPractice("chosen for this library")))
          .addCautions(Caution.METAL_POWDER)
          .build();

  private StandardTungsten() {}
}
