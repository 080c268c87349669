package dev.kilnledger.core.material;

import static dev.kilnledger.units.Amounts.celsius;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import java.util.List;

/** The crucible materials of the standard library. */
final class StandardCrucibleMaterials {
  private static final String CARBURISES =
      "gas rich in carbon carburises it and makes it brittle (from memory)";

  static final List<CrucibleMaterial> ALL =
      List.of(
          stainless(
              "stainless steel 304",
              927,
              870,
              "scales above about 900 °C: 3400 g/m2 gained in 100 h at 980 °C; " + CARBURISES),
          material(
              "stainless steel 309S",
              1093,
              "in air, steady",
              References.STAINLESS_SERVICE,
              CARBURISES),
          stainless("stainless steel 310S", 1149, 1035, CARBURISES),
          material(
              "alumina",
              1700,
              "99 % alumina, up to 1750 °C by grade",
              References.CERAMIC_SERVICE,
              "cracks under thermal shock"),
          material("mullite", 1650, "up to 1700 °C by grade", References.CERAMIC_SERVICE, ""),
          material(
              "fireclay",
              1400,
              "up to 1500 °C by grade; low-cost clay bodies 1200 °C",
              References.CERAMIC_SERVICE,
              ""),
          material(
              "silicon carbide",
              1380,
              "reaction bonded, in air; recrystallised 1600 °C",
              References.CERAMIC_SERVICE,
              ""),
          material(
              "graphite",
              450,
              "in air, where it burns from about 450 to 500 °C",
              Source.fromMemory("oxidation of graphite in air"),
              "not usable in air; hotter only under a cover of carbon, inert gas or vacuum, where it"
                  + " stands any kiln"));

  private StandardCrucibleMaterials() {}

  private static CrucibleMaterial stainless(
      String name, double steady, double cyclic, String remark) {
    return CrucibleMaterial.builder()
        .name(name)
        .serviceLimit(Sourced.of(celsius(steady), "in air, steady", References.STAINLESS_SERVICE))
        .cyclicLimit(
            Sourced.of(
                celsius(cyclic),
                "in air, heated and cooled often",
                Source.fromMemory("ASM Specialty Handbook, Stainless Steels")))
        .remark(remark)
        .build();
  }

  private static CrucibleMaterial material(
      String name, double limit, String condition, Source source, String remark) {
    return CrucibleMaterial.builder()
        .name(name)
        .serviceLimit(Sourced.of(celsius(limit), condition, source))
        .remark(remark)
        .build();
  }
}
