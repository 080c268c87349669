package dev.kilnledger.thermal.burnout;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.HeatingRate;
import dev.kilnledger.units.quantity.MassFraction;
import java.io.Serializable;
import javax.measure.quantity.Temperature;
import org.immutables.value.Value;

/** What a debinding profile is to do. */
@Value.Immutable
@ValueStyle
public interface DebindingTask extends Serializable {
  /** The most ramps that are looked for. */
  int MOST_RAMPS = 5;

  /** {@return how the binder decomposes} */
  BinderKinetics kinetics();

  /** {@return how fast it may leave} */
  LossRateLimit limit();

  /** {@return the temperature at which the profile starts} */
  Amount<Temperature> start();

  /** {@return the temperature at which it ends, above the start} */
  Amount<Temperature> end();

  /** {@return the fastest heating of the kiln, above zero} */
  Amount<HeatingRate> fastestHeating();

  /** {@return the share of the binder that is to leave, above 0 and below 1; 0.99 by default} */
  @Value.Default
  default Amount<MassFraction> conversion() {
    return Amounts.massFraction(0.99);
  }

  /** {@return how many ramps it may have, from 1 to 5; 3 by default} */
  @Value.Default
  default int ramps() {
    return 3;
  }

  /**
   * Starts one.
   *
   * @return a builder; kinetics, limit, start, end and fastest heating are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link DebindingTask} values. */
  final class Builder extends ImmutableDebindingTask.Builder {
    Builder() {}
  }

  /**
   * Refuses a task that no profile can do.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("debinding task")
        .require(
            start().si() > 0 && end().isGreaterThan(start()),
            "it goes from " + start() + " to " + end() + "; accepted is a higher temperature")
        .positive("fastest heating", fastestHeating())
        .require(
            conversion().si() > 0 && conversion().si() < 1,
            "conversion is " + conversion() + "; accepted is above 0 and below 1")
        .require(
            ramps() >= 1 && ramps() <= MOST_RAMPS,
            "ramps are " + ramps() + "; accepted is from 1 to " + MOST_RAMPS)
        .refuseIfAny();
  }
}
