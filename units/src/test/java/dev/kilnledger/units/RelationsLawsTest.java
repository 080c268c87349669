package dev.kilnledger.units;

import static dev.kilnledger.units.Amounts.cubicCentimetres;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kilowatts;
import static dev.kilnledger.units.Amounts.litres;
import static dev.kilnledger.units.Amounts.volts;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Mass;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/**
 * What the formulas of the trade must do to each other: whatever one builds up, another takes apart
 * again. Each formula rounds once for each multiplication or division, half an ulp.
 */
class RelationsLawsTest {
  @Provide
  Arbitrary<Double> positive() {
    return Combinators.combine(
            Arbitraries.doubles().between(1, 10).ofScale(12), Arbitraries.integers().between(-3, 5))
        .as((digits, exponent) -> digits * Math.pow(10, exponent));
  }

  @Law
  void findsTheMassAgainFromDensityAndVolume(
      @ForAll("positive") double mass, @ForAll("positive") double volume) {
    Amount<Mass> given = grams(mass);
    var density = Relations.densityOf(given, cubicCentimetres(volume));
    close(Relations.massOf(density, cubicCentimetres(volume)), given);
    close(Relations.volumeOf(given, density), cubicCentimetres(volume));
  }

  @Law
  void sharesAWholeSoThatTheSharesMakeItUp(
      @ForAll("positive") double mass, @ForAll @DoubleRange(max = 1) double share) {
    Amount<Mass> whole = grams(mass);
    Amount<Mass> one = Relations.massShare(whole, Amounts.massFraction(share));
    Amount<Mass> rest = Relations.massShare(whole, Amounts.massFraction(1 - share));
    close(one.add(rest), whole);
    assertThat(Relations.massFractionOf(one, whole).si())
        .isCloseTo(share, within(2 * Math.ulp(1.0)));
  }

  @Law
  void arrivesAfterTheTimeThatARampTakes(
      @ForAll("positive") double kelvin, @ForAll("positive") double rate) {
    var apart = Amounts.kelvinDifference(kelvin);
    var duration = Relations.durationOf(apart, kelvinPerHour(rate));
    close(Relations.differenceOver(kelvinPerHour(rate), duration), apart);
    close(Relations.rateOf(apart, duration), kelvinPerHour(rate));
  }

  @Law
  void givesAProductTheKindThatItsFormulaHas(
      @ForAll("positive") double rate, @ForAll @DoubleRange(min = -100, max = 100) double time) {
    // A rate times a time is a difference, even a falling one; never a point on a scale.
    Amount<?> product = kelvinPerHour(rate).multiply(hours(time));
    assertThat(product.kind()).isEqualTo(Kind.TEMPERATURE_DIFFERENCE);
    assertThat(product.si()).isCloseTo(rate * time, within(4 * Math.ulp(rate * time)));
  }

  @Law
  void findsThePowerAgainFromEnergyAndTime(
      @ForAll("positive") double power, @ForAll("positive") double time) {
    Amount<Energy> energy = Relations.energyOf(kilowatts(power), hours(time));
    close(Relations.meanPower(energy, hours(time)), kilowatts(power));
    assertThat(energy.in(TradeUnits.KILOWATT_HOUR))
        .isCloseTo(power * time, within(4 * Math.ulp(power * time)));
  }

  @Law
  void findsTheCurrentAgainFromPowerAndVoltage(
      @ForAll("positive") double power, @ForAll("positive") double voltage) {
    var current = Relations.currentOf(kilowatts(power), volts(voltage));
    close(Relations.powerOf(volts(voltage), current), kilowatts(power));
  }

  @Law
  void windsOffTheStrandThatItWound(
      @ForAll("positive") double mass, @ForAll("positive") double density) {
    var section = Relations.areaOfCircle(Amounts.millimetres(1.75));
    var linear = Relations.linearDensityOf(Amounts.gramsPerCubicCentimetre(density), section);
    close(
        Relations.massOfStrand(linear, Relations.lengthOfStrand(grams(mass), linear)), grams(mass));
  }

  @Law
  void findsTheHeightAgainOfAPrism(
      @ForAll("positive") double volume, @ForAll("positive") double side) {
    var section = Relations.areaOf(Amounts.metres(side), Amounts.metres(side));
    var height = Relations.lengthOfPrism(litres(volume), section);
    close(Relations.volumeOfPrism(section, height), litres(volume));
    close(
        Relations.volumeOfBox(Amounts.metres(side), Amounts.metres(side), height), litres(volume));
  }

  private static <Q extends Quantity<Q>> void close(Amount<Q> actual, Amount<Q> expected) {
    assertThat(actual.kind()).isEqualTo(expected.kind());
    assertThat(actual.si()).isCloseTo(expected.si(), within(4 * Math.ulp(expected.si())));
  }
}
