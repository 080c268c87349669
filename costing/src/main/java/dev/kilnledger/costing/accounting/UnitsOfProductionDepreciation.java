package dev.kilnledger.costing.accounting;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.costing.ledger.Rounding;
import dev.kilnledger.units.Amount;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/**
 * Charges by use: (cost - salvage) / U for each unit used, until the salvage value is reached.
 * Units are whatever wears the asset: parts or firings (a ratio), hours, mass. What has been
 * charged through a year is rounded, so that the charges add up.
 */
public final class UnitsOfProductionDepreciation {
  private static final UnitsOfProductionDepreciation STANDARD = new UnitsOfProductionDepreciation();

  private UnitsOfProductionDepreciation() {}

  /** {@return the method} */
  public static UnitsOfProductionDepreciation standard() {
    return STANDARD;
  }

  /**
   * The schedule for given use.
   *
   * @param <Q> what is counted
   * @param asset the asset
   * @param life U, the units in its life, more than zero
   * @param used the units used in each year, zero or more
   * @param rounding how charges become money
   * @return as many years as uses
   * @throws IllegalArgumentException with all problems
   */
  public <Q extends Quantity<Q>> DepreciationSchedule schedule(
      Asset asset, Amount<Q> life, List<Amount<Q>> used, Rounding rounding) {
    Problems problems =
        new Problems("units-of-production depreciation of " + asset.name()).positive("life", life);
    for (int i = 0; i < used.size(); i++) {
      problems.notNegative("use of year " + (i + 1), used.get(i));
    }
    problems.refuseIfAny();
    BigDecimal units = life.decimalIn(life.getUnit());
    List<Money> charges = new ArrayList<>();
    Money through = Money.zero(asset.cost().getCurrencyUnit());
    BigDecimal usedSoFar = BigDecimal.ZERO;
    for (Amount<Q> use : used) {
      usedSoFar = usedSoFar.add(use.decimalIn(life.getUnit()));
      BigDecimal exact =
          asset
              .depreciable()
              .getAmount()
              .multiply(usedSoFar.min(units))
              .divide(units, MathContext.DECIMAL128);
      Money next = rounding.round(BigMoney.of(asset.cost().getCurrencyUnit(), exact));
      charges.add(next.minus(through));
      through = next;
    }
    return DepreciationSchedule.of(
        asset,
        "units of production: (cost - salvage) x units used / "
            + life
            + ", down to the salvage value",
        charges);
  }
}
