package dev.kilnledger.costing.offer;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Kind;
import java.io.Serializable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Time;
import org.immutables.value.Value;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/**
 * What a supplier asks for one pack of an item, or for a measure of it: price and breaks, what can
 * be ordered, when the offer holds, and where and when it was seen.
 */
@Value.Immutable
@ValueStyle
public interface Offer extends Serializable {
  /** {@return the name of the item, by which a resource asks for it} */
  String item();

  /** {@return who offers it} */
  String supplier();

  /**
   * {@return what one pack holds, more than zero: a mass, volume, length, area, energy or time, or
   * a whole number of pieces as a ratio}
   */
  Amount<?> content();

  /** {@return the price of one pack, zero or more} */
  BigMoney price();

  /** {@return the day on which the price was seen, empty where it is not known} */
  Optional<LocalDate> date();

  /** {@return where the price was seen} */
  Source source();

  /** {@return whether the price holds the tax; {@link Tax#UNKNOWN} unless stated} */
  @Value.Default
  default Tax tax() {
    return Tax.UNKNOWN;
  }

  /**
   * {@return whether it is sold by measure, as energy is, so that any fraction of {@link #content}
   * is paid in proportion; false, in whole packs, unless stated}
   */
  @Value.Default
  default boolean metered() {
    return false;
  }

  /** {@return the tax rate on the price, zero or more, if it is known} */
  Optional<Amount<Dimensionless>> taxRate();

  /**
   * {@return lower prices for larger orders, from few packs to many, none of them above the price
   * before it; none unless stated}
   */
  List<PriceBreak> breaks();

  /** {@return to which packs a break applies; {@link BreakRule#ALL_UNITS} unless stated} */
  @Value.Default
  default BreakRule breakRule() {
    return BreakRule.ALL_UNITS;
  }

  /** {@return the fewest packs of one order, 1 or more; 1 unless stated} */
  @Value.Default
  default long minimumOrder() {
    return 1;
  }

  /**
   * {@return the packs of an order are a whole multiple of this, 1 or more; 1 unless stated. The
   * smallest order is the first multiple that reaches the minimum}
   */
  @Value.Default
  default long orderIncrement() {
    return 1;
  }

  /** {@return the most packs that can be had, 1 or more; no limit unless stated} */
  Optional<Long> available();

  /** {@return the first day on which the offer holds, if it has one} */
  Optional<LocalDate> validFrom();

  /** {@return the last day on which the offer holds, if it has one} */
  Optional<LocalDate> validThrough();

  /** {@return how long a pack keeps after it was bought, more than zero, if it perishes} */
  Optional<Amount<Time>> shelfLife();

  /** {@return the exchange rate by which the prices came into their currency, if they did} */
  Optional<ExchangeRate> convertedAt();

  /**
   * Whether the offer holds on a day.
   *
   * @param day the day
   * @return true if the day is neither before the first nor after the last day of validity
   */
  default boolean holdsOn(LocalDate day) {
    return validFrom().filter(day::isBefore).isEmpty()
        && validThrough().filter(day::isAfter).isEmpty();
  }

  /**
   * The smallest order that holds a number of packs, by minimum and increment alone.
   *
   * @param packs a number of packs
   * @return the packs to order, not less than that number
   */
  default long orderOf(long packs) {
    long wanted = Math.max(packs, minimumOrder());
    long rest = wanted % orderIncrement();
    return rest == 0 ? wanted : Math.addExact(wanted, orderIncrement() - rest);
  }

  /**
   * What an order of whole packs costs, by the price of one pack and its breaks.
   *
   * @param packs a number of packs that can be ordered, or zero
   * @return the exact cost, without shipping
   * @throws IllegalArgumentException if so many packs cannot be ordered
   */
  default BigMoney cost(long packs) {
    BigMoney cost = BigMoney.zero(price().getCurrencyUnit());
    for (PriceStep step : steps(packs)) {
      cost = cost.plus(step.cost());
    }
    return cost;
  }

