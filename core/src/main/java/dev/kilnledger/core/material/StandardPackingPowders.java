package dev.kilnledger.core.material;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.joulesPerKilogramKelvin;
import static dev.kilnledger.units.Amounts.kilogramsPerCubicMetre;

import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import java.util.List;

/** The packing powders of the standard library. */
final class StandardPackingPowders {
  private static final Source GRADES = Source.fromMemory("bulk solids handbooks, powder grades");

  static final PackingPowder ALUMINA =
      PackingPowder.builder()
          .name("alumina")
          .skeletalDensity(
              Sourced.of(kilogramsPerCubicMetre(3990), "corundum, 25 °C", References.HANDBOOK))
          .apparentDensity(
              Sourced.of(
                  Spans.kilogramsPerCubicMetre(560, 960),
                  "fine calcined powder, usually 640; coarse calcined powder 800 to 1200 (from"
                      + " memory)",
                  References.BULK_TABLES))
          .tapDensity(
              Sourced.of(
                  Spans.kilogramsPerCubicMetre(1000, 1500),
                  "calcined powder; fused grit 1500 to 2000",
                  GRADES))
          .temperatureLimit(
              Sourced.of(
                  celsius(1700),
                  "melts at 2054 °C; grains sinter together before that",
                  References.CERAMIC_SERVICE))
          .heatCapacity(
              Sourced.of(
                  joulesPerKilogramKelvin(1133),
                  "mean of 25 to 1000 °C",
                  Source.recomputed("McBride, Zehe and Gordon, NASA/TP-2002-211556, corundum")))
          .addUses(PackingPowder.Use.DEBINDING, PackingPowder.Use.SINTERING)
          .addCautions(Caution.MINERAL_DUST)
          .build();

  static final PackingPowder TALC =
      PackingPowder.builder()
          .name("talc")
          .skeletalDensity(
              Sourced.of(
                  kilogramsPerCubicMetre(2800),
                  "2700 to 2800 over the grades",
                  Source.quoted("ground talc, several grades, publisher not named")))
          .apparentDensity(
              Sourced.of(
                  Spans.kilogramsPerCubicMetre(430, 550),
                  "ground, usually 480",
                  Source.quoted("ground talc, several grades, publisher not named")))
          .tapDensity(
              Sourced.of(
                  Spans.kilogramsPerCubicMetre(780, 1220),
                  "ground, usually 850",
                  Source.quoted("ground talc, several grades, publisher not named")))
          .temperatureLimit(
              Sourced.of(
                  celsius(800),
                  "gives off its water from about 800 °C, fastest near 895 °C, until about 1000 °C:"
                      + " the vapour oxidises iron and titanium, and what is left holds reactive"
                      + " silica",
                  Source.published("Clays and Clay Minerals 62 (2014) 137, abstract")))
          .heatCapacity(
              Sourced.of(
                  joulesPerKilogramKelvin(1162),
                  "mean of 25 to 727 °C",
                  Source.recomputed(
                      "Holland and Powell, J. Metamorphic Geol. 29 (2011) 333, data set 6.2, talc")))
          .addUses(PackingPowder.Use.DEBINDING)
          .addCautions(Caution.MINERAL_DUST)
          .build();

  static final PackingPowder MAGNESIA =
      PackingPowder.builder()
          .name("magnesia")
          .skeletalDensity(Sourced.of(kilogramsPerCubicMetre(3600), "25 °C", References.HANDBOOK))
          .apparentDensity(
              Sourced.of(
                  Spans.kilogramsPerCubicMetre(350, 1000), "free of silica, by grade", GRADES))
          .tapDensity(
              Sourced.of(
                  Spans.kilogramsPerCubicMetre(700, 1500), "free of silica, by grade", GRADES))
          .temperatureLimit(
              Sourced.of(
                  celsius(1500),
                  "beside carbon, where it begins to evaporate; 2000 °C and more in air; takes up"
                      + " moisture and is dried before use",
                  References.CERAMIC_SERVICE))
          .heatCapacity(
              Sourced.of(
                  joulesPerKilogramKelvin(1197),
                  "mean of 25 to 1000 °C",
                  Source.recomputed("McBride, Zehe and Gordon, NASA/TP-2002-211556, magnesia")))
          .addUses(PackingPowder.Use.DEBINDING, PackingPowder.Use.SINTERING)
          .addCautions(Caution.MINERAL_DUST)
          .build();

  static final PackingPowder ZIRCONIA =
      PackingPowder.builder()
          .name("zirconia")
          .skeletalDensity(
              Sourced.of(
                  kilogramsPerCubicMetre(5680),
                  "monoclinic; with 3 mol% yttria about 6050",
                  Source.fromMemory("ceramics handbooks")))
          .apparentDensity(Sourced.of(Spans.kilogramsPerCubicMetre(900, 2000), "by grade", GRADES))
          .tapDensity(Sourced.of(Spans.kilogramsPerCubicMetre(1500, 3000), "by grade", GRADES))
          .temperatureLimit(
              Sourced.of(
                  celsius(2000),
                  "unstabilised grades change volume between about 1000 and 1170 °C",
                  References.CERAMIC_SERVICE))
          .heatCapacity(
              Sourced.of(
                  joulesPerKilogramKelvin(590),
                  "mean of 25 to 1000 °C",
                  Source.fromMemory("ceramics handbooks: 450 at 25 °C, 640 at 1000 °C")))
          .addUses(PackingPowder.Use.SINTERING)
          .addCautions(Caution.MINERAL_DUST)
          .build();

  static final List<PackingPowder> ALL = List.of(ALUMINA, TALC, MAGNESIA, ZIRCONIA);

  private StandardPackingPowders() {}
}
