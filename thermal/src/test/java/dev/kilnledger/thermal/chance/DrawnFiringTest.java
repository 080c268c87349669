package dev.kilnledger.thermal.chance;

import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.thermal.Workbench.kiln;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.massFraction;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.thermal.Workbench;
import dev.kilnledger.thermal.conduction.PropertyCurve;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.kiln.Thermocouple;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.Segment;
import dev.kilnledger.units.quantity.ThermalConductivity;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * What a draw makes of a programme to 1000 °C and back to 400 °C: type K, class 2 of IEC 60584-1,
 * may read 2.5 K wrong up to 333.33 °C and 0.75 % of the degrees Celsius above.
 */
class DrawnFiringTest {
  private static final double BEND = 2.5 / 0.0075; // °C

  private static FiringSetup.Builder setup() {
    Profile profile =
        Profile.from(celsius(20))
            .rampOver(celsius(1000), hours(9.8))
            .hold(hours(2))
            .rampOver(celsius(400), hours(6))
            .build();
    return Workbench.setup(copper(), 1000)
        .kiln(kiln(1300).wall(List.of()).build())
        .route(
            FiringRoute.of(
                Workbench.debinding().build(), Workbench.sintering(1000).profile(profile).build()));
  }

  private static DrawnFiring drawn(FiringSetup.Builder setup) {
    return new DrawnFiring(FiringForecast.of(setup.build()));
  }

  private static Draw draw(double offset, double drift, double share) {
    return Draw.of(input -> 0)
        .with(FiringInput.KILN_OFFSET, offset)
        .with(FiringInput.DRIFT, drift)
        .with(FiringInput.THERMOCOUPLE, share)
        .with(FiringInput.METAL_SHARE, 0.9)
        .with(FiringInput.PACKING_CONDUCTIVITY, 1);
  }

  private static List<Segment> sintering(FiringSetup setup) {
    return setup.route().stages().get(1).profile().segments();
  }

  private static double[] corners(List<Segment> segments) {
    double[] corners = new double[segments.size() + 1];
    corners[0] = segments.get(0).start().in(CELSIUS);
    for (int i = 1; i < corners.length; i++) {
      corners[i] = segments.get(i - 1).end().in(CELSIUS);
      assertThat(segments.get(i - 1).start().in(CELSIUS)).isCloseTo(corners[i - 1], within(1e-9));
    }
    return corners;
  }

  private static double[] durations(List<Segment> segments) {
    return segments.stream().mapToDouble(segment -> segment.duration().in(HOUR)).toArray();
  }

  /** 5 K hotter, 2 K of drift, and all of the tolerance too high: 7.5 K at 1000, 3 K at 400 °C. */
  @Test
  void shiftsByOffsetDriftAndTolerance() {
    DrawnFiring drawn = drawn(setup().thermocouple(Thermocouple.K));
    assertThat(drawn.atPeak(1, draw(5, 2, 1))).isCloseTo(5 - 2 - 7.5, within(1e-9));
    // debinding ends at 420 °C
    assertThat(drawn.atPeak(0, draw(5, 2, 1))).isCloseTo(5 - 2 - 3.15, within(1e-9));
    List<Segment> segments = sintering(drawn.setup(draw(5, 2, 1)));
    assertThat(corners(segments))
        .containsExactly(new double[] {20.5, BEND + 0.5, 995.5, 995.5, 400}, within(1e-9));
    // 980 K in 9.8 h
    assertThat(durations(segments))
        .containsExactly(new double[] {(BEND - 20) / 100, (1000 - BEND) / 100, 2, 6}, within(1e-9));
  }

  /** Half of the tolerance too low makes it hotter: by 3.75 K at the peak, 1.25 K at the start. */
  @Test
  void isHotterWhereTheThermocoupleReadsTooLow() {
    List<Segment> segments =
        sintering(drawn(setup().thermocouple(Thermocouple.K)).setup(draw(0, 0, -0.5)));
    assertThat(corners(segments))
        .containsExactly(new double[] {21.25, BEND + 1.25, 1003.75, 1003.75, 401.5}, within(1e-9));
  }

  /** Elsewhere than at the peak another share of the tolerance may be read too high. */
  @Test
  void takesAnotherShareElsewhere() {
    DrawnFiring drawn = drawn(setup().thermocouple(Thermocouple.K));
    assertThat(corners(sintering(drawn.setup(draw(0, 0, 1), 0))))
        .containsExactly(new double[] {12.5, BEND - 7.5, 992.5, 992.5, 392.5}, within(1e-9));
  }

