package dev.kilnledger.costing.offer;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/** What a supplier asks for sending one order: a flat charge, or none from a value of goods on. */
@Value.Immutable
@ValueStyle
public interface ShippingTerms extends Serializable {
  /** {@return the supplier, as the offers name it} */
  String supplier();

  /** {@return the charge for one order, zero or more} */
  BigMoney charge();

  /**
   * {@return the value of goods, as their prices stand in the book, from which on the charge is
   * dropped; never unless stated}
   */
  Optional<BigMoney> freeFrom();

  /** {@return whether the charge holds the tax; {@link Tax#UNKNOWN} unless stated} */
  @Value.Default
  default Tax tax() {
    return Tax.UNKNOWN;
  }

  /** {@return the tax rate on the charge, zero or more, if it is known} */
  Optional<Amount<Dimensionless>> taxRate();

  /** {@return where the terms were seen} */
  Source source();

  /**
   * The charge on an order.
   *
   * @param goods the value of the goods in it
   * @return zero if the value is high enough, else the charge
   */
  default BigMoney chargeOn(BigMoney goods) {
    boolean free = freeFrom().filter(value -> !goods.isLessThan(value)).isPresent();
    return free ? BigMoney.zero(charge().getCurrencyUnit()) : charge();
  }

  /** {@return the terms for people: {@code "shipping EUR 5.90, free from EUR 100.00"}} */
  default String text() {
    return "shipping " + charge() + freeFrom().map(value -> ", free from " + value).orElse("");
  }

  /**
   * Starts one.
   *
   * @return a builder; supplier, charge and source are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link ShippingTerms} values. */
  final class Builder extends ImmutableShippingTerms.Builder {
    Builder() {}
  }

  /**
   * Refuses charges below zero and a threshold of another currency.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("shipping terms of " + supplier())
            .text("supplier", supplier())
            .require(
                !charge().isNegative(), "charge is " + charge() + "; accepted is zero or more");
    freeFrom()
        .ifPresent(
            value ->
                problems.require(
                    value.isPositive()
                        && value.getCurrencyUnit().equals(charge().getCurrencyUnit()),
                    "free from is "
                        + value
                        + "; accepted is more than zero in "
                        + charge().getCurrencyUnit()));
    taxRate().ifPresent(rate -> problems.notNegative("tax rate", rate));
    problems.refuseIfAny();
  }
}
