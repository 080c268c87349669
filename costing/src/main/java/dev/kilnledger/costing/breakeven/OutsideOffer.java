package dev.kilnledger.costing.breakeven;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.ledger.BuyingRule;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.ShippingTerms;
import dev.kilnledger.costing.resource.Consumed;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.units.Amounts;
import java.io.Serializable;
import java.util.Optional;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/**
 * Finished parts from somebody else: an offer of single parts with its price breaks, minimum order
 * and increment, and what each order costs to be sent.
 *
 * <p>They are bought by the rules of a ledger: as needed, the part that is lacking is ordered with
 * all that the smallest or the cheapest order holds beside it; planned for n, one order is placed
 * for all.
 */
@Value.Immutable
@ValueStyle
public interface OutsideOffer extends Serializable {
  /** {@return the offer of one part, a piece, at more than zero} */
  Offer part();

  /** {@return what is charged for sending each order; nothing unless stated} */
  Optional<BigMoney> shipping();

  /** {@return the value of an order from which on it is sent for nothing; never unless stated} */
  Optional<BigMoney> shippingFreeFrom();

  /** {@return when it is bought; {@link BuyingRule#AS_NEEDED} unless stated} */
  @Value.Default
  default BuyingRule buying() {
    return BuyingRule.AS_NEEDED;
  }

  /**
   * An outside price that holds for any number of parts and includes everything.
   *
   * @param price what one part costs, more than zero
   * @return the offer
   * @throws IllegalArgumentException if the price is not positive
   */
  static OutsideOffer at(BigMoney price) {
    return builder()
        .part(
            Offer.builder()
                .item("outside part")
                .supplier("outside")
                .content(Amounts.ratio(1))
                .price(price)
                .source(Source.user("outside price"))
                .build())
        .build();
  }

  /**
   * Buying as a plan, so that it is counted as making is.
   *
   * @param own the plan it is compared with, whose day, currency and tax policy hold for both
   * @return the plan of buying
   * @throws IllegalArgumentException if the offer is in another currency
   */
  default LedgerPlan plan(LedgerPlan own) {
    PriceBook.Builder prices =
        PriceBook.builder()
            .currency(own.currency())
            .asOf(own.prices().asOf())
            .oldAfterDays(own.prices().oldAfterDays())
            .addOffers(part());
    shipping()
        .ifPresent(
            charge ->
                prices.addShipping(
                    ShippingTerms.builder()
                        .supplier(part().supplier())
                        .charge(charge)
                        .freeFrom(shippingFreeFrom())
                        .tax(part().tax())
                        .taxRate(part().taxRate())
                        .source(part().source())
                        .build()));
    return LedgerPlan.builder()
        .prices(prices.build())
        .addResources(
            Consumed.builder()
                .item(part().item())
                .driver(Driver.GOOD_PART)
                .quantity(Amounts.ratio(1))
                .source(part().source())
                .build())
        .partsPerFiring(1)
        .buying(buying())
        .tax(own.tax())
        .rounding(own.rounding())
        .build();
  }

  /**
   * Starts one.
   *
   * @return a builder; the part is required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link OutsideOffer} values. */
  final class Builder extends ImmutableOutsideOffer.Builder {
    Builder() {}
  }

  /**
   * Refuses what is no offer of single parts.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("outside offer")
        .require(
            part().content().equals(Amounts.ratio(1)) && !part().metered(),
            "content is " + part().content() + "; accepted is 1 piece")
        .require(
            part().price().isPositive(),
            "price is " + part().price() + "; accepted is more than zero")
        .require(
            shipping()
                .filter(
                    charge ->
                        charge.isNegative()
                            || !charge.getCurrencyUnit().equals(part().price().getCurrencyUnit()))
                .isEmpty(),
            "shipping is "
                + shipping().map(BigMoney::toString).orElse("")
                + "; accepted is zero or more in the currency of the price")
        .refuseIfAny();
  }
}
