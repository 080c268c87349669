package dev.kilnledger.costing.resource;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Input;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.units.Amount;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.immutables.value.Value;

/**
 * A quantity used up by each part or each firing: filament, getter, energy. Sold by measure it is
 * paid as it is used; in packs, the tails of the packs are {@linkplain Tails joined or stranded}.
 */
@Value.Immutable
@ValueStyle
public non-sealed interface Consumed extends Resource {
  @Override
  String item();

  /** {@return what uses it, an event that is counted} */
  @Override
  Driver driver();

  /** {@return what one part or firing uses, more than zero} */
  Amount<?> quantity();

  /**
   * {@return what becomes of the tail of a pack; {@link Tails#JOINED} unless stated, and without
   * effect where it is sold by measure}
   */
  @Value.Default
  default Tails tails() {
    return Tails.JOINED;
  }

  /** {@return what is on the shelf at the start, in one piece; nothing unless stated} */
  Optional<Amount<?>> owned();

  /** {@return where the quantity comes from} */
  Source source();

  /**
   * Starts one.
   *
   * @return a builder; item, driver, quantity and source are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Consumed} values. */
  final class Builder extends ImmutableConsumed.Builder {
    Builder() {}
  }

  @Override
  default String formula(Offer offer, Workload workload) {
    return strands(offer)
        ? "("
            + workload.formula(driver())
            + " - floor(stock / quantity)) / floor(content / quantity)"
        : "(quantity x " + workload.formula(driver()) + " - stock) / content";
  }

  @Override
  default List<Input> inputs() {
    return List.of(
        Input.of("quantity", quantity(), source()),
        Input.of(
            "stock", Decimals.like(quantity(), Decimals.si(owned())), Source.user("the plan")));
  }

  @Override
  default List<String> mismatches(Offer offer) {
    List<String> mismatches = Fit.measured(offer, quantity().kind());
    boolean tooSmall =
        mismatches.isEmpty()
            && strands(offer)
            && Decimals.si(offer.content()).compareTo(Decimals.si(quantity())) < 0;
    return tooSmall
        ? List.of(
            "a pack of "
                + offer.content()
                + " of "
                + item()
                + " does not hold the "
                + quantity()
                + " of one "
                + driver().word()
                + "; accepted is a larger pack, or tails that can be joined")
        : mismatches;
  }

  @Override
  default Staircase staircase(Offer offer, Workload workload) {
    BigDecimal quantity = Decimals.si(quantity());
    BigDecimal content = Decimals.si(offer.content());
    BigDecimal stock = Decimals.si(owned());
    Staircase.Build staircase = Staircase.of(workload.tally(driver()));
    return strands(offer)
        ? staircase
            .step(BigDecimal.ONE)
            .stock(stock.divideToIntegralValue(quantity))
            .content(content.divideToIntegralValue(quantity))
        : staircase.metered(offer.metered()).step(quantity).stock(stock).content(content);
  }

  @Override
  default Stock stock(Workload workload, Shelf shelf) {
    Stock.Builder stock = shelf.stock(item());
    if (tails() == Tails.JOINED || shelf.metered) {
      return stock.left(Decimals.like(quantity(), shelf.left)).build();
    }
    BigDecimal quantity = Decimals.si(quantity());
    BigDecimal usable = shelf.left.multiply(quantity);
    BigDecimal there =
        Decimals.si(owned()).add(shelf.contents).subtract(quantity.multiply(shelf.used));
    return stock
        .left(Decimals.like(quantity(), usable))
        .stranded(Decimals.like(quantity(), there.subtract(usable)))
        .build();
  }

  private boolean strands(Offer offer) {
    return tails() == Tails.STRANDED && !offer.metered();
  }

  /**
   * Refuses a quantity of nothing.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("consumed resource " + item())
            .text("item", item())
            .positive("quantity", quantity())
            .require(
                !driver().isMeasured(),
                "driver is the "
                    + driver().word()
                    + "; accepted is what is counted, each "
                    + driver().event().word()
                    + " with the quantity it takes");
    Fit.owned(owned(), "quantity", quantity(), problems);
    problems.refuseIfAny();
  }
}
