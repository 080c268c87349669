package dev.kilnledger.costing.accounting;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.costing.ledger.Rounding;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/**
 * Equal charges: (cost - salvage) / N a year. What has been charged through a year is rounded, so
 * that the charges add up to the whole.
 */
public final class StraightLineDepreciation {
  private static final StraightLineDepreciation STANDARD = new StraightLineDepreciation();

  private StraightLineDepreciation() {}

  /** {@return the method} */
  public static StraightLineDepreciation standard() {
    return STANDARD;
  }

  /**
   * The schedule over the whole life.
   *
   * @param asset the asset
   * @param years N, 1 or more
   * @param rounding how charges become money
   * @return N years, the last of which ends at the salvage value
   * @throws IllegalArgumentException if N is less than 1
   */
  public DepreciationSchedule schedule(Asset asset, int years, Rounding rounding) {
    new Problems("straight-line depreciation of " + asset.name())
        .require(years >= 1, "life is " + years + " years; accepted is 1 or more")
        .refuseIfAny();
    List<Money> charges = new ArrayList<>();
    Money through = Money.zero(asset.cost().getCurrencyUnit());
    for (int year = 1; year <= years; year++) {
      BigDecimal exact =
          asset
              .depreciable()
              .getAmount()
              .multiply(BigDecimal.valueOf(year))
              .divide(BigDecimal.valueOf(years), MathContext.DECIMAL128);
      Money next = rounding.round(BigMoney.of(asset.cost().getCurrencyUnit(), exact));
      charges.add(next.minus(through));
      through = next;
    }
    return DepreciationSchedule.of(
        asset, "straight line: (cost - salvage) / " + years + " years", charges);
  }
}
