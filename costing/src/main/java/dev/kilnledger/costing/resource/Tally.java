package dev.kilnledger.costing.resource;

import java.math.BigInteger;
import java.util.function.LongUnaryOperator;

/**
 * How often something has happened through n good parts, n being 1 or more: exact, in closed form,
 * and composed. A tally never falls as n grows. Beside the count it knows two straight lines that
 * enclose it, after how many parts its pattern repeats, and its formula.
 *
 * <p>It is counted in longs where they hold every number on the way, which is nearly always, and in
 * big integers otherwise; both ways are composed alike.
 */
final class Tally {
  /** The count through n parts, as a numerator over the denominator. */
  private interface Count {
    BigInteger through(BigInteger parts);
  }

  private final Count count;

  /** The same in longs; below zero where they do not hold it. */
  private final LongUnaryOperator quick;

  final BigInteger denominator;

  /** The count lies between (slope n + low) / bound and (slope n + high) / bound. */
  final BigInteger slope;

  final BigInteger low;
  final BigInteger high;
  final BigInteger bound;

  /** After every further period of parts the numerator has risen by rise. */
  final BigInteger period;

  final BigInteger rise;
  final String formula;

  private Tally(
      Count count,
      LongUnaryOperator quick,
      BigInteger denominator,
      BigInteger slope,
      BigInteger low,
      BigInteger high,
      BigInteger bound,
      BigInteger period,
      BigInteger rise,
      String formula) {
    BigInteger common = slope.gcd(low).gcd(high).gcd(bound);
    this.count = count;
    this.quick = quick;
    this.denominator = denominator;
    this.slope = slope.divide(common);
    this.low = low.divide(common);
    this.high = high.divide(common);
    this.bound = bound.divide(common);
    this.period = period;
    this.rise = rise;
    this.formula = formula;
  }

  /** The good parts themselves. */
  static Tally goodParts() {
    return new Tally(
        parts -> parts,
        parts -> parts,
        BigInteger.ONE,
        BigInteger.ONE,
        BigInteger.ZERO,
        BigInteger.ZERO,
        BigInteger.ONE,
        BigInteger.ONE,
        BigInteger.ONE,
        "n");
  }

  BigInteger through(long parts) {
    long quickly = quick(parts);
    return quickly < 0 ? count.through(BigInteger.valueOf(parts)) : BigInteger.valueOf(quickly);
  }

  /** The numerator through n parts; below zero where a long does not hold it. */
  long quick(long parts) {
    return quick.applyAsLong(parts);
  }

  /** This tally times a / b, both above zero. */
  Tally times(BigInteger a, BigInteger b, String newFormula) {
    long factor = small(a);
    return new Tally(
        parts -> count.through(parts).multiply(a),
        parts -> times(quick.applyAsLong(parts), factor),
        denominator.multiply(b),
        slope.multiply(a),
        low.multiply(a),
        high.multiply(a),
        bound.multiply(b),
        period,
        rise.multiply(a),
        newFormula);
  }

  /** This tally rounded up to whole numbers: it lies less than one above. */
  Tally roundedUp() {
    BigInteger periods = denominator.divide(denominator.gcd(rise));
    long divisor = small(denominator);
    return new Tally(
        parts -> ceil(count.through(parts), denominator),
        parts -> ceil(quick.applyAsLong(parts), divisor),
        BigInteger.ONE,
        slope.multiply(denominator),
        low.multiply(denominator),
        high.multiply(denominator).add(denominator.subtract(BigInteger.ONE).multiply(bound)),
        bound.multiply(denominator),
        period.multiply(periods),
        rise.multiply(periods).divide(denominator),
        "ceil(" + formula + ")");
  }

  /** The sum of two tallies. */
  Tally plus(Tally other) {
    BigInteger common = lcm(denominator, other.denominator);
    BigInteger factor = common.divide(denominator);
    BigInteger otherFactor = common.divide(other.denominator);
    BigInteger together = lcm(period, other.period);
    long small = small(factor);
    long otherSmall = small(otherFactor);
    return new Tally(
        parts ->
            count
                .through(parts)
                .multiply(factor)
                .add(other.count.through(parts).multiply(otherFactor)),
        parts ->
            plus(
                times(quick.applyAsLong(parts), small),
                times(other.quick.applyAsLong(parts), otherSmall)),
        common,
        slope.multiply(other.bound).add(other.slope.multiply(bound)),
        low.multiply(other.bound).add(other.low.multiply(bound)),
        high.multiply(other.bound).add(other.high.multiply(bound)),
        bound.multiply(other.bound),
        together,
        rise.multiply(factor)
            .multiply(together.divide(period))
            .add(other.rise.multiply(otherFactor).multiply(together.divide(other.period))),
        "(" + formula + " + " + other.formula + ")");
  }

  /** This tally and a number of events before the first good part. */
  Tally after(int events, String name) {
    if (events == 0) {
      return this;
    }
    BigInteger before = BigInteger.valueOf(events);
    long more = small(before.multiply(denominator));
    return new Tally(
        parts -> count.through(parts).add(before.multiply(denominator)),
        parts -> plus(quick.applyAsLong(parts), more),
        denominator,
        slope,
        low.add(before.multiply(bound)),
        high.add(before.multiply(bound)),
        bound,
        period,
        rise,
        "(" + name + " + " + formula + ")");
  }

  /** The smallest integer of at least a / b, for positive b. */
  static BigInteger ceil(BigInteger a, BigInteger b) {
    BigInteger[] parts = a.divideAndRemainder(b);
    return parts[1].signum() > 0 ? parts[0].add(BigInteger.ONE) : parts[0];
  }

  /** A number above zero as a long; -1 where that does not hold it. */
  static long small(BigInteger number) {
    return number.bitLength() < Long.SIZE ? number.longValue() : -1;
  }

  /** The product of two numbers; below zero where one is, or where a long does not hold it. */
  static long times(long a, long b) {
    return a < 0 || b < 0 || Math.multiplyHigh(a, b) != 0 ? -1 : a * b;
  }

  /** The sum of two numbers; below zero where one is, or where a long does not hold it. */
  static long plus(long a, long b) {
    return a < 0 || b < 0 ? -1 : a + b;
  }

  /** The smallest whole number of at least a / b; below zero where one is. */
  static long ceil(long a, long b) {
    return a < 0 || b < 0 ? -1 : a == 0 ? 0 : (a - 1) / b + 1;
  }

  static BigInteger lcm(BigInteger a, BigInteger b) {
    return a.divide(a.gcd(b)).multiply(b);
  }
}
