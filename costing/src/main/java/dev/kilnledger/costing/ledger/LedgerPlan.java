package dev.kilnledger.costing.ledger;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.resource.Resource;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.immutables.value.Value;
import org.joda.money.CurrencyUnit;

/**
 * What a part needs, what that costs, and the rules by which it is counted.
 *
 * <p>Parts are fired when a charge is full or at the end; a started firing is charged when its
 * first part is made.
 */
@Value.Immutable
@ValueStyle
public interface LedgerPlan extends Serializable {
  /** {@return the offers by which the resources are bought} */
  PriceBook prices();

  /** {@return what is needed, at least one resource and each item once} */
  List<Resource> resources();

  /** {@return how many parts share one firing, 1 or more} */
  int partsPerFiring();

  /** {@return when packs are bought; {@link BuyingRule#AS_NEEDED} unless stated} */
  @Value.Default
  default BuyingRule buying() {
    return BuyingRule.AS_NEEDED;
  }

  /** {@return how sums become money; {@link Rounding#HALF_EVEN} unless stated} */
  @Value.Default
  default Rounding rounding() {
    return Rounding.HALF_EVEN;
  }

  /**
   * {@return the kinds of cost that the resources or their prices cover already, so that no caveat
   * is due; none unless stated}
   */
  Set<CostArea> covered();

  /** {@return the currency of the price book} */
  default CurrencyUnit currency() {
    return prices().currency();
  }

  /**
   * The offer by which a resource of this plan is bought.
   *
   * @param resource a resource of this plan
   * @return its offer
   */
  default Offer offerOf(Resource resource) {
    return prices().offer(resource.item());
  }

  /**
   * Starts one.
   *
   * @return a builder; prices, resources and parts per firing are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link LedgerPlan} values. */
  final class Builder extends ImmutableLedgerPlan.Builder {
    Builder() {}
  }

  /**
   * Refuses resources without an offer that fits, and items named twice.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("ledger plan")
            .require(!resources().isEmpty(), "there is no resource; accepted is one or more")
            .require(
                partsPerFiring() >= 1,
                "parts per firing is " + partsPerFiring() + "; accepted is 1 or more");
    for (Resource resource : resources()) {
      Optional<Offer> offer = prices().find(resource.item());
      if (offer.isPresent()) {
        resource.mismatches(offer.get()).forEach(text -> problems.require(false, text));
      } else {
        problems.require(false, prices().missing(resource.item()));
      }
    }
    resources().stream()
        .collect(groupingBy(Resource::item, TreeMap::new, counting()))
        .forEach(
            (item, count) ->
                problems.require(
                    count == 1,
                    item
                        + " is needed by "
                        + count
                        + " resources; accepted is one resource for each item, which needs the sum"));
    problems.refuseIfAny();
  }
}
