package dev.kilnledger.costing.resource;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.function.LongPredicate;
import java.util.stream.Stream;

/**
 * How the purchases of one resource fall over the parts: the count of packs through part n, in
 * closed form and exact.
 *
 * <p>With e events through part n, taken in groups where several share one use, the need is base +
 * step x e (with a base, at least that of one whole event), and what has to be bought is need -
 * stock, if that is above zero. What is charged by years of use follows a curve instead: within
 * each span of step x e at a rate of its own, and nothing after the last. In whole packs that is
 * ceil((need - stock) / content) of them; by measure it is (need - stock) / content. All figures
 * are kept as integers, scaled by a power of ten and divided by their greatest common divisor.
 * Every answer takes a time that does not depend on n, or grows with the number of its digits.
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
  private final Optional<Curve> curve;
  private final BigDecimal unit;
  private final BigInteger contentOfUses;

  /** The figures as longs, or -1 for all where one is too large. */
  private final long quickStep;

  private final long quickContent;
  private final long quickWhole;

  /** (Base - stock) x the denominator of the uses. */
  private final long quickStart;

  /** About how many parts make one pack or measure necessary, and for which part the first is. */
  private final double partsPerCount;

  private final double firstPart;

  private Staircase(
      Tally events,
      BigInteger group,
      boolean metered,
      BigInteger base,
      BigInteger step,
      BigInteger stock,
      BigInteger content,
      Optional<Curve> curve,
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
    this.curve = curve;
    this.unit = unit;
    this.contentOfUses = content.multiply(uses.denominator);
    BigInteger start = base.subtract(stock).multiply(uses.denominator);
    boolean small =
        curve.isEmpty()
            && Stream.of(step, contentOfUses, uses.denominator, start)
                .allMatch(figure -> figure.bitLength() < Long.SIZE - 1);
    this.quickStep = small ? step.longValue() : -1;
    this.quickContent = small ? contentOfUses.longValue() : -1;
    this.quickWhole = base.signum() > 0 ? uses.denominator.longValue() : 0;
    this.quickStart = start.longValue();
    double usesPerPart = uses.slope.doubleValue() / uses.bound.doubleValue();
    double perPart = step.doubleValue() * uses.denominator.doubleValue() * usesPerPart;
    double first = start.doubleValue() + step.doubleValue() * usesAbove(uses);
    this.partsPerCount = (metered ? 1 : contentOfUses.doubleValue()) / perPart;
    this.firstPart = -first / perPart;
  }

  private static double usesAbove(Tally uses) {
    return uses.high.doubleValue() / uses.bound.doubleValue() * uses.denominator.doubleValue();
  }

  /** Rates that hold for one span of step x uses each, from the first on. */
  private record Curve(BigInteger span, List<BigInteger> rates) {
    /** The need where step x uses is a measure. */
    BigInteger at(BigInteger measure, BigInteger spanOfUses) {
      BigInteger need = BigInteger.ZERO;
      BigInteger rest = measure;
      for (BigInteger rate : rates) {
        if (rest.signum() <= 0) {
          break;
        }
        need = need.add(rate.multiply(rest.min(spanOfUses)));
        rest = rest.subtract(spanOfUses);
      }
      return need;
    }

    BigInteger sum() {
      return rates.stream().reduce(BigInteger.ZERO, BigInteger::add);
    }
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

    /** Charged by measure, within each span of step x uses at the next of some rates. */
    Staircase curve(BigDecimal span, List<BigDecimal> rates, BigDecimal content) {
      int measureScale = Math.max(0, Math.max(step.scale(), span.scale()));
      int rateScale = rates.stream().mapToInt(BigDecimal::scale).reduce(content.scale(), Math::max);
      return new Staircase(
          events,
          BigInteger.valueOf(group),
          true,
          BigInteger.ZERO,
          step.setScale(measureScale).unscaledValue(),
          BigInteger.ZERO,
          content.setScale(measureScale + rateScale).unscaledValue(),
          Optional.of(
              new Curve(
                  span.setScale(measureScale).unscaledValue(),
                  rates.stream().map(rate -> rate.setScale(rateScale).unscaledValue()).toList())),
          BigDecimal.ONE);
    }

    Staircase content(BigDecimal ofAPack) {
      List<BigDecimal> figures = List.of(base, step, stock, ofAPack);
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
          Optional.empty(),
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
    if (parts == 0) {
      return BigInteger.ZERO;
    }
    long quickly = quick(parts);
    return quickly < 0 ? packs(uses.through(parts)) : BigInteger.valueOf(quickly);
  }

  /** The same in longs; below zero where they do not hold it. */
  private long quick(long parts) {
    long used = uses.quick(parts);
    long taken = used < 0 ? -1 : Tally.times(quickStep, Math.max(used, quickWhole));
    if (taken < 0 || taken > Long.MAX_VALUE / 2) {
      return -1;
    }
    long wanted = Math.max(0, taken + quickStart);
    return metered ? wanted : Tally.ceil(wanted, quickContent);
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
    if (curve.isPresent()) {
      BigInteger span = curve.get().span().multiply(uses.denominator);
      return curve.get().at(step.multiply(used), span);
    }
    BigInteger whole = base.signum() > 0 ? used.max(uses.denominator) : used;
    return base.subtract(stock)
        .multiply(uses.denominator)
        .add(step.multiply(whole))
        .max(BigInteger.ZERO);
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
   * {@return packs used per part in the long run, over {@link #lineDivisor}; on average over its
   * life for what is charged by a curve}
   */
  public BigInteger usage() {
    return uses.slope
        .multiply(step)
        .multiply(uses.denominator)
        .multiply(curve.map(Curve::sum).orElse(BigInteger.ONE));
  }

  /** {@return by how many packs the count rises per part in the long run, over lineDivisor} */
  public BigInteger growth() {
    return curve.isPresent() ? BigInteger.ZERO : usage();
  }

  /**
   * {@return the intercept of a line of slope {@link #growth} that the packs through part n never
   * lie below, over {@link #lineDivisor}}
   */
  public BigInteger lowest() {
    return curve.isPresent()
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
    if (curve.isPresent()) {
      return curve.get().span().multiply(curve.get().sum()).multiply(curveDivisor());
    }
    BigInteger highestUses = uses.high;
    if (base.signum() > 0 && !uses.denominator.equals(BigInteger.ONE)) {
      highestUses = highestUses.add(uses.bound);
    }
    BigInteger need = base.subtract(stock).multiply(uses.bound).add(step.multiply(highestUses));
    BigInteger high = need.max(BigInteger.ZERO).multiply(uses.denominator);
    // Rounding up to a whole pack adds less than one, by at least 1 / (content x denominator).
    return metered ? high : high.add(contentOfUses.subtract(BigInteger.ONE).multiply(uses.bound));
  }

  /** {@return what usage, growth, lowest and highest are divided by} */
  public BigInteger lineDivisor() {
    return content.multiply(curveDivisor());
  }

  private BigInteger curveDivisor() {
    int spans = curve.map(rates -> rates.rates().size()).orElse(1);
    return uses.denominator.multiply(uses.bound).multiply(BigInteger.valueOf(spans));
  }

  /**
   * {@return after how many parts the purchases repeat their pattern, once {@link #settled}: with
   * every further period the count has risen by the same whole number}
   */
  public BigInteger period() {
    if (step.signum() == 0 || curve.isPresent()) {
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
    if (curve.isPresent()) {
      BigInteger last = count(Long.MAX_VALUE);
      return firstWhere(1, 1, parts -> count(parts).equals(last)).orElse(Long.MAX_VALUE);
    }
    return firstWhere(
            1,
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
    return metered || parts == Long.MAX_VALUE
        ? Optional.empty()
        : firstAbove(count(parts), parts + 1);
  }

  /**
   * The first part through which more than a number has to be bought.
   *
   * @param number a number as {@link #count} gives it
   * @param from the part from which on it is sought, 1 or more
   * @return the part's number; empty if there is none up to {@link Long#MAX_VALUE}
   */
  public Optional<Long> firstAbove(BigInteger number, long from) {
    double guess = firstPart + number.doubleValue() * partsPerCount;
    long most = Tally.small(number);
    return firstWhere(
        from,
        guess,
        parts -> {
          long quickly = most < 0 ? -1 : quick(parts);
          return quickly < 0 ? count(parts).compareTo(number) > 0 : quickly > most;
        });
  }

  /**
   * The same need, met by measure.
   *
   * @param content the measure, more than zero, in the unit of {@link #holds}
   * @return the staircase whose {@link #count} over {@link #divisor} is what has to be bought, in
   *     such measures and unrounded
   */
  public Staircase byMeasureOf(BigDecimal content) {
    return build().metered(true).content(content);
  }

  /**
   * The same need, met in whole packs.
   *
   * @param content what a pack holds, more than zero, in the unit of {@link #holds}
   * @return the staircase whose {@link #count} is the number of such packs
   */
  public Staircase inPacksOf(BigDecimal content) {
    return build().metered(false).content(content);
  }

  /**
   * The same need with more of it in stock.
   *
   * @param more how much more, zero or more, in the unit of {@link #holds}
   * @return the staircase of what is then still to be bought
   */
  public Staircase with(BigDecimal more) {
    Build build = build().metered(metered);
    build.stock = build.stock.add(more);
    return build.content(holds());
  }

  private Build build() {
    Build build = new Build(events);
    build.group = group.longValueExact();
    build.base = decimal(base);
    build.step = decimal(step);
    build.stock = decimal(stock);
    return build;
  }

  private BigDecimal decimal(BigInteger figure) {
    return new BigDecimal(figure).multiply(unit);
  }

  /** {@return what one pack holds, in the measure of the need} */
  public BigDecimal holds() {
    return decimal(content);
  }

  /** {@return what each use takes, in the measure of the need} */
  public BigDecimal perUse() {
    return decimal(step);
  }

  /**
   * What is lacking for a number of whole uses if nothing is bought.
   *
   * @param number the uses, zero or more
   * @return base + step x uses - stock, in the measure of the need; below zero if there is more
   */
  public BigDecimal lacking(BigInteger number) {
    return decimal(base.subtract(stock).add(step.multiply(number)));
  }

  /**
   * The first number from a given one on for which a condition holds that then holds for good.
   *
   * @param guess about where that is; a bad guess takes longer, no more
   */
  private static Optional<Long> firstWhere(long from, double guess, LongPredicate holds) {
    long start = guess > from ? (long) guess : from;
    if (!holds.test(start)) {
      return after(start, holds);
    }
    long above = start;
    long width = 1;
    while (above > from) {
      long below = above - from < width ? from : above - width;
      if (!holds.test(below)) {
        return Optional.of(between(below, above, holds));
      }
      above = below;
      width *= 2;
    }
    return Optional.of(from);
  }

  /** The first number after one for which a condition does not hold. */
  private static Optional<Long> after(long start, LongPredicate holds) {
    long below = start;
    long width = 1;
    while (below < Long.MAX_VALUE) {
      long above = start > Long.MAX_VALUE - width ? Long.MAX_VALUE : start + width;
      if (holds.test(above)) {
        return Optional.of(between(below, above, holds));
      }
      below = above;
      width = width > Long.MAX_VALUE / 2 ? Long.MAX_VALUE : 2 * width;
    }
    return Optional.empty();
  }

  /** The first number of a stretch, the condition failing at its start and holding at its end. */
  private static long between(long start, long end, LongPredicate holds) {
    long below = start;
    long above = end;
    while (above - below > 1) {
      long middle = below + (above - below) / 2;
      if (holds.test(middle)) {
        above = middle;
      } else {
        below = middle;
      }
    }
    return above;
  }

  /**
   * What is there after part n of what was in stock and has been bought.
   *
   * @param parts n, 1 or more
   * @param bought what has been bought, in the measure of the need
   * @param contents what the packs bought held
   * @param nextPurchase the part for which more has to be bought
   * @return the shelf
   */
  public Shelf shelf(
      long parts, BigDecimal bought, BigDecimal contents, Optional<Long> nextPurchase) {
    BigDecimal share = new BigDecimal(uses.denominator);
    return shelfOfShares(parts, bought.multiply(share), contents, nextPurchase);
  }

  /**
   * What is there after part n where all is bought by one offer.
   *
   * @param parts n, 1 or more
   * @param packContent what a pack of the offer holds
   * @return the shelf
   */
  public Shelf shelf(long parts, BigDecimal packContent) {
    BigDecimal count = new BigDecimal(count(parts));
    return shelfOfShares(
        parts,
        count.multiply(metered ? unit : decimal(contentOfUses)),
        packContent.multiply(count),
        nextPurchase(parts));
  }

  /** Taken from what was bought times the denominator of the uses, so that nothing is rounded. */
  private Shelf shelfOfShares(
      long parts, BigDecimal bought, BigDecimal contents, Optional<Long> nextPurchase) {
    BigDecimal left =
        decimal(stock.multiply(uses.denominator))
            .add(bought)
            .subtract(decimal(step).multiply(new BigDecimal(uses.through(parts))));
    return new Shelf(metered, parts, overUses(left), used(parts), contents, nextPurchase);
  }

  /**
   * What is used of the need by further parts.
   *
   * @param parts n, 1 or more
   * @param further how many further parts, zero or more
   * @return step x their uses, in the measure of the need
   */
  public BigDecimal usedBy(long parts, long further) {
    long until = parts > Long.MAX_VALUE - further ? Long.MAX_VALUE : parts + further;
    return decimal(step).multiply(used(until).subtract(used(parts)));
  }

  /** Uses through part n, where each is a whole one or a share of it. */
  private BigDecimal used(long parts) {
    return overUses(new BigDecimal(uses.through(parts)));
  }

  private BigDecimal overUses(BigDecimal numerator) {
    return uses.denominator.equals(BigInteger.ONE)
        ? numerator
        : numerator.divide(new BigDecimal(uses.denominator), MathContext.DECIMAL128);
  }
}
