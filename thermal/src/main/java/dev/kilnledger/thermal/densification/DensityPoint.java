package dev.kilnledger.thermal.densification;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** How dense the part is at one time. */
@Value.Immutable
@ValueStyle
public interface DensityPoint extends Serializable {
  /** {@return the time in the history} */
  Amount<Time> time();

  /** {@return the temperature then} */
  Amount<Temperature> temperature();

  /** {@return the decimal logarithm of the work of sintering in s/K; empty at the start} */
  Optional<Amount<Dimensionless>> logWork();

  /** {@return the relative density with its band} */
  Estimate<VolumeFraction> density();

  /**
   * Starts a point.
   *
   * @return an empty builder
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link DensityPoint} values. */
  final class Builder extends ImmutableDensityPoint.Builder {
    Builder() {}
  }
}
