package dev.kilnledger.costing.accounting;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;

/** How many parts to start, and how likely enough of them turn out good. */
@Value.Immutable
@ValueStyle
public interface PlannedStarts extends Serializable {
  /** {@return the good parts wanted} */
  @Value.Parameter
  int good();

  /** {@return the parts to start} */
  @Value.Parameter
  int starts();

  /** {@return the probability that at least the good parts wanted come of them} */
  @Value.Parameter
  Amount<Dimensionless> probability();

  /**
   * Planned starts.
   *
   * @param good the good parts wanted
   * @param starts the parts to start
   * @param probability the probability that at least the good parts wanted come of them
   * @return the plan
   */
  static PlannedStarts of(int good, int starts, Amount<Dimensionless> probability) {
    return ImmutablePlannedStarts.of(good, starts, probability);
  }
}
