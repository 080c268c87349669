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
    BigDecimal one = si(Amount.of(1, sample.getUnit(), sample.kind()));
    double number = si.divide(one, MathContext.DECIMAL128).doubleValue();
    return Amount.of(number, sample.getUnit(), sample.kind());
  }
}
