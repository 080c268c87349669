package dev.kilnledger.costing.accounting;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import javax.measure.quantity.Dimensionless;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * How many parts to start so that enough turn out good: the smallest N with P(X >= n) >= p, where X
 * is binomial with N trials and the yield. It takes parts to fail independently, one by one; where
 * a lost firing loses all its parts, firings are what is counted.
 *
 * <p>The probability is computed to about 14 digits, and a shortfall of 1e-13 or less counts as
 * reached.
 */
public final class BinomialStarts {
  private static final double ACCURACY = 1e-13;
  private static final int MOST = 1_000_000_000;
  private static final BinomialStarts STANDARD = new BinomialStarts();

  private BinomialStarts() {}

  /** {@return the calculator} */
  public static BinomialStarts standard() {
    return STANDARD;
  }

  /**
   * The starts needed.
   *
   * @param good n, 1 to 1,000,000
   * @param yield the share of parts that turn out good, 0.001 to 1
   * @param confidence p, above 0 and up to 0.999999
   * @return the smallest number of starts
   * @throws IllegalArgumentException with all problems
   */
  public PlannedStarts startsFor(
      int good, Amount<Dimensionless> yield, Amount<Dimensionless> confidence) {
    new Problems("planned starts")
        .require(good >= 1 && good <= 1_000_000, "good is " + good + "; accepted is 1 to 1000000")
        .within("yield", yield, Amounts.ratio(0.001), Amounts.ratio(1))
        .require(
            confidence.si() > 0 && confidence.si() <= 0.999999,
            "confidence is " + confidence + "; accepted is above 0 and up to 0.999999")
        .refuseIfAny();
    double wanted = confidence.si() - ACCURACY;
    int enough = good;
    while (probability(good, enough, yield) < wanted) {
      enough = Math.min(MOST, enough * 2 + 1);
    }
    int tooFew = good - 1;
    while (enough - tooFew > 1) {
      int middle = tooFew + (enough - tooFew) / 2;
      if (probability(good, middle, yield) < wanted) {
        tooFew = middle;
      } else {
        enough = middle;
      }
    }
    return PlannedStarts.of(good, enough, Amounts.ratio(probability(good, enough, yield)));
  }

  private static double probability(int good, int starts, Amount<Dimensionless> yield) {
    return BinomialDistribution.of(starts, yield.si()).survivalProbability(good - 1);
  }
}
