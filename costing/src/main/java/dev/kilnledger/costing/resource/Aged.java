package dev.kilnledger.costing.resource;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Input;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.util.List;
import java.util.Optional;
import org.immutables.value.Value;

/**
 * A fill that ages with every cycle it goes through and is then replaced as a whole, though none of
 * it is lost: with C cycles, n firings need fill x ceil(n / C).
 */
@Value.Immutable
@ValueStyle
public non-sealed interface Aged extends Resource {
  @Override
  String item();

  /** {@return what ages it, an event that is counted; the firing unless stated} */
  @Override
  @Value.Default
  default Driver driver() {
    return Driver.FIRING;
  }

  /** {@return the fresh fill, more than zero} */
  Amount<?> fill();

  /** {@return how many cycles one fill serves, 1 or more} */
  int cycles();

  /**
   * {@return how many cycles a fill has been seen to serve, if that is known; more are
   * extrapolated}
   */
  Optional<Integer> observed();

  /** {@return what is on the shelf at the start, fresh; nothing unless stated} */
  Optional<Amount<?>> owned();

  /** {@return where fill and cycles come from} */
  Source source();

  /**
   * Starts one.
   *
   * @return a builder; item, fill, cycles and source are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Aged} values. */
  final class Builder extends ImmutableAged.Builder {
    Builder() {}
  }

  @Override
  default String formula(Offer offer, Workload workload) {
    return "(fill x ceil(" + workload.formula(driver()) + " / cycles) - stock) / content";
  }

  @Override
  default List<Input> inputs() {
    return List.of(
        Input.of("fill", fill(), source()),
        Input.of("cycles", Amounts.ratio(cycles()), source()),
        Input.of("stock", Decimals.like(fill(), Decimals.si(owned())), Source.user("the plan")));
  }

  @Override
  default List<String> mismatches(Offer offer) {
    return Fit.measured(offer, fill().kind());
  }

  @Override
  default Staircase staircase(Offer offer, Workload workload) {
    return Staircase.of(workload.tally(driver()))
        .inGroupsOf(cycles())
        .metered(offer.metered())
        .step(Decimals.si(fill()))
        .stock(Decimals.si(owned()))
        .content(Decimals.si(offer.content()));
  }

  /** {@return what is on the shelf; the fill in use is replaced as a whole and does not count} */
  @Override
  default Stock stock(Workload workload, Shelf shelf) {
    return shelf.stock(item()).left(Decimals.like(fill(), shelf.left)).build();
  }

  /**
   * Refuses an empty fill and one that serves nothing.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("aged resource " + item())
            .text("item", item())
            .positive("fill", fill())
            .require(cycles() >= 1, "cycles is " + cycles() + "; accepted is 1 or more")
            .require(
                !driver().isMeasured(),
                "driver is the " + driver().word() + "; accepted is an event that is counted");
    Fit.owned(owned(), "fill", fill(), problems);
    problems.refuseIfAny();
  }
}
