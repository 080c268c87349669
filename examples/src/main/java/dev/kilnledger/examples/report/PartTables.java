package dev.kilnledger.examples.report;

import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.CUBIC_CENTIMETRE;
import static dev.kilnledger.units.TradeUnits.GRAM;
import static dev.kilnledger.units.TradeUnits.GRAM_PER_CUBIC_CENTIMETRE;
import static dev.kilnledger.units.TradeUnits.MASS_PERCENT;
import static dev.kilnledger.units.TradeUnits.MILLIMETRE;
import static dev.kilnledger.units.TradeUnits.ONE;
import static dev.kilnledger.units.TradeUnits.PERCENT;
import static dev.kilnledger.units.TradeUnits.VOLUME_PERCENT;

import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.part.Passage;
import dev.kilnledger.core.part.Stage;
import dev.kilnledger.costing.job.JobAnswer;
import java.util.function.Function;
import org.jsoup.nodes.Element;

/** The material, the part at each stage, and how much larger it is printed. */
final class PartTables {
  private PartTables() {}

  static void write(Element section, JobAnswer answer) {
    stages(section, answer.passage());
    axes(section, answer.passage());
    material(section, answer.job().feedstock());
  }

  private static void stages(Element section, Passage passage) {
    Table table = new Table(section, "one part at each stage", "", "#green", "#brown", "#sintered");
    row(table, passage, "mass", stage -> stage.mass().format(GRAM, 2));
    row(table, passage, "volume", stage -> stage.volume().format(CUBIC_CENTIMETRE, 2));
    row(table, passage, "density", stage -> stage.density().format(GRAM_PER_CUBIC_CENTIMETRE, 2));
    row(table, passage, "pores", stage -> Words.percent(stage.porosity().si(), 1));
    row(table, passage, "along x", stage -> stage.envelope().x().format(MILLIMETRE, 1));
    row(table, passage, "along y", stage -> stage.envelope().y().format(MILLIMETRE, 1));
    row(table, passage, "along z", stage -> stage.envelope().z().format(MILLIMETRE, 1));
  }

  private static void row(
      Table table, Passage passage, String name, Function<Stage, String> figure) {
    table.row(
        name,
        figure.apply(passage.green()),
        figure.apply(passage.brown()),
        figure.apply(passage.sintered()));
  }

  private static void axes(Element section, Passage passage) {
    Table table =
        new Table(
            section,
            "shrinkage and how much larger to print, with the span until coupons are measured",
            "axis",
            "shrinkage",
            "oversize factor",
            "size may be off by");
    table.row(
        "x",
        Words.band(passage.shrinkage().x(), PERCENT, 1),
        Words.band(passage.oversize().x(), ONE, 3),
        passage.deviation().x().format(MILLIMETRE, 1));
    table.row(
        "y",
        Words.band(passage.shrinkage().y(), PERCENT, 1),
        Words.band(passage.oversize().y(), ONE, 3),
        passage.deviation().y().format(MILLIMETRE, 1));
    table.row(
        "z",
        Words.band(passage.shrinkage().z(), PERCENT, 1),
        Words.band(passage.oversize().z(), ONE, 3),
        passage.deviation().z().format(MILLIMETRE, 1));
  }

  private static void material(Element section, Feedstock feedstock) {
    Alloy alloy = feedstock.alloy();
    Table table = new Table(section, feedstock.name(), "", "value", "source");
    table.row(
        "metal in it",
        feedstock.metalMassFraction().format(MASS_PERCENT, 1)
            + ", "
            + feedstock.solidsLoading().format(VOLUME_PERCENT, 1),
        feedstock.source().cite());
    table.row(
        "full density",
        alloy.fullDensity().value().format(GRAM_PER_CUBIC_CENTIMETRE, 2),
        alloy.fullDensity().source().cite());
    table.row(
        "solidus", alloy.solidus().value().format(CELSIUS, 0), alloy.solidus().source().cite());
    table.row(
        "sintering window",
        alloy.sinteringWindow().value().format(CELSIUS, 0),
        alloy.sinteringWindow().source().cite());
    table.row(
        "relative density",
        Words.band(alloy.expectedRelativeDensity().value(), VOLUME_PERCENT, 0),
        alloy.expectedRelativeDensity().source().cite());
  }
}
