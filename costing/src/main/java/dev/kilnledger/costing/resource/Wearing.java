package dev.kilnledger.costing.resource;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.units.Amounts;
import java.math.BigDecimal;
import java.util.List;
import org.immutables.value.Value;

/**
 * A piece that lasts a number of firings or parts and is then replaced, such as a crucible: with
 * life L, the first u uses are covered by what is owned and the others take ceil((uses - u) / L)
 * pieces.
 */
@Value.Immutable
@ValueStyle
public non-sealed interface Wearing extends Resource {
  @Override
  String item();

  /** {@return what wears it} */
  Driver driver();

  /** {@return how many firings or parts one piece lasts, 1 or more} */
  int life();

  /**
   * {@return how many uses the pieces owned at the start have left; 0, nothing owned, unless
   * stated}
   */
  @Value.Default
  default int usesLeft() {
    return 0;
  }

  /** {@return where the life comes from} */
  Source source();

  /**
   * Starts one.
   *
   * @return a builder; item, driver, life and source are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Wearing} values. */
  final class Builder extends ImmutableWearing.Builder {
    Builder() {}
  }

  @Override
  default String formula(Offer offer) {
    return "(" + driver().count() + " - stock) / (life x content)";
  }

  @Override
  default List<Input> inputs() {
    return List.of(
        Input.of("life", Amounts.ratio(life()), source()),
        Input.of("stock", Amounts.ratio(usesLeft()), source()));
  }

  @Override
  default List<String> mismatches(Offer offer) {
    return Fit.pieces(offer);
  }

  @Override
  default Staircase staircase(Offer offer, int partsPerFiring) {
    return new Staircase(
        false,
        driver().partsPerEvent(partsPerFiring),
        BigDecimal.ONE,
        BigDecimal.ONE,
        BigDecimal.valueOf(usesLeft()),
        Decimals.si(offer.content()).multiply(BigDecimal.valueOf(life())));
  }

  @Override
  default Stock stock(Offer offer, int partsPerFiring, long parts) {
    Staircase staircase = staircase(offer, partsPerFiring);
    return Stock.builder()
        .item(item())
        .parts(parts)
        .left(Amounts.ratio(staircase.left(parts).doubleValue()))
        .counted(driver().word())
        .nextPurchase(staircase.nextPurchase(parts))
        .build();
  }

  /**
   * Refuses a life of no use.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("wearing resource " + item())
        .text("item", item())
        .require(life() >= 1, "life is " + life() + "; accepted is 1 or more")
        .require(usesLeft() >= 0, "uses left is " + usesLeft() + "; accepted is zero or more")
        .refuseIfAny();
  }
}
