package dev.kilnledger.thermal.kiln;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.TemperatureDifference;
import java.io.Serializable;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** One point of a kiln's curves. */
@Value.Immutable
@ValueStyle
public interface KilnPoint extends Serializable {
  /** {@return since the start} */
  Amount<Time> time();

  /** {@return what the programme asks} */
  Amount<Temperature> programmed();

  /** {@return the temperature of chamber and charge} */
  Amount<Temperature> actual();

  /** {@return the temperature of the kiln's outside} */
  Amount<Temperature> skin();

  /** {@return the mean power of the elements since the point before, zero at the first} */
  Amount<Power> power();

  /** {@return how far the kiln is behind: below the programme above zero, above it below zero} */
  default Amount<TemperatureDifference> lag() {
    return Amounts.kelvinDifference(programmed().si() - actual().si());
  }

  /**
   * Starts one.
   *
   * @return a builder; all attributes are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link KilnPoint} values. */
  final class Builder extends ImmutableKilnPoint.Builder {
    Builder() {}
  }
}
