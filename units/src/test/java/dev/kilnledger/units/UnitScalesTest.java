package dev.kilnledger.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.function.LogConverter;
import tech.units.indriya.unit.TransformedUnit;
import tech.units.indriya.unit.Units;

class UnitScalesTest {

  static Stream<UnitScale<?>> shipped() {
    return UnitScales.shipped().stream();
  }

  /**
   * The factors of the table against those of the units library, computed in its own arithmetic.
   */
  @ParameterizedTest
  @MethodSource("shipped")
  void agreesWithTheUnitsLibrary(UnitScale<?> scale) throws IncommensurableException {
    UnitConverter converter = scale.unit().getConverterToAny(scale.kind().siUnit());
    for (double number : new double[] {0, 1, 7, 820, 1234.5}) {
      BigDecimal expected = new BigDecimal(converter.convert(new BigDecimal(number)).toString());
      // One rounding of the double; the library itself works to 34 digits.
      assertThat(scale.toSi(number))
          .isCloseTo(expected.doubleValue(), within(Math.ulp(expected.doubleValue())));
    }
  }

  @ParameterizedTest
  @MethodSource("shipped")
  void readsBackWhatItWasGiven(UnitScale<?> scale) {
    for (double number = 1e-3; number < 1e6; number *= 3.7) {
      double back = scale.fromSi(scale.toSi(number));
      // Two roundings of the SI value, seen in this unit; an offset can be larger than the number.
      double si = scale.toSi(number);
      double tolerance =
          2 * Math.ulp(si) * scale.denominator() / scale.numerator() + Math.ulp(number);
      assertThat(back).isCloseTo(number, within(tolerance));
    }
  }

  @Test
  void roundsOnceWhereTheFactorIsNotARoundNumber() {
    BigDecimal pound = new BigDecimal("0.45359237");
    for (double number = 0.1; number < 1e4; number *= 1.013) {
      double exact = new BigDecimal(number).multiply(pound).doubleValue();
      assertThat(UnitScales.POUND.toSi(number)).isEqualTo(exact);
    }
    BigDecimal fahrenheit = new BigDecimal("459.67");
    for (double number = -100; number < 3000; number += 0.7) {
      double exact =
          new BigDecimal(number)
              .add(fahrenheit)
              .multiply(BigDecimal.valueOf(5))
              .divide(BigDecimal.valueOf(9), MathContext.DECIMAL128)
              .doubleValue();
      assertThat(UnitScales.FAHRENHEIT.toSi(number)).isEqualTo(exact);
      double kelvin = new BigDecimal(number).add(new BigDecimal("273.15")).doubleValue();
      assertThat(UnitScales.CELSIUS.toSi(number)).isEqualTo(kelvin);
    }
  }

  @Test
  void takesTheOffsetOffAgainInAllItsDigits() {
    for (int number = 137; number < 540; number++) {
      BigDecimal exact = BigDecimal.valueOf(number).subtract(new BigDecimal("273.15"));
      assertThat(UnitScales.CELSIUS.fromSi(number)).isEqualTo(exact.doubleValue());
    }
  }

  /** A scale of half kelvins, counted from 256 K, so that factor and offset are exact. */
  @Test
  void roundsOnceOnATemperatureScaleThatIsNotShipped() {
    Unit<Temperature> scale = Units.KELVIN.multiply(0.5).shift(512);
    for (double number = -500; number < 3000; number += 0.7) {
      double exact =
          new BigDecimal(number)
              .add(BigDecimal.valueOf(512))
              .divide(BigDecimal.valueOf(2))
              .doubleValue();
      assertThat(Amount.of(number, scale).si()).isEqualTo(exact);
    }
  }

  @Test
  void readsPoundsUpToTheLargestDouble() {
    // 1e305 times 45359237 is beyond the doubles. Two roundings, each of half a unit.
    double exact = new BigDecimal("1e305").multiply(new BigDecimal("0.45359237")).doubleValue();
    assertThat(UnitScales.POUND.toSi(1e305)).isCloseTo(exact, within(2 * Math.ulp(exact)));
  }

  /** NIST Special Publication 811 (2008), appendix B.8; exact ones are printed in bold there. */
  @ParameterizedTest
  @CsvSource({
    "1 [in_i], LENGTH, 0.0254",
    "1 [lb_av], MASS, 0.45359237",
    "1 [oz_av], MASS, 0.028349523125",
    "1 atm, PRESSURE, 101325",
    "1 bar, PRESSURE, 100000",
    "1 kW.h, ENERGY, 3600000",
    "1 L, VOLUME, 0.001",
    "1 d, TIME, 86400",
    "212 [degF], TEMPERATURE, 373.15",
    "32 [degF], TEMPERATURE, 273.15",
    "9 [degR], TEMPERATURE_DIFFERENCE, 5",
    "1 g/cm3, DENSITY, 1000"
  })
  void agreesWithTheNationalStandard(String text, String kind, double si) throws Exception {
    Kind<?> named = (Kind<?>) Kind.class.getField(kind).get(null);
    assertThat(UcumText.parse(text, named).si()).isEqualTo(si);
  }

  @Test
  void givesEveryUnitOneObjectAndOneCode() {
    Set<Object> units = new HashSet<>();
    Set<String> codes = new HashSet<>();
    shipped()
        .forEach(
            scale -> {
              assertThat(units.add(System.identityHashCode(scale.unit()))).isTrue();
              assertThat(codes.add(scale.kind() + " " + scale.ucum())).isTrue();
              assertThat(scale.ucum()).isNotEmpty();
            });
  }

  @Test
  void refusesUnitsThatAreNotProportional() {
    Unit<Dimensionless> decibel =
        new TransformedUnit<>(AbstractUnit.ONE, new LogConverter(10).inverse());
    assertThatThrownBy(() -> Amount.of(3, decibel))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("is not proportional to one");
    assertThatThrownBy(() -> Amount.of(3, Units.METRE.multiply(0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("is not proportional to m");
    assertThatThrownBy(() -> Amount.of(3, Units.METRE.multiply(1e308).multiply(1e308)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("is not proportional to m");
  }
}
