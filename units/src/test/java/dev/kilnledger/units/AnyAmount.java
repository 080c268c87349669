package dev.kilnledger.units;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.domains.DomainContextBase;

/** Amounts in every shipped unit, of numbers of every size that a workshop meets and beyond. */
final class AnyAmount extends DomainContextBase {

  /** An amount and another shipped unit of its kind to read it in. */
  record Conversion<Q extends Quantity<Q>>(Amount<Q> amount, UnitScale<Q> target) {
    @Override
    public String toString() {
      return amount + " in " + target.ucum();
    }
  }

  /** Two amounts of one kind, each in a unit of its own. */
  record Two<Q extends Quantity<Q>>(Amount<Q> a, Amount<Q> b) {
    @Override
    public String toString() {
      return a + " and " + b;
    }
  }

  /** Two temperatures, each on a scale of its own. */
  record Points(Amount<Temperature> from, Amount<Temperature> to) {
    @Override
    public String toString() {
      return from + " to " + to;
    }
  }

  @Provide
  Arbitrary<Points> points() {
    Arbitrary<Amount<Temperature>> point =
        Arbitraries.of(UnitScales.KELVIN, UnitScales.CELSIUS, UnitScales.FAHRENHEIT)
            .flatMap(this::amountIn);
    return Combinators.combine(point, point).as(Points::new);
  }

  @Provide
  Arbitrary<Double> number() {
    Arbitrary<Double> any =
        Combinators.combine(
                Arbitraries.doubles().between(-10, 10).ofScale(15),
                Arbitraries.integers().between(-12, 12))
            .as((digits, exponent) -> digits * Math.pow(10, exponent));
    return Arbitraries.frequencyOf(
        Tuple.of(9, any), Tuple.of(1, Arbitraries.of(0.0, 1.0, -1.0, 0.1, 1e15, 1e-15)));
  }

  @Provide
  Arbitrary<Amount<?>> amount() {
    return scale().flatMap(scale -> amountIn(scale).map(amount -> amount));
  }

  @Provide
  Arbitrary<Conversion<?>> conversion() {
    return scale().flatMap(this::conversionFrom);
  }

  @Provide
  Arbitrary<Two<?>> two() {
    return scale().flatMap(this::twoFrom);
  }

  private static Arbitrary<UnitScale<?>> scale() {
    return Arbitraries.of(UnitScales.shipped());
  }

  private <Q extends Quantity<Q>> Arbitrary<Amount<Q>> amountIn(UnitScale<Q> scale) {
    // A temperature is told by how far it is above absolute zero, as nothing lies below.
    return number()
        .map(
            number ->
                scale.kind().isPoint()
                    ? new Amount<>(scale.fromSi(Math.abs(number)), scale)
                    : new Amount<>(number, scale));
  }

  private <Q extends Quantity<Q>> Arbitrary<Conversion<?>> conversionFrom(UnitScale<Q> scale) {
    return Combinators.combine(amountIn(scale), sameKind(scale)).as(Conversion<Q>::new);
  }

  private <Q extends Quantity<Q>> Arbitrary<Two<?>> twoFrom(UnitScale<Q> scale) {
    return Combinators.combine(amountIn(scale), sameKind(scale).flatMap(this::amountIn))
        .as(Two<Q>::new);
  }

  @SuppressWarnings("unchecked") // scales of an equal kind are scales of the same quantity
  private static <Q extends Quantity<Q>> Arbitrary<UnitScale<Q>> sameKind(UnitScale<Q> scale) {
    List<UnitScale<Q>> scales =
        UnitScales.shipped().stream()
            .filter(other -> other.kind().equals(scale.kind()))
            .map(other -> (UnitScale<Q>) other)
            .toList();
    return Arbitraries.of(scales);
  }
}
