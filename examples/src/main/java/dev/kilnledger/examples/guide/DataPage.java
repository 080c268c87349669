package dev.kilnledger.examples.guide;

import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.KILOJOULE_PER_MOLE;
import static dev.kilnledger.units.TradeUnits.PARTS_PER_MILLION;

import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.material.Binder;
import dev.kilnledger.core.material.Element;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.core.source.Standing;
import dev.kilnledger.examples.sheet.Facts;
import dev.kilnledger.examples.sheet.Facts.Fact;
import dev.kilnledger.thermal.atmosphere.ExposureLimit;
import dev.kilnledger.thermal.atmosphere.Oxide;
import dev.kilnledger.thermal.atmosphere.Substance;
import dev.kilnledger.thermal.burnout.PublishedKinetics;
import dev.kilnledger.thermal.densification.SinteringEnergies;
import dev.kilnledger.units.quantity.MolarEnergy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/**
 * The page of the built-in data: every value with its condition, its source and the source's
 * standing, written from the values themselves so that it cannot say something else.
 */
public final class DataPage {
  private final Map<Standing, Integer> counts = new EnumMap<>(Standing.class);
  private final StringBuilder body = new StringBuilder();

  private DataPage() {}

  /**
   * Writes the page.
   *
   * @param arguments where to write it
   * @throws IOException if it cannot be written
   */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length != 1) {
      throw new IllegalArgumentException(
          arguments.length + " arguments; accepted is one: where to write the page");
    }
    Files.writeString(Path.of(arguments[0]), text());
  }

  /** {@return the page} */
  static String text() {
    DataPage page = new DataPage();
    page.materials(MaterialLibrary.standard());
    page.chemistry();
    return page.head() + page.body;
  }

  private String head() {
    StringBuilder head =
        new StringBuilder(
            """
            # The built-in data

            Every value of the standard library, as `MaterialLibrary.standard()` has it, and the
            tables that the firing stands on. The page is written from the values by
            `dev.kilnledger.examples.guide.DataPage`, and a test holds it.

            The last column is the standing of the source: *published* was read in the source
            itself, *quoted in a public data sheet* in someone's account of it, *recomputed* follows
            from others, *common practice, no source* and *from memory* were looked up nowhere.
            **Look up what decides something for you**, and take the data sheet of the feedstock in
            use: the feedstocks here are generic.

            | standing | entries |
            |---|---|
            """);
    for (Standing standing : counts.keySet()) {
      head.append("| ").append(standing.words()).append(" | ");
      head.append(counts.get(standing)).append(" |\n");
    }
    return head.toString();
  }

  private void materials(MaterialLibrary library) {
    heading("Alloys");
    for (Alloy alloy : library.alloys()) {
      facts(alloy.name(), Facts.of(alloy));
      paragraph(alloy.carbonProtection().remark());
      paragraph("Other limits of the composition: " + alloy.composition().otherLimits());
      paragraph("Cautions: " + named(alloy.cautions()));
    }
    heading("Binders");
    for (Binder binder : library.binders()) {
      facts(binder.name(), Facts.of(binder));
      paragraph("Gives off: " + String.join(", ", binder.hazardousProducts()));
    }
    section("Feedstocks", library.feedstocks(), f -> f.name(), Facts::of);
    heading("Packing powders");
    library
        .packingPowders()
        .forEach(
            powder -> {
              facts(powder.name(), Facts.of(powder));
              paragraph("Used for: " + named(powder.uses()));
              paragraph("Cautions: " + named(powder.cautions()));
            });
    section("Getters", library.getters(), g -> g.name(), Facts::of);
    heading("Crucible materials");
    library
        .crucibleMaterials()
        .forEach(
            material -> {
              facts(material.name(), Facts.of(material));
              paragraph(material.remark());
            });
    section("Nozzle materials", library.nozzleMaterials(), n -> n.name(), Facts::of);
    section("Elements", List.of(Element.values()), Element::symbol, Facts::of);
  }

  /** What the firing stands on, beside the materials. */
  private void chemistry() {
    MaterialLibrary library = MaterialLibrary.standard();
    heading("Activation energies of densification");
    List<Fact> sintering = new ArrayList<>();
    for (Alloy alloy : library.alloys()) {
      SinteringEnergies.of(alloy).forEach(fact -> sintering.add(energy(alloy.name(), fact)));
    }
    table(sintering);
    heading("Activation energies of burn-out");
    List<Fact> burnOut = new ArrayList<>();
    for (Binder binder : library.binders()) {
      PublishedKinetics.activationEnergies(binder)
          .forEach(fact -> burnOut.add(energy(binder.name(), fact)));
    }
    table(burnOut);
    heading("Oxides");
    List<Fact> oxides = new ArrayList<>();
    for (Oxide oxide : Oxide.values()) {
      String range = "Gibbs energy, " + oxide.range().format(CELSIUS, 0);
      oxide.sources().forEach(source -> oxides.add(new Fact(oxide.formula(), range, "", source)));
    }
    table(oxides);
    heading("Limits of exposure");
    List<Fact> limits = new ArrayList<>();
    for (Substance gas : List.of(Substance.carbonMonoxide(), Substance.formaldehyde())) {
      gas.limits().forEach(limit -> limits.add(limit(gas, limit)));
    }
    table(limits);
    heading("Cautions");
    List<Fact> cautions = new ArrayList<>();
    for (Caution caution : Caution.values()) {
      cautions.add(new Fact(words(caution), caution.text(), "", caution.source()));
    }
    table(cautions);
  }

  private static Fact energy(String name, Sourced<Span<MolarEnergy>> fact) {
    return new Fact(
        name, fact.value().format(KILOJOULE_PER_MOLE, 0), fact.condition(), fact.source());
  }

  private static Fact limit(Substance gas, ExposureLimit limit) {
    String over =
        limit.averagedOver().si() > 0 ? Facts.shown(limit.averagedOver(), HOUR) : "at once";
    return new Fact(
        gas.name() + ", " + limit.name(),
        Facts.shown(limit.concentration().value(), PARTS_PER_MILLION),
        over,
        limit.concentration().source());
  }

  private <T> void section(
      String title, List<T> things, Function<T, String> name, Function<T, List<Fact>> facts) {
    heading(title);
    things.forEach(thing -> facts(name.apply(thing), facts.apply(thing)));
  }

  private void heading(String title) {
    body.append("\n## ").append(title).append('\n');
  }

  private void facts(String name, List<Fact> facts) {
    body.append("\n### ").append(name).append('\n');
    table(facts);
  }

  private void table(List<Fact> facts) {
    body.append("\n| | value | condition | source | standing |\n|---|---|---|---|---|\n");
    for (Fact fact : facts) {
      Source source = fact.source();
      counts.merge(source.standing(), 1, Integer::sum);
      body.append("| ")
          .append(
              String.join(
                  " | ",
                  cell(fact.what()),
                  cell(fact.value()),
                  cell(fact.condition()),
                  cell(source.text()),
                  source.standing().words()))
          .append(" |\n");
    }
  }

  /** A line of text; nothing where there is nothing behind the colon. */
  private void paragraph(String text) {
    if (!text.isBlank() && !text.endsWith(": ")) {
      body.append('\n').append(text).append('\n');
    }
  }

  private static String named(Iterable<? extends Enum<?>> constants) {
    List<String> words = new ArrayList<>();
    constants.forEach(constant -> words.add(words(constant)));
    return String.join(", ", words);
  }

  private static String words(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static String cell(String text) {
    return text.replace("|", "\\|");
  }
}
