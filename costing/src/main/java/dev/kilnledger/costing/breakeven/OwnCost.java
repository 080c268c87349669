package dev.kilnledger.costing.breakeven;

import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.Staircase;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.BigMoney;

/**
 * The cash for n parts and the straight lines around it, as integers: money times a factor that
 * clears the decimals of all prices and the divisors of all counts.
 */
final class OwnCost {
  /** The outside price for one part. */
  final BigInteger price;

  /** What one part uses up in the long run, the slope of both lines. */
  final BigInteger usage;

  /** The intercept of the line that the cash never lies below. */
  final BigInteger low;

  /** The intercept of the line that the cash never lies above. */
  final BigInteger high;

  /** What is bought once, for the first part. */
  final BigInteger fixed;

  private final List<Staircase> staircases = new ArrayList<>();
  private final List<BigInteger> countPrices = new ArrayList<>();

  OwnCost(LedgerPlan plan, BigMoney outsidePrice) {
    int scale = outsidePrice.getScale();
    BigInteger common = BigInteger.ONE;
    for (Resource resource : plan.resources()) {
      Staircase staircase = resource.staircase(plan.offerOf(resource), plan.partsPerFiring());
      staircases.add(staircase);
      scale = Math.max(scale, plan.offerOf(resource).price().getScale());
      BigInteger divisor = staircase.lineDivisor();
      common = common.multiply(divisor.divide(common.gcd(divisor)));
    }
    BigInteger usage = BigInteger.ZERO;
    BigInteger low = BigInteger.ZERO;
    BigInteger high = BigInteger.ZERO;
    BigInteger fixed = BigInteger.ZERO;
    for (int i = 0; i < staircases.size(); i++) {
      Staircase staircase = staircases.get(i);
      BigMoney packPrice = plan.offerOf(plan.resources().get(i)).price();
      BigInteger price = scaled(packPrice, scale, common);
      BigInteger linePrice = price.divide(staircase.lineDivisor());
      BigInteger countPrice = price.divide(staircase.divisor());
      countPrices.add(countPrice);
      usage = usage.add(linePrice.multiply(staircase.usage()));
      low = low.add(linePrice.multiply(staircase.lowest()));
      high = high.add(linePrice.multiply(staircase.highest()));
      if (staircase.usage().signum() == 0) {
        fixed = fixed.add(countPrice.multiply(staircase.count(1)));
      }
    }
    this.price = scaled(outsidePrice, scale, common);
    this.usage = usage;
    this.low = low;
    this.high = high;
    this.fixed = fixed;
  }

  /** The cash for the first n parts. */
  BigInteger through(long parts) {
    BigInteger cash = BigInteger.ZERO;
    for (int i = 0; i < staircases.size(); i++) {
      cash = cash.add(countPrices.get(i).multiply(staircases.get(i).count(parts)));
    }
    return cash;
  }

  private static BigInteger scaled(BigMoney money, int scale, BigInteger common) {
    BigDecimal amount = money.getAmount().setScale(scale);
    return amount.unscaledValue().multiply(common);
  }
}
