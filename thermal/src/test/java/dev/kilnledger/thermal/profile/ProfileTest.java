package dev.kilnledger.thermal.profile;

import static dev.kilnledger.thermal.Workbench.thawed;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.fahrenheit;
import static dev.kilnledger.units.Amounts.fahrenheitPerHour;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kelvinPerMinute;
import static dev.kilnledger.units.Amounts.minutes;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.FAHRENHEIT;
import static dev.kilnledger.units.TradeUnits.FAHRENHEIT_PER_HOUR;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.KELVIN_PER_HOUR;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.measure.quantity.Temperature;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Expected values are plain arithmetic on the segments given, done by hand. */
class ProfileTest {
  /** Rounding of a handful of sums and quotients of doubles. */
  private static final Offset<Double> ROUNDING = within(1e-9);

  private static final BigDecimal THIRTY_TWO = BigDecimal.valueOf(32);

  /** 230 K at 60 K/h, 2 h, 200 K at 30 K/h, 1 h, 400 K at 100 K/h, 3 h, 750 K at 150 K/h. */
  private static final Profile PROFILE =
      Profile.from(celsius(20))
          .rampTo(celsius(250), kelvinPerHour(60))
          .hold(hours(2))
          .rampTo(celsius(450), kelvinPerHour(30))
          .hold(hours(1))
          .rampTo(celsius(850), kelvinPerHour(100))
          .hold(hours(3))
          .coolTo(celsius(100), kelvinPerHour(150))
          .build();

  @Test
  void addsUpItsSegments() {
    double heating = 230 / 60.0 + 2 + 200 / 30.0 + 1 + 4 + 3;
    assertThat(PROFILE.duration().in(HOUR)).isCloseTo(heating + 5, ROUNDING);
    assertThat(PROFILE.durationBeforeFinalCooling().in(HOUR)).isCloseTo(heating, ROUNDING);
    assertThat(PROFILE.segmentsBeforeFinalCooling()).hasSize(6);
    assertThat(PROFILE.peak()).isEqualTo(celsius(850));
    assertThat(PROFILE.start()).isEqualTo(celsius(20));
    assertThat(PROFILE.end()).isEqualTo(celsius(100));
    assertThat(PROFILE.holdAtPeak().in(HOUR)).isCloseTo(3, ROUNDING);
  }

  @Test
  void tellsTheTemperatureAtATime() {
    assertThat(PROFILE.temperatureAt(hours(0))).isEqualTo(celsius(20));
    assertThat(PROFILE.temperatureAt(minutes(30)).in(CELSIUS)).isCloseTo(50, ROUNDING);
    assertThat(PROFILE.temperatureAt(hours(5)).in(CELSIUS)).isCloseTo(250, ROUNDING);
    assertThat(PROFILE.temperatureAt(PROFILE.duration())).isEqualTo(celsius(100));
    assertThatThrownBy(() -> PROFILE.temperatureAt(minutes(-1)))
        .hasMessageStartingWith("profile: time is -1 min; accepted is from 0 h to 25.5");
    assertThatThrownBy(() -> PROFILE.temperatureAt(hours(30)))
        .hasMessageStartingWith("profile: time is 30 h; accepted is from 0 h to 25.5");
  }

  /** 500 K at 100 K/h: five hours, all of them cooling. */
  @Test
  void hasNothingBeforeItsCoolingWhenItOnlyCools() {
    Profile cooling = Profile.from(celsius(600)).coolTo(celsius(100), kelvinPerHour(100)).build();
    assertThat(cooling.segmentsBeforeFinalCooling()).isEmpty();
    assertThat(cooling.durationBeforeFinalCooling().in(HOUR)).isZero();
    assertThat(cooling.duration().in(HOUR)).isCloseTo(5, ROUNDING);
  }

