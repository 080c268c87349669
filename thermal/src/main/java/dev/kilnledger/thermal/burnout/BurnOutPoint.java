package dev.kilnledger.thermal.burnout;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.MassFraction;
import java.io.Serializable;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** How far the binder has gone at one time. */
@Value.Immutable
@ValueStyle
public interface BurnOutPoint extends Serializable {
  /** {@return the time in the history} */
  Amount<Time> time();

  /** {@return the temperature then} */
  Amount<Temperature> temperature();

  /** {@return the share of the binder that is left, of all that will leave} */
  Amount<MassFraction> remaining();

  /** {@return the rate of conversion, d alpha / dt, in 1/s} */
  Amount<Frequency> rate();

  /** {@return the conversion alpha: the share that has left, of all that will} */
  default Amount<MassFraction> conversion() {
    return Amounts.massFraction(1 - remaining().si());
  }

  /**
   * Starts a point.
   *
   * @return an empty builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link BurnOutPoint} values. */
  final class Builder extends ImmutableBurnOutPoint.Builder {
    Builder() {}
  }
}
