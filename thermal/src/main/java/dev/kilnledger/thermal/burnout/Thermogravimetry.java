package dev.kilnledger.thermal.burnout;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.HeatingRate;
import dev.kilnledger.units.quantity.MassFraction;
import dev.kilnledger.units.quantity.TemperatureDifference;
import java.io.Serializable;
import java.util.List;
import javax.measure.quantity.Temperature;
import org.immutables.value.Value;

/**
 * A run of a thermobalance at one heating rate: what the mass was, when, and how hot. Cut it to the
 * loss of the binder before: its first and last readings count as nothing and all of it gone.
 */
@Value.Immutable
@ValueStyle
public interface Thermogravimetry extends Serializable {
  /** The fewest readings of a run. */
  int FEWEST_READINGS = 20;

  /** {@return the name of the run; the heating rate is never read from it} */
  String name();

  /** {@return the readings, twenty or more, times ascending, the last mass below the first} */
  List<MassReading> readings();

  /**
   * {@return half the width of the window over which the loss is smoothed by a local parabola; 4 K
   * by default, which moves a peak some 40 K wide by 0.2 K, alike at all rates}
   */
  @Value.Default
  default Amount<TemperatureDifference> smoothing() {
    return Amounts.kelvinDifference(4);
  }

  /**
   * {@return the heating rate, by regression of temperature on time over the readings between 2 %
   * and 98 % of the loss}
   */
  default Amount<HeatingRate> heatingRate() {
    return Amounts.kelvinPerMinute(new SmoothedLoss(this).kelvinPerSecond() * 60);
  }

  /** {@return the heating rate and the temperature at which the loss is fastest} */
  default LossPeak peak() {
    SmoothedLoss loss = new SmoothedLoss(this);
    return LossPeak.of(
        Amounts.kelvinPerMinute(loss.kelvinPerSecond() * 60), Amounts.kelvin(loss.peakKelvin()));
  }

  /**
   * The temperature at which a share of the loss has happened.
   *
   * @param conversion the share, above 0 and below 1
   * @return the temperature
   * @throws IllegalArgumentException if the conversion is out of range
   */
  default Amount<Temperature> temperatureAt(Amount<MassFraction> conversion) {
    new Problems("run " + name())
        .require(
            conversion.si() > 0 && conversion.si() < 1,
            "conversion is " + conversion + "; accepted is above 0 and below 1")
        .refuseIfAny();
    return Amounts.kelvin(new SmoothedLoss(this).kelvinAt(conversion.si()));
  }

  /**
   * Starts one.
   *
   * @return a builder; name and readings are required
   */
  static Builder builder() {
    return new Builder();
  }

  /** Builds {@link Thermogravimetry} values. */
  final class Builder extends ImmutableThermogravimetry.Builder {
    Builder() {}
  }

  /**
   * Refuses a run that shows no loss on heating.
   *
   * @throws IllegalArgumentException with all problems
   */
  @Value.Check
  default void check() {
    Problems problems = new Problems("run " + name());
    problems
        .text("name", name())
        .positive("smoothing", smoothing())
        .require(
            readings().size() >= FEWEST_READINGS,
            "readings are " + readings().size() + "; accepted is " + FEWEST_READINGS + " or more")
        .refuseIfAny();
    for (int i = 1; i < readings().size(); i++) {
      if (!readings().get(i).time().isGreaterThan(readings().get(i - 1).time())) {
        problems.require(
            false,
            "reading "
                + (i + 1)
                + " is at "
                + readings().get(i).time()
                + " after one at "
                + readings().get(i - 1).time()
                + "; accepted are later and later times");
      }
    }
    MassReading first = readings().get(0);
    MassReading last = readings().get(readings().size() - 1);
    problems
        .require(
            last.temperature().isGreaterThan(first.temperature()),
            "it goes from "
                + first.temperature()
                + " to "
                + last.temperature()
                + "; accepted is a run that heats")
        .require(
            last.mass().isLessThan(first.mass()),
            "the mass goes from "
                + first.mass()
                + " to "
                + last.mass()
                + "; accepted is a loss. Powder that oxidises gains mass: use inert gas")
        .refuseIfAny();
  }
}
