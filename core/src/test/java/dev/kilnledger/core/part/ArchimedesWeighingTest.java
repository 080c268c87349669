package dev.kilnledger.core.part;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.gramsPerCubicCentimetre;
import static dev.kilnledger.units.Amounts.milligrams;
import static dev.kilnledger.units.Amounts.volumeFraction;
import static dev.kilnledger.units.TradeUnits.GRAM_PER_CUBIC_CENTIMETRE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;
import static org.assertj.core.groups.Tuple.tuple;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ArchimedesWeighingTest {
  private static ArchimedesWeighing.Builder unsealed(double dry, double inWater) {
    return ArchimedesWeighing.builder()
        .specimen("cam")
        .dryInAir(grams(dry))
        .inWater(grams(inWater))
        .waterDensity(gramsPerCubicCentimetre(0.9971));
  }

  private static ArchimedesWeighing.Builder sealed(double dry, double filled, double inWater) {
    return unsealed(dry, inWater)
        .impregnatedInAir(grams(filled))
        .impregnantDensity(gramsPerCubicCentimetre(0.88));
  }

  /** Worked by hand from the formulas of ISO 2738 and ASTM B962 (letters from memory). */
  @Test
  void givesDensityAndOpenPorosityOfTheWorkedExample() {
    ArchimedesWeighing weighing = sealed(10.000, 10.120, 8.600).build();
    assertThat(weighing.density().in(GRAM_PER_CUBIC_CENTIMETRE)).isEqualTo(6.559868, offset(5e-7));
    assertThat(weighing.openPorosity().orElseThrow().si()).isEqualTo(0.089453, offset(5e-7));
  }

  /** The same part weighed without sealing reads 8.6 % too high (worked by hand). */
  @Test
  void readsTooHighWithoutSealing() {
    ArchimedesWeighing weighing = unsealed(10.000, 8.600).build();
    assertThat(weighing.density().in(GRAM_PER_CUBIC_CENTIMETRE)).isEqualTo(7.122143, offset(5e-7));
    assertThat(weighing.openPorosity()).isEmpty();
    assertThat(weighing.densityUncertainty()).isEmpty();
  }

  /** First order by hand: finite differences of the formula, weighings independent (JCGM 100). */
  @Test
  void carriesTheBalancesUncertaintyIntoTheDensity() {
    double u = 0.001;
    ArchimedesWeighing filled = sealed(10.0, 10.12, 8.6).balanceUncertainty(milligrams(1)).build();
    double byDry = slope(density(10.0 + u, 10.12, 8.6), density(10.0 - u, 10.12, 8.6));
    double byFilled = slope(density(10.0, 10.12 + u, 8.6), density(10.0, 10.12 - u, 8.6));
    double byWater = slope(density(10.0, 10.12, 8.6 + u), density(10.0, 10.12, 8.6 - u));
    assertThat(filled.densityUncertainty().orElseThrow().in(GRAM_PER_CUBIC_CENTIMETRE))
        .isEqualTo(Math.hypot(byDry, Math.hypot(byFilled, byWater)), offset(1e-7));

    ArchimedesWeighing open = unsealed(10.0, 8.6).balanceUncertainty(milligrams(1)).build();
    double own = slope(density(10.0 + u, 10.0 + u, 8.6), density(10.0 - u, 10.0 - u, 8.6));
    double water = slope(density(10.0, 10.0, 8.6 + u), density(10.0, 10.0, 8.6 - u));
    assertThat(open.densityUncertainty().orElseThrow().in(GRAM_PER_CUBIC_CENTIMETRE))
        .isEqualTo(Math.hypot(own, water), offset(1e-7));
  }

  private static double density(double dry, double filled, double inWater) {
    return dry * 0.9971 / (filled - inWater);
  }

  private static double slope(double above, double below) {
    return (above - below) / 2;
  }

  /** Tanaka et al. 2001: 0.9982067 and 0.9970470 g/cm3; 0.99997 at 4 °C (handbook tables). */
  @ParameterizedTest
  @CsvSource({"20, 0.9982067, 5e-8", "25, 0.9970470, 5e-8", "4, 0.99997, 5e-6"})
  void knowsTheDensityOfWater(double temperature, double density, double rounding) {
    assertThat(WaterDensity.standard().at(celsius(temperature)).in(GRAM_PER_CUBIC_CENTIMETRE))
        .isEqualTo(density, offset(rounding));
  }

  @Test
  void refusesWaterOutsideTheFormulasRange() {
    assertThatThrownBy(() -> WaterDensity.standard().at(celsius(60)))
        .hasMessage("water: temperature is 60 °C; accepted is from 0 °C to 40 °C");
  }

  @Test
  void refusesWeighingsThatNoBodyShows() {
    assertThatThrownBy(() -> unsealed(10, 10).build())
        .hasMessage(
            "weighing of cam: mass in water F is 10 g; accepted is less than the dry mass A,"
                + " 10 g");
    assertThatThrownBy(() -> sealed(10, 9.9, 9.95).build())
        .hasMessage(
            "weighing of cam: impregnated mass B is 9.9 g; accepted is the dry mass A or more, 10 g"
                + "; and mass in water F is 9.95 g; accepted is less than the impregnated mass B,"
                + " 9.9 g");
    assertThatThrownBy(() -> sealed(10, 12, 10.5).build())
        .hasMessageContaining("the weighings mean open pores of 1.51")
        .hasMessageContaining("accepted is less than 1");
    // all of it pores: (10 - 8.6) / (10 - 8.6) of oil as dense as the water
    assertThatThrownBy(
            () -> sealed(8.6, 10, 8.6).impregnantDensity(gramsPerCubicCentimetre(0.9971)).build())
        .hasMessageContaining("open pores of 1 m³/m³ of the volume; accepted is less than 1");
    assertThatThrownBy(
            () -> sealed(10, 10.1, 8.6).impregnantDensity(gramsPerCubicCentimetre(0)).build())
        .hasMessageContaining("density of the impregnant is 0 g/cm³; accepted is more than zero");
    assertThatThrownBy(() -> unsealed(10, 8.6).impregnatedInAir(grams(10.1)).build())
        .hasMessageContaining("accepted are both or neither");
    assertThatThrownBy(
            () ->
                unsealed(0, -1)
                    .specimen("")
                    .waterDensity(gramsPerCubicCentimetre(0))
                    .balanceUncertainty(grams(-1))
                    .build())
        .hasMessageContaining("specimen is blank")
        .hasMessageContaining("dry mass A is 0 g")
        .hasMessageContaining("mass in water F is -1 g")
        .hasMessageContaining("density of the water is 0 g/cm³")
        .hasMessageContaining("balance uncertainty is -1 g");
  }

  /** 6.559868 g/cm3 of copper 8.96 g/cm3 is 73.2 %. */
  @Test
  void holdsAFiredPartAgainstItsAlloy() {
    List<Finding> porous =
        FiredDensityCheck.standard()
            .check(sealed(10, 10.12, 8.6).build(), TestStock.metal(8.96, 0.88, 0.93, 0.96));
    assertThat(porous)
        .extracting(Finding::code, Finding::severity)
        .containsExactly(
            tuple(PartFinding.FIRED_DENSITY, Severity.WARNING),
            tuple(PartFinding.OPEN_PORES_SEALED, Severity.PASSED));
    assertThat(porous.get(0).message())
        .isEqualTo(
            "6.560 g/cm³ is 73.2 % of full density: less dense than expected"
                + " (88.0 % to 96.0 %)");

    assertThat(severity(6.56, 0.95, 1)).isEqualTo(Severity.WARNING);
    assertThat(severity(7.3, 0.95, 0.96)).isEqualTo(Severity.NOTE);
    assertThat(severity(7.5, 0.93, 0.96)).isEqualTo(Severity.PASSED);
    assertThat(
            FiredDensityCheck.standard()
                .check(unsealed(10, 8.6).build(), TestStock.metal(7.5, 0.93, 0.95, 0.96))
                .get(1)
                .severity())
        .isEqualTo(Severity.NOTE);
  }

  /** 10 g in 1.4 g of water of 0.9971 g/cm3 are 7.122 g/cm3. */
  @Test
  void saysHowDenseAFiredPartIs() {
    Finding impossible = fired(6.56, 0.95, 0.96);
    assertThat(impossible.message())
        .isEqualTo(
            "7.122 g/cm³ is 108.6 % of full density: denser than the alloy can be, so weighings,"
                + " water or alloy are not as stated (95.0 % to 96.0 %)");
    assertThat(impossible.limit()).contains(volumeFraction(1));
    Finding dense = fired(7.3, 0.95, 0.96);
    assertThat(dense.message())
        .isEqualTo(
            "7.122 g/cm³ is 97.6 % of full density: denser than expected (95.0 % to 96.0 %)");
    assertThat(dense.limit()).contains(volumeFraction(0.96));
    Finding usual = fired(7.5, 0.93, 0.96);
    assertThat(usual.message())
        .isEqualTo("7.122 g/cm³ is 95.0 % of full density, as expected (93.0 % to 96.0 %)");
    assertThat(usual.limit()).contains(volumeFraction(0.93));
  }

  @Test
  void saysWhetherOpenPoresWereFilled() {
    assertThat(sealing(sealed(10, 10.12, 8.6).build()))
        .isEqualTo("open pores were filled before weighing in water");
    assertThat(sealing(unsealed(10, 8.6).build()))
        .isEqualTo("open pores were not filled: if there are any, the density reads too high");
  }

  private static String sealing(ArchimedesWeighing weighing) {
    return FiredDensityCheck.standard()
        .check(weighing, TestStock.metal(8.96, 0.93, 0.95, 0.96))
        .get(1)
        .message();
  }

  private static Severity severity(double fullDensity, double low, double high) {
    return fired(fullDensity, low, high).severity();
  }

  private static Finding fired(double fullDensity, double low, double high) {
    return FiredDensityCheck.standard()
        .check(unsealed(10, 8.6).build(), TestStock.metal(fullDensity, low, low, high))
        .get(0);
  }
}
