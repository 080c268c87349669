package dev.kilnledger.thermal.atmosphere;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** One point of the curve of carbon burnt. */
@Value.Immutable
@ValueStyle
public interface BudgetPoint extends Serializable {
  /** {@return since the start} */
  @Value.Parameter
  Amount<Time> time();

  /** {@return the temperature of the charge} */
  @Value.Parameter
  Amount<Temperature> temperature();

  /** {@return the carbon that the oxygen has asked for so far} */
  @Value.Parameter
  Span<Mass> carbonAsked();

  /**
   * A point.
   *
   * @param time since the start
   * @param temperature the temperature of the charge
   * @param carbonAsked the carbon that the oxygen has asked for so far
   * @return the point
   */
  static BudgetPoint of(
      Amount<Time> time, Amount<Temperature> temperature, Span<Mass> carbonAsked) {
    return ImmutableBudgetPoint.of(time, temperature, carbonAsked);
  }
}
