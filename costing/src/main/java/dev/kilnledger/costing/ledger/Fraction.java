package dev.kilnledger.costing.ledger;

import java.math.BigInteger;

/** An exact quotient, the denominator above zero. */
record Fraction(BigInteger numerator, BigInteger denominator) {
  static final Fraction ZERO = of(BigInteger.ZERO);

  static Fraction of(BigInteger whole) {
    return new Fraction(whole, BigInteger.ONE);
  }

  static Fraction of(BigInteger numerator, BigInteger denominator) {
    BigInteger common = numerator.gcd(denominator);
    return common.equals(BigInteger.ONE)
        ? new Fraction(numerator, denominator)
        : new Fraction(numerator.divide(common), denominator.divide(common));
  }

  Fraction plus(Fraction that) {
    return of(
        numerator.multiply(that.denominator).add(that.numerator.multiply(denominator)),
        denominator.multiply(that.denominator));
  }

  Fraction minus(Fraction that) {
    return plus(new Fraction(that.numerator.negate(), that.denominator));
  }

  Fraction times(BigInteger factor) {
    return of(numerator.multiply(factor), denominator);
  }

  Fraction times(Fraction that) {
    return of(numerator.multiply(that.numerator), denominator.multiply(that.denominator));
  }

  Fraction min(Fraction that) {
    return minus(that).numerator.signum() <= 0 ? this : that;
  }

  Fraction max(Fraction that) {
    return minus(that).numerator.signum() >= 0 ? this : that;
  }

  /** This fraction over a multiple of its denominator. */
  BigInteger over(BigInteger common) {
    return numerator.multiply(common.divide(denominator));
  }
}
