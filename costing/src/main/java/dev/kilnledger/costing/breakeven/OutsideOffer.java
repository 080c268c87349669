package dev.kilnledger.costing.breakeven;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.ledger.BuyingRule;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.resource.Consumed;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Durable;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.units.Amounts;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.immutables.value.Value;
import org.joda.money.BigMoney;

/**
 * Finished parts from somebody else: a price per part, and what an order takes.
 *
 * <p>Bought as needed, every order is of the minimum, M parts, and n parts cost ceil(n / M) (M P +
 * S) with the price P and the shipping S. Planned for n, one order of max(n, M) parts is placed.
 */
@Value.Immutable
@ValueStyle
public interface OutsideOffer extends Serializable {
  /** {@return the offer of one part, a piece, at more than zero} */
  Offer part();

  /** {@return M, the smallest number of parts that can be ordered, 1 or more; 1 unless stated} */
  @Value.Default
  default int minimumOrder() {
    return 1;
  }

  /** {@return S, what is charged for sending each order; nothing unless stated} */
  Optional<BigMoney> shipping();

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
    boolean together = buying() == BuyingRule.PLANNED_FOR_N;
    BigMoney lot = part().price().multipliedBy(minimumOrder());
    List<Offer> offers = new ArrayList<>();
    List<Resource> resources = new ArrayList<>();
    Consumed.Builder parts =
        Consumed.builder()
            .item(part().item())
            .driver(Driver.GOOD_PART)
            .quantity(Amounts.ratio(1))
            .source(part().source());
    if (together && minimumOrder() > 1) {
      // The smallest order is there with the first part; further ones come singly.
      String smallest = "smallest order of " + part().item();
      offers.add(Offer.builder().from(part()).item(smallest).price(lot).build());
      offers.add(part());
      resources.add(Durable.toBuy(smallest));
      resources.add(parts.owned(Amounts.ratio(minimumOrder())).build());
    } else {
      offers.add(
          Offer.builder().from(part()).content(Amounts.ratio(minimumOrder())).price(lot).build());
      resources.add(parts.build());
    }
    List<Offer> orders =
        shipping().stream()
            .map(
                charge ->
                    Offer.builder()
                        .from(part())
                        .item("shipping of " + part().item())
                        .price(charge)
                        .build())
            .toList();
    return LedgerPlan.builder()
        .prices(
            PriceBook.builder()
                .currency(own.currency())
                .asOf(own.prices().asOf())
                .oldAfterDays(own.prices().oldAfterDays())
                .offers(offers)
                .build())
        .resources(resources)
        .partsPerFiring(1)
        .buying(buying())
        .shipping(orders)
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
            minimumOrder() >= 1, "minimum order is " + minimumOrder() + "; accepted is 1 or more")
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
