package dev.kilnledger.costing.resource;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Input;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;

/**
 * A fill of which each firing loses a share and which is topped up before the next, such as packing
 * powder: n firings need fill x (1 + (n - 1) x loss). What is left after a firing is the fill less
 * the loss, and what is on the shelf.
 */
@Value.Immutable
@ValueStyle
public non-sealed interface ToppedUp extends Resource {
  @Override
  String item();

  /** {@return the fill of one firing, more than zero} */
  Amount<?> fill();

  /** {@return the share of the fill that one firing loses, 0 to 1} */
  Amount<Dimensionless> loss();

  /**
   * {@return what is there at the start, in the crucible and on the shelf together; nothing unless
   * stated}
   */
  Optional<Amount<?>> owned();

  /** {@return where fill and loss come from} */
  Source source();

  /**
   * Starts one.
   *
   * @return a builder; item, fill, loss and source are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link ToppedUp} values. */
  final class Builder extends ImmutableToppedUp.Builder {
    Builder() {}
  }

  /** {@return the firing} */
  @Override
  default Driver driver() {
    return Driver.FIRING;
  }

  @Override
  default String formula(Offer offer, Workload workload) {
    return "(fill x (1 + (" + workload.formula(driver()) + " - 1) x loss) - stock) / content";
  }

  @Override
  default List<Input> inputs() {
    return List.of(
        Input.of("fill", fill(), source()),
        Input.of("loss", loss(), source()),
        Input.of("stock", Decimals.like(fill(), Decimals.si(owned())), Source.user("the plan")));
  }

  @Override
  default List<String> mismatches(Offer offer) {
    return Fit.measured(offer, fill().kind());
  }

  @Override
  default Staircase staircase(Offer offer, Workload workload) {
    BigDecimal fill = Decimals.si(fill());
    BigDecimal lost = fill.multiply(Decimals.si(loss()));
    return Staircase.of(workload.tally(driver()))
        .metered(offer.metered())
        .base(fill.subtract(lost))
        .step(lost)
        .stock(Decimals.si(owned()))
        .content(Decimals.si(offer.content()));
  }

  @Override
  default Stock stock(Workload workload, Shelf shelf) {
    return shelf.stock(item()).left(Decimals.like(fill(), shelf.left)).build();
  }

  /**
   * Refuses an empty fill and a loss that is no share.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("topped-up resource " + item())
            .text("item", item())
            .positive("fill", fill())
            .within("loss", loss(), Amounts.ratio(0), Amounts.ratio(1));
    Fit.owned(owned(), "fill", fill(), problems);
    problems.refuseIfAny();
  }
}
