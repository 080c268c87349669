package dev.kilnledger.core.material;

import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import java.util.List;
import javax.measure.quantity.Temperature;

/** The getters of the standard library. */
final class StandardGetters {
  private static final Sourced<Span<Temperature>> CHARCOAL_BURNS_FROM =
      Sourced.of(
          Spans.celsius(350, 500),
          "slowly below 500 °C",
          Source.fromMemory("ignition of activated carbon and charcoal in air"));

  static final Getter GRANULAR_ACTIVATED_CARBON =
      Getter.builder()
          .name("granular activated carbon")
          .grain(Getter.Grain.GRANULAR)
          .bulkDensity(
              Sourced.of(
                  Spans.kilogramsPerCubicMetre(320, 550),
                  "poured to tapped; 320 was read (PNNL-15870 Rev. 1), 400 to 550 is from memory",
                  References.CARBON_GRADES))
          .ash(Sourced.of(Spans.massFraction(0.03, 0.15), "usually 0.08", References.CARBON_GRADES))
          .oxidationOnset(CHARCOAL_BURNS_FROM)
          .build();

  static final Getter COCONUT_SHELL_GRANULES =
      Getter.builder()
          .name("coconut-shell granules")
          .grain(Getter.Grain.GRANULAR)
          .bulkDensity(
              Sourced.of(
                  Spans.kilogramsPerCubicMetre(450, 550),
                  "poured to tapped",
                  References.CARBON_GRADES))
          .ash(
              Sourced.of(
                  Spans.massFraction(0.01, 0.05),
                  "usually 0.03; standards of coconut-shell charcoal allow up to 0.02",
                  References.CARBON_GRADES))
          .oxidationOnset(CHARCOAL_BURNS_FROM)
          .build();

  static final Getter POWDERED_CARBON =
      Getter.builder()
          .name("powdered carbon")
          .grain(Getter.Grain.POWDERED)
          .bulkDensity(
              Sourced.of(
                  Spans.kilogramsPerCubicMetre(250, 610),
                  "activated powder usually 350; ground charcoal 609 (public bulk density table)",
                  References.CARBON_GRADES))
          .ash(Sourced.of(Spans.massFraction(0.02, 0.15), "usually 0.08", References.CARBON_GRADES))
          .oxidationOnset(CHARCOAL_BURNS_FROM)
          .build();

  static final Getter GRAPHITE_POWDER =
      Getter.builder()
          .name("graphite powder")
          .grain(Getter.Grain.POWDERED)
          .bulkDensity(Sourced.of(Spans.kilogramsPerCubicMetre(400, 600), References.CARBON_GRADES))
          .ash(
              Sourced.of(Spans.massFraction(0.001, 0.05), "usually 0.01", References.CARBON_GRADES))
          .oxidationOnset(
              Sourced.of(
                  Spans.celsius(450, 500), Source.fromMemory("oxidation of graphite in air")))
          .build();

  static final List<Getter> ALL =
      List.of(GRANULAR_ACTIVATED_CARBON, COCONUT_SHELL_GRANULES, POWDERED_CARBON, GRAPHITE_POWDER);

  private StandardGetters() {}
}
