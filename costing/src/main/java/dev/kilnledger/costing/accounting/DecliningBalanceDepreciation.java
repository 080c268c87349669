package dev.kilnledger.costing.accounting;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.costing.ledger.Rounding;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.TradeUnits;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Dimensionless;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/**
 * A fixed share of the book value: k / N of it each year, k = 2 being called double declining,
 * until the salvage value is reached. Each charge is rounded. Where the share is too small the book
 * value still lies above the salvage value after N years.
 */
public final class DecliningBalanceDepreciation {
  private static final DecliningBalanceDepreciation STANDARD = new DecliningBalanceDepreciation();

  private DecliningBalanceDepreciation() {}

  /** {@return the method} */
  public static DecliningBalanceDepreciation standard() {
    return STANDARD;
  }

  /**
   * The schedule over the whole life.
   *
   * @param asset the asset
   * @param factor k, above zero and not above N
   * @param years N, 1 or more
   * @param rounding how charges become money
   * @return N years
   * @throws IllegalArgumentException with all problems
   */
  public DepreciationSchedule schedule(
      Asset asset, Amount<Dimensionless> factor, int years, Rounding rounding) {
    new Problems("declining-balance depreciation of " + asset.name())
        .require(years >= 1, "life is " + years + " years; accepted is 1 or more")
        .require(
            factor.si() > 0 && factor.si() <= Math.max(1, years),
            "factor is " + factor + "; accepted is above 0 and up to the years of life")
        .refuseIfAny();
    List<Money> charges = new ArrayList<>();
    Money bookValue = asset.cost();
    for (int year = 1; year <= years; year++) {
      BigDecimal exact =
          bookValue
              .getAmount()
              .multiply(factor.decimalIn(TradeUnits.ONE))
              .divide(BigDecimal.valueOf(years), MathContext.DECIMAL128);
      Money charge = rounding.round(BigMoney.of(asset.cost().getCurrencyUnit(), exact));
      charges.add(charge);
      bookValue = bookValue.minus(charge);
    }
    return DepreciationSchedule.of(
        asset,
        "declining balance: book value x " + factor + " / " + years + ", down to the salvage value",
        charges);
  }
}