  /**
   * What an order of whole packs is made of: all its packs at one price, or, where breaks apply to
   * the packs from there on, the packs of each price.
   *
   * @param packs a number of packs that can be ordered, or zero
   * @return the steps from the first pack on, none of them of no packs
   * @throws IllegalArgumentException if so many packs cannot be ordered
   */
  default List<PriceStep> steps(long packs) {
    if (packs == 0) {
      return List.of();
    }
    new Problems("order of " + item())
        .require(
            packs > 0 && orderOf(packs) == packs,
            "it is of "
                + packs
                + " packs; accepted is "
                + minimumOrder()
                + " or more in steps of "
                + orderIncrement())
        .require(
            available().filter(limit -> packs > limit).isEmpty(),
            "it is of "
                + packs
                + " packs; accepted is up to the "
                + available().map(String::valueOf).orElse("")
                + " available")
        .refuseIfAny();
    List<PriceStep> steps = new ArrayList<>();
    BigMoney price = price();
    long from = 1;
    for (PriceBreak step : breaks()) {
      if (step.fromPacks() <= packs) {
        if (breakRule() == BreakRule.INCREMENTAL) {
          steps.add(PriceStep.of(step.fromPacks() - from, price));
          from = step.fromPacks();
        }
        price = step.price();
      }
    }
    steps.add(PriceStep.of(packs - from + 1, price));
    return List.copyOf(steps);
  }

  /** {@return the offer for people: {@code "supplier A: 500 g at EUR 60.00"}} */
  default String text() {
    return supplier() + ": " + content() + " at " + price();
  }

  /**
   * {@return whether any number of packs can be ordered at one price: no breaks, no minimum, no
   * increment, no limit}
   */
  default boolean isPlain() {
    return breaks().isEmpty()
        && minimumOrder() == 1
        && orderIncrement() == 1
        && available().isEmpty();
  }

  /**
   * Starts one.
   *
   * @return a builder; item, supplier, content, price and source are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Offer} values. */
  final class Builder extends ImmutableOffer.Builder {
    Builder() {}

    /**
     * The price of one pack.
     *
     * @param price an amount in whole minor units
     * @return this
     */
    public Builder price(Money price) {
      return price(price.toBigMoney());
    }
  }

  /**
   * Refuses what cannot be bought.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Set<Kind<?>> accepted =
        Set.of(Kind.MASS, Kind.VOLUME, Kind.LENGTH, Kind.AREA, Kind.ENERGY, Kind.TIME, Kind.RATIO);
    Problems problems = new Problems("offer of " + item());
    problems
        .text("item", item())
        .text("supplier", supplier())
        .require(
            accepted.contains(content().kind()),
            "content is "
                + content()
                + ", which measures "
                + content().kind()
                + "; accepted is a mass, volume, length, area, energy, time or number of pieces")
        .positive("content", content())
        .require(
            !content().kind().equals(Kind.RATIO) || content().si() == Math.rint(content().si()),
            "content is " + content() + " pieces; accepted is a whole number of pieces")
        .require(!price().isNegative(), "price is " + price() + "; accepted is zero or more")
        .require(
            minimumOrder() >= 1,
            "minimum order is " + minimumOrder() + " packs; accepted is 1 or more")
        .require(
            orderIncrement() >= 1,
            "order increment is " + orderIncrement() + " packs; accepted is 1 or more")
        .require(
            !metered() || isPlain(),
            "it is sold by measure and has breaks, a minimum, an increment or a limit of packs;"
                + " accepted is none of them");
    taxRate().ifPresent(rate -> problems.notNegative("tax rate", rate));
    shelfLife().ifPresent(life -> problems.positive("shelf life", life));
    available()
        .ifPresent(
            limit ->
                problems.require(
                    minimumOrder() < 1 || orderIncrement() < 1 || orderOf(1) <= limit,
                    "available are "
                        + limit
                        + " packs; accepted is the smallest order or more, which is "
                        + minimumOrder()
                        + " packs in steps of "
                        + orderIncrement()));
    validFrom()
        .ifPresent(
            from ->
                problems.require(
                    validThrough().filter(from::isAfter).isEmpty(),
                    "it holds from "
                        + from
                        + " through "
                        + validThrough().map(LocalDate::toString).orElse("")
                        + "; accepted is a last day not before the first"));
    checkBreaks(problems);
    problems.refuseIfAny();
  }

  private void checkBreaks(Problems problems) {
    long from = 1;
    BigMoney price = price();
    for (PriceBreak step : breaks()) {
      boolean sameCurrency = step.price().getCurrencyUnit().equals(price.getCurrencyUnit());
      problems
          .require(
              step.fromPacks() > from,
              "a break from "
                  + step.fromPacks()
                  + " packs follows one from "
                  + from
                  + "; accepted is from few packs to many")
          .require(
              sameCurrency && !step.price().isGreaterThan(price),
              "the price from "
                  + step.fromPacks()
                  + " packs is "
                  + step.price()
                  + "; accepted is up to "
                  + price
                  + ", the price before it");
      from = step.fromPacks();
      if (sameCurrency) {
        price = step.price();
      }
    }
  }
}
