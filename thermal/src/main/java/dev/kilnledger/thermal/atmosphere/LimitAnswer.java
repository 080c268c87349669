package dev.kilnledger.thermal.atmosphere;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.io.Serializable;
import org.immutables.value.Value;
import si.uom.quantity.VolumetricFlowRate;

/** A room against one limit of exposure. */
@Value.Immutable
@ValueStyle
public interface LimitAnswer extends Serializable {
  /** {@return the limit} */
  @Value.Parameter
  ExposureLimit limit();

  /** {@return the highest concentration, as a mean over the limit's time} */
  @Value.Parameter
  Amount<VolumeFraction> highest();

  /** {@return the supply air with which the room just stays at the limit} */
  @Value.Parameter
  Amount<VolumetricFlowRate> supplyNeeded();

  /**
   * An answer.
   *
   * @param limit the limit
   * @param highest the highest concentration, as a mean over the limit's time
   * @param supplyNeeded the supply air with which the room just stays at the limit
   * @return the answer
   */
  static LimitAnswer of(
      ExposureLimit limit,
      Amount<VolumeFraction> highest,
      Amount<VolumetricFlowRate> supplyNeeded) {
    return ImmutableLimitAnswer.of(limit, highest, supplyNeeded);
  }

  /** {@return whether the room stays at or below the limit} */
  default boolean isKept() {
    return !highest().isGreaterThan(limit().concentration().value());
  }
}
