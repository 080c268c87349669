package dev.kilnledger.costing.resource;

import dev.kilnledger.units.Amount;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongPredicate;

/**
 * How the purchases of one resource fall over the parts: the count of packs through part n, in
 * closed form and exact.
 *
 * <p>With e events through part n, taken in groups where several share one use, the need is base +
 * step x e (with a base, at least that of one whole event), and what has to be bought is need -
 * stock, if that is above zero and up to a most if there is one. In whole packs that is ceil((need
 * - stock) / content) of them; by measure it is (need - stock) / content. All figures are kept as
 * integers, scaled by a power of ten and divided by their greatest common divisor. Every answer
 * takes a time that does not depend on n, or grows with the number of its digits.
 *
 * <p>The same count serves events that are foretold ({@link #count(long)}) and events that are
 * drawn at random ({@link #countOf}).
 */
public final class Staircase {
  private final Tally events;
  private final Tally uses;
  private final BigInteger group;
  private final boolean metered;
  private final BigInteger base;
  private final BigInteger step;
  private final BigInteger stock;
  private final BigInteger content;
  private final Optional<BigInteger> most;
  private final BigDecimal unit;
  private final BigInteger contentOfUses;

  private Staircase(
      Tally events,
      BigInteger group,
      boolean metered,
      BigInteger base,
      BigInteger step,
      BigInteger stock,
      BigInteger content,
      Optional<BigInteger> most,
      BigDecimal unit) {
    this.events = events;
    this.group = group;
    this.uses =
        group.equals(BigInteger.ONE)
            ? events
            : events.times(BigInteger.ONE, group, events.formula).roundedUp();
    this.metered = metered;
    this.base = base;
    this.step = step;
    this.stock = stock;
    this.content = content;
    this.most = most;
    this.unit = unit;
    this.contentOfUses = content.multiply(uses.denominator);
  }

  /** Starts one with the events that use the resource. */
  static Build of(Tally events) {
    return new Build(events);
  }

  /** Gathers the figures of a staircase, all decimals in one unit; what is not set is zero. */
  static final class Build {
    private final Tally events;
    private long group = 1;
    private boolean metered;
    private BigDecimal base = BigDecimal.ZERO;
    private BigDecimal step = BigDecimal.ZERO;
    private BigDecimal stock = BigDecimal.ZERO;
    private Optional<BigDecimal> most = Optional.empty();

    private Build(Tally events) {
      this.events = events;
    }

    /** How many events share one use. */
    Build inGroupsOf(long size) {
      group = size;
      return this;
    }

    Build metered(boolean byMeasure) {
      metered = byMeasure;
      return this;
    }

    /** What is there throughout and is not used up. */
    Build base(BigDecimal there) {
      base = there;
      return this;
    }

    Build step(BigDecimal perUse) {
      step = perUse;
      return this;
    }

    Build stock(BigDecimal owned) {
      stock = owned;
      return this;
    }

    Build atMost(BigDecimal need) {
      most = Optional.of(need);
      return this;
    }

    Staircase content(BigDecimal ofAPack) {
      List<BigDecimal> figures = new ArrayList<>(List.of(base, step, stock, ofAPack));
      most.ifPresent(figures::add);
      int scale = figures.stream().mapToInt(BigDecimal::scale).reduce(0, Math::max);
      BigInteger divisor =
          figures.stream()
              .map(figure -> figure.setScale(scale).unscaledValue())
              .reduce(BigInteger.ZERO, BigInteger::gcd);
      return new Staircase(
          events,
          BigInteger.valueOf(group),
          metered,
          whole(base, scale, divisor),
          whole(step, scale, divisor),
          whole(stock, scale, divisor),
          whole(ofAPack, scale, divisor),
          most.map(need -> whole(need, scale, divisor)),
          new BigDecimal(divisor, scale));
    }

    private static BigInteger whole(BigDecimal figure, int scale, BigInteger divisor) {
      return figure.setScale(scale).unscaledValue().divide(divisor);
    }
  }

  /**
   * What has to be bought for the first n parts, as a numerator over {@link #divisor}.
   *
   * @param parts n, zero or more
   * @return the number of packs, or of measures times the divisor; never falls as n grows
   */
  public BigInteger count(long parts) {
    return parts == 0 ? BigInteger.ZERO : packs(uses.through(parts));
  }