  @Test
  void tellsTheTemperatureOfASegmentWithinItAlone() {
    Segment ramp = Segment.of(celsius(20), celsius(120), hours(2));
    assertThat(ramp.temperatureAt(minutes(30)).in(CELSIUS)).isCloseTo(45, ROUNDING);
    assertThat(ramp.temperatureAt(hours(2))).isEqualTo(celsius(120));
    assertThatThrownBy(() -> ramp.temperatureAt(hours(3)))
        .hasMessage("segment: time is 3 h; accepted is from 0 h to 2 h");
  }

  @Test
  void tellsTheTimeAboveATemperature() {
    assertThat(PROFILE.timeAbove(celsius(650)).in(HOUR)).isCloseTo(2 + 3 + 200 / 150.0, ROUNDING);
    assertThat(PROFILE.timeAbove(celsius(850)).in(HOUR)).isCloseTo(3, ROUNDING);
    assertThat(PROFILE.timeAbove(celsius(851)).in(HOUR)).isZero();
    assertThat(PROFILE.timeAbove(celsius(20))).isEqualTo(PROFILE.duration());
    Profile twoHumps =
        Profile.from(celsius(0))
            .rampTo(celsius(200), kelvinPerHour(100))
            .coolTo(celsius(50), kelvinPerHour(50))
            .rampTo(celsius(300), kelvinPerHour(100))
            .hold(hours(1))
            .build();
    assertThat(twoHumps.timeAbove(celsius(100)).in(HOUR)).isCloseTo(1 + 2 + 2 + 1, ROUNDING);
    assertThat(twoHumps.longestTimeAbove(celsius(100)).in(HOUR)).isCloseTo(3, ROUNDING);
    assertThat(twoHumps.longestTimeAbove(celsius(50)).in(HOUR))
        .as("touching the limit does not interrupt")
        .isCloseTo(1.5 + 3 + 2.5 + 1, ROUNDING);
  }

  @Test
  void tellsTheFastestHeatingInASpan() {
    Amount<Temperature> start = celsius(250);
    assertThat(PROFILE.fastestHeating().orElseThrow().in(KELVIN_PER_HOUR)).isCloseTo(100, ROUNDING);
    assertThat(
            PROFILE.fastestHeating(Span.of(start, celsius(450))).orElseThrow().in(KELVIN_PER_HOUR))
        .as("segments that only touch the span do not count")
        .isCloseTo(30, ROUNDING);
    assertThat(PROFILE.fastestHeating(Span.of(celsius(900), celsius(1000)))).isEmpty();
    assertThat(Profile.from(start).coolTo(celsius(20), kelvinPerHour(5)).build().fastestHeating())
        .isEmpty();
  }

  @Test
  void isTheSameInAnyUnits() {
    Profile metric =
        Profile.from(celsius(20))
            .rampTo(celsius(250), kelvinPerMinute(1))
            .hold(minutes(90))
            .rampOver(celsius(500), hours(5))
            .build();
    Profile imperial =
        Profile.from(fahrenheit(68))
            .rampTo(fahrenheit(482), fahrenheitPerHour(108))
            .hold(hours(1.5))
            .rampOver(fahrenheit(932), minutes(300))
            .build();
    for (int i = 0; i < 3; i++) {
      assertThat(imperial.segments().get(i).end()).isEqualTo(metric.segments().get(i).end());
      assertThat(imperial.rows().get(i).elapsed().in(HOUR))
          .isCloseTo(metric.rows().get(i).elapsed().in(HOUR), ROUNDING);
    }
  }

  @Test
  void isEqualByValue() {
    Profile again = Profile.of(PROFILE.segments());
    assertThat(again).isEqualTo(PROFILE).hasSameHashCodeAs(PROFILE);
    assertThat(Profile.of(PROFILE.segments().subList(0, 6))).isNotEqualTo(PROFILE);
  }

