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
 * A piece that lasts for some firings, parts, hours, mass or extruded volume and is then replaced,
 * such as a crucible or a nozzle: with life L, the first u are covered by what is owned and the
 * others take ceil((used - u) / L) pieces.
 */
@Value.Immutable
@ValueStyle
public non-sealed interface Wearing extends Resource {
  @Override
  String item();

  /** {@return what wears it} */
  @Override
  Driver driver();

  /**
   * {@return how much of its driver one piece lasts: a number of 1 or more where events are
   * counted, and a fraction of one where it is a mean; else more than zero of the driver's measure}
   */
  Amount<?> life();

  /**
   * {@return how much of its driver a piece has been seen to last, if that is known; a longer life
   * is extrapolated}
   */
  Optional<Amount<?>> observed();

  /**
   * {@return how much the pieces owned at the start still last; nothing, none owned, unless stated}
   */
  @Value.Default
  default Amount<?> usesLeft() {
    return Decimals.zero(life());
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

    /**
     * A life that is counted.
     *
     * @param events how many events one piece lasts, 1 or more
     * @return this
     */
    public Builder life(int events) {
      return life(Amounts.ratio(events));
    }

    /**
     * The mean life under a rule of replacement, with its source.
     *
     * @param life the life
     * @return this
     */
    public Builder life(PlannedLife life) {
      return life(life.life()).source(life.source());
    }

    /**
     * What is left, counted.
     *
     * @param events how many events the pieces owned at the start still last, zero or more
     * @return this
     */
    public Builder usesLeft(int events) {
      return usesLeft(Amounts.ratio(events));
    }
  }

  @Override
  default String formula(Offer offer, Workload workload) {
    return "(" + workload.formula(driver()) + " - stock) / (life x content)";
  }

  @Override
  default List<Input> inputs() {
    return List.of(
        Input.of("life", life(), source()), Input.of("stock", usesLeft(), Source.user("the plan")));
  }

  @Override
  default List<String> mismatches(Offer offer) {
    return Fit.pieces(offer);
  }

  @Override
  default Staircase staircase(Offer offer, Workload workload) {
    return Staircase.of(workload.tally(driver()))
        .step(workload.perEvent(driver()))
        .stock(Decimals.si(usesLeft()))
        .content(Decimals.si(offer.content()).multiply(Decimals.si(life())));
  }

  @Override
  default Stock stock(Workload workload, Shelf shelf) {
    return shelf
        .stock(item())
        .left(Decimals.like(life(), shelf.left))
        .counted(driver().isMeasured() ? "" : driver().word())
        .build();
  }

  /**
   * Refuses a life of no use.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems = new Problems("wearing resource " + item()).text("item", item());
    Fit.life(driver(), life(), "life", problems);
    problems
        .notNegative("uses left", usesLeft())
        .require(
            observed().filter(seen -> !seen.kind().equals(life().kind())).isEmpty(),
            "observed is "
                + observed().map(Amount::toString).orElse("")
                + "; accepted is a measure of "
                + life().kind())
        .require(
            usesLeft().kind().equals(life().kind()),
            "uses left is " + usesLeft() + "; accepted is a measure of " + life().kind())
        .refuseIfAny();
  }
}