  /**
   * What has to be bought for a number of events, whatever number of parts they were for.
   *
   * @param number the events, zero or more, as a numerator over {@link #eventDivisor}
   * @return the number of packs, or of measures times {@link #divisor}
   */
  public BigInteger countOf(BigInteger number) {
    return number.signum() == 0
        ? BigInteger.ZERO
        : packs(
            group.equals(BigInteger.ONE)
                ? number
                : Tally.ceil(number, group.multiply(events.denominator)));
  }

  /** {@return what a number of events is divided by: 1 but where charges are shared} */
  public BigInteger eventDivisor() {
    return events.denominator;
  }

  private BigInteger packs(BigInteger used) {
    BigInteger wanted = wanted(used);
    return metered ? wanted : Tally.ceil(wanted, contentOfUses);
  }

  /** Need less stock, over the denominator of the uses. */
  private BigInteger wanted(BigInteger used) {
    BigInteger whole = base.signum() > 0 ? used.max(uses.denominator) : used;
    BigInteger wanted =
        base.subtract(stock)
            .multiply(uses.denominator)
            .add(step.multiply(whole))
            .max(BigInteger.ZERO);
    return most.isPresent() ? wanted.min(most.get().multiply(uses.denominator)) : wanted;
  }

  /** {@return whether it is paid by measure, and not in whole packs} */
  public boolean isMetered() {
    return metered;
  }

  /**
   * {@return what {@link #count} is divided by: 1 in whole packs, else the content of a measure}
   */
  public BigInteger divisor() {
    return metered ? contentOfUses : BigInteger.ONE;
  }

  /**
   * {@return packs used per part, over {@link #lineDivisor}: in the long run, or as long as it is
   * used where there is a most}
   */
  public BigInteger usage() {
    return uses.slope.multiply(step).multiply(uses.denominator);
  }

  /** {@return by how many packs the count rises per part in the long run, over lineDivisor} */
  public BigInteger growth() {
    return most.isPresent() ? BigInteger.ZERO : usage();
  }

  /**
   * {@return the intercept of a line of slope {@link #growth} that the packs through part n never
   * lie below, over {@link #lineDivisor}}
   */
  public BigInteger lowest() {
    return most.isPresent()
        ? BigInteger.ZERO
        : base.subtract(stock)
            .multiply(uses.bound)
            .add(step.multiply(uses.low))
            .multiply(uses.denominator);
  }

  /**
   * {@return the intercept of a line of slope {@link #growth} that the packs through part n never
   * lie above, over {@link #lineDivisor}}
   */
  public BigInteger highest() {
    BigInteger highestUses = uses.high;
    if (base.signum() > 0 && !uses.denominator.equals(BigInteger.ONE)) {
      highestUses = highestUses.add(uses.bound);
    }
    BigInteger need =
        most.isPresent()
            ? most.get().multiply(uses.bound)
            : base.subtract(stock).multiply(uses.bound).add(step.multiply(highestUses));
    BigInteger high = need.max(BigInteger.ZERO).multiply(uses.denominator);
    // Rounding up to a whole pack adds less than one, by at least 1 / (content x denominator).
    return metered ? high : high.add(contentOfUses.subtract(BigInteger.ONE).multiply(uses.bound));
  }

  /** {@return what usage, growth, lowest and highest are divided by} */
  public BigInteger lineDivisor() {
    return contentOfUses.multiply(uses.bound);
  }

  /**
   * {@return after how many parts the purchases repeat their pattern, once {@link #settled}: with
   * every further period the count has risen by the same whole number}
   */
  public BigInteger period() {
    if (step.signum() == 0 || most.isPresent()) {
      return BigInteger.ONE;
    }
    if (metered) {
      return uses.period;
    }
    BigInteger rise = step.multiply(uses.rise);
    return uses.period.multiply(contentOfUses.divide(contentOfUses.gcd(rise)));
  }

