package dev.kilnledger.units;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.fahrenheit;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.kelvin;
import static dev.kilnledger.units.Amounts.kelvinDifference;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.litres;
import static dev.kilnledger.units.Amounts.massPercent;
import static dev.kilnledger.units.Amounts.metres;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.pounds;
import static dev.kilnledger.units.Amounts.volumePercent;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.kilnledger.units.quantity.TemperatureDifference;
import java.math.BigDecimal;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

class AmountTest {

  @Test
  void keepsTheNumberAsGivenBesideTheRoundedSiValue() {
    assertThat(grams(9).si()).isEqualTo(0.009);
    assertThat(celsius(820).in(TradeUnits.CELSIUS)).isEqualTo(820);
    assertThat(celsius(820).si()).isEqualTo(1093.15);
    assertThat(grams(46).in(TradeUnits.KILOGRAM)).isEqualTo(0.046);
  }

  @Test
  void isEqualBySiValueWhateverTheUnit() {
    assertThat(grams(1000)).isEqualTo(kilograms(1)).hasSameHashCodeAs(kilograms(1));
    assertThat(grams(1000)).isNotEqualTo(kilograms(1.0000001));
    assertThat(massPercent(50)).isNotEqualTo(volumePercent(50));
    assertThat(kelvin(5)).isNotEqualTo(kelvinDifference(5));
    assertThat(grams(-0.0)).isEqualTo(grams(0)).hasSameHashCodeAs(grams(0)).hasToString("0 g");
    assertThat((Object) grams(-0.0).getValue()).isEqualTo(0.0);
    // Less than the smallest double is left of it in kilograms.
    assertThat(pounds(-Double.MIN_VALUE)).isEqualTo(grams(0)).hasSameHashCodeAs(grams(0));
  }

  @Test
  void unlikeAmountsSpreadOverTheBucketsOfATable() {
    assertThat(grams(1)).doesNotHaveSameHashCodeAs(grams(2));
    assertThat(massPercent(50)).doesNotHaveSameHashCodeAs(volumePercent(50));
  }

  @Test
  void staysEqualWhenConverted() {
    for (double number = 0.1; number < 2000; number *= 1.37) {
      Amount<Temperature> point = celsius(number);
      assertThat(point.to(TradeUnits.FAHRENHEIT)).isEqualTo(point);
      Amount<Mass> mass = grams(number);
      assertThat(mass.to(TradeUnits.POUND)).isEqualTo(mass);
    }
  }

  @Test
  void keepsItsNumberWhereTheUnitStays() {
    for (double number = 0.1; number < 2000; number *= 1.37) {
      assertThat(celsius(number).to(TradeUnits.CELSIUS).in(TradeUnits.CELSIUS)).isEqualTo(number);
    }
  }

  @Test
  void countsWholeNumbersOfAUnitWithoutRounding() {
    for (int number = 1; number < 1000; number++) {
      assertThat(grams(number).add(grams(7)).in(TradeUnits.GRAM)).isEqualTo(number + 7);
      assertThat(grams(number).subtract(grams(7)).in(TradeUnits.GRAM)).isEqualTo(number - 7);
    }
  }

  @Test
  void readsAnyUnitOfTheDimension() {
    Unit<Length> nautical = Units.METRE.multiply(1852);
    assertThat(Amount.of(2, nautical).si()).isEqualTo(3704);
    assertThat(Amount.of(2, nautical).in(TradeUnits.METRE)).isEqualTo(3704);
    assertThat(millimetres(1852).in(nautical)).isEqualTo(0.001);
    assertThat(Amount.of(7, MetricPrefix.MICRO(Units.GRAM)).si()).isEqualTo(7e-9);
    assertThat(Amount.of(3, MetricPrefix.FEMTO(Units.METRE)).si()).isEqualTo(3e-15);
  }

  @Test
  void readsAUnitAsTheKindItIsShippedFor() {
    assertThat(Amount.of(5, TradeUnits.MASS_PERCENT)).isEqualTo(massPercent(5));
    for (double number = 0.1; number < 1e4; number *= 1.013) {
      assertThat(Amount.of(number, TradeUnits.POUND)).isEqualTo(pounds(number));
      assertThat(Amount.of(number, TradeUnits.POUND, Kind.MASS)).isEqualTo(pounds(number));
    }
  }

  @Test
  void measuresWhatTheTradeHasNoKindFor() {
    assertThat(Amount.of(2, Units.CANDELA).kind().name()).isEqualTo("quantity in cd");
    assertThat(Amount.of(2, MetricPrefix.MILLI(Units.CANDELA)).si()).isEqualTo(0.002);
  }

