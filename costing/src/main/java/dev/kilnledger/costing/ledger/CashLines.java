package dev.kilnledger.costing.ledger;

import dev.kilnledger.costing.resource.Staircase;
import java.math.BigInteger;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Two straight lines between which the cash for n parts lies for every n of 1 or more, and after
 * how many parts its purchases repeat. All figures are exact cash times {@link #scale}.
 *
 * <p>The slopes of both lines are the same, what a part takes in the long run, but where orders to
 * a supplier are charged for and do not repeat within any countable number: then the truth lies
 * between them.
 */
public final class CashLines {
  private final BigInteger scale;
  private final BigInteger lowGrowth;
  private final BigInteger lowest;
  private final BigInteger highGrowth;
  private final BigInteger highest;
  private final BigInteger fixed;
  private final Optional<BigInteger> period;
  private final long settled;

  private CashLines(Sums sums) {
    scale =
        Stream.of(sums.lowGrowth, sums.lowest, sums.highGrowth, sums.highest, sums.fixed)
            .map(Fraction::denominator)
            .reduce(BigInteger.ONE, ExactCash::lcm);
    lowGrowth = sums.lowGrowth.over(scale);
    lowest = sums.lowest.over(scale);
    highGrowth = sums.highGrowth.over(scale);
    highest = sums.highest.over(scale);
    fixed = sums.fixed.over(scale);
    period = sums.repeats ? Optional.of(sums.period) : Optional.empty();
    settled = sums.settled;
  }

  /** {@return what the exact cash is multiplied by to be compared with these lines} */
  public BigInteger scale() {
    return scale;
  }

  /** {@return the slope of the line that the cash never lies below} */
  public BigInteger lowGrowth() {
    return lowGrowth;
  }

  /** {@return the intercept of the line that the cash for 1 or more parts never lies below} */
  public BigInteger lowest() {
    return lowest;
  }

  /** {@return the slope of the line that the cash never lies above} */
  public BigInteger highGrowth() {
    return highGrowth;
  }

  /** {@return the intercept of the line that the cash for 1 or more parts never lies above} */
  public BigInteger highest() {
    return highest;
  }

  /** {@return what does not grow with the number of parts} */
  public BigInteger fixed() {
    return fixed;
  }

  /**
   * {@return after how many parts the purchases repeat their pattern, once {@link #settled}; empty
   * where that is not known}
   */
  public Optional<BigInteger> period() {
    return period;
  }

  /** {@return the number of parts from which on the pattern holds, 1 or more} */
  public long settled() {
    return settled;
  }

  /** The lines of items and orders, summed up. */
  static final class Sums {
    private Fraction lowGrowth = Fraction.ZERO;
    private Fraction lowest = Fraction.ZERO;
    private Fraction highGrowth = Fraction.ZERO;
    private Fraction highest = Fraction.ZERO;
    private Fraction fixed = Fraction.ZERO;
    private boolean repeats = true;
    private BigInteger period = BigInteger.ONE;
    private long settled = 1;

    /** Something that grows with the packs or measures of a staircase, one of them at a cost. */
    void addGrowing(Staircase packs, Fraction cost) {
      addLow(packs, cost);
      addHigh(packs, cost);
    }

    void addLow(Staircase packs, Fraction cost) {
      lowGrowth = lowGrowth.plus(per(packs.growth(), packs, cost));
      lowest = lowest.plus(per(packs.lowest(), packs, cost));
    }

    void addHigh(Staircase packs, Fraction cost) {
      highGrowth = highGrowth.plus(per(packs.growth(), packs, cost));
      highest = highest.plus(per(packs.highest(), packs, cost));
    }

    private static Fraction per(BigInteger figure, Staircase packs, Fraction cost) {
      return Fraction.of(figure, packs.lineDivisor()).times(cost);
    }

    /** What lies between two bounds for any number of parts. */
    void addBetween(Fraction low, Fraction high) {
      lowest = lowest.plus(low);
      highest = highest.plus(high);
    }

    /** What grows at one rate within two bounds. */
    void addAlong(Fraction growth, Fraction low, Fraction high) {
      lowGrowth = lowGrowth.plus(growth);
      highGrowth = highGrowth.plus(growth);
      addBetween(low, high);
    }

    /** What is paid once. */
    void addFixed(Fraction cost) {
      fixed = fixed.plus(cost);
    }

    void repeat(BigInteger parts, long from) {
      period = ExactCash.lcm(period, parts);
      settled = Math.max(settled, from);
    }

    void repeatNever() {
      repeats = false;
    }

    CashLines lines() {
      return new CashLines(this);
    }
  }
}
