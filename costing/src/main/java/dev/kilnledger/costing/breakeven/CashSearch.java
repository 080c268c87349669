package dev.kilnledger.costing.breakeven;

import dev.kilnledger.costing.ledger.ExactCash;
import java.math.BigInteger;
import java.util.Optional;

/**
 * Where the cash A(n) of one plan and B(n) of another cross. Neither ever falls, which lets the
 * search jump; straight lines around both say where it starts and ends; and where both rise alike
 * in the long run, the pattern of their purchases repeats, and one round of it decides for good.
 *
 * <p><b>First.</b> Where A(n) &gt; B(n), the next m with A(m) &lt;= B(m) has B(m) &gt;= A(m) &gt;=
 * A(n), so the search goes on at the first m with B(m) &gt;= A(n).
 *
 * <p><b>For good.</b> Where A(n) &lt;= B(n), a violation at m &lt; n has B(m) &lt; A(m) &lt;= A(n),
 * so the search goes on at the last m with B(m) &lt; A(n).
 *
 * <p>All comparisons are of integers.
 */
final class CashSearch {
  private final Side a;
  private final Side b;
  private final BigInteger gain;
  private int jumps;

  CashSearch(ExactCash plan, ExactCash other) {
    BigInteger gcd = plan.denominator().gcd(other.denominator());
    this.a = new Side(plan, other.denominator().divide(gcd));
    this.b = new Side(other, plan.denominator().divide(gcd));
    this.gain = b.growth.subtract(a.growth);
  }

  /** The first n with A(n) <= B(n). */
  Optional<Long> first() {
    BigInteger start = BigInteger.ONE;
    Optional<BigInteger> last = Optional.empty();
    if (gain.signum() > 0) {
      start = ceil(a.lowest.subtract(b.highest), gain).max(BigInteger.ONE);
    } else if (gain.signum() < 0) {
      last = Optional.of(floor(b.highest.subtract(a.lowest), gain.negate()));
    } else if (a.lowest.compareTo(b.highest) > 0) {
      return Optional.empty();
    } else {
      last = Optional.of(round());
    }
    BigInteger next = start;
    while (last.isEmpty() || next.compareTo(last.get()) <= 0) {
      long parts = parts(next);
      BigInteger cash = a.through(parts);
      if (cash.compareTo(b.through(parts)) <= 0) {
        return Optional.of(parts);
      }
      countJump();
      Optional<BigInteger> reached = b.reaches(cash);
      if (reached.isEmpty()) {
        return Optional.empty();
      }
      next = reached.get();
    }
    return Optional.empty();
  }

  /** The first n from which on A <= B for good. */
  Optional<Long> permanent() {
    if (gain.signum() < 0) {
      return Optional.empty();
    }
    if (gain.signum() > 0) {
      BigInteger safe = ceil(a.highest.subtract(b.lowest), gain).max(BigInteger.ONE);
      return Optional.of(lastViolation(parts(safe)) + 1);
    }
    if (a.highest.compareTo(b.lowest) <= 0) {
      return Optional.of(1L);
    }
    long violation = lastViolation(parts(round()));
    return violation >= settled() ? Optional.empty() : Optional.of(violation + 1);
  }

  Optional<Long> smooth() {
    return gain.signum() > 0
        ? Optional.of(parts(ceil(a.fixed.subtract(b.fixed), gain).max(BigInteger.ONE)))
        : Optional.empty();
  }

  /** The last n up to a given one with A(n) > B(n), or 0. */
  private long lastViolation(long upTo) {
    long parts = upTo;
    while (parts >= 1) {
      BigInteger cash = a.through(parts);
      if (cash.compareTo(b.through(parts)) > 0) {
        return parts;
      }
      countJump();
      parts = parts(b.reaches(cash).orElseThrow()) - 1;
    }
    return 0;
  }

  /** The last part of the first whole round of the pattern of both. */
  private BigInteger round() {
    BigInteger period = a.cash.period();
    BigInteger other = b.cash.period();
    BigInteger both = period.divide(period.gcd(other)).multiply(other);
    return BigInteger.valueOf(settled()).add(both).subtract(BigInteger.ONE);
  }

  private long settled() {
    return Math.max(a.cash.settled(), b.cash.settled());
  }

  private void countJump() {
    jumps++;
    if (jumps > BreakEven.MOST_JUMPS) {
      throw tooNear();
    }
  }

  private static long parts(BigInteger parts) {
    if (parts.bitLength() >= Long.SIZE) {
      throw tooNear();
    }
    return parts.longValueExact();
  }

  private static ArithmeticException tooNear() {
    return new ArithmeticException(
        "what the other way costs is so near the usage per part that no crossing was found in "
            + BreakEven.MOST_JUMPS
            + " jumps; accepted are costs further apart");
  }

  /** The smallest integer of at least a / b, for positive b. */
  private static BigInteger ceil(BigInteger a, BigInteger b) {
    return floor(a.negate(), b).negate();
  }

  /** The largest integer of at most a / b, for positive b. */
  private static BigInteger floor(BigInteger a, BigInteger b) {
    BigInteger[] parts = a.divideAndRemainder(b);
    return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
  }

  /** One plan's cash, in the unit of both. */
  private static final class Side {
    private final ExactCash cash;
    private final BigInteger factor;
    private final BigInteger growth;
    private final BigInteger lowest;
    private final BigInteger highest;
    private final BigInteger fixed;

    Side(ExactCash cash, BigInteger factor) {
      this.cash = cash;
      this.factor = factor;
      this.growth = cash.growth().multiply(factor);
      this.lowest = cash.lowest().multiply(factor);
      this.highest = cash.highest().multiply(factor);
      this.fixed = cash.fixed().multiply(factor);
    }

    BigInteger through(long parts) {
      return cash.through(parts).multiply(factor);
    }

    /** The first n whose cash is at least an amount; empty if it never is. */
    Optional<BigInteger> reaches(BigInteger amount) {
      long below = 0;
      long above = Long.MAX_VALUE;
      if (growth.signum() > 0) {
        // The cash lies between two lines, so n lies between the points where they reach it.
        BigInteger from = ceil(amount.subtract(highest), growth).subtract(BigInteger.ONE);
        BigInteger to = ceil(amount.subtract(lowest), growth);
        below = parts(from.max(BigInteger.ZERO));
        above = parts(to.max(BigInteger.ONE).max(BigInteger.valueOf(below + 1)));
      } else if (through(above).compareTo(amount) < 0) {
        return Optional.empty();
      }
      while (above - below > 1) {
        long middle = below + (above - below) / 2;
        if (through(middle).compareTo(amount) < 0) {
          below = middle;
        } else {
          above = middle;
        }
      }
      return Optional.of(BigInteger.valueOf(above));
    }
  }
}
