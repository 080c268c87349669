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

/** Iron and low-alloy steel in the standard library. */
final class StandardIronAlloys {
  private static final Sourced<Amount<Temperature>> IRON_REDUCES_ABOVE =
      Sourced.of(
          celsius(719),
          "wuestite, 1 bar of carbon monoxide; about 54 K lower at 0.35 bar; energies of"
              + " stoichiometric iron oxide give 771 °C",
          Source.recomputed(
              "O'Neill and Pownceby, Contrib. Mineral. Petrol. 114 (1993) 296, with carbon monoxide"
                  + " after NASA/TP-2002-211556"));

  static final Alloy IRON =
      Alloy.builder()
          .name("iron")
          .composition(
              Composition.builder()
                  .designation("unalloyed iron powder")
                  .balance(Element.IRON)
                  .putRanges(Element.CARBON, Spans.massPercent(0, 0.05))
                  .putNominal(Element.IRON, massPercent(100))
                  .otherLimits("iron 99.5 % or more, oxygen up to 0.3 %")
                  .source(Source.commonPractice("usual powder grades; no standard's limits read"))
                  .build())
          .fullDensity(
              Sourced.of(kilogramsPerCubicMetre(7870), "about 20 to 25 °C", References.HANDBOOK))
          .solidus(Sourced.of(celsius(1538), References.HANDBOOK))
          .liquidus(Sourced.of(celsius(1538), References.HANDBOOK))
          .sinteringWindow(
              Sourced.of(
                  Spans.celsius(1120, 1320),
                  "pressed parts 1110 to 1150 °C; the upper end is common practice",
                  References.PRESSING_BOOK))
          .usualPeak(
              Sourced.of(
                  celsius(1200),
                  Source.commonPractice(
                      "hotter than pressed parts, which are denser before, and where moulded steel"
                          + " begins")))
          .sinteringHold(
              Sourced.of(
                  Spans.hours(1, 3), "pressed parts take 20 to 40 min", References.PRINTED_HOLD))
          .expectedRelativeDensity(
              Sourced.of(
                  Spans.volumeFraction(0.85, 0.92, 0.96),
                  "0.85 to 0.92 pressed; the upper end is common practice",
                  References.PRESSING_BOOK))
          .linearExpansion(
              Sourced.of(
                  micrometresPerMetreKelvin(11.8),
                  "20 to 100 °C; contracts at the step to the denser crystal at 912 °C",
                  References.CALLISTER_EXPANSION))
          .heatCapacity(Sourced.of(joulesPerKilogramKelvin(449.4), "25 °C", References.NASA_HEAT))
          .hotHeatCapacity(
              Sourced.of(
                  joulesPerKilogramKelvin(685),
                  "mean of 25 to 1200 °C, the change of crystal included",
                  References.NASA_HEAT))
          .powderHardness(Sourced.of(Spans.vickers(60, 120), References.ALLOY_HARDNESS))
          .carbonProtection(
              CarbonProtection.builder()
                  .suitability(CarbonProtection.Suitability.PROTECTS)
                  .decidingElement(Element.IRON)
                  .reducesAbove(IRON_REDUCES_ABOVE)
                  .remark(
                      "Carbon keeps iron bright above about 720 °C and oxide formed before is taken"
                          + " back; iron takes up carbon at the same time and hardens.")
                  .source(
                      Source.recomputed(
                          "O'Neill and Pownceby 1993; NASA/TP-2002-211556; carbon pick-up follows"
                              + " from a gas saturated with carbon"))
                  .build())
          .mixtureTolerance(
              Sourced.of(
                  percent(0.6),
                  "pure metal: the spread between handbook tables",
                  Source.commonPractice("chosen for this library")))
          .addCautions(Caution.METAL_POWDER)
          .build();

  static final Alloy STEEL_4605 =
      Alloy.builder()
          .name("low-alloy steel 4605")
          .composition(
              Composition.builder()
                  .designation("MIM-4605")
                  .balance(Element.IRON)
                  .putRanges(Element.NICKEL, Spans.massPercent(1.5, 2.5))
                  .putRanges(Element.MOLYBDENUM, Spans.massPercent(0.2, 0.5))
                  .putRanges(Element.CARBON, Spans.massPercent(0.4, 0.6))
                  .putRanges(Element.SILICON, Spans.massPercent(0, 1.0))
                  .putNominal(Element.IRON, massPercent(97.15))
                  .putNominal(Element.NICKEL, massPercent(2.0))
                  .putNominal(Element.MOLYBDENUM, massPercent(0.35))
                  .putNominal(Element.CARBON, massPercent(0.50))
                  .otherLimits("other elements 1.0 % in total")
                  .source(References.MOULDING_GRADES)
                  .build())
          .fullDensity(
              Sourced.of(
                  kilogramsPerCubicMetre(7850),
                  "room temperature; wrought 4140 and 4340, the nearest alloys listed",
                  References.CALLISTER_DENSITY))
          .solidus(
              Sourced.of(
                  celsius(1415),
                  "wrought 4140, the nearest alloy listed",
                  Source.fromMemory("ASM Handbook, alloy 4140")))
          .liquidus(
              Sourced.of(
                  celsius(1460),
                  "wrought 4140, the nearest alloy listed",
                  Source.fromMemory("ASM Handbook, alloy 4140")))
          .sinteringWindow(Sourced.of(Spans.celsius(1200, 1320), References.MOULDING_BOOK))
          .usualPeak(Sourced.of(celsius(1260), References.MOULDING_BOOK))
          .sinteringHold(Sourced.of(Spans.hours(1, 3), References.PRINTED_HOLD))
          .expectedRelativeDensity(
              Sourced.of(
                  Spans.volumeFraction(0.94, 0.955, 0.97),
                  "hydrogen-bearing gas",
                  References.MOULDING_BOOK))
          .linearExpansion(
              Sourced.of(
                  micrometresPerMetreKelvin(11.5),
                  "at 21 °C; 14.6 in the mean of 21 to 538 °C",
                  Source.recomputed(
                      "ASME Boiler and Pressure Vessel Code, sec. II part D (2001), table TE-1,"
                          + " carbon and low-alloy steels group 1, from 6.4e-6/°F")))
          .heatCapacity(
              Sourced.of(
                  joulesPerKilogramKelvin(475),
                  "25 °C, steel with 0.4 to 0.5 % carbon",
                  Source.fromMemory("handbook values of carbon steel")))
          .hotHeatCapacity(
              Sourced.of(
                  joulesPerKilogramKelvin(680),
                  "mean of 25 to 1260 °C",
                  References.NASA_ALLOY_HEAT))
          .powderHardness(Sourced.of(Spans.vickers(120, 250), References.ALLOY_HARDNESS))
          .carbonProtection(
              CarbonProtection.builder()
                  .suitability(CarbonProtection.Suitability.PROTECTS)
                  .decidingElement(Element.IRON)
                  .reducesAbove(IRON_REDUCES_ABOVE)
                  .remark(
                      "Iron is protected from about 720 °C and molybdenum from about 750 °C, while"
                          + " silicon and manganese stay oxidised; the steel takes up carbon, so its"
                          + " carbon content is no longer under control.")
                  .source(References.NASA_OXIDE)
                  .build())
          .mixtureTolerance(
              Sourced.of(
                  percent(1.5),
                  "iron keeps its own crystal; carbon sits between the atoms and is counted as"
                      + " graphite",
                  Source.commonPractice("chosen for this library")))
          .addCautions(Caution.METAL_POWDER, Caution.NICKEL_CHROMIUM)
          .build();

  private StandardIronAlloys() {}
}
