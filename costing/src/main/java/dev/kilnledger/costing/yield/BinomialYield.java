package dev.kilnledger.costing.yield;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import javax.measure.quantity.Dimensionless;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/** Yields of parts that fail independently of each other. */
public final class BinomialYield {
  private static final double ACCURACY = 1e-13;
  private static final BinomialYield STANDARD = new BinomialYield();

  private BinomialYield() {}

  /** {@return the calculator} */
  public static BinomialYield standard() {
    return STANDARD;
  }

  /**
   * The rolled yield: the share of the parts started that come out of the last stage good, which is
   * the product of the yields of the stages. What is repeated where it failed is not lost.
   *
   * @param failures the yields of the stages
   * @return the share, more than 0 and up to 1
   */
  public Amount<Dimensionless> rolled(Failures failures) {
    double rolled = 1;
    for (Stage stage : Stage.values()) {
      StageYield yield = failures.at(stage);
      if (yield.afterFailure() == AfterFailure.SCRAPPED) {
        rolled *= yield.parts().si() * yield.charges().si();
      }
    }
    return Amounts.ratio(rolled);
  }

  /**
   * The smallest number of starts N of which at least n come out good with a given confidence:
   * P(Bin(N, y) &gt;= n) &gt;= p. The chance is computed to about 14 digits, and a shortfall of
   * 1e-13 or less counts as reached.
   *
   * @param good n, from 1 to 100,000
   * @param yield y, the share of the parts started that come out good, 0.001 to 1
   * @param confidence p, 0.000001 to 0.999999
   * @return N
   * @throws IllegalArgumentException with all problems
   */
  public int starts(int good, Amount<Dimensionless> yield, Amount<Dimensionless> confidence) {
    new Problems("starts for good parts")
        .require(
            good >= 1 && good <= 100_000,
            "good parts is " + good + "; accepted is from 1 to 100000")
        .within("yield", yield, Amounts.ratio(0.001), Amounts.ratio(1))
        .within("confidence", confidence, Amounts.ratio(0.000001), Amounts.ratio(0.999999))
        .refuseIfAny();
    int low = good - 1;
    int high = good;
    while (chance(good, high, yield) < confidence.si() - ACCURACY) {
      low = high;
      high *= 2;
    }
    while (high - low > 1) {
      int middle = low + (high - low) / 2;
      if (chance(good, middle, yield) < confidence.si() - ACCURACY) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  /** P(Bin(starts, yield) >= good). */
  private static double chance(int good, int starts, Amount<Dimensionless> yield) {
    return BinomialDistribution.of(starts, yield.si()).survivalProbability(good - 1);
  }
}