  @Test
  void answersTheSameWhereverItsSegmentsAreCut() {
    Random random = new Random(7); // a fixed seed: the same cuts in every run
    for (int trial = 0; trial < 200; trial++) {
      Profile cut = Profile.of(cutAtRandom(PROFILE, random));
      assertThat(cut.segments()).hasSize(14);
      assertThat(cut.duration().in(HOUR)).isCloseTo(PROFILE.duration().in(HOUR), ROUNDING);
      assertThat(cut.holdAtPeak().in(HOUR)).isCloseTo(3, ROUNDING);
      assertThat(cut.fastestHeating(Span.of(celsius(300), celsius(400))).orElseThrow().si())
          .isCloseTo(30 / 3600.0, ROUNDING);
      Amount<Temperature> limit = celsius(20 + random.nextInt(830));
      assertThat(cut.timeAbove(limit).in(HOUR))
          .isCloseTo(PROFILE.timeAbove(limit).in(HOUR), ROUNDING);
      assertThat(cut.longestTimeAbove(limit).in(HOUR))
          .isCloseTo(PROFILE.longestTimeAbove(limit).in(HOUR), ROUNDING);
      double time = random.nextDouble() * 25;
      assertThat(cut.temperatureAt(hours(time)).in(CELSIUS))
          .isCloseTo(PROFILE.temperatureAt(hours(time)).in(CELSIUS), within(1e-6));
    }
  }

  private static List<Segment> cutAtRandom(Profile profile, Random random) {
    List<Segment> pieces = new ArrayList<>();
    for (Segment whole : profile.segments()) {
      double share = 0.01 + 0.98 * random.nextDouble();
      Amount<Temperature> middle =
          whole.isHold() ? whole.start() : whole.temperatureAt(whole.duration().multiply(share));
      pieces.add(Segment.of(whole.start(), middle, whole.duration().multiply(share)));
      pieces.add(Segment.of(middle, whole.end(), whole.duration().multiply(1 - share)));
    }
    return pieces;
  }

  @Test
  void tellsItsSegmentsAsRowsAndAsText() {
    List<SegmentRow> rows = PROFILE.rows();
    assertThat(rows).extracting(SegmentRow::number).containsExactly(1, 2, 3, 4, 5, 6, 7);
    assertThat(rows.get(1).elapsed().in(HOUR)).isCloseTo(230 / 60.0 + 2, ROUNDING);
    assertThat(rows.get(6).elapsed()).isEqualTo(PROFILE.duration());
    assertThat(rows.get(6).rate().in(KELVIN_PER_HOUR)).isCloseTo(-150, ROUNDING);

    Profile two =
        Profile.from(celsius(20)).rampTo(celsius(250), kelvinPerHour(60)).hold(hours(2)).build();
    assertThat(two.table(CELSIUS))
        .isEqualTo(
            """
            no.      from        to        rate    takes    until
              1     20 °C    250 °C      60 K/h   3:50 h   3:50 h
              2    250 °C    250 °C        hold   2:00 h   5:50 h
            """);
    assertThat(two.table(FAHRENHEIT))
        .isEqualTo(
            """
            no.      from        to        rate    takes    until
              1     68 °F    482 °F    108 °F/h   3:50 h   3:50 h
              2    482 °F    482 °F        hold   2:00 h   5:50 h
            """);
  }

  @Test
  void tellsBothScalesSideBySide() {
    Profile three =
        Profile.from(celsius(20))
            .rampTo(celsius(1000), kelvinPerHour(12.5))
            .hold(minutes(90))
            .coolTo(celsius(100), kelvinPerHour(300))
            .build();
    // 20, 100, 1000 °C are 68, 212, 1832 °F; 12.5 and 300 K/h are 22.5 and 540 °F/h; 78.4 h.
    assertThat(three.tableInBothScales())
        .isEqualTo(
            """
            no.     from       to        rate     from       to         rate    takes    until
              1    20 °C  1000 °C    12.5 K/h    68 °F  1832 °F    22.5 °F/h  78:24 h  78:24 h
              2  1000 °C  1000 °C        hold  1832 °F  1832 °F         hold   1:30 h  79:54 h
              3  1000 °C   100 °C  -300.0 K/h  1832 °F   212 °F  -540.0 °F/h   3:00 h  82:54 h
            """);
  }

