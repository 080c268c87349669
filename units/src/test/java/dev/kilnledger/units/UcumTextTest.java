package dev.kilnledger.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tech.units.indriya.unit.AlternateUnit;
import tech.units.indriya.unit.Units;

class UcumTextTest {

  static Stream<UnitScale<?>> shipped() {
    return UnitScales.shipped().stream();
  }

  @ParameterizedTest
  @MethodSource("shipped")
  <Q extends Quantity<Q>> void printsAndReadsEveryShippedUnit(UnitScale<Q> scale) {
    Amount<Q> amount = new Amount<>(12.5, scale);
    assertThat(UcumText.print(amount)).isEqualTo("12.5 " + scale.ucum());
    assertThat(UcumText.parse("12.5 " + scale.ucum(), scale.kind())).isEqualTo(amount);
  }

  /** The codes of the table mean to the UCUM library what they mean here; it lacks the Rankine. */
  @ParameterizedTest
  @MethodSource("shipped")
  <Q extends Quantity<Q>> void meansWhatTheUcumLibraryReads(UnitScale<Q> scale) {
    if (!scale.ucum().startsWith("[degR]")) {
      Amount<?> byLibrary = UcumText.amount(12.5, scale.ucum());
      double si = scale.toSi(12.5);
      // A unit that is not in the table is resolved in doubles: offset, factor, product.
      assertThat(byLibrary.si()).isCloseTo(si, within(4 * Math.ulp(si)));
    }
  }

  @Test
  void readsUnitsThatAreNotShipped() {
    assertThat(UcumText.parse("2 kg/L", Kind.DENSITY).si()).isEqualTo(2000);
    assertThat(UcumText.parse("3 km", Kind.LENGTH).si()).isEqualTo(3000);
    assertThat(UcumText.parse("1e-2 W/(cm.K)", Kind.THERMAL_CONDUCTIVITY).si()).isEqualTo(1);
    assertThat(UcumText.print(UcumText.parse("3 km", Kind.LENGTH))).isEqualTo("3 km");
    assertThat(UcumText.parse("0.25", Kind.RATIO)).isEqualTo(Amounts.ratio(0.25));
  }

  @Test
  void tellsApartByKindWhatSharesACode() {
    assertThat(UcumText.parse("5 K", Kind.TEMPERATURE)).isEqualTo(Amounts.kelvin(5));
    assertThat(UcumText.parse("5 K", Kind.TEMPERATURE_DIFFERENCE))
        .isEqualTo(Amounts.kelvinDifference(5));
    assertThat(UcumText.parse("5 %", Kind.MASS_FRACTION)).isEqualTo(Amounts.massPercent(5));
    assertThat(UcumText.parse("5 %", Kind.VOLUME_FRACTION)).isEqualTo(Amounts.volumePercent(5));
    assertThatThrownBy(() -> UcumText.parse("5 Cel", Kind.TEMPERATURE_DIFFERENCE))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("cannot express a temperature difference");
  }

  @Test
  void fallsBackToSiWhereTheNumberWouldNotLeadBack() {
    for (double number = 0.1; number < 1000; number *= 1.1) {
      Amount<?> inPounds = Amounts.grams(number).to(TradeUnits.POUND);
      assertThat(UcumText.parse(UcumText.print(inPounds), Kind.MASS)).isEqualTo(inPounds);
    }
    Unit<Length> cubit = new AlternateUnit<Length>(Units.METRE, "cubit").divide(2);
    assertThat(UcumText.print(Amount.of(3, cubit))).isEqualTo("1.5 m");
  }

