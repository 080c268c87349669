package dev.kilnledger.thermal.densification;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.io.Serializable;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** A relative density measured at a time of a run: by a dilatometer, or on a part taken out. */
@Value.Immutable
@ValueStyle
public interface DensityReading extends Serializable {
  /** {@return the time in the run's history} */
  @Value.Parameter
  Amount<Time> time();

  /** {@return the relative density, above 0 and up to 1} */
  @Value.Parameter
  Amount<VolumeFraction> density();

  /**
   * A reading.
   *
   * @param time the time in the run's history
   * @param density the relative density
   * @return the reading
   * @throws IllegalArgumentException if the density is not above 0 and up to 1
   */
  static DensityReading of(Amount<Time> time, Amount<VolumeFraction> density) {
    return ImmutableDensityReading.of(time, density);
  }

  /**
   * Refuses a density outside 0 to 1.
   *
   * @throws IllegalArgumentException if it is
   */
  @Value.Check
  default void check() {
    new Problems(() -> "reading at " + time())
        .require(
            density().si() > 0 && density().si() <= 1,
            () -> "relative density is " + density() + "; accepted is above 0 and up to 1")
        .refuseIfAny();
  }
}
