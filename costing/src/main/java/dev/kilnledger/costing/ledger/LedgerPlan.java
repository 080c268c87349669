package dev.kilnledger.costing.ledger;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.offer.ShippingTerms;
import dev.kilnledger.costing.offer.Tax;
import dev.kilnledger.costing.purchase.PurchasePlanner;
import dev.kilnledger.costing.resource.ChargeRule;
import dev.kilnledger.costing.resource.Depreciated;
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
import java.util.stream.Stream;
import javax.measure.quantity.Time;
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
  /**
   * {@return the offers by which the resources are bought, any number for each item, and what
   * suppliers charge for sending}
   */
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
   * {@return what further suppliers charge for an order, whatever its value, of whom the price book
   * holds no terms: offers of one piece, an order, one for each supplier. None unless stated}
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

  /**
   * {@return from one good part to the next, more than zero: the pace at which what is bought is
   * used, and so whether it is used within its shelf life; not known unless stated}
   */
  Optional<Amount<Time>> timePerPart();

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
   * {@return items the work is done with, whether a resource is made of them or not, such as
   * printer, kiln and crucible; a caveat names those of which none is}
   */
  List<String> equipment();

  /** {@return the names of groups in a shopping list by item; {@link ShoppingGroup} has others} */
  Map<String, String> groups();

  /**
   * Whether an item is counted: priced or owned, a resource of this plan is made of it.
   *
   * @param item the item's name
   * @return true if it is the item of a resource
   */
  default boolean covers(String item) {
    return resourceOf(item).isPresent();
  }

  /** {@return the {@link #equipment} that is not covered, in its order} */
  default List<String> uncovered() {
    return equipment().stream().distinct().filter(item -> !covers(item)).toList();
  }

  /**
   * The offers by which a resource of this plan may be bought.
   *
   * @param resource a resource of this plan
   * @return the offers of its item that hold on the day of the prices and fit, in their order
   */
  default List<Offer> offersOf(Resource resource) {
    return prices().offersOf(resource.item()).stream()
        .filter(offer -> resource.mismatches(offer).isEmpty())
        .toList();
  }

  /**
   * The offer by which a resource of this plan is bought, if only one is. Of several, that is the
   * cheapest where it is paid by measure or charged by depreciation; packs are taken from all of
   * them as the rule of buying asks, and the first one stands for them.
   *
   * @param resource a resource of this plan
   * @return its offer
   */
  default Offer offerOf(Resource resource) {
    List<Offer> offers = offersOf(resource);
    if (resource instanceof Depreciated) {
      Offer cheapest = offers.get(0);
      for (Offer offer : offers) {
        cheapest = offer.price().isLessThan(cheapest.price()) ? offer : cheapest;
      }
      return cheapest;
    }
    return offers.get(0).metered()
        ? PurchasePlanner.standard().cheapestByMeasure(offers)
        : offers.get(0);
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

  /**
   * {@return how the purchases of each resource fall over the parts if it is bought by {@link
   * #offerOf} alone, at one price, in the resources' order}
   */
  @Value.Lazy
  default List<Staircase> staircases() {
    return resources().stream()
        .map(resource -> resource.staircase(offerOf(resource), workload()))
        .toList();
  }

  /** {@return what is bought by the rule of buying} */
  @Value.Lazy
  default Purchases purchases() {
    return new Purchases(this);
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
      refuse(resource, problems);
    }
    resources().stream()
        .collect(groupingBy(Resource::item, TreeMap::new, counting()))
        .forEach(
            (item, count) ->
                problems.require(
                    count == 1 || prices().offersOf(item).stream().allMatch(Offer::metered),
                    item
                        + " is needed by "
                        + count
                        + " resources; accepted is one resource for each item, which needs the sum"));
    timePerPart().ifPresent(time -> problems.positive("time per part", time));
    problems.require(
        leftovers().rule() != LeftoverRule.COST_SHARE_WITHIN_SHELF_LIFE
            || timePerPart().isPresent(),
        "time per part is not stated; accepted is the time from one part to the next, by which"
            + " shelf lives become numbers of parts");
    shipping().forEach(offer -> refuse(offer, problems));
    Stream.concat(
            shipping().stream().map(Offer::supplier),
            prices().shipping().stream().map(ShippingTerms::supplier))
        .collect(groupingBy(supplier -> supplier, TreeMap::new, counting()))
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

  private void refuse(Resource resource, Problems problems) {
    List<Offer> offers = prices().offersOf(resource.item());
    List<Offer> fitting = offersOf(resource);
    if (offers.isEmpty()) {
      problems.require(false, prices().missing(resource.item()));
    } else if (fitting.isEmpty()) {
      offers.forEach(
          offer -> resource.mismatches(offer).forEach(text -> problems.require(false, text)));
    }
    List<Tax> bases = fitting.stream().map(Offer::tax).toList();
    problems
        .require(
            fitting.stream().map(Offer::metered).distinct().count() <= 1,
            resource.item()
                + " is offered both in packs and by measure; accepted is one of the two")
        .require(
            !bases.contains(Tax.INCLUDED) || !bases.contains(Tax.EXCLUDED),
            "some offers of "
                + resource.item()
                + " hold the tax and others do not; accepted are offers on one basis, into which"
                + " the price book brings them");
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
