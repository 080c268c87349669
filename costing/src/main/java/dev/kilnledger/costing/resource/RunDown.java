package dev.kilnledger.costing.resource;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Input;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;

/**
 * A fill of which each firing loses a share of what is there, and which is replaced as a whole when
 * less than a minimum is left: after j firings (1 - loss)^j of it remain, so that it serves the
 * largest number of firings L with (1 - loss)^(L - 1) >= minimum.
 */
@Value.Immutable
@ValueStyle
public non-sealed interface RunDown extends Resource {
  @Override
  String item();

  /** {@return the fresh fill, more than zero} */
  Amount<?> fill();

  /** {@return the share of what is there that one firing loses, 0.000001 to 0.999999} */
  Amount<Dimensionless> loss();

  /** {@return the share of the fresh fill that has to be there before a firing, 0.000001 to 1} */
  Amount<Dimensionless> minimum();

  /** {@return what is on the shelf at the start, fresh; nothing unless stated} */
  Optional<Amount<?>> owned();

  /** {@return where fill, loss and minimum come from} */
  Source source();

  /**
   * Starts one.
   *
   * @return a builder; item, fill, loss, minimum and source are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link RunDown} values. */
  final class Builder extends ImmutableRunDown.Builder {
    Builder() {}
  }

  /** {@return how many firings one fill serves, at least 1} */
  @Value.Lazy
  default int firingsPerFill() {
    BigDecimal kept = BigDecimal.ONE.subtract(Decimals.si(loss()));
    BigDecimal minimum = Decimals.si(minimum());
    // The logarithms come near; powers of the decimals decide.
    int losses = (int) (Math.log(minimum.doubleValue()) / Math.log(kept.doubleValue()));
    losses = Math.max(0, losses - 1);
    while (kept.pow(losses + 1, MathContext.DECIMAL128).compareTo(minimum) >= 0) {
      losses++;
    }
    return losses + 1;
  }

  /** {@return the firing} */
  @Override
  default Driver driver() {
    return Driver.FIRING;
  }

  @Override
  default String formula(Offer offer, Workload workload) {
    return "(fill x ceil("
        + workload.formula(driver())
        + " / L) - stock) / content, L the largest whole number with (1 - loss)^(L - 1) >= minimum";
  }

  @Override
  default List<Input> inputs() {
    return List.of(
        Input.of("fill", fill(), source()),
        Input.of("loss", loss(), source()),
        Input.of("minimum", minimum(), source()),
        Input.of("stock", Decimals.like(fill(), Decimals.si(owned())), Source.user("the plan")));
  }

  @Override
  default List<String> mismatches(Offer offer) {
    return Fit.measured(offer, fill().kind());
  }

  @Override
  default Staircase staircase(Offer offer, Workload workload) {
    BigDecimal fill = Decimals.si(fill());
    return Staircase.of(workload.tally(driver()))
        .inGroupsOf(firingsPerFill())
        .metered(offer.metered())
        .step(fill)
        .stock(Decimals.si(owned()))
        .content(Decimals.si(offer.content()));
  }

  /** {@return what is on the shelf; the fill in use is replaced as a whole and does not count} */
  @Override
  default Stock stock(Workload workload, Shelf shelf) {
    return shelf.stock(item()).left(Decimals.like(fill(), shelf.left)).build();
  }

  /**
   * Refuses an empty fill and shares out of range.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems =
        new Problems("run-down resource " + item())
            .text("item", item())
            .positive("fill", fill())
            .within("loss", loss(), Amounts.ratio(0.000001), Amounts.ratio(0.999999))
            .within("minimum", minimum(), Amounts.ratio(0.000001), Amounts.ratio(1));
    Fit.owned(owned(), "fill", fill(), problems);
    problems.refuseIfAny();
  }
}
