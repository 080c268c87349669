package dev.kilnledger.costing.accounting;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.TradeUnits;
import java.math.BigDecimal;
import java.math.MathContext;
import javax.measure.quantity.Dimensionless;
import org.joda.money.BigMoney;

/**
 * The equal payments that earn an asset back with interest: (P - S) (A/P, i, N) + S i, with P its
 * cost, S its salvage value, i the interest of a period and N the periods (formulas of engineering
 * economy). (A/P, i, N) = i (1 + i)^N / ((1 + i)^N - 1), and 1/N at i = 0, in decimals of 50
 * digits, rounded to 34.
 */
public final class CapitalRecovery {
  private static final MathContext WORKING = new MathContext(50);
  private static final CapitalRecovery STANDARD = new CapitalRecovery();

  private CapitalRecovery() {}

  /** {@return the calculator} */
  public static CapitalRecovery standard() {
    return STANDARD;
  }

  /**
   * The factor (A/P, i, N).
   *
   * @param interest i, for one period: zero, or from 1e-9 to 10
   * @param periods N, 1 to 100,000
   * @return the factor, to 34 digits
   * @throws IllegalArgumentException with all problems
   */
  public BigDecimal factor(Amount<Dimensionless> interest, int periods) {
    new Problems("capital recovery")
        .require(
            interest.si() == 0 || (interest.si() >= 1e-9 && interest.si() <= 10),
            "interest is " + interest + "; accepted is 0, or from 1e-9 to 10 for one period")
        .require(
            periods >= 1 && periods <= 100_000,
            "periods is " + periods + "; accepted is 1 to 100000")
        .refuseIfAny();
    BigDecimal rate = interest.decimalIn(TradeUnits.ONE);
    if (rate.signum() == 0) {
      return BigDecimal.ONE.divide(BigDecimal.valueOf(periods), MathContext.DECIMAL128);
    }
    BigDecimal growth = BigDecimal.ONE.add(rate).pow(periods, WORKING);
    return rate.multiply(growth)
        .divide(growth.subtract(BigDecimal.ONE), WORKING)
        .round(MathContext.DECIMAL128);
  }

  /**
   * The payment of one period.
   *
   * @param asset the asset
   * @param interest i, for one period
   * @param periods N
   * @return (P - S) (A/P, i, N) + S i, unrounded
   * @throws IllegalArgumentException as {@link #factor}
   */
  public BigMoney payment(Asset asset, Amount<Dimensionless> interest, int periods) {
    BigMoney recovered = asset.depreciable().toBigMoney().multipliedBy(factor(interest, periods));
    return recovered.plus(
        asset.salvage().toBigMoney().multipliedBy(interest.decimalIn(TradeUnits.ONE)));
  }
}
