package dev.kilnledger.costing.outfit;

import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.FilamentPreheater;
import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.Nozzle;
import dev.kilnledger.core.equipment.PartingLayer;
import dev.kilnledger.core.equipment.Printer;
import dev.kilnledger.core.equipment.SupplyCircuit;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.material.Getter;
import dev.kilnledger.costing.purchase.Need;
import dev.kilnledger.units.Amounts;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.immutables.value.Value;

/**
 * Something that an outfit may hold: a piece of equipment that the checks know, a kit of several,
 * or a plain thing such as a tumbler or an alarm.
 */
@Value.Immutable
@ValueStyle
public interface Option extends Serializable {
  /** {@return the name, by which requirements ask for it} */
  String name();

  /** {@return whether it is there already and so costs nothing; false unless stated} */
  @Value.Default
  default boolean owned() {
    return false;
  }

  /**
   * {@return what is bought for it, each item with its amount, in whole packs of the cheapest
   * offers; one thing at least unless it is owned}
   */
  List<Need> toBuy();

  /** {@return what it cannot do without, all of them; nothing unless stated} */
  List<Requirement> requirements();

  /** {@return the caller's own score for having it; 0 unless stated} */
  @Value.Default
  default long score() {
    return 0;
  }

  /** {@return the printer it brings, with the nozzle fitted to it} */
  Optional<Printer> printer();

  /** {@return the nozzle it brings, for every printer whose filament is thicker than its bore} */
  Optional<Nozzle> nozzle();

  /** {@return the filament preheater it brings, for every printer} */
  Optional<FilamentPreheater> preheater();

  /** {@return the parting layer it brings, for every printer} */
  Optional<PartingLayer> partingLayer();

  /** {@return the kiln it brings} */
  Optional<Kiln> kiln();

  /** {@return the crucible it brings} */
  Optional<Crucible> crucible();

  /** {@return the circuit it brings} */
  Optional<SupplyCircuit> supplyCircuit();

  /** {@return the getter it brings} */
  Optional<Getter> getter();

  /** {@return whether it brings something that printing is checked with} */
  default boolean prints() {
    return Stream.of(printer(), nozzle(), preheater(), partingLayer())
        .anyMatch(Optional::isPresent);
  }

  /** {@return whether it brings something that a firing is checked with} */
  default boolean fires() {
    return Stream.of(kiln(), crucible(), supplyCircuit(), getter()).anyMatch(Optional::isPresent);
  }

  /**
   * Starts one.
   *
   * @return a builder; the name, and what is bought or that it is owned, is required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Option} values. */
  final class Builder extends ImmutableOption.Builder {
    Builder() {}

    /**
     * Buys one piece of an item.
     *
     * @param item the item of the price book
     * @return this
     */
    public Builder buy(String item) {
      return addToBuy(Need.of(item, Amounts.ratio(1)));
    }

    /**
     * Requires one at least of some other options.
     *
     * @param options their names
     * @return this
     */
    public Builder requires(String... options) {
      return addRequirements(Requirement.anyOf(options));
    }
  }

  /**
   * Refuses options without name, and such as are neither owned nor bought.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("option " + name())
        .text("name", name())
        .require(
            owned() || !toBuy().isEmpty(),
            "it is neither owned nor bought; accepted is something to buy, or owned")
        .refuseIfAny();
  }
}
