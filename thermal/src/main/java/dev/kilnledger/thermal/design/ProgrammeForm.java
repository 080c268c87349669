package dev.kilnledger.thermal.design;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import dev.kilnledger.units.quantity.HeatingRate;
import java.io.Serializable;
import javax.measure.Unit;
import javax.measure.quantity.Temperature;
import org.immutables.value.Value;

/**
 * How a controller is told a programme: whole degrees of one scale, holds in whole minutes, and
 * ramps either in whole minutes or in whole degrees an hour. How many segments it takes stands with
 * the kiln.
 */
@Value.Immutable
@ValueStyle
public interface ProgrammeForm extends Serializable {
  /** The scale of its degrees. */
  enum Scale {
    /** Degrees Celsius. */
    CELSIUS,
    /** Degrees Fahrenheit. */
    FAHRENHEIT;

    /** {@return the unit of its temperatures} */
    public Unit<Temperature> unit() {
      return this == CELSIUS ? TradeUnits.CELSIUS : TradeUnits.FAHRENHEIT;
    }

    Amount<Temperature> degrees(int number) {
      return Amount.of(number, unit());
    }

    Amount<HeatingRate> perHour(int number) {
      return this == CELSIUS ? Amounts.kelvinPerHour(number) : Amounts.fahrenheitPerHour(number);
    }

    double degreesPerHour(Amount<HeatingRate> rate) {
      return rate.in(this == CELSIUS ? TradeUnits.KELVIN_PER_HOUR : TradeUnits.FAHRENHEIT_PER_HOUR);
    }
  }

  /** What a ramp is told by. */
  enum Ramps {
    /** Its target and the minutes to get there. */
    BY_TIME,
    /** Its target and the degrees an hour. */
    BY_RATE
  }

  /** {@return the scale of its degrees} */
  @Value.Parameter
  Scale scale();

  /** {@return what a ramp is told by} */
  @Value.Parameter
  Ramps ramps();

  /**
   * A form.
   *
   * @param scale the scale of its degrees
   * @param ramps what a ramp is told by
   * @return the form
   */
  static ProgrammeForm of(Scale scale, Ramps ramps) {
    return ImmutableProgrammeForm.of(scale, ramps);
  }

  /**
   * A profile as this controller can be told it: temperatures to the nearest degree, ramps and
   * holds longer rather than shorter. What was as slow as a limit stays so; what was as hot as a
   * limit has to be held against it again.
   *
   * @param profile any profile
   * @return the nearest programme, as a profile; a segment that ends within half a degree of where
   *     it began becomes a hold
   */
  default Profile rounded(Profile profile) {
    return Programme.nearest(this, profile).profile();
  }
}
