package dev.kilnledger.costing.resource;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How the purchases of one resource fall over the parts: the count of packs through part n, in
 * closed form and exact.
 *
 * <p>With e = ceil(n / p) events through part n (p parts share one event), the need through part n
 * is first + (e - 1) step, and what has to be bought is need - stock, if that is above zero. In
 * whole packs that is ceil((need - stock) / content) of them; by measure it is (need - stock) /
 * content. All figures are kept as integers, scaled by a power of ten and divided by their greatest
 * common divisor. Every answer takes the same time for any n.
 */
public final class Staircase {
  private final boolean metered;
  private final BigInteger partsPerEvent;
  private final BigInteger first;
  private final BigInteger step;
  private final BigInteger stock;
  private final BigInteger content;
  private final BigDecimal unit;

  /** All decimals in one unit; step and stock zero or more, first and content more than zero. */
  Staircase(
      boolean metered,
      long partsPerEvent,
      BigDecimal first,
      BigDecimal step,
      BigDecimal stock,
      BigDecimal content) {
    int scale =
        Stream.of(first, step, stock, content).mapToInt(BigDecimal::scale).reduce(0, Math::max);
    BigInteger divisor =
        Stream.of(first, step, stock, content)
            .map(figure -> figure.setScale(scale).unscaledValue())
            .reduce(BigInteger.ZERO, BigInteger::gcd);
    this.metered = metered;
    this.partsPerEvent = BigInteger.valueOf(partsPerEvent);
    this.first = first.setScale(scale).unscaledValue().divide(divisor);
    this.step = step.setScale(scale).unscaledValue().divide(divisor);
    this.stock = stock.setScale(scale).unscaledValue().divide(divisor);
    this.content = content.setScale(scale).unscaledValue().divide(divisor);
    this.unit = new BigDecimal(divisor, scale);
  }

  /**
   * What has to be bought for the first n parts, as a numerator over {@link #divisor}.
   *
   * @param parts n, zero or more
   * @return the number of packs, or of measures times the divisor; never falls as n grows
   */
  public BigInteger count(long parts) {
    if (parts == 0) {
      return BigInteger.ZERO;
    }
    BigInteger wanted =
        first.add(events(parts).subtract(BigInteger.ONE).multiply(step)).subtract(stock);
    if (wanted.signum() <= 0) {
      return BigInteger.ZERO;
    }
    return metered ? wanted : wanted.add(content).subtract(BigInteger.ONE).divide(content);
  }

  /**
   * {@return what {@link #count} is divided by: 1 in whole packs, else the content of a measure}
   */
  public BigInteger divisor() {
    return metered ? content : BigInteger.ONE;
  }

  /** {@return packs used per part in the long run, over {@link #lineDivisor}} */
  public BigInteger usage() {
    return step;
  }

  /**
   * {@return the intercept of a line of slope {@link #usage} that the packs through part n never
   * lie below, over {@link #lineDivisor}: (first - step - stock) / content, as e is at least n / p}
   */
  public BigInteger lowest() {
    return first.subtract(step).subtract(stock).multiply(partsPerEvent);
  }

  /**
   * {@return the intercept of a line of slope {@link #usage} that the packs through part n never
   * lie above, over {@link #lineDivisor}: (max(0, first - step - stock) + step) / content, as e is
   * less than n / p + 1, and one pack more where packs are whole}
   */
  public BigInteger highest() {
    BigInteger high = first.subtract(step).subtract(stock).max(BigInteger.ZERO).add(step);
    return (metered ? high : high.add(content)).multiply(partsPerEvent);
  }

  /** {@return what usage, lowest and highest are divided by} */
  public BigInteger lineDivisor() {
    return content.multiply(partsPerEvent);
  }

  /**
   * The next part for which one more pack has to be bought.
   *
   * @param parts how many parts have been made, zero or more
   * @return the part's number; empty if none follows, if the resource is sold by measure, or if the
   *     number is above {@link Long#MAX_VALUE}
   */
  public Optional<Long> nextPurchase(long parts) {
    if (metered) {
      return Optional.empty();
    }
    BigInteger spare = stock.add(count(parts).multiply(content)).subtract(first);
    if (spare.signum() < 0) {
      return Optional.of(1L);
    }
    if (step.signum() == 0) {
      return Optional.empty();
    }
    BigInteger covered = spare.divide(step).add(BigInteger.ONE);
    BigInteger next = covered.multiply(partsPerEvent).add(BigInteger.ONE);
    return next.bitLength() < Long.SIZE ? Optional.of(next.longValueExact()) : Optional.empty();
  }

  /** What is left after part n: stock and purchases less a step for each event. */
  BigDecimal left(long parts) {
    BigInteger bought = count(parts).multiply(content).divide(divisor());
    BigInteger left = stock.add(bought).subtract(step.multiply(events(parts)));
    return new BigDecimal(left).multiply(unit);
  }

  /** Events through part n. */
  BigInteger events(long parts) {
    return BigInteger.valueOf(parts)
        .add(partsPerEvent)
        .subtract(BigInteger.ONE)
        .divide(partsPerEvent);
  }
}
