package dev.kilnledger.core.material;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import java.util.List;

/** The nozzle materials of the standard library. */
final class StandardNozzleMaterials {
  static final List<NozzleMaterial> ALL =
      List.of(
          material(
              "brass",
              140,
              140,
              "free-cutting brass C36000, half hard: about 78 HRB",
              Source.fromMemory("Copper Development Association")),
          material(
              "hardened tool steel",
              650,
              800,
              "58 to 64 HRC",
              Source.fromMemory("ASM Handbook, tool steels")),
          material(
              "tungsten carbide",
              1300,
              1650,
              "with 10 to 6 % cobalt; 1660 HV is published for 6 % (Materials 15 (2022) 906)",
              Source.fromMemory("hardmetal data after ISO 3878")),
          material(
              "corundum (ruby)",
              2000,
              2200,
              "9 on the scale of Mohs",
              Source.fromMemory("mineral handbooks")));

  private StandardNozzleMaterials() {}

  private static NozzleMaterial material(
      String name, double low, double high, String condition, Source source) {
    return NozzleMaterial.builder()
        .name(name)
        .hardness(Sourced.of(Spans.vickers(low, high), condition, source))
        .build();
  }
}
