package dev.kilnledger.costing.resource;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
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

  @Override
  default String formula(Offer offer) {
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
  default Staircase staircase(Offer offer, int partsPerFiring) {
    return new Staircase(
        false,
        1,
        BigDecimal.ONE,
        BigDecimal.ZERO,
        owned() ? BigDecimal.ONE : BigDecimal.ZERO,
        Decimals.si(offer.content()));
  }

  @Override
  default Stock stock(Offer offer, int partsPerFiring, long parts) {
    return Stock.builder()
        .item(item())
        .parts(parts)
        .left(Amounts.ratio(staircase(offer, partsPerFiring).left(parts).doubleValue()))
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
