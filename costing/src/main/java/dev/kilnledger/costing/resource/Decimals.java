package dev.kilnledger.costing.resource;

import dev.kilnledger.units.Amount;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import javax.measure.Quantity;

/** Amounts as exact decimals in the SI unit, where every unit of the trade has a finite decimal. */
final class Decimals {
  private Decimals() {}

  static <Q extends Quantity<Q>> BigDecimal si(Amount<Q> amount) {
    return amount.decimalIn(amount.kind().siUnit());
  }

  static BigDecimal si(Optional<Amount<?>> amount) {
    return amount.isPresent() ? si(amount.get()) : BigDecimal.ZERO;
  }

  static <Q extends Quantity<Q>> Amount<Q> zero(Amount<Q> sample) {
    return Amount.of(0, sample.getUnit(), sample.kind());
  }

  /** The amount of an SI value, in the unit of another amount. */
  static <Q extends Quantity<Q>> Amount<Q> like(Amount<Q> sample, BigDecimal si) {
    Amount<Q> one = Amount.of(1, sample.getUnit(), sample.kind());
    int power = (int) Math.rint(Math.log10(one.si()));
    BigDecimal number =
        isPowerOfTen(one.si(), power)
            ? si.scaleByPowerOfTen(-power)
            : si.divide(si(one), MathContext.DECIMAL128);
    return Amount.of(number.doubleValue(), sample.getUnit(), sample.kind());
  }

  /** Up to 22 a power of ten is a double, and its reciprocal is rounded once. */
  private static boolean isPowerOfTen(double unit, int power) {
    double ten = Math.pow(10, Math.abs(power));
    return Math.abs(power) <= 22 && unit == (power < 0 ? 1 / ten : ten);
  }
}
