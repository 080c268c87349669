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

/** Silver in the standard library. */
final class StandardSilver {
  static final Alloy SILVER =
      Alloy.builder()
          .name("silver")
          .composition(
              Composition.builder()
                  .designation("UNS P07010, fine silver")
                  .balance(Element.SILVER)
                  .putNominal(Element.SILVER, massPercent(100))
                  .otherLimits("silver 99.9 % or more")
                  .source(Source.fromMemory("ASTM B413"))
                  .build())
          .fullDensity(
              Sourced.of(kilogramsPerCubicMetre(10500), "about 20 to 25 °C", References.HANDBOOK))
          .solidus(Sourced.of(celsius(961.78), References.HANDBOOK))
          .liquidus(Sourced.of(celsius(961.78), References.HANDBOOK))
          .sinteringWindow(
              Sourced.of(
                  Spans.celsius(800, 930),
                  "700, 800 and 900 °C were studied in J. Met. Mater. Miner. 20 no. 1 (2010)",
                  Source.commonPractice("silver powder and clay firing")))
          .usualPeak(
              Sourced.of(celsius(900), Source.commonPractice("silver powder and clay firing")))
          .sinteringHold(Sourced.of(Spans.hours(1, 3), References.PRINTED_HOLD))
          .expectedRelativeDensity(
              Sourced.of(
                  Spans.volumeFraction(0.85, 0.92, 0.97),
                  "10.22 g/cm³ pressed and sintered at 900 °C in argon is published (J. Met. Mater."
                      + " Miner. 20 no. 1 (2010), abstract), 0.973 of full density",
                  Source.commonPractice("range expected of printed parts")))
          .linearExpansion(
              Sourced.of(
                  micrometresPerMetreKelvin(18.9),
                  "25 °C",
                  Source.published("thermal expansivities of the elements, CRC and Lange agree")))
          .heatCapacity(
              Sourced.of(
                  joulesPerKilogramKelvin(235),
                  "room temperature",
                  Source.fromMemory("Callister, Materials Science and Engineering, table 19.1")))
          .hotHeatCapacity(
              Sourced.of(
                  joulesPerKilogramKelvin(260),
                  "mean of 25 to 900 °C, from 277 at 1000 K and 292 at 1200 K",
                  Source.fromMemory(
                      "Incropera et al., Fundamentals of Heat and Mass Transfer, table A.1")))
          .powderHardness(Sourced.of(Spans.vickers(25, 60), References.ALLOY_HARDNESS))
          .carbonProtection(
              CarbonProtection.builder()
                  .suitability(CarbonProtection.Suitability.NOT_NEEDED)
                  .decidingElement(Element.SILVER)
                  .remark(
                      "Silver oxide comes apart in air above about 190 to 200 °C, so silver can be"
                          + " fired in air and needs no getter.")
                  .source(Source.fromMemory("decomposition of silver oxide"))
                  .build())
          .mixtureTolerance(
              Sourced.of(
                  percent(0.6),
                  "pure metal: the spread between handbook tables",
                  Source.commonPractice("chosen for this library")))
          .addCautions(Caution.METAL_POWDER)
          .build();

  private StandardSilver() {}
}