  /** {@return the number of parts from which on the pattern holds, 1 or more} */
  public long settled() {
    if (step.signum() == 0) {
      return 1;
    }
    if (most.isPresent()) {
      BigInteger last = count(Long.MAX_VALUE);
      return firstWhere(1, parts -> count(parts).equals(last)).orElse(Long.MAX_VALUE);
    }
    return firstWhere(
            1,
            parts -> {
              BigInteger used = uses.through(parts);
              boolean stockUsed =
                  base.subtract(stock).multiply(uses.denominator).add(step.multiply(used)).signum()
                      >= 0;
              return stockUsed && (base.signum() == 0 || used.compareTo(uses.denominator) >= 0);
            })
        .orElse(Long.MAX_VALUE);
  }

  /**
   * The next part for which one more pack has to be bought.
   *
   * @param parts how many parts have been made, zero or more
   * @return the part's number; empty if none follows, if the resource is sold by measure, or if the
   *     number is above {@link Long#MAX_VALUE}
   */
  public Optional<Long> nextPurchase(long parts) {
    if (metered || parts == Long.MAX_VALUE) {
      return Optional.empty();
    }
    BigInteger now = count(parts);
    return firstWhere(parts + 1, later -> count(later).compareTo(now) > 0);
  }

  /**
   * The orders that buying as needed takes: each event that finds too little places one, for as
   * many packs as it lacks. Their number is that of the packs where a pack holds what an event
   * takes, and else that of the events which buy, both but for the first order, which can be
   * larger.
   *
   * @return the staircase whose rise over a number of parts is the number of orders, as long as it
   *     does not start with the first part; empty for what is sold by measure
   */
  public Optional<Staircase> orders() {
    return metered
        ? Optional.empty()
        : Optional.of(
            new Staircase(events, group, false, base, step, stock, content.max(step), most, unit));
  }

  /** The first number from a given one on for which a condition holds that then holds for good. */
  private static Optional<Long> firstWhere(long from, LongPredicate holds) {
    if (holds.test(from)) {
      return Optional.of(from);
    }
    long below = from;
    long width = 1;
    long above;
    do {
      above = from > Long.MAX_VALUE - width ? Long.MAX_VALUE : from + width;
      if (holds.test(above)) {
        while (above - below > 1) {
          long middle = below + (above - below) / 2;
          if (holds.test(middle)) {
            above = middle;
          } else {
            below = middle;
          }
        }
        return Optional.of(above);
      }
      below = above;
      width = width > Long.MAX_VALUE / 2 ? Long.MAX_VALUE : 2 * width;
    } while (above < Long.MAX_VALUE);
    return Optional.empty();
  }

  /** The stock after part n of a resource that is measured, in the unit of one of its amounts. */
  Stock measuredStock(String item, Amount<?> like, long parts) {
    return Stock.builder()
        .item(item)
        .parts(parts)
        .left(Decimals.like(like, left(parts)))
        .counted("")
        .nextPurchase(nextPurchase(parts))
        .build();
  }

  /** What is left after part n: stock and purchases less a step for each use. */
  BigDecimal left(long parts) {
    return new BigDecimal(leftOfUses(parts))
        .divide(new BigDecimal(uses.denominator), MathContext.DECIMAL128)
        .multiply(unit);
  }

  /**
   * What was bought and is left after part n, up to what further parts use.
   *
   * @param parts n, 1 or more
   * @param further how many further parts it can still serve; empty for any number
   * @return the number of packs, over {@link #leftDivisor}
   */
  public BigInteger leftPacks(long parts, Optional<Long> further) {
    BigInteger left = leftOfUses(parts).min(bought(parts)).max(BigInteger.ZERO);
    if (further.isEmpty()) {
      return left;
    }
    long until = parts > Long.MAX_VALUE - further.get() ? Long.MAX_VALUE : parts + further.get();
    return left.min(step.multiply(uses.through(until).subtract(uses.through(parts))));
  }

  /** {@return what {@link #leftPacks} is divided by} */
  public BigInteger leftDivisor() {
    return contentOfUses;
  }

  private BigInteger leftOfUses(long parts) {
    return stock
        .multiply(uses.denominator)
        .add(bought(parts))
        .subtract(step.multiply(uses.through(parts)));
  }

  private BigInteger bought(long parts) {
    return metered ? count(parts) : count(parts).multiply(contentOfUses);
  }

  /** Uses through part n, where each is a whole one or a share of it. */
  BigDecimal used(long parts) {
    return new BigDecimal(uses.through(parts))
        .divide(new BigDecimal(uses.denominator), MathContext.DECIMAL128);
  }
}
