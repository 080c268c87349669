package dev.kilnledger.thermal.atmosphere;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.io.Serializable;
import java.util.Comparator;
import java.util.List;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import org.immutables.value.Value;
import si.uom.quantity.MassFlowRate;

/** What is given off of a substance, step by step from the start of a firing. */
@Value.Immutable
@ValueStyle
public interface GasRelease extends Serializable {
  /** {@return the substance} */
  @Value.Parameter
  Substance substance();

  /** {@return the steps without gaps, at least one} */
  @Value.Parameter
  List<ReleaseStep> steps();

  /**
   * A release.
   *
   * @param substance the substance
   * @param steps the steps without gaps
   * @return the release
   * @throws IllegalArgumentException if there is no step
   */
  static GasRelease of(Substance substance, List<ReleaseStep> steps) {
    return ImmutableGasRelease.of(substance, steps);
  }

  /** {@return the mass given off in all} */
  default Amount<Mass> mass() {
    return Amounts.kilograms(
            steps().stream().mapToDouble(s -> s.duration().si() * s.rate().si()).sum())
        .to(TradeUnits.GRAM);
  }

  /** {@return the highest rate} */
  default Amount<MassFlowRate> peakRate() {
    return steps().stream()
        .map(ReleaseStep::rate)
        .max(Comparator.naturalOrder())
        .orElseThrow()
        .to(TradeUnits.GRAM_PER_HOUR);
  }

  /** {@return how long the steps take} */
  default Amount<Time> duration() {
    return Amounts.seconds(steps().stream().mapToDouble(s -> s.duration().si()).sum())
        .to(TradeUnits.HOUR);
  }

  /**
   * Refuses a release without steps.
   *
   * @throws IllegalArgumentException if there is no step
   */
  @Value.Check
  default void check() {
    new Problems("release of " + substance().name())
        .require(!steps().isEmpty(), "there is no step; accepted is at least one")
        .refuseIfAny();
  }
}
