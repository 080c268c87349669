package dev.kilnledger.costing.ledger;

import dev.kilnledger.costing.offer.Offer;
import java.math.BigDecimal;
import java.math.BigInteger;
import org.joda.money.BigMoney;

/** A price with the surcharges on it, as a fraction. */
record Price(BigInteger numerator, BigInteger denominator) {
  static Price of(Offer offer, BigMoney amount, LedgerPlan plan) {
    BigDecimal price = amount.getAmount().multiply(Surcharges.factor(offer, plan));
    BigDecimal divisor = Surcharges.divisor(offer, plan);
    int scale = Math.max(0, Math.max(price.scale(), divisor.scale()));
    BigInteger numerator = price.setScale(scale).unscaledValue();
    BigInteger denominator = divisor.setScale(scale).unscaledValue();
    BigInteger gcd = numerator.gcd(denominator);
    return new Price(numerator.divide(gcd), denominator.divide(gcd));
  }

  /** This price over a divisor, as a whole number of parts of a common denominator. */
  BigInteger over(BigInteger common, BigInteger divisor) {
    return numerator.multiply(common.divide(denominator.multiply(divisor)));
  }
}
