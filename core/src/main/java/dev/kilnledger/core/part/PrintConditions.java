package dev.kilnledger.core.part;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.io.Serializable;
import java.util.Optional;
import org.immutables.value.Value;

/** What printing and firing are known to do to a part, beyond what alloy and binder tell. */
@Value.Immutable
@ValueStyle
public interface PrintConditions extends Serializable {
  /**
   * {@return the share of the green volume that is voids between the printed strands, from 0 to
   * less than 1; 0 by default}
   */
  @Value.Default
  default Amount<VolumeFraction> strandVoids() {
    return Amounts.volumeFraction(0);
  }

  /**
   * {@return the relative density after sintering, where more is known than the alloy's {@linkplain
   * dev.kilnledger.core.material.Alloy#expectedRelativeDensity() expectation}, which is taken by
   * default}
   */
  Optional<Sourced<Estimate<VolumeFraction>>> finalRelativeDensity();

  /**
   * {@return the shrinkage measured along each axis, its band being what a single part may well
   * show; by default it follows from solids loading and relative density, alike along all axes}
   */
  Optional<Sourced<LinearShrinkage>> measuredShrinkage();

  /**
   * Starts some.
   *
   * @return a builder; nothing is required
   */
  static Builder builder() {
    return new Builder();
  }

  /**
   * The defaults: no voids, the alloy's expected relative density, even shrinkage.
   *
   * @return the conditions
   */
  static PrintConditions ideal() {
    return builder().build();
  }

  /** Builds {@link PrintConditions} values. */
  final class Builder extends ImmutablePrintConditions.Builder {
    Builder() {}
  }

  /**
   * Refuses shares outside their range.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems = new Problems("print conditions");
    problems.require(
        strandVoids().si() >= 0 && strandVoids().si() < 1,
        () -> "strand voids is " + strandVoids() + "; accepted is from 0 to less than 1");
    finalRelativeDensity()
        .ifPresent(
            stated -> {
              Span<VolumeFraction> span = stated.value().span();
              problems.require(
                  span.low().si() > 0 && span.high().si() <= 1,
                  "final relative density spans "
                      + span.low()
                      + " to "
                      + span.high()
                      + "; accepted is above 0 and up to 1");
            });
    problems.refuseIfAny();
  }
}
