package dev.kilnledger.costing.resource;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;

/** How long a piece lasts on average under a rule of replacement. */
@Value.Immutable
@ValueStyle
public interface PlannedLife extends Serializable {
  /** {@return the rule} */
  LifeRule rule();

  /**
   * {@return the age at which it is replaced if it has not failed; empty where it runs to failure}
   */
  Optional<Amount<?>> interval();

  /** {@return the mean life of a piece under the rule, of six significant digits} */
  Amount<?> life();

  /** {@return the share of the pieces that fail before they are replaced, 1 without an interval} */
  Amount<Dimensionless> failing();

  /** {@return the rule with the life's distribution and where that comes from} */
  Source source();

  /**
   * Starts one.
   *
   * @return a builder; all attributes but the interval are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link PlannedLife} values. */
  final class Builder extends ImmutablePlannedLife.Builder {
    Builder() {}
  }
}
