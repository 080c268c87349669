package dev.kilnledger.core.material;

import static dev.kilnledger.units.Amounts.kilogramsPerCubicMetre;
import static dev.kilnledger.units.Amounts.massPercent;
import static dev.kilnledger.units.Amounts.percent;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MixtureRuleTest {
  private final MixtureRule rule = MixtureRule.standard();
  private final MaterialLibrary standard = MaterialLibrary.standard();

  /**
   * Recomputed in other software with the densities of the CRC Handbook, 95th ed.; given to 0.1
   * kg/m3, which is the tolerance.
   */
  @ParameterizedTest
  @CsvSource({
    "tin bronze 90/10, 8758.9",
    "low-alloy steel 4605, 7793.8",
    "stainless steel 316L, 7739.1",
    "stainless steel 17-4PH, 7722.1",
    "nickel alloy 625, 8407.6",
    "titanium alloy 6Al-4V, 4374.0"
  })
  void givesTheDensityRecomputedElsewhere(String name, double density) {
    assertThat(rule.fullDensity(standard.alloy(name).composition()).si())
        .isCloseTo(density, within(0.06));
  }

  /** The same, to 1 kg/m3, for alloys that the library does not hold. */
  @Test
  void holdsForOtherCompositionsAndScalesTheirSum() {
    assertThat(density(Map.of(Element.COPPER, 89.0, Element.TIN, 11.0)))
        .isCloseTo(8739, within(0.6));
    assertThat(density(Map.of(Element.COPPER, 70.0, Element.ZINC, 30.0)))
        .isCloseTo(8321, within(0.6));
    assertThat(density(Map.of(Element.COPPER, 99.96))).isCloseTo(8960, within(1e-9));
  }

  private double density(Map<Element, Double> percents) {
    Composition.Builder composition =
        Composition.builder()
            .designation("of this test")
            .balance(Element.COPPER)
            .source(Source.user("this test"));
    percents.forEach((element, each) -> composition.putNominal(element, massPercent(each)));
    return rule.fullDensity(composition.build()).si();
  }

  @Test
  void passesWhatLiesWithinItsTolerance() {
    MixtureComparison bronze = rule.compare(standard.alloy("tin bronze 90/10"));
    // (8758.9 - 8780) / 8780
    assertThat(bronze.deviation().si()).isCloseTo(-0.0024, within(0.00005));
    assertThat(bronze.within()).isTrue();
    assertThat(bronze.handbook().value()).isEqualTo(kilogramsPerCubicMetre(8780));
    Finding finding = bronze.finding();
    assertThat(finding.code()).isEqualTo(MaterialFinding.FULL_DENSITY_BY_MIXTURE_RULE);
    assertThat(finding.code().code()).isEqualTo("full-density-by-mixture-rule");
    assertThat(finding.severity()).isEqualTo(Severity.PASSED);
    assertThat(finding.subject()).isEqualTo("tin bronze 90/10");
    assertThat(finding.message())
        .isEqualTo(
            "The inverse rule of mixtures gives 8.759 g/cm³ where 8.780 g/cm³ is stated, a deviation"
                + " of -0.24 %; accepted is up to 1.5 % either way (tin packs more closely in"
                + " copper's crystal than in its own).");
    assertThat(finding.limit()).contains(percent(1.5));
    assertThat(finding.measured()).contains(bronze.deviation());
  }

  @Test
  void warnsOfAMistypedDensity() {
    Alloy mistyped =
        Alloy.builder()
            .from(standard.alloy("tin bronze 90/10"))
            .fullDensity(Sourced.of(kilogramsPerCubicMetre(7880), Source.user("digits swapped")))
            .build();
    assertThat(rule.compare(mistyped).within()).isFalse();
    assertThat(rule.compare(mistyped).finding().severity()).isEqualTo(Severity.WARNING);
  }

  @Test
  void isUndeterminedWithoutATolerance() {
    Alloy open =
        Alloy.builder().from(standard.alloy("copper")).mixtureTolerance(Optional.empty()).build();
    Finding finding = rule.compare(open).finding();
    assertThat(rule.compare(open).within()).isFalse();
    assertThat(finding.severity()).isEqualTo(Severity.UNDETERMINED);
    assertThat(finding.message()).endsWith("no tolerance is stated for this alloy.");
    assertThat(finding.limit()).isEmpty();
  }

  @Test
  void refusesADensityOfZero() {
    assertThatThrownBy(
            () -> MixtureComparison.of(standard.alloy("iron"), kilogramsPerCubicMetre(0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "mixture comparison of iron: computed density is 0 kg/m³; accepted is more than zero");
  }
}
