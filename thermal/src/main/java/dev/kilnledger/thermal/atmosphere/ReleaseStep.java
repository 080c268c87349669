package dev.kilnledger.thermal.atmosphere;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Time;
import org.immutables.value.Value;
import si.uom.quantity.MassFlowRate;

/** A time during which a substance is given off at one rate. */
@Value.Immutable
@ValueStyle
public interface ReleaseStep extends Serializable {
  /** {@return how long, above zero} */
  @Value.Parameter
  Amount<Time> duration();

  /** {@return the rate, zero or more} */
  @Value.Parameter
  Amount<MassFlowRate> rate();

  /**
   * A step.
   *
   * @param duration how long
   * @param rate the rate
   * @return the step
   * @throws IllegalArgumentException if the duration is not above zero or the rate below
   */
  static ReleaseStep of(Amount<Time> duration, Amount<MassFlowRate> rate) {
    return ImmutableReleaseStep.of(duration, rate);
  }

  /**
   * Refuses impossible steps.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("release step")
        .positive("duration", duration())
        .notNegative("rate", rate())
        .refuseIfAny();
  }
}
