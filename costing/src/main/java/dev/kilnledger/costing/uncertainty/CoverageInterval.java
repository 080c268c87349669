package dev.kilnledger.costing.uncertainty;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import java.io.Serializable;
import javax.measure.quantity.Dimensionless;
import org.immutables.value.Value;

/** An interval that holds a share of all values. */
@Value.Immutable
@ValueStyle
public interface CoverageInterval extends Serializable {
  /** {@return the low end} */
  @Value.Parameter
  double low();

  /** {@return the high end} */
  @Value.Parameter
  double high();

  /** {@return the share of the values in it} */
  @Value.Parameter
  Amount<Dimensionless> coverage();

  /**
   * An interval.
   *
   * @param low the low end
   * @param high the high end
   * @param coverage the share of the values in it
   * @return the interval
   */
  static CoverageInterval of(double low, double high, Amount<Dimensionless> coverage) {
    return ImmutableCoverageInterval.of(low, high, coverage);
  }
}