  @ParameterizedTest
  @ValueSource(strings = {"de-DE", "fr-FR", "tr-TR", "ar-EG", "hi-IN", "en-US"})
  void isTheSameInEveryLocale(String tag) {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(tag));
      assertThat(UcumText.print(Amounts.gramsPerCubicCentimetre(8.96))).isEqualTo("8.96 g/cm3");
      assertThat(UcumText.parse("1234.5 [lb_av]", Kind.MASS)).isEqualTo(Amounts.pounds(1234.5));
      assertThat(UcumText.print(UcumText.parse("2.5 kg/L", Kind.DENSITY))).isEqualTo("2.5 kg/L");
      assertThat(Amounts.celsius(1234.5)).hasToString("1234.5 °C");
      assertThat(Amounts.grams(1234.5).format(TradeUnits.KILOGRAM, 2)).isEqualTo("1.23 kg");
    } finally {
      Locale.setDefault(before);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "g", "1,5 g", "1.5g", "1.5  g", " 1.5 g", "NaN g", "0x10 g", "1.5 g g", "٣ g"})
  void refusesWhatIsNotANumberAndACode(String text) {
    assertThatThrownBy(() -> UcumText.parse(text, Kind.MASS))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("\"" + text + "\" is no mass")
        .hasMessageContaining("such as \"1.5 kg\"");
  }

  @ParameterizedTest
  @ValueSource(strings = {"mm³", "foo", "(((", "kg.", "°C", "g/cm³", "cm3{}", "cm3{dry}/s"})
  void refusesUnknownCodes(String code) {
    assertThatThrownBy(() -> UcumText.parse("1 " + code, Kind.MASS))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("\"" + code + "\" is not a unit code")
        .hasMessageContaining("\"g/cm3\"");
  }

  @ParameterizedTest
  @ValueSource(strings = {"m100", "m9999", "g.s-99999/m", "[in_i]2147483647"})
  void refusesExponentsThatWouldRunOutOfStack(String code) {
    assertThatThrownBy(() -> UcumText.parse("1 " + code, Kind.LENGTH))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("\"" + code + "\" has an exponent of more than two digits");
  }

  /** A degree Fahrenheit to the first power is the same unit and another object. */
  @Test
  void readsBackWhatAnotherSpellingOfAUnitGave() {
    for (double number = -400; number < 3000; number += 7.3) {
      Amount<Temperature> read = UcumText.parse(number + " [degF]1", Kind.TEMPERATURE);
      assertThat(UcumText.parse(UcumText.print(read), Kind.TEMPERATURE)).isEqualTo(read);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"dB", "Np"})
  void refusesLogarithms(String code) {
    assertThatThrownBy(() -> UcumText.parse("9 " + code, Kind.RATIO))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("is not proportional to one and cannot express a ratio");
  }

  @Test
  void refusesOtherDimensionsOverlongCodesAndHugeNumbers() {
    assertThatThrownBy(() -> UcumText.parse("1 mm", Kind.MASS))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("does not measure mass")
        .hasMessageContaining("accepted is a unit such as kg");
    assertThatThrownBy(() -> UcumText.parse("1 " + "kg.".repeat(40) + "kg", Kind.MASS))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("longer than 64 characters");
    String longest = "kW.h" + ".m/m".repeat(15);
    assertThat(UcumText.parse("1 " + longest, Kind.ENERGY)).isEqualTo(Amounts.kilowattHours(1));
    assertThatThrownBy(() -> UcumText.parse("1 " + longest + ".m", Kind.ENERGY))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("unit code \"" + longest + "…\" is longer than 64 characters");
    assertThatThrownBy(() -> UcumText.parse(longest, Kind.ENERGY))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("\"" + longest + "\" is no energy");
    assertThatThrownBy(() -> UcumText.parse("1e999 g", Kind.MASS))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("accepted are finite numbers");
    assertThatThrownBy(() -> UcumText.parse("-300 Cel", Kind.TEMPERATURE))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("below absolute zero");
  }

  @Test
  void kindIsToldByTheUnitWhereNoneIsGiven() {
    assertThat(UcumText.parse("8.96 g/cm3")).isEqualTo(Amounts.gramsPerCubicCentimetre(8.96));
    assertThat(UcumText.parse("820 Cel").kind()).isEqualTo(Kind.TEMPERATURE);
    assertThat(UcumText.parse("2 kg-1").kind().name()).isEqualTo("quantity in 1/kg");
    assertThatThrownBy(() -> UcumText.parse("2,5 g"))
        .hasMessageContaining("\"2,5 g\" is no amount");
  }

  @Test
  void kindIsOneOfSeveral() {
    List<Kind<?>> kinds = List.of(Kind.MASS, Kind.TIME, Kind.RATIO);
    assertThat(UcumText.parse("2 g", kinds)).isEqualTo(Amounts.grams(2));
    assertThat(UcumText.parse("2 wk", kinds)).isEqualTo(Amounts.days(14)); // a week is not shipped
    assertThat(UcumText.parse("2", kinds)).isEqualTo(Amounts.ratio(2));
    assertThat(UcumText.parse("2 %", kinds)).isEqualTo(Amounts.percent(2));
    // The UCUM library does not know the Rankine; 9 of them are 5 K (NIST SP 811).
    assertThat(UcumText.parse("9 [degR]", List.of(Kind.MASS, Kind.TEMPERATURE_DIFFERENCE)))
        .isEqualTo(Amounts.kelvinDifference(5));
    for (String wrong : List.of("2 mm", "2 parsecs", "two g", "1e999 g")) {
      assertThatThrownBy(() -> UcumText.parse(wrong, kinds))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("accepted");
    }
  }

  @Test
  void kindsAreFoundByTheirName() {
    assertThat(Kind.named("heating rate")).contains(Kind.HEATING_RATE);
    assertThat(Kind.named("frequency")).contains(Kind.FREQUENCY);
    assertThat(Kind.named("quantity in 1/kg")).isEmpty();
  }
}
