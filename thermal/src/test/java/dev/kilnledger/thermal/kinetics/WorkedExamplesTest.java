package dev.kilnledger.thermal.kinetics;

import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvin;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kilojoulesPerMole;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.thermal.profile.Profile;
import org.junit.jupiter.api.Test;

/** The worked examples of the documentation, one for each model. */
class WorkedExamplesTest {
  private static final ArrheniusIntegral INTEGRAL = new ArrheniusIntegral(kilojoulesPerMole(150));

  /** T exp(-x) - (E/R) E1(x) at 700 K: 1.6203942467302e-10 K, computed in other software. */
  @Test
  void arrheniusIntegralIsAsDocumented() {
    Profile ramp = Profile.from(kelvin(1)).rampTo(kelvin(700), kelvinPerHour(3600)).build();
    assertThat(INTEGRAL.reducedTime(TemperatureHistory.of(ramp)).si())
        .isCloseTo(1.6203942467302e-10, within(1e-13 * 1.62e-10));
  }

  /** ln(100) / 1e9 s, which a hold at 650 K gathers in 1.448290 h (computed in other software). */
  @Test
  void runningIntegralIsAsDocumented() {
    Profile hold = Profile.from(kelvin(650)).hold(hours(1.448290)).build();
    double reduced = Math.exp(INTEGRAL.reducedTimeAlong(TemperatureHistory.of(hold)).logAtEnd());
    assertThat(reduced).isCloseTo(4.60517e-9, within(5e-15));
  }
}
