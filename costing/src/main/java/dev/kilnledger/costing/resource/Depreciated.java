package dev.kilnledger.costing.resource;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Input;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/**
 * Equipment whose price is charged to the parts instead of being paid with the first one: of price
 * P, with salvage value S and life U, u used units are charged (P - S) u / U, and no more than P -
 * S, so that the book value never falls below S. This is a charge and no cash; whoever counts cash
 * takes {@link Durable}, or {@link Wearing} where it is replaced.
 */
@Value.Immutable
@ValueStyle
public non-sealed interface Depreciated extends Resource {
  @Override
  String item();

  /** {@return what uses it} */
  @Override
  Driver driver();

  /** {@return the method, by which {@link #life} was found} */
  @Value.Default
  default DepreciationMethod method() {
    return DepreciationMethod.UNITS_OF_PRODUCTION;
  }

  /**
   * {@return the life U in the measure of the driver: a number of 1 or more where events are
   * counted, else more than zero}
   */
  Amount<?> life();

  /** {@return the salvage value S, zero or more, in the currency of the price and up to it} */
  BigMoney salvage();

  /** {@return where life and salvage value come from} */
  Source source();

  /**
   * Starts one.
   *
   * @return a builder; item, driver, life, salvage and source are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Depreciated} values. */
  final class Builder extends ImmutableDepreciated.Builder {
    Builder() {}

    /**
     * Straight line over years of steady use.
     *
     * @param years the life in years, 1 or more
     * @param yearlyUse what is used in one year, in the measure of the driver
     * @return this
     */
    public Builder straightLine(int years, Amount<?> yearlyUse) {
      return method(DepreciationMethod.STRAIGHT_LINE).life(yearlyUse.multiply(years));
    }
  }

  @Override
  default String formula(Offer offer, Workload workload) {
    return "(price - salvage) / price x min(1, "
        + workload.formula(driver())
        + " / life), "
        + method().words();
  }

  @Override
  default List<Input> inputs() {
    // Money is no amount of a quantity: the name tells the currency.
    return List.of(
        Input.of("life", life(), source()),
        Input.of(
            "salvage, in " + salvage().getCurrencyUnit(),
            Amounts.ratio(salvage().getAmount().doubleValue()),
            source()));
  }

  @Override
  default List<String> mismatches(Offer offer) {
    List<String> mismatches = new ArrayList<>(Fit.pieces(offer));
    if (!salvage().getCurrencyUnit().equals(offer.price().getCurrencyUnit())
        || salvage().isGreaterThan(offer.price())
        || !offer.price().isPositive()) {
      mismatches.add(
          "salvage value of "
              + item()
              + " is "
              + salvage()
              + " and its price "
              + offer.price()
              + "; accepted is a price above zero and up to that price of salvage, in one currency");
    }
    return List.copyOf(mismatches);
  }

  @Override
  default Staircase staircase(Offer offer, Workload workload) {
    BigDecimal price = offer.price().getAmount();
    BigDecimal charged = price.subtract(salvage().getAmount());
    BigDecimal life = Decimals.si(life());
    return Staircase.of(workload.tally(driver()))
        .metered(true)
        .step(charged.multiply(workload.perEvent(driver())))
        .atMost(charged.multiply(life))
        .content(price.multiply(life));
  }

  /** {@return the life that is left, at least none} */
  @Override
  default Stock stock(Offer offer, Workload workload, long parts) {
    BigDecimal used = staircase(offer, workload).used(parts).multiply(workload.perEvent(driver()));
    return Stock.builder()
        .item(item())
        .parts(parts)
        .left(Decimals.like(life(), Decimals.si(life()).subtract(used).max(BigDecimal.ZERO)))
        .counted(driver().isMeasured() ? "" : driver().word())
        .build();
  }

  /**
   * Refuses a life of no use and a negative salvage value.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems = new Problems("depreciated resource " + item()).text("item", item());
    Fit.life(driver(), life(), "life", problems);
    problems
        .require(!salvage().isNegative(), "salvage is " + salvage() + "; accepted is zero or more")
        .refuseIfAny();
  }
}
