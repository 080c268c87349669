package dev.kilnledger.costing.resource;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Input;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.units.Amounts;
import java.math.BigDecimal;
import java.util.List;
import org.immutables.value.Value;

/** Equipment of which one piece is bought once, for the first part; owned, it is never bought. */
@Value.Immutable
@ValueStyle
public non-sealed interface Durable extends Resource {
  @Override
  @Value.Parameter
  String item();

  /** {@return whether it is there at the start} */
  @Value.Parameter
  boolean owned();

  /**
   * Equipment that has to be bought.
   *
   * @param item the item
   * @return the resource
   * @throws IllegalArgumentException if the item is blank
   */
  static Durable toBuy(String item) {
    return ImmutableDurable.of(item, false);
  }

  /**
   * Equipment that is there already.
   *
   * @param item the item
   * @return the resource
   * @throws IllegalArgumentException if the item is blank
   */
  static Durable owned(String item) {
    return ImmutableDurable.of(item, true);
  }

  /** {@return the part; any part needs it, and the first one has it bought} */
  @Override
  default Driver driver() {
    return Driver.PART;
  }

  @Override
  default String formula(Offer offer, Workload workload) {
    return "(1 - stock) / content";
  }

  @Override
  default List<Input> inputs() {
    return List.of(Input.of("stock", Amounts.ratio(owned() ? 1 : 0), Source.user("the plan")));
  }

  @Override
  default List<String> mismatches(Offer offer) {
    return Fit.pieces(offer);
  }

  @Override
  default Staircase staircase(Offer offer, Workload workload) {
    return Staircase.of(workload.tally(driver()))
        .base(BigDecimal.ONE)
        .stock(owned() ? BigDecimal.ONE : BigDecimal.ZERO)
        .content(Decimals.si(offer.content()));
  }

  @Override
  default Stock stock(Workload workload, Shelf shelf) {
    return shelf
        .stock(item())
        .left(Amounts.ratio(shelf.left.doubleValue()))
        .counted("piece")
        .build();
  }

  /**
   * Refuses a blank name.
   *
   * @throws IllegalArgumentException if the item is blank
   */
  @Value.Check
  default void check() {
    new Problems("durable resource").text("item", item()).refuseIfAny();
  }
}
