package dev.kilnledger.costing.breakeven;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.costing.ledger.Ledger;
import dev.kilnledger.costing.ledger.LedgerPlan;
import java.math.BigInteger;
import java.util.Optional;
import org.joda.money.BigMoney;

/**
 * Finds where the cash C(n) of a ledger crosses n times an outside price P, exactly and without
 * stepping through every n.
 *
 * <p><b>First crossing.</b> C never falls, so where C(n) &gt; nP every m with mP &lt; C(n) has C(m)
 * &ge; C(n) &gt; mP as well (for m &ge; n) and the search goes on at ceil(C(n) / P). With usage U
 * per part, C(n) &ge; Un + low for a constant low, so that it may start at low / (P - U).
 *
 * <p><b>Permanent crossing.</b> C(n) &le; Un + high, so that no n from high / (P - U) on can
 * violate C(n) &le; nP. Below, with C(n) &le; nP, a violation at m &lt; n needs mP &lt; C(m) &le;
 * C(n), so that m is at most ceil(C(n) / P) - 1, where the search goes on. (That is m &lt; n - s /
 * P with the slack s = nP - C(n).)
 *
 * <p>All comparisons are of integers. A search takes up to some P / |P - U| jumps; where usage and
 * price are so near that {@value #MOST_JUMPS} do not suffice, it is refused.
 */
public final class BreakEven {
  /** Jumps after which a search is given up. */
  public static final int MOST_JUMPS = 1_000_000;

  private final Ledger ledger;

  /**
   * Uses a ledger.
   *
   * @param ledger the ledger that explains the cash at a crossing
   */
  public BreakEven(Ledger ledger) {
    this.ledger = ledger;
  }

  /** {@return the break-even of the standard ledger} */
  public static BreakEven standard() {
    return new BreakEven(Ledger.standard());
  }

  /**
   * Finds the crossings.
   *
   * @param plan what making the parts needs
   * @param outsidePrice what one part costs outside, in the plan's currency and more than zero
   * @return the crossings
   * @throws IllegalArgumentException if the price is not positive or in another currency
   * @throws ArithmeticException if the price is so near the usage per part that the search would
   *     take too long
   */
  public Crossing find(LedgerPlan plan, BigMoney outsidePrice) {
    new Problems("break-even")
        .require(
            outsidePrice.getCurrencyUnit().equals(plan.currency()),
            "outside price is " + outsidePrice + "; accepted is the currency " + plan.currency())
        .require(
            outsidePrice.isPositive(),
            "outside price is " + outsidePrice + "; accepted is more than zero")
        .refuseIfAny();
    OwnCost cost = new OwnCost(plan, outsidePrice);
    Search search = new Search(cost);
    Optional<Long> first = search.first();
    Optional<Long> permanent = search.permanent();
    return Crossing.builder()
        .outsidePrice(outsidePrice)
        .usage(ledger.usage(plan))
        .first(first)
        .permanent(permanent)
        .smooth(search.smooth())
        .cashAtFirst(first.map(parts -> ledger.through(plan, parts)))
        .cashAtPermanent(permanent.map(parts -> ledger.through(plan, parts)))
        .build();
  }

  /** One search; counts its jumps. */
  private static final class Search {
    private final OwnCost cost;
    private final BigInteger gain;
    private int jumps;

    Search(OwnCost cost) {
      this.cost = cost;
      this.gain = cost.price.subtract(cost.usage);
    }

    Optional<Long> first() {
      if (gain.signum() == 0 && cost.low.signum() > 0) {
        return Optional.empty();
      }
      long parts = gain.signum() > 0 ? fromOneUp(ceil(cost.low, gain)) : 1;
      while (true) {
        BigInteger cash = cost.through(parts);
        if (cash.compareTo(outside(parts)) <= 0) {
          return Optional.of(parts);
        }
        BigInteger next = ceil(cash, cost.price);
        // Where usage is above the price, Un + low <= nP only holds up to low / (P - U).
        if (gain.signum() < 0 && next.multiply(gain).compareTo(cost.low) < 0) {
          return Optional.empty();
        }
        parts = fromOneUp(next);
        countJump();
      }
    }

    Optional<Long> permanent() {
      if (gain.signum() <= 0) {
        return Optional.empty();
      }
      long parts = fromOneUp(ceil(cost.high, gain));
      BigInteger cash = cost.through(parts);
      while (true) {
        long below = ceil(cash, cost.price).longValueExact() - 1;
        if (below < 1) {
          return Optional.of(1L);
        }
        cash = cost.through(below);
        if (cash.compareTo(outside(below)) > 0) {
          return Optional.of(below + 1);
        }
        countJump();
      }
    }

    Optional<Long> smooth() {
      return gain.signum() > 0 ? Optional.of(fromOneUp(ceil(cost.fixed, gain))) : Optional.empty();
    }

    private BigInteger outside(long parts) {
      return cost.price.multiply(BigInteger.valueOf(parts));
    }

    private void countJump() {
      jumps++;
      if (jumps > MOST_JUMPS) {
        throw tooNear();
      }
    }

    private long fromOneUp(BigInteger parts) {
      if (parts.bitLength() >= Long.SIZE) {
        throw tooNear();
      }
      return Math.max(1, parts.longValueExact());
    }

    private static ArithmeticException tooNear() {
      return new ArithmeticException(
          "the outside price is so near the usage per part that no crossing was found in "
              + MOST_JUMPS
              + " jumps; accepted is a price further from it");
    }

    /** The smallest integer of at least a / b, for positive b. */
    private static BigInteger ceil(BigInteger a, BigInteger b) {
      BigInteger[] parts = a.divideAndRemainder(b);
      return parts[1].signum() > 0 ? parts[0].add(BigInteger.ONE) : parts[0];
    }
  }
}
