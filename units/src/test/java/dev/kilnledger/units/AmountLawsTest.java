package dev.kilnledger.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.units.AnyAmount.Conversion;
import dev.kilnledger.units.AnyAmount.Points;
import dev.kilnledger.units.AnyAmount.Two;
import dev.kilnledger.units.quantity.TemperatureDifference;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import tech.units.indriya.quantity.Quantities;

/**
 * What holds for every amount in every shipped unit. One rounding of a double is half an ulp, so
 * tolerances are told in ulps, by the number of roundings between the two figures.
 */
@Domain(AnyAmount.class)
@Domain(DomainContext.Global.class)
class AmountLawsTest {

  @Law
  void readsBackInTheUnitGivenTheVeryNumber(@ForAll Amount<?> amount) {
    assertThat(inItsUnit(amount)).isEqualTo(amount.getValue());
  }

  @Law
  void staysEqualInEveryUnitOfItsKind(@ForAll Conversion<?> conversion) {
    Amount<?> there = there(conversion);
    assertThat(there).isEqualTo(conversion.amount()).hasSameHashCodeAs(conversion.amount());
    assertThat(there.si()).isEqualTo(conversion.amount().si());
  }

  @Law
  void comesBackFromTheNumberInAnotherUnit(@ForAll Conversion<?> conversion) {
    // Into the unit one rounding, back to SI another; an offset of a scale may add its own ulp.
    double si = conversion.amount().si();
    double offset = Math.abs(conversion.target().fromSi(0));
    double step = Math.ulp(offset) * conversion.target().numerator();
    assertThat(rebuilt(conversion).si())
        .isCloseTo(si, within(2 * Math.ulp(si) + step / conversion.target().denominator()));
  }

  @Law
  void isReadBackFromItsText(@ForAll Amount<?> amount) {
    assertThat(UcumText.parse(UcumText.print(amount), amount.kind())).isEqualTo(amount);
  }

  @Law
  void isReadBackFromItsTextInAnotherUnit(@ForAll Conversion<?> conversion) {
    Amount<?> there = there(conversion);
    assertThat(UcumText.parse(UcumText.print(there), there.kind())).isEqualTo(conversion.amount());
  }

  @Law
  void isReadBackFromItsBytes(@ForAll Conversion<?> conversion) throws Exception {
    Object back = copied(there(conversion));
    assertThat(back).isEqualTo(conversion.amount());
  }

  @Law
  void keepsTheUnitInItsText(@ForAll Amount<?> amount) {
    // Of an amount as it was given, number and unit lead to the SI value by definition.
    Amount<?> back = UcumText.parse(UcumText.print(amount), amount.kind());
    assertThat(back.getUnit()).isSameAs(amount.getUnit());
    assertThat(back.getValue()).isEqualTo(amount.getValue());
  }

  @Law
  void ordersAsTheDecimalNumbersDo(@ForAll Two<?> two) {
    BigDecimal a = decimalSi(two.a());
    BigDecimal b = decimalSi(two.b());
    double apart = a.subtract(b).abs().doubleValue();
    // Each SI value is off by half an ulp at most, so what is further apart keeps its order. Where
    // a number and the offset of its scale are the same decimal, what the double lacks is dropped.
    double offset = two.a().kind().isPoint() ? Math.ulp(459.67) : 0;
    Assume.that(apart > Math.ulp(two.a().si()) + Math.ulp(two.b().si()) + offset);
    assertThat(Integer.signum(compared(two))).isEqualTo(a.compareTo(b));
  }

  @Law
  void growsWithTheNumberInOneUnit(
      @ForAll Amount<?> amount, @ForAll @IntRange(max = 100) int step) {
    double number = amount.getValue().doubleValue();
    double larger = number + Math.abs(number) * step / 100;
    assertThat(withNumber(amount, larger).si()).isGreaterThanOrEqualTo(amount.si());
  }

  @Law
  void comparesBothWaysAlike(@ForAll Two<?> two) {
    assertThat(compared(two)).isEqualTo(-comparedBack(two));
    assertThat(compared(two) == 0).isEqualTo(two.a().equals(two.b()));
  }

