package dev.kilnledger.core.firing;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/**
 * What one firing takes and how many parts it holds: all that a ledger needs to know of it, whether
 * forecast or measured. A route with separate debinding and sintering is told as one firing.
 */
@Value.Immutable
@ValueStyle
public interface FiringUse extends Serializable {
  /**
   * {@return how long the kiln is taken, heating and holding; cooling counts where it blocks it}
   */
  Amount<Time> duration();

  /** {@return the electrical energy} */
  Amount<Energy> energy();

  /** {@return the getter laid in and not used again} */
  Amount<Mass> getter();

  /** {@return how many parts one charge holds, at least 1} */
  int partsPerCharge();

  /** {@return how the figures were come by} */
  Source source();

  /**
   * Starts one.
   *
   * @return a builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link FiringUse} values. */
  final class Builder extends ImmutableFiringUse.Builder {
    Builder() {}
  }

  /**
   * Refuses negative amounts and empty charges.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("firing")
        .positive("duration", duration())
        .notNegative("energy", energy())
        .notNegative("getter", getter())
        .require(
            partsPerCharge() >= 1,
            "parts per charge is " + partsPerCharge() + "; accepted is 1 or more")
        .refuseIfAny();
  }
}
