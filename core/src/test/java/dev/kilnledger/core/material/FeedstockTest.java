package dev.kilnledger.core.material;

import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.gramsPerCubicCentimetre;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.massFraction;
import static dev.kilnledger.units.Amounts.massPercent;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.volumeFraction;
import static dev.kilnledger.units.Amounts.volumePercent;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Relations;
import dev.kilnledger.units.TradeUnits;
import dev.kilnledger.units.quantity.MassFraction;
import dev.kilnledger.units.quantity.VolumeFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FeedstockTest {
  private static final MaterialLibrary STANDARD = MaterialLibrary.standard();
  private static final Source SOURCE = Source.user("this test");

  /** A feedstock of metal and binder with these densities in g/cm3, its fraction still open. */
  private static Feedstock.Builder feedstock(double metal, double binder) {
    return Feedstock.builder()
        .name("of this test")
        .alloy(
            Alloy.builder()
                .from(STANDARD.alloy("copper"))
                .fullDensity(Sourced.of(gramsPerCubicCentimetre(metal), SOURCE))
                .build())
        .binder(
            Binder.builder()
                .from(STANDARD.binder("polylactide"))
                .density(Sourced.of(Estimate.exactly(gramsPerCubicCentimetre(binder)), SOURCE))
                .build())
        .source(SOURCE);
  }

  /**
   * Recomputed in other software to 25 digits, given to 6 decimals; the metals are copper (8.96)
   * and 316L as some sheets have it (7.99), in polylactide (1.24). The formula is that of the mass
   * balance in German and Bose, Injection Molding of Metals and Ceramics (from memory).
   */
  @ParameterizedTest
  @CsvSource({"8.96, 0.90, 0.554672, 5.522068", "7.99, 0.88, 0.532293, 4.832976"})
  void solidsLoadingAndDensityFollowFromTheMassFraction(
      double metal, double fraction, double loading, double density) {
    Feedstock feedstock = feedstock(metal, 1.24).metalMassFraction(massFraction(fraction)).build();
    assertThat(feedstock.solidsLoading().si()).isCloseTo(loading, within(5e-7));
    assertThat(feedstock.density().in(TradeUnits.GRAM_PER_CUBIC_CENTIMETRE))
        .isCloseTo(density, within(5e-7));
  }

  /** 50 g of copper at 0.90 in polylactide is 9.054579 cm3 (recomputed elsewhere). */
  @Test
  void volumeOfAGreenPartFollows() {
    Feedstock copper = STANDARD.feedstock("copper in polylactide, generic");
    assertThat(Relations.volumeOf(grams(50), copper.density()).in(TradeUnits.CUBIC_CENTIMETRE))
        .isCloseTo(9.054579, within(5e-7));
  }

  /**
   * Published pairs: copper 55 vol% in a binder of 0.92 is 0.9225 by mass (Sadaf et al., Polymers
   * 14 (2022) 4962); 17-4PH with 7 % wax of 0.92 is 0.6111 by volume (Wu et al., Met. Mater. Int.
   * 21 (2015) 531, density 7.78); fractions computed elsewhere, to 4 decimals.
   */
  @Test
  void eitherFractionGivesTheOther() {
    Feedstock printed = feedstock(8.96, 0.92).solidsLoading(volumePercent(55)).build();
    assertThat(printed.metalMassFraction().si()).isCloseTo(0.9225, within(5e-5));
    assertThat(printed.binderMassFraction().si()).isCloseTo(0.0775, within(5e-5));
    assertThat(printed.density().si()).isCloseTo(5342, within(0.5));
    Feedstock moulded = feedstock(7.78, 0.92).binderMassFraction(massPercent(7)).build();
    assertThat(moulded.binderMassFraction()).isEqualTo(massPercent(7));
    assertThat(moulded.metalMassFraction().si()).isCloseTo(0.93, within(1e-15));
    assertThat(moulded.solidsLoading().si()).isCloseTo(0.6111, within(5e-5));
  }

  @ParameterizedTest
  @CsvSource({"0.02", "0.386", "0.555", "0.619", "0.98"})
  void derivingForthAndBackReturnsTheStart(double loading) {
    Feedstock byVolume = feedstock(8.96, 1.24).solidsLoading(volumeFraction(loading)).build();
    Feedstock byMass =
        feedstock(8.96, 1.24).metalMassFraction(byVolume.metalMassFraction()).build();
    assertThat(byMass.solidsLoading().si()).isCloseTo(loading, within(1e-14));
    assertThat(byMass.density().si()).isCloseTo(byVolume.density().si(), within(1e-10));
    assertThat(byMass.metalMassFraction().add(byMass.binderMassFraction()).si())
        .isCloseTo(1, within(1e-15));
  }

  /**
   * By the formula, elsewhere: copper (8.96) in polylactide (1.24) at 0.85 and 0.92 by mass is
   * 0.439533 and 0.614126 by volume.
   */
  @Test
  void rangeOfTheMetalLeavesRangesOfBinderAndLoading() {
    Feedstock copper = STANDARD.feedstock("copper in polylactide, generic");
    assertThat(copper.metalMassFractionRange().orElseThrow().value())
        .isEqualTo(Span.of(massFraction(0.85), massFraction(0.92)));
    Span<MassFraction> binder = copper.binderMassFractionRange().orElseThrow().value();
    assertThat(binder.low().si()).isCloseTo(0.08, within(1e-12));
    assertThat(binder.high().si()).isCloseTo(0.15, within(1e-12));
    Span<VolumeFraction> loading = copper.solidsLoadingRange().orElseThrow().value();
    assertThat(loading.low().si()).isCloseTo(0.439533, within(5e-7));
    assertThat(loading.high().si()).isCloseTo(0.614126, within(5e-7));
    assertThat(feedstock(8.96, 1.24).metalMassFraction(massFraction(0.9)).build())
        .satisfies(own -> assertThat(own.binderMassFractionRange()).isEmpty());
  }

  /**
   * Published loadings lie in the generic ranges: copper filament 55 vol% (Sadaf et al. 2022), 316L
   * 63 vol% (rice-starch binder study), moulded green parts 6 to 8 % binder by mass, 17-4PH 93 %.
   */
  @Test
  void genericRangesHoldWhatIsPublished() {
    assertThat(STANDARD.feedstocks())
        .filteredOn(Feedstock::generic)
        .allSatisfy(
            each ->
                assertThat(each.metalMassFractionRange().orElseThrow().value())
                    .matches(range -> range.contains(each.metalMassFraction())));
    assertThat(loading("copper in polylactide").contains(volumePercent(55))).isTrue();
    assertThat(loading("stainless steel 316L in wax and polyolefin").contains(volumePercent(63)))
        .isTrue();
    assertThat(metal("low-alloy steel 4605 in wax and polyolefin").contains(massPercent(92)))
        .isTrue();
    assertThat(metal("low-alloy steel 4605 in wax and polyolefin").contains(massPercent(94)))
        .isTrue();
    assertThat(metal("stainless steel 17-4PH in wax and polyolefin").contains(massPercent(93)))
        .isTrue();
  }

  private static Span<VolumeFraction> loading(String name) {
    return STANDARD.feedstock(name + ", generic").solidsLoadingRange().orElseThrow().value();
  }

  private static Span<MassFraction> metal(String name) {
    return STANDARD.feedstock(name + ", generic").metalMassFractionRange().orElseThrow().value();
  }

  @Test
  void refusesARangeThatBeginsAtNothing() {
    assertThatThrownBy(
            () ->
                feedstock(8.96, 1.24)
                    .metalMassFraction(massFraction(0.9))
                    .metalMassFractionRange(
                        Sourced.of(Span.of(massFraction(0), massFraction(0.95)), SOURCE))
                    .build())
        .hasMessageContaining("lowest metal mass fraction is 0 kg/kg; accepted is above 0");
  }

  @Test
  void refusesARangeThatLeavesOutTheFraction() {
    assertThatThrownBy(
            () ->
                feedstock(8.96, 1.24)
                    .metalMassFraction(massFraction(0.9))
                    .metalMassFractionRange(
                        Sourced.of(Span.of(massFraction(0.92), massFraction(1)), SOURCE))
                    .build())
        .hasMessage(
            "feedstock of this test: highest metal mass fraction is 1 kg/kg; accepted is above 0 and"
                + " below 1; and the metal mass fraction of 0.9000 kg/kg lies outside its range of"
                + " 0.9200 to 1.0000 kg/kg; accepted is a range about it");
  }

  /** Loadings of the generic feedstocks, recomputed elsewhere to 3 decimals. */
  @ParameterizedTest
  @CsvSource({
    "copper in polylactide, 0.555, 5522",
    "tin bronze 90/10 in polylactide, 0.533, 5261",
    "iron in polylactide, 0.536, 4794",
    "low-alloy steel 4605 in wax and polyolefin, 0.605, 5105",
    "stainless steel 316L in wax and polyolefin, 0.619, 5297",
    "stainless steel 316L in polyoxymethylene, 0.613, 5452",
    "stainless steel 316L in polylactide, 0.532, 4836",
    "stainless steel 17-4PH in wax and polyolefin, 0.607, 5077",
    "nickel alloy 625 in wax and polyolefin, 0.606, 5474",
    "titanium grade 2 in wax and polyolefin, 0.619, 3135",
    "tungsten in polylactide, 0.525, 10716",
    "silver in wax and polyolefin, 0.597, 6630"
  })
  void genericFeedstocksHaveTheLoadingComputedElsewhere(
      String name, double loading, double density) {
    Feedstock feedstock = STANDARD.feedstock(name + ", generic");
    assertThat(feedstock.solidsLoading().si()).isCloseTo(loading, within(6e-4));
    assertThat(feedstock.density().si()).isCloseTo(density, within(1.0));
  }

  /**
   * By hand: sections pi d2 / 4 of 2.405281875 and 6.379396582 mm2, times 4.5 g/cm3, is 10.823768
   * and 28.707285 g/m; 1 kg at 1.24 g/cm3 is 335.2836 and 126.4150 m.
   */
  @ParameterizedTest
  @CsvSource({"1.75, 10.823768, 335.2836", "2.85, 28.707285, 126.4150"})
  void filamentHasItsMassPerMetreAndLengthPerKilogram(
      double diameter, double gramsPerMetre, double metresPerKilogram) {
    // Half metal of 8 g/cm3, half binder of 1 g/cm3 is 4.5 g/cm3, eight ninths of it metal.
    Feedstock half = feedstock(8, 1).solidsLoading(volumePercent(50)).build();
    assertThat(half.massPerLength(millimetres(diameter)).in(TradeUnits.GRAM_PER_METRE))
        .isCloseTo(gramsPerMetre, within(5e-7));
    assertThat(half.metalPerLength(millimetres(diameter)).in(TradeUnits.GRAM_PER_METRE))
        .isCloseTo(gramsPerMetre * 8 / 9, within(5e-7));
    Feedstock light = feedstock(1.48, 1).solidsLoading(volumePercent(50)).build();
    assertThat(light.filamentLength(kilograms(1), millimetres(diameter)).in(TradeUnits.METRE))
        .isCloseTo(metresPerKilogram, within(5e-5));
  }

  @Test
  void takesBothFractionsWhereOneMixtureRoundsToThem() {
    // 0.895 by mass is 0.541 by volume: a sheet prints 90 % and 54 %.
    Feedstock rounded =
        feedstock(8.96, 1.24)
            .metalMassFraction(massPercent(90))
            .binderMassFraction(massPercent(10))
            .solidsLoading(volumePercent(54))
            .build();
    assertThat(rounded.metalMassFraction()).isEqualTo(massPercent(90));
    assertThat(rounded.solidsLoading()).isEqualTo(volumePercent(54));
  }

  /**
   * 0.895 and 0.905 by mass are 0.5412 and 0.5687 by volume (the formula, elsewhere), and half a
   * percent more either way.
   */
  @ParameterizedTest
  @CsvSource({"0.535, false", "0.537, true", "0.573, true", "0.575, false"})
  void fractionsAgreeWhereWholePercentsWould(double loading, boolean agree) {
    Feedstock.Builder both =
        feedstock(8.96, 1.24)
            .metalMassFraction(massFraction(0.9))
            .solidsLoading(volumeFraction(loading));
    if (agree) {
      assertThat(both.build().solidsLoading()).isEqualTo(volumeFraction(loading));
    } else {
      assertThatThrownBy(both::build)
          .hasMessageContaining("means a solids loading of 0.5547 m³/m³");
    }
  }

  @Test
  void theMetalsFractionCountsWhereTheBindersIsRounded() {
    Feedstock rounded =
        feedstock(8.96, 1.24)
            .metalMassFraction(massFraction(0.9))
            .binderMassFraction(massFraction(0.105))
            .build();
    assertThat(rounded.binderMassFraction().si()).isCloseTo(0.1, within(1e-15));
    assertThat(rounded.generic()).isFalse();
  }

  /** 0.9 to half a percent. */
  @ParameterizedTest
  @CsvSource({"0.904, 0.95, true", "0.906, 0.95, false", "0.85, 0.896, true", "0.85, 0.894, false"})
  void rangesLieAboutTheFraction(double low, double high, boolean about) {
    Feedstock.Builder ranged =
        feedstock(8.96, 1.24)
            .metalMassFraction(massFraction(0.9))
            .metalMassFractionRange(
                Sourced.of(Span.of(massFraction(low), massFraction(high)), SOURCE));
    if (about) {
      assertThat(ranged.build().metalMassFractionRange()).isPresent();
    } else {
      assertThatThrownBy(ranged::build).hasMessageContaining("lies outside its range");
    }
  }

  @Test
  void refusesContradictionsWithBothNumbers() {
    assertThatThrownBy(
            () ->
                feedstock(8.96, 1.24)
                    .metalMassFraction(massFraction(0.9))
                    .solidsLoading(volumeFraction(0.65))
                    .build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "feedstock of this test: a metal mass fraction of 0.9 kg/kg means a solids loading of"
                + " 0.5547 m³/m³, but 0.65 m³/m³ is stated; accepted is agreement to whole percents,"
                + " or one of the two");
    assertThatThrownBy(
            () ->
                feedstock(8.96, 1.24)
                    .metalMassFraction(massFraction(0.9))
                    .binderMassFraction(massFraction(0.2))
                    .build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "feedstock of this test: a metal mass fraction of 0.9 kg/kg and a binder mass fraction"
                + " of 0.2 kg/kg do not add up to 1; accepted is agreement to whole percents, or one"
                + " of the two");
  }

  @Test
  void refusesAMissingFraction() {
    assertThatThrownBy(() -> feedstock(8.96, 1.24).build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "feedstock of this test: neither metal mass fraction, binder mass fraction nor solids"
                + " loading is stated; accepted is at least one");
  }

  @Test
  void refusesFractionsOutOfRangeAllAtOnce() {
    assertThatThrownBy(
            () ->
                feedstock(8.96, 1.24)
                    .name(" ")
                    .metalMassFraction(massFraction(1))
                    .binderMassFraction(massFraction(-0.1))
                    .solidsLoading(volumeFraction(0))
                    .build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "feedstock  : name is blank; accepted is any text; and metal mass fraction is 1 kg/kg;"
                + " accepted is above 0 and below 1; and binder mass fraction is -0.1 kg/kg; accepted"
                + " is above 0 and below 1; and solids loading is 0 m³/m³; accepted is above 0 and"
                + " below 1");
  }
}