  @Law
  void addsInEitherOrder(@ForAll Two<?> two) {
    Assume.that(!two.a().kind().isPoint());
    // The sum is taken in the unit of the first: its number may be one rounding off.
    double size = Math.abs(two.a().si()) + Math.abs(two.b().si());
    assertThat(sum(two).si()).isCloseTo(sumBack(two).si(), within(2 * Math.ulp(size)));
  }

  @Law
  void takesAwayWhatItAdded(@ForAll Two<?> two) {
    Assume.that(!two.a().kind().isPoint());
    double size = Math.abs(two.a().si()) + Math.abs(two.b().si());
    assertThat(sumLessSecond(two).si()).isCloseTo(two.a().si(), within(3 * Math.ulp(size)));
  }

  @Law
  void scalesByPowersOfTwoWithoutRounding(
      @ForAll Amount<?> amount, @ForAll @IntRange(min = -20, max = 20) int power) {
    Assume.that(!amount.kind().isPoint());
    double factor = Math.scalb(1.0, power);
    Amount<?> back = amount.multiply(factor).divide(factor);
    assertThat(back).isEqualTo(amount);
    assertThat(back.getValue()).isEqualTo(amount.getValue());
  }

  @Law
  void isItsRatioTimesTheOther(@ForAll Two<?> two) {
    Assume.that(two.b().si() != 0);
    double ratio = ratio(two);
    assertThat(ratio * two.b().si()).isCloseTo(two.a().si(), within(2 * Math.ulp(two.a().si())));
  }

  @Law
  void closesUnderProductsOfUnits(@ForAll Amount<?> a, @ForAll Amount<?> b) {
    Assume.that(!a.kind().isPoint() && !b.kind().isPoint() && b.si() != 0);
    Amount<?> back = a.multiply(b).divide(b);
    assertThat(back.getUnit().getDimension()).isEqualTo(a.getUnit().getDimension());
    // Product, quotient and the factors of two composed units: some roundings each.
    assertThat(back.si()).isCloseTo(a.si(), within(8 * Math.ulp(a.si())));
  }

  @Law
  void multipliesInEitherOrder(@ForAll Amount<?> a, @ForAll Amount<?> b) {
    Assume.that(!a.kind().isPoint() && !b.kind().isPoint());
    Amount<?> one = a.multiply(b);
    Amount<?> other = b.multiply(a);
    assertThat(one.kind()).isEqualTo(other.kind());
    assertThat(one.si()).isCloseTo(other.si(), within(4 * Math.ulp(one.si())));
  }

  @Law
  void isItsInverseTurnedOverAgain(@ForAll Amount<?> amount) {
    Assume.that(!amount.kind().isPoint() && amount.si() != 0);
    Amount<?> back = amount.inverse().inverse();
    assertThat(back.si()).isCloseTo(amount.si(), within(8 * Math.ulp(amount.si())));
  }

  @Law
  void countsInDecimalsWhatItReadsInDoubles(@ForAll Conversion<?> conversion) {
    Assume.that(!conversion.amount().kind().isPoint());
    double decimal = decimal(conversion).doubleValue();
    // The decimal is rounded once; the double goes through the SI value and is rounded twice.
    assertThat(there(conversion).getValue().doubleValue())
        .isCloseTo(decimal, within(2 * Math.ulp(decimal)));
  }

  @Law
  void showsTheNumberRoundedHalfUp(
      @ForAll Amount<?> amount, @ForAll @IntRange(max = 8) int decimals) {
    String shown = formatted(amount, decimals).split(" ", 2)[0];
    BigDecimal number = BigDecimal.valueOf(amount.getValue().doubleValue());
    assertThat(new BigDecimal(shown)).isEqualTo(number.setScale(decimals, RoundingMode.HALF_UP));
  }

  @Law
  void refusesWhatIsNoNumberInEveryUnit(@ForAll Amount<?> amount) {
    for (double bad :
        new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
      assertThatThrownBy(() -> withNumber(amount, bad))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("accepted are finite numbers");
    }
  }

  @Law
  void refusesTemperaturesBelowAbsoluteZeroInEveryScale(@ForAll Points points) {
    Amount<Temperature> temperature = points.from();
    double zero = temperature.scale().fromSi(0);
    double below = zero - 1e-9 - Math.abs(temperature.getValue().doubleValue() - zero);
    assertThatThrownBy(() -> withNumber(temperature, below))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("below absolute zero");
  }

