package dev.kilnledger.costing.offer;

import dev.kilnledger.units.Amount;
import dev.kilnledger.units.TradeUnits;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import org.joda.money.BigMoney;

/** Takes prices from one tax basis to another. */
final class TaxShift {
  /** Decimals to which a price without tax is kept, as its quotient need not have an end. */
  private static final int NET_DECIMALS = 10;

  private final Tax basis;

  TaxShift(Tax basis) {
    this.basis = basis;
  }

  /** What is missing to bring a price to the basis. */
  Optional<String> obstacle(String what, Tax tax, Optional<Amount<Dimensionless>> rate) {
    if (tax == basis) {
      return Optional.empty();
    }
    if (tax == Tax.UNKNOWN) {
      return Optional.of(
          what + " does not say whether it holds the tax; accepted is included or excluded");
    }
    return rate.isPresent()
        ? Optional.empty()
        : Optional.of(
            what + " is with tax " + tax.words() + " and without rate; accepted is a rate");
  }

  BigMoney shifted(BigMoney price, Tax tax, Optional<Amount<Dimensionless>> rate) {
    if (tax == basis) {
      return price;
    }
    BigDecimal factor = BigDecimal.ONE.add(rate.orElseThrow().decimalIn(TradeUnits.ONE));
    return basis == Tax.INCLUDED
        ? price.multipliedBy(factor)
        : price
            .withScale(Math.max(NET_DECIMALS, price.getScale()))
            .dividedBy(factor, RoundingMode.HALF_EVEN);
  }
}
