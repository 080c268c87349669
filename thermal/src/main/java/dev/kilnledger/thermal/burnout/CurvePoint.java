package dev.kilnledger.thermal.burnout;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;

/** One row of a tabulated master decomposition curve. */
@Value.Immutable
@ValueStyle
public interface CurvePoint extends Serializable {
  /** {@return the natural logarithm of the reduced time in seconds, ln(J / s)} */
  @Value.Parameter
  Amount<Dimensionless> logReducedTime();

  /** {@return the conversion there, from 0 to 1} */
  @Value.Parameter
  Amount<Dimensionless> conversion();

  /**
   * A row.
   *
   * @param logReducedTime ln(J / s)
   * @param conversion from 0 to 1
   * @return the row
   */
  static CurvePoint of(Amount<Dimensionless> logReducedTime, Amount<Dimensionless> conversion) {
    return ImmutableCurvePoint.of(logReducedTime, conversion);
  }
}