  @Law
  void leadsFromOneTemperatureToTheOtherByTheirDifference(@ForAll Points points) {
    Amount<Temperature> from = points.from();
    Amount<Temperature> to = points.to();
    Amount<TemperatureDifference> apart = Relations.difference(from, to);
    double size = from.si() + to.si() + 459.67;
    assertThat(apart.si()).isCloseTo(to.si() - from.si(), within(4 * Math.ulp(size)));
    assertThat(Relations.difference(to, from).si()).isEqualTo(-apart.si());
    // The way back can miss absolute zero by a rounding, below which there is nothing.
    Assume.that(to.si() > 8 * Math.ulp(size));
    assertThat(Relations.shifted(from, apart).si()).isCloseTo(to.si(), within(8 * Math.ulp(size)));
  }

  @Law
  void takesInTheQuantitiesOfTheUnitsLibrary(@ForAll Amount<?> amount) {
    Assume.that(!amount.kind().equals(Kind.TEMPERATURE_DIFFERENCE));
    assertThat(foreign(amount)).isEqualTo(amount);
  }

  @Example
  void agreesOnAbsoluteZeroInAllScales() {
    assertThat(Amounts.celsius(-273.15))
        .isEqualTo(Amounts.kelvin(0))
        .isEqualTo(Amounts.fahrenheit(-459.67));
  }

  private static <Q extends Quantity<Q>> double inItsUnit(Amount<Q> amount) {
    return amount.in(amount.getUnit());
  }

  private static <Q extends Quantity<Q>> Amount<Q> there(Conversion<Q> conversion) {
    return conversion.amount().to(conversion.target().unit());
  }

  private static <Q extends Quantity<Q>> Amount<Q> rebuilt(Conversion<Q> conversion) {
    double number = conversion.amount().in(conversion.target().unit());
    double zero = conversion.target().fromSi(0);
    return Amount.of(
        conversion.target().kind().isPoint() ? Math.max(number, zero) : number,
        conversion.target().unit());
  }

  private static <Q extends Quantity<Q>> BigDecimal decimal(Conversion<Q> conversion) {
    return conversion.amount().decimalIn(conversion.target().unit());
  }

  private static BigDecimal decimalSi(Amount<?> amount) {
    UnitScale<?> scale = amount.scale();
    BigDecimal shift =
        switch (scale.ucum()) {
          case "Cel" -> new BigDecimal("273.15");
          case "[degF]" -> new BigDecimal("459.67");
          default -> BigDecimal.ZERO;
        };
    return new BigDecimal(amount.getValue().doubleValue())
        .add(shift)
        .multiply(new BigDecimal(scale.numerator()))
        .divide(new BigDecimal(scale.denominator()), MathContext.DECIMAL128);
  }

  private static <Q extends Quantity<Q>> int compared(Two<Q> two) {
    return two.a().compareTo(two.b());
  }

  private static <Q extends Quantity<Q>> int comparedBack(Two<Q> two) {
    return two.b().compareTo(two.a());
  }

  private static <Q extends Quantity<Q>> Amount<Q> sum(Two<Q> two) {
    return two.a().add(two.b());
  }

  private static <Q extends Quantity<Q>> Amount<Q> sumBack(Two<Q> two) {
    return two.b().add(two.a());
  }

  private static <Q extends Quantity<Q>> Amount<Q> sumLessSecond(Two<Q> two) {
    return two.a().add(two.b()).subtract(two.b());
  }

  private static <Q extends Quantity<Q>> double ratio(Two<Q> two) {
    return two.a().ratio(two.b());
  }

  private static <Q extends Quantity<Q>> Amount<Q> withNumber(Amount<Q> amount, double number) {
    return Amount.of(number, amount.getUnit());
  }

  private static <Q extends Quantity<Q>> String formatted(Amount<Q> amount, int decimals) {
    return amount.format(amount.getUnit(), decimals);
  }

  private static <Q extends Quantity<Q>> Amount<Q> foreign(Amount<Q> amount) {
    return Amount.of(Quantities.getQuantity(amount.getValue(), amount.getUnit()));
  }

  private static Object copied(Object value) throws IOException, ClassNotFoundException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(value);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      return in.readObject();
    }
  }
}
