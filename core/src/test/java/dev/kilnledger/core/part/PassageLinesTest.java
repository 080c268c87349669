package dev.kilnledger.core.part;

import static dev.kilnledger.core.part.TestStock.loaded;
import static dev.kilnledger.core.part.TestStock.part;
import static dev.kilnledger.core.part.TestStock.sourced;
import static dev.kilnledger.units.Amounts.cubicCentimetres;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.massFraction;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.ratio;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Percentage.withPercentage;

import dev.kilnledger.core.explanation.Explanation;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import org.junit.jupiter.api.Test;

class PassageLinesTest {
  private static final MassBalancePassage MODEL = MassBalancePassage.standard();
  private static final Feedstock FEEDSTOCK = loaded(0.60, 0.97);

  private static double si(Explanation figure) {
    return ((Amount<?>) figure.value()).si();
  }

  @Test
  void everyFigureOfThePassageIsALine() {
    Passage passage = MODEL.passage(part().finishedVolume(cubicCentimetres(5)).build(), FEEDSTOCK);
    assertThat(passage.line("green mass").value()).isEqualTo(passage.green().mass());
    assertThat(passage.line("brown mass").value()).isEqualTo(passage.brown().mass());
    assertThat(passage.line("sintered mass").value()).isEqualTo(passage.sintered().mass());
    assertThat(passage.line("green volume").value()).isEqualTo(passage.green().volume());
    assertThat(passage.line("sintered volume").value()).isEqualTo(passage.sintered().volume());
    assertThat(passage.line("green porosity").value()).isEqualTo(passage.green().porosity());
    assertThat(passage.line("brown porosity").value()).isEqualTo(passage.brown().porosity());
    assertThat(passage.line("sintered porosity").value()).isEqualTo(passage.sintered().porosity());
    assertThat(passage.line("metal").value()).isEqualTo(passage.metal());
    assertThat(passage.line("char").value()).isEqualTo(passage.residue());
    assertThat(passage.line("shrinkage along z").value()).isEqualTo(passage.shrinkage().z());
    assertThat(passage.line("oversize along x").value()).isEqualTo(passage.oversize().x());
    assertThat(passage.line("green length along y").value())
        .isEqualTo(passage.green().envelope().y());
    assertThatThrownBy(() -> passage.line("colour"))
        .hasMessageStartingWith("no figure \"colour\"; accepted is one of [solids loading, metal");
  }

  /** By hand: the mass is loading x density x volume of the metal, and that of the binder. */
  @Test
  void theGreenMassOpensDownToLoadingAndDensities() {
    Passage passage = MODEL.passage(part().finishedVolume(cubicCentimetres(5)).build(), FEEDSTOCK);
    Explanation mass = passage.line("green mass");
    double volume = si(mass.at("metal", "green volume"));
    double metal = si(mass.at("metal", "full density"));
    double binder = FEEDSTOCK.binder().density().value().expected().si();
    assertThat(volume).isCloseTo(5e-6 * 0.97 / 0.60, withPercentage(1e-10));
    assertThat(si(mass)).isCloseTo(volume * (0.60 * metal + 0.40 * binder), withPercentage(1e-10));
    assertThat(mass.at("metal", "metal in green", "solids loading").source())
        .contains(FEEDSTOCK.source());
    assertThat(mass.at("metal", "full density").source())
        .contains(FEEDSTOCK.alloy().fullDensity().source());
  }

  /** By hand: 0.9 / 8.96 of 0.9 / 8.96 + 0.1 / 1.24 is 0.554672. */
  @Test
  void theLoadingOpensDownToTheFractionThatIsStated() {
    Feedstock byMetal =
        TestStock.filled(
            0.9, TestStock.metal(8.96, 0.9, 0.95, 0.97), TestStock.binder(1.24, 0, 0, 0));
    Feedstock byBinder =
        Feedstock.builder()
            .name("told by its binder")
            .alloy(byMetal.alloy())
            .binder(byMetal.binder())
            .binderMassFraction(massFraction(0.1))
            .source(byMetal.source())
            .build();
    Part cam = part().finishedVolume(cubicCentimetres(5)).build();
    Explanation metal = MODEL.passage(cam, byMetal).line("solids loading");
    assertThat(si(metal)).isCloseTo(0.554672, withPercentage(1e-4));
    assertThat(metal.at("metal mass fraction").value()).isEqualTo(massFraction(0.9));
    assertThat(metal.at("metal mass fraction").source()).contains(byMetal.source());
    Explanation binder = MODEL.passage(cam, byBinder).line("solids loading");
    assertThat(si(binder)).isCloseTo(0.554672, withPercentage(1e-4));
    assertThat(binder.at("metal mass fraction").formula()).contains("1 - binder mass fraction");
    assertThat(binder.at("metal mass fraction", "binder mass fraction").value())
        .isEqualTo(massFraction(0.1));
  }

  @Test
  void aPartToldByItsMassOpensToThatMass() {
    Passage passage = MODEL.passage(part().finishedMass(grams(40)).build(), FEEDSTOCK);
    assertThat(passage.line("sintered volume").at("finished mass").value()).isEqualTo(grams(40));
    assertThat(si(passage.line("sintered mass"))).isCloseTo(0.040, withPercentage(1e-10));
  }

  @Test
  void aMeasuredShrinkageIsGivenAndNotComputed() {
    PrintConditions measured =
        PrintConditions.builder()
            .measuredShrinkage(
                sourced(LinearShrinkage.exactly(ratio(0.14), ratio(0.15), ratio(0.16))))
            .build();
    Passage passage =
        MODEL.passage(part().finishedVolume(cubicCentimetres(5)).build(), FEEDSTOCK, measured);
    Explanation shrinkage = passage.line("volume ratio").at("shrinkage along y");
    assertThat(shrinkage.formula()).isEmpty();
    assertThat(shrinkage.source())
        .isEqualTo(measured.measuredShrinkage().map(stated -> stated.source()));
    assertThat(si(passage.line("volume ratio")))
        .isCloseTo(0.86 * 0.85 * 0.84, withPercentage(1e-10));
  }

  /** Mass over mass per metre: 1 kg of 1.24 g/cm3 in 1.75 mm is 335.28 m; here by the formula. */
  @Test
  void theFilamentOpensAsALength() {
    Passage passage = MODEL.passage(part().finishedVolume(cubicCentimetres(5)).build(), FEEDSTOCK);
    Explanation length = passage.filamentLengthLine(millimetres(1.75), Source.user("the printer"));
    assertThat(length.value()).isEqualTo(passage.filamentLength(millimetres(1.75)));
    assertThat(si(length))
        .isCloseTo(
            si(length.at("green mass"))
                / (si(length.at("strand density")) * Math.PI / 4 * 1.75e-3 * 1.75e-3),
            withPercentage(1e-10));
  }
}
