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
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/**
 * Equipment whose price is charged to the parts instead of being paid with the first one: of price
 * P, with salvage value S and life U, u used units are charged (P - S) u / U, and no more than P -
 * S, so that the book value never falls below S. By declining balance each year of use charges
 * factor / years of the book value at its start, shared evenly by the use of that year, down to S;
 * after the last year nothing more is charged. This is a charge and no cash; whoever counts cash
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

  /** {@return the years over which the life is spread, 1 to 100; 1 unless stated} */
  @Value.Default
  default int years() {
    return 1;
  }

  /**
   * {@return by how much faster than in equal shares the book value declines, above zero and up to
   * the years; 2 is called double declining. Required by that method, and by no other}
   */
  Optional<Amount<Dimensionless>> factor();

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
      return method(DepreciationMethod.STRAIGHT_LINE).years(years).life(yearlyUse.multiply(years));
    }

    /**
     * Declining balance over years of steady use.
     *
     * @param factor by how much faster than in equal shares the book value declines
     * @param years the life in years, 1 or more
     * @param yearlyUse what is used in one year, in the measure of the driver
     * @return this
     */
    public Builder decliningBalance(Amount<Dimensionless> factor, int years, Amount<?> yearlyUse) {
      return method(DepreciationMethod.DECLINING_BALANCE)
          .factor(factor)
          .years(years)
          .life(yearlyUse.multiply(years));
    }
  }

  @Override
  default String formula(Offer offer, Workload workload) {
    String used = workload.formula(driver());
    return method() == DepreciationMethod.DECLINING_BALANCE
        ? "sum over the years of use of min(book value x factor / years, book value - salvage) /"
            + " price x the share of the year used, "
            + used
            + " being used and life / years a year, "
            + method().words()
        : "(price - salvage) / price x min(1, " + used + " / life), " + method().words();
  }

  @Override
  default List<Input> inputs() {
    List<Input> inputs = new ArrayList<>();
    inputs.add(Input.of("life", life(), source()));
    // Money is no amount of a quantity: the name tells the currency.
    inputs.add(
        Input.of(
            "salvage, in " + salvage().getCurrencyUnit(),
            Amounts.ratio(salvage().getAmount().doubleValue()),
            source()));
    factor()
        .ifPresent(
            factor -> {
              inputs.add(Input.of("factor", factor, source()));
              inputs.add(Input.of("years", Amounts.ratio(years()), source()));
            });
    return List.copyOf(inputs);
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
    BigDecimal life = Decimals.si(life());
    BigDecimal years = BigDecimal.valueOf(years());
    BigDecimal perEvent = workload.perEvent(driver());
    Staircase.Build use = Staircase.of(workload.tally(driver()));
    if (method() != DepreciationMethod.DECLINING_BALANCE) {
      return use.step(perEvent)
          .curve(life, List.of(price.subtract(salvage().getAmount())), price.multiply(life));
    }
    // All money is multiplied by years^years, and use by years, so that no quotient is rounded.
    BigDecimal whole = years.pow(years());
    BigDecimal share = factor().map(Decimals::si).orElseThrow();
    BigDecimal salvage = salvage().getAmount().multiply(whole);
    BigDecimal book = price.multiply(whole);
    List<BigDecimal> charges = new ArrayList<>();
    for (int year = 0; year < years(); year++) {
      BigDecimal charge = book.multiply(share).divide(years).min(book.subtract(salvage));
      charges.add(charge);
      book = book.subtract(charge);
    }
    return use.step(perEvent.multiply(years))
        .curve(life, charges, price.multiply(whole).multiply(life));
  }

  /** {@return the life that is left, at least none} */
  @Override
  default Stock stock(Workload workload, Shelf shelf) {
    BigDecimal used = shelf.used.multiply(workload.perEvent(driver()));
    return shelf
        .stock(item())
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
    boolean declining = method() == DepreciationMethod.DECLINING_BALANCE;
    problems
        .require(
            years() >= 1 && years() <= 100, "years is " + years() + "; accepted is from 1 to 100")
        .require(
            factor().isPresent() == declining,
            declining
                ? "factor is not stated; accepted is above 0 and up to the years"
                : "factor is stated for " + method().words() + "; accepted is none")
        .require(
            factor()
                .filter(factor -> factor.si() <= 0 || factor.si() > Math.max(1, years()))
                .isEmpty(),
            "factor is "
                + factor().map(Amount::toString).orElse("")
                + "; accepted is above 0 and up to the years, "
                + years())
        .require(!salvage().isNegative(), "salvage is " + salvage() + "; accepted is zero or more")
        .refuseIfAny();
  }
}
