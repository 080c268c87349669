package dev.kilnledger.costing.job;

import dev.kilnledger.core.equipment.Printer;
import dev.kilnledger.core.equipment.Spacing;
import dev.kilnledger.core.firing.FiringUse;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.part.Outline;
import dev.kilnledger.core.part.Part;
import dev.kilnledger.core.part.PrintConditions;
import dev.kilnledger.core.part.SupportFacts;
import dev.kilnledger.costing.ledger.BuyingRule;
import dev.kilnledger.costing.ledger.CostArea;
import dev.kilnledger.costing.ledger.Leftovers;
import dev.kilnledger.costing.ledger.Overhead;
import dev.kilnledger.costing.ledger.Rounding;
import dev.kilnledger.costing.ledger.TaxPolicy;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.costing.offer.PriceBook;
import dev.kilnledger.costing.resource.ChargeRule;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.costing.resource.Tails;
import dev.kilnledger.costing.yield.Failures;
import dev.kilnledger.thermal.firing.FiringInputs;
import dev.kilnledger.units.Amount;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/**
 * A part to be made in a workshop: what it is, how it is printed and fired, and what things cost.
 *
 * <p>How much filament a part takes follows from its passage, and what a firing takes in energy and
 * getter follows from the route, or is stated as measured. Everything else that is used up is given
 * as {@link #resources}. What a firing is computed from - feedstock, route, kiln, crucible, and
 * what the user knows of binder, powder, packing and room - are its {@link FiringInputs}.
 */
@Value.Immutable
@ValueStyle
public interface Job extends FiringInputs {
  /** {@return the part wanted} */
  Part part();

  /** {@return how it is printed and fired; {@link PrintConditions#ideal()} unless stated} */
  @Value.Default
  default PrintConditions conditions() {
    return PrintConditions.ideal();
  }

  /** {@return the printer} */
  Printer printer();

  /** {@return the packing to keep around every part in the crucible} */
  Spacing spacing();

  /** {@return what the part looks like from above; {@link Outline#RECTANGULAR} unless stated} */
  @Value.Default
  default Outline outline() {
    return Outline.RECTANGULAR;
  }

  /**
   * {@return what is known of how the part is held while its binder leaves; nothing unless stated}
   */
  @Value.Default
  default SupportFacts support() {
    return SupportFacts.unknown();
  }

  /** {@return how many parts one charge holds, 1 or more} */
  int partsPerCharge();

  /** {@return what a firing takes as measured; forecast where it is empty} */
  Optional<FiringUse> measuredFiring();

  /** {@return the offers for everything that is bought} */
  PriceBook prices();

  /** {@return the item of the price book that is the feedstock} */
  String filamentItem();

  /** {@return what becomes of the tail of a spool; {@link Tails#JOINED} unless stated} */
  @Value.Default
  default Tails filamentTails() {
    return Tails.JOINED;
  }

  /** {@return the item of the price book that is the electrical energy} */
  String energyItem();

  /** {@return the item of the price book that is the getter; required where one is laid in} */
  Optional<String> getterItem();

  /** {@return the item of the price book that is the printer; {@code "printer"} unless stated} */
  @Value.Default
  default String printerItem() {
    return "printer";
  }

  /** {@return the item of the price book that is the kiln; {@code "kiln"} unless stated} */
  @Value.Default
  default String kilnItem() {
    return "kiln";
  }

  /** {@return the item of the price book that is the crucible; {@code "crucible"} unless stated} */
  @Value.Default
  default String crucibleItem() {
    return "crucible";
  }

  /** {@return everything else that is used up: equipment, crucible, packing, work} */
  List<Resource> resources();

  /** {@return what fails on the way, and how that is counted; nothing unless stated} */
  @Value.Default
  default Failures failures() {
    return Failures.none();
  }

  /** {@return what a charge costs that is not full; {@link ChargeRule#WHOLE} unless stated} */
  @Value.Default
  default ChargeRule charging() {
    return ChargeRule.WHOLE;
  }

  /** {@return when packs are bought; {@link BuyingRule#AS_NEEDED} unless stated} */
  @Value.Default
  default BuyingRule buying() {
    return BuyingRule.AS_NEEDED;
  }

  /** {@return from one good part to the next, for shelf lives; not known unless stated} */
  Optional<Amount<Time>> timePerPart();

  /** {@return the names of groups in a shopping list by item; the ledger's own unless stated} */
  Map<String, String> groups();

  /** {@return what suppliers charge for an order; none unless stated} */
  List<Offer> shipping();

  /** {@return what is added on other costs; none unless stated} */
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

  /** {@return the kinds of cost that resources or prices cover already; none unless stated} */
  Set<CostArea> covered();

  /** {@return how sums become money; {@link Rounding#HALF_EVEN} unless stated} */
  @Value.Default
  default Rounding rounding() {
    return Rounding.HALF_EVEN;
  }

  /** {@return how many parts are wanted, 1 or more} */
  long parts();

  private Amount<Mass> getter() {
    return measuredFiring().map(FiringUse::getter).orElseGet(() -> route().getterMass());
  }

  /**
   * Starts one.
   *
   * @return a builder; what has no default above and is not optional is required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Job} values. */
  final class Builder extends ImmutableJob.Builder {
    Builder() {}
  }

  /**
   * Refuses jobs that cannot be computed.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("job " + part().name())
            .require(parts() >= 1, "parts is " + parts() + "; accepted is 1 or more")
            .require(
                partsPerCharge() >= 1,
                "parts per charge is " + partsPerCharge() + "; accepted is 1 or more")
            .require(
                getterItem().isPresent() || getter().si() == 0,
                "a firing takes "
                    + getter()
                    + " of getter, but no getter item is stated; accepted is an item of the price"
                    + " book");
    measuredFiring()
        .ifPresent(
            use ->
                problems.require(
                    use.partsPerCharge() == partsPerCharge(),
                    "parts per charge is "
                        + partsPerCharge()
                        + " and "
                        + use.partsPerCharge()
                        + " in the measured firing; accepted is the same number"));
    problems.refuseIfAny();
  }
}