  @Test
  void cutsWhereTheToleranceBendsOnTheWayDownAsWell() {
    Profile down =
        Profile.from(celsius(20))
            .rampOver(celsius(BEND), hours(3))
            .rampOver(celsius(900), hours(6))
            .rampOver(celsius(100), hours(8))
            .build();
    FiringSetup.Builder setup =
        setup()
            .thermocouple(Thermocouple.K)
            .route(
                FiringRoute.of(
                    Workbench.debinding().build(),
                    Workbench.sintering(1000).profile(down).build()));
    // 6.75 K at 900 °C
    List<Segment> segments = sintering(drawn(setup).setup(draw(0, 0, 1)));
    assertThat(corners(segments))
        .containsExactly(new double[] {17.5, BEND - 2.5, 893.25, BEND - 2.5, 97.5}, within(1e-9));
    assertThat(durations(segments))
        .containsExactly(new double[] {3, 6, (900 - BEND) / 100, (BEND - 100) / 100}, within(1e-9));
  }

  /**
   * Type K is not specified above 1200 °C, type S not below 0 °C: the tolerance of the end holds.
   */
  @Test
  void takesTheToleranceOfTheEndOfTheRangeBeyondIt() {
    Profile hot = Profile.from(celsius(-20)).rampOver(celsius(1240), hours(6)).build();
    FiringSetup.Builder setup =
        setup()
            .route(
                FiringRoute.of(
                    Workbench.debinding().build(), Workbench.sintering(1000).profile(hot).build()));
    assertThat(drawn(setup.thermocouple(Thermocouple.K)).atPeak(1, draw(0, 0, 1)))
        .isCloseTo(-9, within(1e-9));
    DrawnFiring platinum = drawn(setup.thermocouple(Thermocouple.S));
    // 0.25 % of 1240 °C; 1.5 K at 0 °C
    assertThat(platinum.atPeak(1, draw(0, 0, 1))).isCloseTo(-3.1, within(1e-9));
    assertThat(corners(sintering(platinum.setup(draw(0, 0, 1))))[0]).isCloseTo(-21.5, within(1e-9));
  }

  @Test
  void leavesAProgrammeAsItIsWhereNothingIsOff() {
    FiringSetup setup = setup().build();
    assertThat(sintering(new DrawnFiring(FiringForecast.of(setup)).setup(draw(0, 0, 1))))
        .as("no thermocouple is stated")
        .isEqualTo(sintering(setup));
  }

  @Test
  void correctsAllProgrammes() {
    DrawnFiring corrected = drawn(setup()).withCorrection(12);
    assertThat(corrected.atPeak(0, draw(3, 0, 0))).isEqualTo(15);
    assertThat(corners(sintering(corrected.setup(draw(3, 0, 0)))))
        .containsExactly(new double[] {35, 1015, 1015, 415}, within(1e-9));
  }

  @Test
  void drawsFeedstockAndPacking() {
    DrawnFiring drawn = drawn(setup());
    FiringSetup same = drawn.setup(draw(0, 0, 0));
    assertThat(same.feedstock()).isEqualTo(setup().build().feedstock());
    FiringSetup other =
        drawn.setup(
            draw(0, 0, 0)
                .with(FiringInput.METAL_SHARE, 0.85)
                .with(FiringInput.PACKING_CONDUCTIVITY, 1.5));
    assertThat(other.feedstock().metalMassFraction()).isEqualTo(massFraction(0.85));
    assertThat(other.feedstock().binderMassFraction().si()).isCloseTo(0.15, within(1e-12));
    PropertyCurve<ThermalConductivity> expected = same.packingConductivity().orElseThrow().value();
    PropertyCurve<ThermalConductivity> curve = other.packingConductivity().orElseThrow().value();
    assertThat(curve.temperatures()).isEqualTo(expected.temperatures());
    for (int i = 0; i < curve.values().size(); i++) {
      assertThat(curve.values().get(i).si())
          .isCloseTo(1.5 * expected.values().get(i).si(), within(1e-12));
    }
  }

  /** What is asked of the core stays as it was of the firing as programmed. */
  @Test
  void asksTheSameOfTheCore() {
    FiringForecast forecast = FiringForecast.of(setup().build());
    FiringSetup hotter = new DrawnFiring(forecast).setup(draw(40, 0, 0));
    assertThat(hotter.soakTemperature()).contains(forecast.coreSoak().temperature());
    assertThat(hotter.soak()).contains(forecast.coreSoak().asked());
  }

  @Test
  void changesTheHoldOfTheHottestStage() {
    FiringSetup longer = drawn(setup()).withHold(5 * 3600).nominal();
    assertThat(durations(sintering(longer)))
        .containsExactly(new double[] {9.8, 5, 6}, within(1e-9));
    assertThat(longer.route().stages().get(0)).isEqualTo(setup().build().route().stages().get(0));
  }
}