  @Test
  void takesInAnyQuantity() {
    Quantity<Mass> outside = Quantities.getQuantity(250, Units.GRAM);
    assertThat(Amount.of(outside)).isEqualTo(grams(250));
    assertThat(grams(250).isEquivalentTo(outside)).isTrue();
    assertThat(grams(251).isEquivalentTo(outside)).isFalse();
    Amount<Mass> own = grams(3);
    assertThat(Amount.of((Quantity<Mass>) own)).isSameAs(own);
    assertThat(Amount.of(Quantities.getQuantity(20, Units.CELSIUS))).isEqualTo(celsius(20));
    Quantity<Temperature> relative =
        Quantities.getQuantity(20, Units.CELSIUS, Quantity.Scale.RELATIVE);
    assertThatThrownBy(() -> Amount.of(relative))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("temperature difference")
        .hasMessageContaining("Kind.TEMPERATURE_DIFFERENCE");
  }

  @Test
  void isReadByConsumersOfQuantities() {
    Quantity<Mass> sum = Quantities.getQuantity(1, Units.KILOGRAM).add(grams(250));
    assertThat(sum.to(Units.GRAM).getValue().doubleValue()).isEqualTo(1250);
    Quantity<TemperatureDifference> difference = kelvinDifference(5);
    assertThat(difference.getScale()).isEqualTo(Quantity.Scale.RELATIVE);
    assertThat(celsius(5).getScale()).isEqualTo(Quantity.Scale.ABSOLUTE);
  }

  @Test
  void calculatesWithinAKind() {
    assertThat(grams(40).add(grams(6))).isEqualTo(grams(46)).hasToString("46 g");
    assertThat(grams(40).add(kilograms(1))).isEqualTo(grams(1040)).hasToString("1040 g");
    assertThat(kilograms(1).subtract(grams(250))).isEqualTo(grams(750)).hasToString("0.75 kg");
    assertThat(grams(46).multiply(2)).isEqualTo(grams(92));
    assertThat(grams(46).multiply((Number) 2)).isEqualTo(grams(92));
    assertThat(grams(46).divide(4)).isEqualTo(grams(11.5));
    assertThat(grams(46).divide((Number) 4)).isEqualTo(grams(11.5));
    assertThat(grams(46).negate()).isEqualTo(grams(-46));
    assertThat(kilograms(1).ratio(grams(250))).isEqualTo(4);
    assertThat(grams(999).isLessThan(kilograms(1))).isTrue();
    assertThat(grams(1000).isLessThan(kilograms(1))).isFalse();
    assertThat(grams(1001).isGreaterThan(kilograms(1))).isTrue();
    assertThat(grams(1000).isGreaterThan(kilograms(1))).isFalse();
    assertThat(fahrenheit(212)).isLessThan(celsius(101)).isGreaterThan(celsius(99));
  }

  @Test
  void multipliesAndDividesAcrossKinds() {
    assertThat(millimetres(2).multiply(millimetres(3)).asType(javax.measure.quantity.Area.class))
        .isEqualTo(Amounts.squareMillimetres(6));
    assertThat(kilograms(1).divide(litres(2)).asType(si.uom.quantity.Density.class))
        .isEqualTo(Amounts.kilogramsPerCubicMetre(500));
    assertThat(Amounts.seconds(4).inverse().si()).isEqualTo(0.25);
    assertThat(Amounts.seconds(4).inverse().kind()).isEqualTo(Kind.FREQUENCY);
    assertThat(kilograms(4).inverse().kind().name()).isEqualTo("quantity in 1/kg");
  }

  @Test
  void composesTheSameKindInAnyOrder() {
    assertThat(kilograms(2).multiply(metres(3))).isEqualTo(metres(3).multiply(kilograms(2)));
    assertThat(kilograms(2).multiply(metres(3)).kind().name()).isEqualTo("quantity in kg·m");
    assertThat(Amounts.joules(6).multiply(Amounts.seconds(1)))
        .isEqualTo(Amounts.watts(6).multiply(Amounts.seconds(1)).multiply(Amounts.seconds(1)));
  }

  @Test
  void makesNoTemperatureOfARateAndATime() {
    Amount<?> fall = Amounts.kelvinPerHour(-100).multiply(Amounts.hours(5));
    assertThat(fall).isEqualTo(Amounts.kelvinDifference(-500));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void refusesWhatIsNotANumber(double number) {
    assertThatThrownBy(() -> grams(number))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("mass of " + number + " g")
        .hasMessageContaining("accepted are finite numbers");
    assertThatThrownBy(() -> grams(1).multiply(number))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> grams(1).divide(0)).isInstanceOf(IllegalArgumentException.class);
  }

