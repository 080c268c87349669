package dev.kilnledger.core.part;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.quantity.MassFraction;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.immutables.value.Value;

/** What {@link DebindingMassLossCheck} makes of the weighings of a debound part. */
@Value.Immutable
@ValueStyle
public interface BinderLeft extends Serializable {
  /** {@return the loss that complete debinding means, over the ranges of binder and char} */
  Span<Mass> expectedLoss();

  /** {@return the loss weighed, with the balance's uncertainty; below zero for a gain} */
  Span<Mass> measuredLoss();

  /**
   * {@return the share of the binder's mass that may be left, char included, between 0 and 1; empty
   * where the weighings contradict what was stated}
   */
  Optional<Span<MassFraction>> interval();

  /** {@return the verdict} */
  Finding finding();

  /**
   * Starts one.
   *
   * @return a builder; all but the interval are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link BinderLeft} values. */
  final class Builder extends ImmutableBinderLeft.Builder {
    Builder() {}
  }
}
