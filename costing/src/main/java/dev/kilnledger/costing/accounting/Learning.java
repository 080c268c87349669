package dev.kilnledger.costing.accounting;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.units.Amount;
import java.math.BigDecimal;
import java.math.MathContext;
import javax.measure.quantity.Dimensionless;
import org.joda.money.BigMoney;

/** What both learning curves share: b = ln L / ln 2, and factors of 15 digits on exact money. */
final class Learning {
  private static final MathContext FACTOR_DIGITS = new MathContext(15);

  private Learning() {}

  static double exponent(Amount<Dimensionless> rate) {
    return Math.log(rate.si()) / Math.log(2);
  }

  static BigMoney times(BigMoney money, double factor) {
    return money.multipliedBy(new BigDecimal(factor).round(FACTOR_DIGITS));
  }

  /** The sum of k^b for k = 1 to n, with b from -infinity to 0. */
  static double sumOfPowers(long n, double b) {
    long direct = Math.min(n, 1000);
    double sum = 0;
    for (long k = direct; k >= 1; k--) { // the smallest first
      sum += Math.pow((double) k, b);
    }
    if (n == direct) {
      return sum;
    }
    double m = (double) direct;
    double x = (double) n;
    // ((n/m)^(b+1) - 1) / (b+1), which becomes ln(n/m) as b approaches -1
    double growth = Math.log(x / m);
    double integral =
        Math.pow(m, b + 1)
            * (Math.abs(b + 1) < 1e-12 ? growth : Math.expm1((b + 1) * growth) / (b + 1));
    return sum
        + integral
        + (Math.pow(x, b) - Math.pow(m, b)) / 2
        + b * (Math.pow(x, b - 1) - Math.pow(m, b - 1)) / 12
        - b * (b - 1) * (b - 2) * (Math.pow(x, b - 3) - Math.pow(m, b - 3)) / 720;
  }

  static void refuseNone(String what, long unit) {
    new Problems(what)
        .require(unit >= 1, "unit is " + unit + "; accepted is 1 or more")
        .refuseIfAny();
  }

  static void check(String what, BigMoney firstUnit, Amount<Dimensionless> rate) {
    new Problems(what)
        .require(
            !firstUnit.isNegative(), "first unit is " + firstUnit + "; accepted is zero or more")
        .require(
            rate.si() > 0 && rate.si() <= 1,
            "rate is " + rate + "; accepted is above 0 and up to 1")
        .refuseIfAny();
  }
}
