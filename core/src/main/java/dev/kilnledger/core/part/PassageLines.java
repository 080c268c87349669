package dev.kilnledger.core.part;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/** The figures of a passage, each with its formula and its facts. */
final class PassageLines {
  private static final Source BALANCE = Source.recomputed("conservation of the metal's mass");
  private static final Source DRAWING = Source.user("as entered with the part");

  /** Facts and figures by the names that formulas have for them. */
  private final Map<String, Explanation> known = new LinkedHashMap<>();

  private final List<Explanation> lines = new ArrayList<>();

  /** {@return the lines of a passage} */
  static List<Explanation> of(Passage passage) {
    PassageLines lines = new PassageLines(passage);
    lines.sizes(passage);
    lines.sinteredVolume(passage);
    lines.greenVolume(passage.green().volume());
    lines.masses(passage.metal(), passage.binder(), passage.residue());
    lines.stages(passage.green(), passage.brown(), passage.sintered());
    return List.copyOf(lines.lines);
  }

  private PassageLines(Passage passage) {
    Part part = passage.part();
    Feedstock feedstock = passage.feedstock();
    know(Explanation.given("full density", feedstock.alloy().fullDensity()));
    know(Explanation.given("binder density", feedstock.binder().density()));
    know(Explanation.given("binder residue", feedstock.binder().residue()));
    know(
        Explanation.given(
            "strand voids",
            passage.conditions().strandVoids(),
            Source.user("the print conditions")));
    know(Explanation.given("relative density", passage.expectedRelativeDensity()));
    know(Explanation.given("finished length along x", part.envelope().x(), DRAWING));
    know(Explanation.given("finished length along y", part.envelope().y(), DRAWING));
    know(Explanation.given("finished length along z", part.envelope().z(), DRAWING));
    part.finishedMass().ifPresent(mass -> know(Explanation.given("finished mass", mass, DRAWING)));
    loading(feedstock);
  }

  private void loading(Feedstock feedstock) {
    if (feedstock.statedSolidsLoading().isPresent()) {
      line(
          Explanation.given(
              "solids loading", feedstock.statedSolidsLoading().get(), feedstock.source()));
      return;
    }
    if (feedstock.statedMetalMassFraction().isPresent()) {
      know(
          Explanation.given(
              "metal mass fraction", feedstock.metalMassFraction(), feedstock.source()));
    } else {
      know(
          Explanation.given(
              "binder mass fraction", feedstock.binderMassFraction(), feedstock.source()));
      know(
          computed(
              "metal mass fraction",
              feedstock.metalMassFraction(),
              "1 - binder mass fraction",
              "binder mass fraction"));
    }
    balanced(
        "solids loading",
        feedstock.solidsLoading().to(TradeUnits.VOLUME_PERCENT),
        "metal mass fraction / full density / (metal mass fraction / full density + (1 - metal mass"
            + " fraction) / binder density)",
        "metal mass fraction",
        "full density",
        "binder density");
  }

  /** How much metal fills, how it shrinks, and how large it has to be printed. */
  private void sizes(Passage passage) {
    LinearShrinkage shrinkage = passage.shrinkage();
    PerAxis<Estimate<Dimensionless>> oversize = passage.oversize();
    Envelope green = passage.green().envelope();
    PrintConditions conditions = passage.conditions();
    figure(
        "metal in green",
        passage.metalInGreen().to(TradeUnits.VOLUME_PERCENT),
        "solids loading x (1 - strand voids)",
        "solids loading",
        "strand voids");
    axis("x", shrinkage.x(), oversize.x(), green.x(), conditions);
    axis("y", shrinkage.y(), oversize.y(), green.y(), conditions);
    axis("z", shrinkage.z(), oversize.z(), green.z(), conditions);
    figure(
        "volume ratio",
        shrinkage.volumeRatio(),
        "(1 - shrinkage along x) x (1 - shrinkage along y) x (1 - shrinkage along z)",
        "shrinkage along x",
        "shrinkage along y",
        "shrinkage along z");
    figure(
        "metal in sintered",
        passage.metalInSintered().to(TradeUnits.VOLUME_PERCENT),
        "metal in green / volume ratio, at most 1",
        "metal in green",
        "volume ratio");
  }

