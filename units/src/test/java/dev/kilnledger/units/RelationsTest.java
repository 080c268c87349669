package dev.kilnledger.units;

import static dev.kilnledger.units.Amounts.*;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Worked by hand from the formula in each method's documentation, unless a source is named. */
class RelationsTest {

  @Test
  void relatesMassVolumeAndDensity() {
    assertThat(
            Relations.massOf(gramsPerCubicCentimetre(8), cubicCentimetres(2)).in(TradeUnits.GRAM))
        .isCloseTo(16, within(1e-12));
    assertThat(Relations.volumeOf(grams(16), gramsPerCubicCentimetre(8)).in(TradeUnits.MILLILITRE))
        .isCloseTo(2, within(1e-12));
    assertThat(Relations.densityOf(kilograms(3), litres(2)))
        .isEqualTo(kilogramsPerCubicMetre(1500));
    assertThat(Relations.massShare(kilograms(2), massPercent(25))).isEqualTo(kilograms(0.5));
    assertThat(Relations.massFractionOf(kilograms(1), kilograms(4))).isEqualTo(massFraction(0.25));
    assertThat(Relations.volumeShare(litres(2), volumePercent(25))).isEqualTo(litres(0.5));
    assertThat(Relations.volumeFractionOf(litres(1), litres(4))).isEqualTo(volumeFraction(0.25));
    assertThat(
            Relations.relativeDensityOf(kilogramsPerCubicMetre(6000), kilogramsPerCubicMetre(8000)))
        .isEqualTo(volumeFraction(0.75));
  }

  @Test
  void relatesLengthsAreasAndVolumes() {
    assertThat(Relations.areaOf(metres(2), metres(3))).isEqualTo(squareMetres(6));
    assertThat(Relations.volumeOfPrism(squareMetres(6), metres(0.5))).isEqualTo(cubicMetres(3));
    assertThat(Relations.volumeOfBox(metres(2), metres(3), metres(4))).isEqualTo(cubicMetres(24));
    assertThat(Relations.lengthOfPrism(cubicMetres(3), squareMetres(6))).isEqualTo(metres(0.5));
    // pi d^2 / 4 of the two usual filaments, to ten digits.
    assertThat(Relations.areaOfCircle(millimetres(1.75)).in(TradeUnits.SQUARE_MILLIMETRE))
        .isCloseTo(2.405281875, within(1e-9));
    assertThat(Relations.areaOfCircle(millimetres(2.85)).in(TradeUnits.SQUARE_MILLIMETRE))
        .isCloseTo(6.379396582, within(1e-9));
  }

  /** 1 kg of 1.24 g/cm3 in 1.75 mm is 335.28 m: 1000 g / 1.24 g/cm3 over pi d^2 / 4, recomputed. */
  @Test
  void relatesStrandsToMass() {
    var perMetre =
        Relations.linearDensityOf(
            gramsPerCubicCentimetre(1.24), Relations.areaOfCircle(millimetres(1.75)));
    assertThat(Relations.lengthOfStrand(kilograms(1), perMetre).in(TradeUnits.METRE))
        .isCloseTo(335.2836, within(5e-5));
    assertThat(Relations.massOfStrand(gramsPerMetre(3), metres(10)).in(TradeUnits.GRAM))
        .isCloseTo(30, within(1e-12));
  }

  @Test
  void relatesTemperaturesDifferencesAndRates() {
    assertThat(Relations.difference(celsius(20), celsius(820))).isEqualTo(kelvinDifference(800));
    assertThat(Relations.difference(celsius(0.1), celsius(0.4)).si()).isEqualTo(0.4 - 0.1);
    assertThat(Relations.difference(celsius(100), fahrenheit(32)).si())
        .isCloseTo(-100, within(1e-12));
    assertThat(Relations.difference(fahrenheit(32), fahrenheit(212)))
        .isEqualTo(kelvinDifference(100));
    assertThat(Relations.shifted(celsius(20), kelvinDifference(800)))
        .isEqualTo(celsius(820))
        .hasToString("820 °C");
    assertThat(Relations.shifted(fahrenheit(32), kelvinDifference(100))).isEqualTo(fahrenheit(212));
    assertThatThrownBy(() -> Relations.shifted(celsius(20), kelvinDifference(-300)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("below absolute zero");
    assertThat(Relations.durationOf(kelvinDifference(120), kelvinPerHour(60)).in(TradeUnits.HOUR))
        .isCloseTo(2, within(1e-15));
    assertThat(Relations.rateOf(kelvinDifference(120), hours(2)).in(TradeUnits.KELVIN_PER_HOUR))
        .isCloseTo(60, within(1e-13));
    assertThat(Relations.differenceOver(kelvinPerMinute(2), minutes(30)).si())
        .isCloseTo(60, within(1e-13));
    assertThat(Relations.expansionOver(micrometresPerMetreKelvin(17), kelvinDifference(1000)).si())
        .isCloseTo(0.017, within(1e-17));
  }

  @Test
  void relatesHeatAndPower() {
    assertThat(Relations.energyOf(kilowatts(2), hours(3))).isEqualTo(kilowattHours(6));
    assertThat(Relations.meanPower(kilowattHours(6), hours(3))).isEqualTo(kilowatts(2));
    assertThat(
            Relations.heatToWarm(kilograms(2), joulesPerKilogramKelvin(400), kelvinDifference(10)))
        .isEqualTo(joules(8000));
    assertThat(Relations.energyOfMass(kilograms(2), joulesPerGram(3))).isEqualTo(joules(6000));
    assertThat(
            Relations.heatFlow(
                wattsPerMetreKelvin(0.5), squareMetres(2), kelvinDifference(100), metres(0.25)))
        .isEqualTo(watts(400));
    assertThat(
            Relations.diffusivityOf(
                    wattsPerMetreKelvin(0.5),
                    kilogramsPerCubicMetre(2000),
                    joulesPerKilogramKelvin(1000))
                .in(TradeUnits.SQUARE_MILLIMETRE_PER_SECOND))
        .isCloseTo(0.25, within(1e-15));
    assertThat(Relations.powerOf(volts(230), amperes(10))).isEqualTo(watts(2300));
    assertThat(Relations.currentOf(watts(2300), volts(230))).isEqualTo(amperes(10));
  }

  @Test
  void refusesResultsThatAreNotFinite() {
    assertThatThrownBy(() -> Relations.densityOf(grams(3), litres(0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "no finite density follows from [3 g, 0 L]; accepted are divisors other than zero");
  }
}
