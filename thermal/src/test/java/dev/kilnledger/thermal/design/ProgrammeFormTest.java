package dev.kilnledger.thermal.design;

import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.fahrenheit;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.minutes;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.FAHRENHEIT;
import static dev.kilnledger.units.TradeUnits.FAHRENHEIT_PER_HOUR;
import static dev.kilnledger.units.TradeUnits.MINUTE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.thermal.design.ProgrammeForm.Ramps;
import dev.kilnledger.thermal.design.ProgrammeForm.Scale;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.Segment;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Expected values are arithmetic done by hand. */
class ProgrammeFormTest {
  private static final ProgrammeForm MINUTES = ProgrammeForm.of(Scale.CELSIUS, Ramps.BY_TIME);
  private static final ProgrammeForm RATES = ProgrammeForm.of(Scale.FAHRENHEIT, Ramps.BY_RATE);

  private static final Profile ODD =
      Profile.from(celsius(20))
          .rampTo(celsius(333.4), kelvinPerHour(47.3))
          .hold(minutes(10.2))
          .rampTo(celsius(819.7), kelvinPerHour(300))
          .build();

  @Test
  void roundsToWholeDegreesAndMinutesAndNeverFaster() {
    // 313.4 K at 47.3 K/h take 397.55 min, 486.3 K at 300 K/h 97.26 min.
    assertThat(MINUTES.rounded(ODD))
        .isEqualTo(
            Profile.from(celsius(20))
                .rampOver(celsius(333), minutes(398))
                .hold(minutes(11))
                .rampOver(celsius(820), minutes(98))
                .build());
  }

  @Test
  void roundsToWholeDegreesAnHour() {
    // 333.4 °C are 632.1 °F, 819.7 °C 1507.5 °F: 564 degrees in 397.55 min, 875 in 97.26.
    Profile rounded = RATES.rounded(ODD);
    assertThat(rounded.segments()).extracting(Segment::end).contains(fahrenheit(632));
    assertThat(rounded.end()).isEqualTo(fahrenheit(1507));
    assertThat(rounded.segments().get(0).rate().in(FAHRENHEIT_PER_HOUR))
        .isCloseTo(85, within(1e-9));
    assertThat(rounded.segments().get(2).rate().in(FAHRENHEIT_PER_HOUR))
        .isCloseTo(539, within(1e-9));
  }

  @Test
  void whatIsWholeAlreadyStaysAsItIs() {
    Profile whole =
        Profile.from(celsius(20))
            .rampTo(celsius(250), kelvinPerHour(60))
            .hold(hours(2))
            .coolTo(celsius(100), kelvinPerHour(50))
            .build();
    assertThat(MINUTES.rounded(whole)).isEqualTo(whole);
    assertThat(ProgrammeForm.of(Scale.CELSIUS, Ramps.BY_RATE).rounded(whole)).isEqualTo(whole);
  }

  /** Whatever a profile is, its rounding is whole, no shorter, and its own rounding. */
  @Test
  void roundingIsWholeSlowerAndDoneOnce() {
    Random random = new Random(11);
    for (int trial = 0; trial < 300; trial++) {
      Profile any =
          Profile.from(celsius(20 + 5 * random.nextDouble()))
              .rampOver(celsius(100 + 300 * random.nextDouble()), hours(random.nextDouble() + 0.01))
              .hold(minutes(0.1 + 100 * random.nextDouble()))
              .rampOver(celsius(500 + 800 * random.nextDouble()), hours(random.nextDouble() + 0.01))
              .build();
      Profile byTime = MINUTES.rounded(any);
      assertThat(MINUTES.rounded(byTime)).isEqualTo(byTime);
      for (int i = 0; i < 3; i++) {
        double minutes = byTime.segments().get(i).duration().in(MINUTE);
        assertThat(minutes).isCloseTo(Math.rint(minutes), within(1e-9));
        assertThat(minutes)
            .isBetween(
                any.segments().get(i).duration().in(MINUTE) - 1e-6,
                any.segments().get(i).duration().in(MINUTE) + 1);
        double degrees = byTime.segments().get(i).end().in(CELSIUS);
        assertThat(degrees).isEqualTo(Math.rint(degrees));
      }
      Profile byRate = RATES.rounded(any);
      assertThat(RATES.rounded(byRate)).isEqualTo(byRate);
      assertThat(byRate.end().in(FAHRENHEIT)).isEqualTo(Math.rint(byRate.end().in(FAHRENHEIT)));
    }
  }
}