  private void axis(
      String axis,
      Estimate<Dimensionless> shrinkage,
      Estimate<Dimensionless> oversize,
      Amount<Length> green,
      PrintConditions conditions) {
    String name = "shrinkage along " + axis;
    if (conditions.measuredShrinkage().isPresent()) {
      line(Explanation.given(name, shrinkage, conditions.measuredShrinkage().get().source()));
    } else {
      balanced(
          name,
          shrinkage,
          "1 - cbrt(metal in green / relative density)",
          "metal in green",
          "relative density");
    }
    figure("oversize along " + axis, oversize, "1 / (1 - " + name + ")", name);
    figure(
        "green length along " + axis,
        green.to(TradeUnits.MILLIMETRE),
        "finished length along " + axis + " / (1 - " + name + ")",
        "finished length along " + axis,
        name);
  }

  /** The volume after sintering, as wanted or as the mass wanted asks. */
  private void sinteredVolume(Passage passage) {
    Part part = passage.part();
    if (part.finishedVolume().isPresent()) {
      line(Explanation.given("sintered volume", part.finishedVolume().get(), DRAWING));
      return;
    }
    know(
        computed(
            "metal and char per volume of metal",
            Amounts.kilogramsPerCubicMetre(
                    MassBalancePassage.metalAndCharDensity(passage.feedstock()))
                .to(TradeUnits.GRAM_PER_CUBIC_CENTIMETRE),
            "full density + binder residue x (1 - solids loading) / solids loading x binder"
                + " density",
            "full density",
            "binder residue",
            "solids loading",
            "binder density"));
    balanced(
        "sintered volume",
        passage.sintered().volume(),
        "finished mass / (metal in sintered x metal and char per volume of metal)",
        "finished mass",
        "metal in sintered",
        "metal and char per volume of metal");
  }

  private void greenVolume(Amount<Volume> volume) {
    figure(
        "green volume",
        volume,
        "sintered volume / volume ratio",
        "sintered volume",
        "volume ratio");
  }

  private void masses(Amount<Mass> metal, Amount<Mass> binder, Amount<Mass> residue) {
    balanced(
        "metal",
        metal,
        "metal in green x full density x green volume",
        "metal in green",
        "full density",
        "green volume");
    balanced(
        "binder",
        binder,
        "(1 - solids loading) x (1 - strand voids) x binder density x green volume",
        "solids loading",
        "strand voids",
        "binder density",
        "green volume");
    figure("char", residue, "binder residue x binder", "binder residue", "binder");
  }

  private void stages(Stage green, Stage brown, Stage sintered) {
    figure("green mass", green.mass(), "metal + binder", "metal", "binder");
    figure("green porosity", green.porosity(), "strand voids", "strand voids");
    figure("brown mass", brown.mass(), "metal + char", "metal", "char");
    figure(
        "brown porosity",
        brown.porosity().to(TradeUnits.VOLUME_PERCENT),
        "1 - metal in green",
        "metal in green");
    figure("sintered mass", sintered.mass(), "metal + char", "metal", "char");
    figure(
        "sintered porosity",
        sintered.porosity().to(TradeUnits.VOLUME_PERCENT),
        "1 - metal in sintered",
        "metal in sintered");
  }

  private void figure(String what, Serializable value, String formula, String... from) {
    line(computed(what, value, formula, from));
  }

  private void balanced(String what, Serializable value, String formula, String... from) {
    line(Explanation.builder().from(computed(what, value, formula, from)).source(BALANCE).build());
  }

  private void line(Explanation line) {
    know(line);
    lines.add(line);
  }

  private void know(Explanation figure) {
    known.put(figure.what(), figure);
  }

  private Explanation computed(String what, Serializable value, String formula, String... from) {
    List<Explanation> children = new ArrayList<>();
    for (String name : from) {
      children.add(Objects.requireNonNull(known.get(name), name));
    }
    return Explanation.builder()
        .what(what)
        .value(value)
        .formula(formula)
        .children(children)
        .build();
  }
}
