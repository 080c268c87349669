package dev.kilnledger.costing.breakeven;

import dev.kilnledger.costing.ledger.CashLines;
import dev.kilnledger.costing.ledger.ExactCash;
import java.math.BigInteger;
import java.util.Optional;

/**
 * Where the cash A(n) of one plan and B(n) of another cross. Neither ever falls, which lets the
 * search jump; straight lines around both say where it starts and ends; and where both rise alike
 * in the long run, the pattern of their purchases repeats, and one round of it decides for good.
 * Where orders are charged for and their pattern is too long to be counted, the slopes are known
 * between bounds only; the search refuses to answer what they leave open.
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
  /** How far a crossing is sought where the long run does not tell whether there is one. */
  private static final BigInteger FAR = BigInteger.valueOf(100_000);

  private final Side a;
  private final Side b;

  /**
   * By how much B rises more per part than A, at least and at most: alike where slopes are known.
   */
  private final BigInteger leastGain;

  private final BigInteger mostGain;
  private int jumps;

  CashSearch(ExactCash plan, ExactCash other) {
    CashLines lines = plan.lines();
    CashLines otherLines = other.lines();
    BigInteger unit = plan.denominator().multiply(lines.scale());
    BigInteger otherUnit = other.denominator().multiply(otherLines.scale());
    BigInteger gcd = unit.gcd(otherUnit);
    this.a = new Side(plan, lines, otherUnit.divide(gcd));
    this.b = new Side(other, otherLines, unit.divide(gcd));
    this.leastGain = b.lowGrowth.subtract(a.highGrowth);
    this.mostGain = b.highGrowth.subtract(a.lowGrowth);
  }

  /** The first n with A(n) <= B(n). */
  Optional<Long> first() {
    BigInteger start = BigInteger.ONE;
    Optional<BigInteger> last = Optional.empty();
    if (mostGain.signum() > 0) {
      start = ceil(a.lowest.subtract(b.highest), mostGain).max(BigInteger.ONE);
    } else if (mostGain.signum() < 0) {
      last = Optional.of(floor(b.highest.subtract(a.lowest), mostGain.negate()));
    } else if (a.lowest.compareTo(b.highest) > 0) {
      return Optional.empty();
    } else {
      last = Optional.of(round());
    }
    boolean open = mostGain.signum() > 0 && leastGain.signum() <= 0;
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
      if (open && next.compareTo(FAR) > 0) {
        throw tooNear();
      }
    }
    return Optional.empty();
  }

  /** The first n from which on A <= B for good. */
  Optional<Long> permanent() {
    if (mostGain.signum() < 0) {
      return Optional.empty();
    }
    if (leastGain.signum() > 0) {
      BigInteger safe = ceil(a.highest.subtract(b.lowest), leastGain).max(BigInteger.ONE);
      return Optional.of(lastViolation(parts(safe)) + 1);
    }
    if (leastGain.signum() < 0) {
      throw tooNear();
    }
    if (a.highest.compareTo(b.lowest) <= 0) {
      return Optional.of(1L);
    }
    if (mostGain.signum() > 0) {
      throw tooNear();
    }
    long violation = lastViolation(parts(round()));
    return violation >= settled() ? Optional.empty() : Optional.of(violation + 1);
  }

  /** By the slope of both lines, or half way between two where it is not known. */
  Optional<Long> smooth() {
    BigInteger gain = leastGain.add(mostGain);
    return gain.signum() > 0
        ? Optional.of(
            parts(
                ceil(a.fixed.subtract(b.fixed).multiply(BigInteger.TWO), gain).max(BigInteger.ONE)))
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
    BigInteger period = a.lines.period().orElseThrow(CashSearch::tooNear);
    BigInteger other = b.lines.period().orElseThrow(CashSearch::tooNear);
    BigInteger both = period.divide(period.gcd(other)).multiply(other);
    return BigInteger.valueOf(settled()).add(both).subtract(BigInteger.ONE);
  }

  private long settled() {
    return Math.max(a.lines.settled(), b.lines.settled());
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
            + " jumps, or within what can be counted of orders that do not repeat; accepted are"
            + " costs further apart");
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
    private final CashLines lines;
    private final BigInteger factor;
    private final BigInteger lowGrowth;
    private final BigInteger highGrowth;
    private final BigInteger lowest;
    private final BigInteger highest;
    private final BigInteger fixed;

    Side(ExactCash cash, CashLines lines, BigInteger factor) {
      this.cash = cash;
      this.lines = lines;
      this.factor = factor.multiply(lines.scale());
      this.lowGrowth = lines.lowGrowth().multiply(factor);
      this.highGrowth = lines.highGrowth().multiply(factor);
      this.lowest = lines.lowest().multiply(factor);
      this.highest = lines.highest().multiply(factor);
      this.fixed = lines.fixed().multiply(factor);
    }

    BigInteger through(long parts) {
      try {
        return cash.through(parts).multiply(factor);
      } catch (IllegalArgumentException e) {
        ArithmeticException uncounted = new ArithmeticException(e.getMessage());
        uncounted.initCause(e);
        throw uncounted;
      }
    }

    /** The first n whose cash is at least an amount; empty if it never is. */
    Optional<BigInteger> reaches(BigInteger amount) {
      long below = 0;
      long above = Long.MAX_VALUE;
      if (lowGrowth.signum() > 0) {
        // The cash lies between two lines, so n lies between the points where they reach it.
        BigInteger from = ceil(amount.subtract(highest), highGrowth).subtract(BigInteger.ONE);
        BigInteger to = ceil(amount.subtract(lowest), lowGrowth);
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
