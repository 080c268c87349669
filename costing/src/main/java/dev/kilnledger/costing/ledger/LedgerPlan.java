package dev.kilnledger.costing.ledger;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.resource.ChargeRule;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.Staircase;
import dev.kilnledger.costing.resource.Workload;
import dev.kilnledger.costing.yield.Failures;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.io.Serializable;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.immutables.value.Value;
import org.joda.money.CurrencyUnit;

/**
 * What a part needs, what that costs, and the rules by which it is counted: each rule has a name
 * and a default, and stands in the statement with the plan.
 *
 * <p>Parts are fired when a charge is full or at the end; a started firing is charged when its
 * first part is made.
 */
@Value.Immutable
@ValueStyle
public interface LedgerPlan extends Serializable {
  /** {@return the offers by which the resources are bought} */
  PriceBook prices();

  /**
   * {@return what is needed, at least one resource, and each item once unless it is sold by
   * measure, as labour is that several steps take}
   */
  List<Resource> resources();

  /** {@return how many parts share one firing, 1 or more} */
  int partsPerFiring();

  /** {@return what a charge costs that is not full; {@link ChargeRule#WHOLE} unless stated} */
  @Value.Default
  default ChargeRule charging() {
    return ChargeRule.WHOLE;
  }

  /** {@return what fails on the way, and how that is counted; nothing unless stated} */
  @Value.Default
  default Failures failures() {
    return Failures.none();
  }

  /**
   * {@return what one event takes of the drivers that are measured, such as 6.5 h for the time of a
   * print; needed for each such driver of a resource}
   */
  Map<Driver, Amount<?>> amounts();

  /**
   * {@return what suppliers charge for an order, each once: offers of one piece, an order. Bought
   * as needed, all that the first part needs from a supplier is one order, and later each item is
   * ordered alone when it runs short; planned for n, each supplier gets one order. None unless
   * stated}
   */
  List<Offer> shipping();

  /** {@return what is added on other costs, each on its base; none unless stated} */
  List<Overhead> overheads();

  /** {@return how tax enters; prices as they are offered unless stated} */
  @Value.Default
  default TaxPolicy tax() {
    return TaxPolicy.asPriced();
  }

  /** {@return how leftovers are valued; not at all unless stated} */
  @Value.Default
  default Leftovers leftovers() {
    return Leftovers.notValued();
  }

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
   * The resource that an item is bought for.
   *
   * @param item an item
   * @return the first resource of that item; empty for shipping
   */
  default Optional<Resource> resourceOf(String item) {
    return resources().stream().filter(resource -> resource.item().equals(item)).findFirst();
  }

  /** {@return how the purchases of each resource fall over the parts, in the resources' order} */
  @Value.Lazy
  default List<Staircase> staircases() {
    return resources().stream()
        .map(resource -> resource.staircase(offerOf(resource), workload()))
        .toList();
  }

  /** {@return what n good parts ask of the workshop} */
  @Value.Lazy
  default Workload workload() {
    return Workload.of(partsPerFiring(), charging(), failures(), amounts());
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
    Workload.mismatches(amounts()).forEach(text -> problems.require(false, text));
    for (Resource resource : resources()) {
      problems.require(
          !resource.driver().isMeasured() || amounts().containsKey(resource.driver()),
          "the "
              + resource.driver().word()
              + " is not stated, by which "
              + resource.item()
              + " is used; accepted is a measure of "
              + resource.driver().kind());
      Optional<Offer> offer = prices().find(resource.item());
      if (offer.isPresent()) {
        resource.mismatches(offer.get()).forEach(text -> problems.require(false, text));
        problems.require(
            offer.get().isPlain(),
            resource.item()
                + " is offered with price breaks, a minimum order, an increment or a limit, which a"
                + " ledger does not count; accepted is an offer of single packs at one price");
      } else {
        problems.require(false, prices().missing(resource.item()));
      }
    }
    resources().stream()
        .collect(groupingBy(Resource::item, TreeMap::new, counting()))
        .forEach(
            (item, count) ->
                problems.require(
                    count == 1 || prices().find(item).filter(Offer::metered).isPresent(),
                    item
                        + " is needed by "
                        + count
                        + " resources; accepted is one resource for each item, which needs the sum"));
    shipping().forEach(offer -> refuse(offer, problems));
    shipping().stream()
        .collect(groupingBy(Offer::supplier, TreeMap::new, counting()))
        .forEach(
            (supplier, count) ->
                problems.require(
                    count == 1,
                    "shipping by "
                        + supplier
                        + " is stated "
                        + count
                        + " times; accepted is once"));
    problems.refuseIfAny();
  }

  private void refuse(Offer order, Problems problems) {
    problems
        .require(
            order.content().equals(Amounts.ratio(1)) && !order.metered(),
            order.item()
                + " is offered for "
                + order.content()
                + "; accepted is one order, 1 piece")
        .require(
            order.price().getCurrencyUnit().equals(currency()),
            order.item() + " costs " + order.price() + "; accepted is the currency " + currency())
        .require(
            resourceOf(order.item()).isEmpty(),
            order.item() + " is a resource; accepted is shipping under a name of its own");
  }
}
