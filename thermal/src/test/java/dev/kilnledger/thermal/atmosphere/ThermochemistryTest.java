package dev.kilnledger.thermal.atmosphere;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.kelvin;
import static dev.kilnledger.units.TradeUnits.KELVIN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.MaterialLibrary;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ThermochemistryTest {
  private static final Thermochemistry MODEL = Thermochemistry.standard();

  private static StandardState at(Species species, double kelvin) {
    return MODEL.state(species, kelvin(kelvin)).orElseThrow();
  }

  /** Cp, H(T) - H(298.15) or S in J/mol/K or J/mol. */
  private static double value(Species species, String quantity, double kelvin) {
    StandardState state = at(species, kelvin);
    return switch (quantity) {
      case "Cp" -> state.heatCapacity().si() * species.kilogramsPerMole();
      case "H" -> state.heating().si();
      case "S" -> state.entropyTerm().si() / kelvin;
      default -> throw new AssertionError(quantity);
    };
  }

  /** Sources and tolerances: at the head of the file. */
  @ParameterizedTest
  @CsvFileSource(resources = "published-states.csv", numLinesToSkip = 9)
  void agreesWithPublishedTables(
      Species species,
      String quantity,
      double kelvin,
      double published,
      double tolerance,
      String source) {
    assertThat(value(species, quantity, kelvin))
        .as(source)
        .isCloseTo(published, within(Math.abs(published) * tolerance));
  }

  /**
   * Heat from 25 °C on, per mass: enthalpies of NASA/TP-2002-211556 evaluated elsewhere, J/g; the
   * last digit shown and 3e-5 for another atomic weight of carbon (12.0107).
   */
  @ParameterizedTest
  @CsvSource({
    "COPPER, 500, 194.9, 0.05", "COPPER, 800, 328.1, 0.05", "COPPER, 1000, 423.58, 0.006",
    "ALUMINA, 500, 493.5, 0.05", "ALUMINA, 800, 855.3, 0.05", "ALUMINA, 1000, 1104.72, 0.006",
    "GRAPHITE, 500, 591.9, 0.05", "GRAPHITE, 800, 1115.2, 0.05", "GRAPHITE, 1000, 1491.77, 0.006",
    "IRON, 500, 260.61, 0.006", "IRON, 800, 522.78, 0.006", "IRON, 1000, 678.00, 0.006",
    "IRON, 1200, 804.60, 0.006"
  })
  void heatingTakesThePublishedHeat(
      Species species, double celsius, double joulesPerGram, double tolerance) {
    StandardState state = MODEL.state(species, celsius(celsius)).orElseThrow();
    assertThat(state.heating().si() / species.kilogramsPerMole() / 1000)
        .isCloseTo(joulesPerGram, within(tolerance + 3e-5 * joulesPerGram));
  }

  /** The same in kWh/kg: 0.117660, 0.306866, 0.414381 to 1000 °C, 0.22350 to 1200 °C. */
  @ParameterizedTest
  @CsvSource({
    "COPPER, 1000, 0.117660",
    "ALUMINA, 1000, 0.306866",
    "GRAPHITE, 1000, 0.414381",
    "IRON, 1200, 0.22350"
  })
  void heatingInKilowattHoursPerKilogram(Species species, double celsius, double published) {
    double joulesPerKilogram =
        MODEL.state(species, celsius(celsius)).orElseThrow().heating().si()
            / species.kilogramsPerMole();
    assertThat(joulesPerKilogram / 3.6e6).isCloseTo(published, within(5e-6 + 3e-5 * published));
  }

  /**
   * What getters are taken to hold from 25 to 1000 °C against the polynomials of graphite, which
   * the tests above hold against JANAF: stated to four digits.
   */
  @Test
  void gettersTakeUpTheHeatOfGraphite() {
    double perKilogram =
        MODEL.state(Species.GRAPHITE, celsius(1000)).orElseThrow().heating().si()
            / Species.GRAPHITE.kilogramsPerMole();
    assertThat(MaterialLibrary.standard().getters())
        .isNotEmpty()
        .allSatisfy(
            getter ->
                assertThat(getter.heatCapacity().value().si())
                    .isCloseTo(perKilogram / 975, within(0.5)));
  }

  /** Where pieces of one phase meet, G has no step (it has none at a transition either). */
  @ParameterizedTest
  @EnumSource(Species.class)
  void gibbsEnergyIsContinuous(Species species) {
    double low = MODEL.range(species).low().si();
    double high = MODEL.range(species).high().si();
    double before = at(species, low).gibbsEnergy().si();
    for (double t = Math.floor(low) + 1; t <= Math.min(high, 2000); t++) {
      double now = at(species, t).gibbsEnergy().si();
      double slope = -at(species, t).entropyTerm().si() / t;
      double step = t - (t == Math.floor(low) + 1 ? low : t - 1);
      // dG = -S dT; 60 J of scatter where two fits of one report meet (5 % of RT is far more)
      assertThat(now - before).isCloseTo(slope * step, within(60.0));
      before = now;
    }
  }

  @Test
  void gibbsEnergyIsEnthalpyLessEntropyTerm() {
    StandardState state = at(Species.OXYGEN, 1000);
    assertThat(state.gibbsEnergy().si())
        .isCloseTo(state.enthalpy().si() - state.entropyTerm().si(), within(1e-6));
    // an element's enthalpy is zero at 298.15 K by convention; coefficients have ten digits
    assertThat(at(Species.OXYGEN, 298.15).enthalpy().si()).isCloseTo(0, within(0.1));
  }

  @Test
  void outsideItsRangeThereIsNoAnswerButAFinding() {
    assertThat(MODEL.state(Species.COPPER, kelvin(1358.1))).isEmpty();
    assertThat(MODEL.state(Species.COPPER, kelvin(298))).isEmpty();
    assertThat(MODEL.range(Species.COPPER).low().in(KELVIN)).isEqualTo(298.15);
    Finding outside = MODEL.rangeFinding(Species.COPPER, kelvin(1400));
    assertThat(outside.severity()).isEqualTo(Severity.UNDETERMINED);
    assertThat(outside.message())
        .isEqualTo(
            "1400.0 K lies outside the data of Cu, 298.2 to 1358.0 K: no figure is given there");
    assertThat(MODEL.rangeFinding(Species.COPPER, kelvin(1000)).severity())
        .isEqualTo(Severity.PASSED);
    assertThat(MODEL.rangeFinding(Species.COPPER, kelvin(1000)).message())
        .isEqualTo("1000.0 K lies in the data of Cu, 298.2 to 1358.0 K");
  }

  @ParameterizedTest
  @EnumSource(Species.class)
  void everySpeciesHasDataAndASource(Species species) {
    assertThat(MODEL.range(species).contains(kelvin(900)) || species == Species.ALUMINIUM).isTrue();
    assertThat(MODEL.source(species).text()).contains("NASA");
    assertThat(species.formula()).isNotBlank();
  }

  /**
   * As the head of the model says: elements and gases by the paper, most oxides by the older one.
   */
  @ParameterizedTest
  @CsvSource({
    "COPPER, NASA/TP-2002-211556",
    "CARBON_MONOXIDE, NASA/TP-2002-211556",
    "CHROMIUM_III_OXIDE, NASA TM-4513",
    "RUTILE, NASA TM-4513"
  })
  void namesTheReportOfEachSpecies(Species species, String report) {
    assertThat(MODEL.source(species).text()).contains(report);
    assertThat(MODEL.rangeFinding(species, kelvin(1000)).basis().text()).contains(report);
  }

  /** 2 C + O2 = 2 CO: the last digit of the sum is the same in whatever order the terms come. */
  @Test
  void sumsAReactionInOneOrder() {
    Map<Species, Double> forwards = new LinkedHashMap<>();
    forwards.put(Species.GRAPHITE, -2.0);
    forwards.put(Species.OXYGEN, -1.0);
    forwards.put(Species.CARBON_MONOXIDE, 2.0);
    Map<Species, Double> backwards = new LinkedHashMap<>();
    backwards.put(Species.CARBON_MONOXIDE, 2.0);
    backwards.put(Species.OXYGEN, -1.0);
    backwards.put(Species.GRAPHITE, -2.0);
    for (double kelvin = 400; kelvin < 2000; kelvin += 7) {
      assertThat(MODEL.reactionEnergy(new Reaction(backwards), kelvin))
          .isEqualTo(MODEL.reactionEnergy(new Reaction(forwards), kelvin));
    }
  }
}
