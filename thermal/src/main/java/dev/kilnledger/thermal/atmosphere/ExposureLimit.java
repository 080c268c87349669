package dev.kilnledger.thermal.atmosphere;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.io.Serializable;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/** A limit of exposure, as a published figure; which limits are in force depends on the place. */
@Value.Immutable
@ValueStyle
public interface ExposureLimit extends Serializable {
  /** {@return its name, such as {@code "NIOSH REL"}} */
  @Value.Parameter
  String name();

  /** {@return over which time the mean counts, zero if every moment does} */
  @Value.Parameter
  Amount<Time> averagedOver();

  /** {@return the share of the air's volume, above zero} */
  @Value.Parameter
  Sourced<Amount<VolumeFraction>> concentration();

  /**
   * A limit.
   *
   * @param name its name
   * @param averagedOver over which time the mean counts
   * @param concentration the share of the air's volume
   * @return the limit
   * @throws IllegalArgumentException if the name is blank, the time below zero or the concentration
   *     not above zero
   */
  static ExposureLimit of(
      String name, Amount<Time> averagedOver, Sourced<Amount<VolumeFraction>> concentration) {
    return ImmutableExposureLimit.of(name, averagedOver, concentration);
  }

  /**
   * Refuses impossible limits.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    new Problems("exposure limit " + name())
        .text("name", name())
        .notNegative("averaged over", averagedOver())
        .positive("concentration", concentration().value())
        .refuseIfAny();
  }
}