  /** The largest double is about 1.8e308. */
  @Test
  void refusesWhatIsBeyondTheDoublesInEitherUnit() {
    assertThatThrownBy(() -> Amount.of(1e308, MetricPrefix.KILO(Units.METRE)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("length of 1.0E308 km is refused");
    assertThatThrownBy(() -> kilograms(1e306).to(TradeUnits.GRAM))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("mass of Infinity g is refused");
  }

  @Test
  void refusesTemperaturesBelowAbsoluteZero() {
    assertThat(celsius(-273.15).si()).isEqualTo(0);
    assertThat(fahrenheit(-459.67).si()).isEqualTo(0);
    assertThatThrownBy(() -> celsius(-274))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("-274.0 °C is below absolute zero")
        .hasMessageContaining("from 0 K (-273.15 °C) up");
    assertThat(kelvinDifference(-300).si()).isEqualTo(-300);
  }

  @Test
  void refusesToCalculateWithTemperaturePoints() {
    Amount<Temperature> point = celsius(1);
    assertThatThrownBy(() -> point.add(celsius(1)))
        .isInstanceOf(UnsupportedOperationException.class)
        .hasMessageContaining("cannot be added (1 °C)")
        .hasMessageContaining("TemperatureDifference");
    assertThatThrownBy(() -> point.subtract(celsius(1)))
        .isInstanceOf(UnsupportedOperationException.class);
    assertThatThrownBy(() -> point.multiply(2)).isInstanceOf(UnsupportedOperationException.class);
    assertThatThrownBy(() -> point.divide(2)).isInstanceOf(UnsupportedOperationException.class);
    assertThatThrownBy(() -> point.multiply(grams(2)))
        .isInstanceOf(UnsupportedOperationException.class);
    assertThatThrownBy(() -> grams(2).divide((Quantity<?>) point))
        .isInstanceOf(UnsupportedOperationException.class);
    assertThatThrownBy(() -> grams(2).multiply((Quantity<?>) point))
        .isInstanceOf(UnsupportedOperationException.class);
    assertThatThrownBy(() -> point.divide((Quantity<?>) grams(2)))
        .isInstanceOf(UnsupportedOperationException.class);
    assertThatThrownBy(point::negate).isInstanceOf(UnsupportedOperationException.class);
    assertThatThrownBy(point::inverse).isInstanceOf(UnsupportedOperationException.class);
  }

  @Test
  @SuppressWarnings({"unchecked", "rawtypes"})
  void refusesTheWrongKindEvenWhereTheTypesWereCastAway() {
    Unit metre = Units.METRE;
    assertThatThrownBy(() -> grams(46).in((Unit<Mass>) metre))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("unit m does not measure mass")
        .hasMessageContaining("accepted is a unit such as kg");
    assertThatThrownBy(() -> grams(46).add((Quantity) millimetres(3)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("3 mm is a length and does not go with 46 g")
        .hasMessageContaining("accepted is a mass");
    assertThatThrownBy(() -> massPercent(3).compareTo((Amount) volumePercent(3)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> grams(1).asType(Length.class)).isInstanceOf(ClassCastException.class);
    assertThatThrownBy(() -> grams(1).ratio(grams(0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("accepted is any but zero");
  }

  @Test
  void tellsAPointFromADifferenceByTheKind() {
    assertThat(Amount.of(5, Units.KELVIN, Kind.TEMPERATURE_DIFFERENCE))
        .isEqualTo(kelvinDifference(5));
    assertThatThrownBy(() -> Amount.of(5, Units.CELSIUS, Kind.TEMPERATURE_DIFFERENCE))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("cannot express a temperature difference");
  }

  @Test
  void countsInDecimals() {
    assertThat(grams(0.1).decimalIn(TradeUnits.GRAM)).isEqualByComparingTo("0.1");
    assertThat(grams(128).decimalIn(TradeUnits.KILOGRAM)).isEqualByComparingTo("0.128");
    assertThat(pounds(1).decimalIn(TradeUnits.GRAM)).isEqualByComparingTo("453.59237");
    assertThat(grams(128).decimalIn(TradeUnits.GRAM).multiply(BigDecimal.valueOf(1_000_000)))
        .isEqualByComparingTo("128000000");
    assertThatThrownBy(() -> celsius(3).decimalIn(TradeUnits.CELSIUS))
        .isInstanceOf(UnsupportedOperationException.class);
  }

  @Test
  void printsForPeople() {
    assertThat(celsius(820)).hasToString("820 °C");
    assertThat(Amounts.gramsPerCubicCentimetre(8.96)).hasToString("8.96 g/cm³");
    assertThat(Amounts.ratio(1.2)).hasToString("1.2");
    assertThat(grams(1234.565).format(TradeUnits.GRAM, 2)).isEqualTo("1234.57 g");
    assertThat(grams(1234.565).format(TradeUnits.KILOGRAM, 1)).isEqualTo("1.2 kg");
    assertThat(celsius(-0.04).format(TradeUnits.CELSIUS, 1)).isEqualTo("0.0 °C");
    assertThat(kilograms(1e-9)).hasToString("1E-9 kg");
    assertThat(kilograms(999_999_999_999_999d)).hasToString("999999999999999 kg");
    assertThat(kilograms(1e15)).hasToString("1E+15 kg");
  }
}
