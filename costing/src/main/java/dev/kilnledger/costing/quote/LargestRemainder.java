package dev.kilnledger.costing.quote;

import dev.kilnledger.core.internal.Problems;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.joda.money.Money;

/**
 * Splits a sum in proportion to weights so that the shares, in whole minor units, add up to it:
 * every share is rounded down, and the units left over go one each to those who lost the largest
 * remainders, of equal ones to the first (the method of Hamilton).
 */
public final class LargestRemainder {
  private static final LargestRemainder STANDARD = new LargestRemainder();

  private LargestRemainder() {}

  /** {@return the splitter} */
  public static LargestRemainder standard() {
    return STANDARD;
  }

  /**
   * Splits a sum.
   *
   * @param total the sum; a negative one is split as its opposite
   * @param weights one for each share, zero or more, at least one of them above zero
   * @return the shares in the order of the weights
   * @throws IllegalArgumentException with all problems of the weights
   */
  public List<Money> split(Money total, List<BigDecimal> weights) {
    refuse(weights);
    int scale = weights.stream().mapToInt(BigDecimal::scale).max().orElse(0);
    List<BigInteger> whole =
        weights.stream().map(weight -> weight.setScale(scale).unscaledValue()).toList();
    BigInteger sum = whole.stream().reduce(BigInteger.ZERO, BigInteger::add);
    BigInteger units = total.getAmount().unscaledValue();
    List<BigInteger> shares = new ArrayList<>();
    List<BigInteger> remainders = new ArrayList<>();
    BigInteger left = units.abs();
    for (BigInteger weight : whole) {
      BigInteger[] share = units.abs().multiply(weight).divideAndRemainder(sum);
      shares.add(share[0]);
      remainders.add(share[1]);
      left = left.subtract(share[0]);
    }
    IntStream.range(0, shares.size())
        .boxed()
        .sorted((a, b) -> remainders.get(b).compareTo(remainders.get(a)))
        .limit(left.longValueExact())
        .forEach(index -> shares.set(index, shares.get(index).add(BigInteger.ONE)));
    return shares.stream()
        .map(share -> units.signum() < 0 ? share.negate() : share)
        .map(share -> Money.of(total.getCurrencyUnit(), new BigDecimal(share, total.getScale())))
        .toList();
  }

  private static void refuse(List<BigDecimal> weights) {
    Problems problems =
        new Problems("split")
            .require(
                weights.stream().anyMatch(weight -> weight.signum() > 0),
                "the weights are " + weights + "; accepted is at least one above zero");
    for (int i = 0; i < weights.size(); i++) {
      problems.require(
          weights.get(i).signum() >= 0,
          "weight " + (i + 1) + " is " + weights.get(i) + "; accepted is zero or more");
    }
    problems.refuseIfAny();
  }
}
