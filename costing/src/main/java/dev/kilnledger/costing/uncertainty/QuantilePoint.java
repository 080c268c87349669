package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;

/** A share of all values, and the value that this share does not exceed. */
@Value.Immutable
@ValueStyle
public interface QuantilePoint extends Serializable {
  /** {@return the share} */
  @Value.Parameter
  Amount<Dimensionless> share();

  /** {@return the value} */
  @Value.Parameter
  double value();

  /**
   * A point.
   *
   * @param share the share
   * @param value the value
   * @return the point
   */
  static QuantilePoint of(Amount<Dimensionless> share, double value) {
    return ImmutableQuantilePoint.of(share, value);
  }
}
