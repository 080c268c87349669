package dev.kilnledger.core.material;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import java.util.List;

/** The binders of the standard library. */
final class StandardBinders {
  private static final Source POLYMERS = Source.fromMemory("polymer handbooks");
  private static final String DESIGN_VALUE = "EN 12524:2000 design values, VDI Heat Atlas";

  static final Binder POLYLACTIDE =
      Binder.builder()
          .name("polylactide")
          .density(Sourced.of(Spans.density(1240, 1240, 1250), "room temperature", POLYMERS))
          .decomposition(
              Sourced.of(
                  Spans.celsius(280, 400),
                  "fastest at 360 °C when pure and at 300 °C with residues of tin catalyst (Kopinke"
                      + " et al., Polym. Degrad. Stab. 53 (1996) 329, abstract)",
                  POLYMERS))
          .residue(Sourced.of(Spans.massFraction(0, 0.005, 0.02), "inert gas", POLYMERS))
          .addHazardousProducts("lactide and cyclic oligomers", "acetaldehyde")
          .addHazardousProducts("carbon monoxide", "acrylic acid")
          .build();

  static final Binder POLYOXYMETHYLENE =
      Binder.builder()
          .name("polyoxymethylene")
          .density(
              Sourced.of(
                  Spans.density(1410, 1410, 1410),
                  "room temperature",
                  Source.published(DESIGN_VALUE)))
          .decomposition(
              Sourced.of(
                  Spans.celsius(250, 420),
                  "by heat alone; with acid vapour at 110 to 140 °C",
                  POLYMERS))
          .residue(Sourced.of(Spans.massFraction(0, 0, 0.01), "inert gas", POLYMERS))
          .addHazardousProducts("formaldehyde, the main product", "carbon monoxide")
          .build();

  static final Binder POLYPROPYLENE =
      Binder.builder()
          .name("polypropylene")
          .density(
              Sourced.of(
                  Spans.density(900, 905, 910),
                  "room temperature",
                  Source.published(DESIGN_VALUE + ": 910; PNNL-15870 Rev. 1 (2011): 900")))
          .decomposition(Sourced.of(Spans.celsius(330, 480), POLYMERS))
          .residue(Sourced.of(Spans.massFraction(0, 0, 0.01), "inert gas", POLYMERS))
          .addHazardousProducts("flammable hydrocarbon vapour")
          .addHazardousProducts("formaldehyde, acrolein and carbon monoxide where air gets in")
          .build();

  static final Binder LOW_DENSITY_POLYETHYLENE =
      Binder.builder()
          .name("low-density polyethylene")
          .density(
              Sourced.of(
                  Spans.density(915, 920, 930),
                  "room temperature; the lower end is from memory",
                  Source.fromMemory(
                      "polymer handbooks: 915; read were "
                          + DESIGN_VALUE
                          + ": 920, and PNNL-15870 Rev. 1 (2011): 930")))
          .decomposition(Sourced.of(Spans.celsius(360, 500), POLYMERS))
          .residue(Sourced.of(Spans.massFraction(0, 0, 0.01), "inert gas", POLYMERS))
          .addHazardousProducts("flammable hydrocarbon vapour")
          .addHazardousProducts("formaldehyde, acrolein and carbon monoxide where air gets in")
          .build();

  static final Binder PARAFFIN_WAX =
      Binder.builder()
          .name("paraffin wax")
          .density(
              Sourced.of(
                  Spans.density(900, 910, 930),
                  "room temperature; PNNL-15870 lists 930 in Rev. 1 and 812 in Rev. 2",
                  POLYMERS))
          .decomposition(
              Sourced.of(Spans.celsius(180, 380), "mostly evaporates below about 350 °C", POLYMERS))
          .residue(Sourced.of(Spans.massFraction(0, 0, 0.005), "inert gas", POLYMERS))
          .addHazardousProducts("flammable vapour", "acrolein where air gets in")
          .build();

  static final Binder STEARIC_ACID =
      Binder.builder()
          .name("stearic acid")
          .density(
              Sourced.of(
                  Spans.density(940.8, 940.8, 940.8),
                  "20 °C, solid; melts at 69.3 °C",
                  Source.published(
                      "CRC Handbook of Chemistry and Physics, Physical Constants of Organic"
                          + " Compounds")))
          .decomposition(Sourced.of(Spans.celsius(180, 350), "mostly evaporates", POLYMERS))
          .residue(Sourced.of(Spans.massFraction(0, 0, 0.005), "inert gas", POLYMERS))
          .addHazardousProducts("irritant and flammable vapour")
          .build();

  static final Binder WAX_AND_POLYOLEFIN =
      Binder.builder()
          .name("wax and polyolefin, generic")
          .density(
              Sourced.of(
                  Spans.density(895, 904, 930),
                  "70 % paraffin wax, 25 % polypropylene, 5 % stearic acid by mass; the range is"
                      + " common practice",
                  Source.commonPractice(
                      "mixture of its parts by the inverse rule; wax 65 to 75 %, polyolefin 15 to"
                          + " 25 %, stearic acid 5 % after German, Materials 6 (2013) 3641")))
          .decomposition(
              Sourced.of(
                  Spans.celsius(180, 480),
                  "wax and acid first, the polyolefin last",
                  Source.fromMemory("polymer handbooks, from its parts")))
          .residue(Sourced.of(Spans.massFraction(0, 0.002, 0.01), "inert gas", POLYMERS))
          .addHazardousProducts("flammable wax and hydrocarbon vapour")
          .addHazardousProducts("formaldehyde, acrolein and carbon monoxide where air gets in")
          .build();

  static final List<Binder> ALL =
      List.of(
          POLYLACTIDE,
          POLYOXYMETHYLENE,
          POLYPROPYLENE,
          LOW_DENSITY_POLYETHYLENE,
          PARAFFIN_WAX,
          STEARIC_ACID,
          WAX_AND_POLYOLEFIN);

  private StandardBinders() {}
}