  /** The scales are defined by t/°F = 9/5 t/°C + 32: no whole degree lies half-way in the other. */
  @Test
  void convertsEveryWholeDegreeAsExactArithmeticDoes() {
    for (int degree = -40; degree <= 3000; degree++) {
      BigDecimal exact = BigDecimal.valueOf(degree);
      BigDecimal fahrenheit =
          exact.multiply(BigDecimal.valueOf(9)).divide(BigDecimal.valueOf(5)).add(THIRTY_TWO);
      BigDecimal celsius =
          exact
              .subtract(THIRTY_TWO)
              .multiply(BigDecimal.valueOf(5))
              .divide(BigDecimal.valueOf(9), 0, RoundingMode.HALF_UP);
      assertThat(celsius(degree).format(FAHRENHEIT, 0))
          .isEqualTo(fahrenheit.setScale(0, RoundingMode.HALF_UP) + " °F");
      assertThat(fahrenheit(degree).format(CELSIUS, 0)).isEqualTo(celsius + " °C");
      BigDecimal tenths = exact.movePointLeft(1);
      assertThat(kelvinPerHour(tenths.doubleValue()).format(FAHRENHEIT_PER_HOUR, 2))
          .isEqualTo(
              tenths.multiply(new BigDecimal("1.8")).setScale(2, RoundingMode.HALF_UP) + " °F/h");
    }
  }

  @Test
  void tellsAllThatIsWrongWithItsSegmentsTogether() {
    ProfileBuilder wrong =
        Profile.from(celsius(20))
            .rampTo(celsius(250), kelvinPerHour(0))
            .rampTo(celsius(250), kelvinPerHour(-60))
            .hold(hours(0))
            .rampOver(celsius(400), hours(-1))
            .coolTo(celsius(900), kelvinPerHour(100))
            .hold(hours(1));
    assertThatThrownBy(wrong::build)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "profile: segment 1 is a ramp to 250 °C at 0 K/h; accepted is more than zero, as the"
                + " direction follows from the target"
                + "; and segment 2 is a ramp from 250 °C to 250 °C; accepted is another target, or"
                + " a hold"
                + "; and segment 2 is a ramp to 250 °C at -60 K/h; accepted is more than zero, as"
                + " the direction follows from the target"
                + "; and segment 3 is a hold at 250 °C over 0 h; accepted is more than zero"
                + "; and segment 4 is a ramp to 400 °C over -1 h; accepted is more than zero"
                + "; and segment 5 cools from 400 °C to 900 °C; accepted is a lower temperature");
    assertThatThrownBy(
            () ->
                Profile.from(celsius(20))
                    .rampOver(celsius(20), hours(1))
                    .coolTo(celsius(10), kelvinPerHour(0))
                    .build())
        .hasMessage(
            "profile: segment 1 is a ramp from 20 °C to 20 °C; accepted is another target, or a"
                + " hold; and segment 2 is a ramp to 10 °C at 0 K/h; accepted is more than zero, as"
                + " the direction follows from the target");
    assertThatThrownBy(() -> Profile.from(celsius(20)).build())
        .hasMessage("profile: there is no segment; accepted is at least one");
    assertThatThrownBy(
            () ->
                Profile.of(
                    List.of(
                        Segment.of(celsius(20), celsius(100), hours(1)),
                        Segment.of(celsius(110), celsius(200), hours(1)))))
        .hasMessage(
            "profile: segment 2 starts at 110 °C where segment 1 ended at 100 °C; accepted is the"
                + " same temperature");
    assertThatThrownBy(() -> Segment.of(celsius(20), celsius(100), hours(0)))
        .hasMessage("segment from 20 °C to 100 °C: duration is 0 h; accepted is more than zero");
  }

  @Test
  void comesBackFromSerialization() throws Exception {
    assertThat(thawed(PROFILE)).isEqualTo(PROFILE);
  }
}
