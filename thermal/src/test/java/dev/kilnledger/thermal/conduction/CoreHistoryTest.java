package dev.kilnledger.thermal.conduction;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.thermal.Workbench.thawed;
import static dev.kilnledger.thermal.conduction.Bodies.body;
import static dev.kilnledger.thermal.conduction.Bodies.celsiusOf;
import static dev.kilnledger.thermal.conduction.Bodies.film;
import static dev.kilnledger.thermal.conduction.Bodies.material;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.metres;
import static dev.kilnledger.units.Amounts.minutes;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.seconds;
import static dev.kilnledger.units.Amounts.wattsPerMetreKelvin;
import static dev.kilnledger.units.Amounts.wattsPerSquareMetreKelvin;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.MINUTE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.Segment;
import dev.kilnledger.units.quantity.ThermalConductivity;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoreHistoryTest {
  private static final EigenmodeConduction EXACT = EigenmodeConduction.standard();

  /**
   * Packed cylinder of 50 mm radius: R2/a = 16667 s, time constant R2/(a 2.404826^2) = 2881.9 s.
   */
  private static Charge crucible() {
    return body(BodyShape.CYLINDER, 0.05, material(0.3, 2000, 1000)).build();
  }

  private static Profile firing(double hold) {
    return Profile.from(celsius(20))
        .rampTo(celsius(1020), kelvinPerHour(100))
        .hold(hours(hold))
        .coolTo(celsius(520), kelvinPerHour(100))
        .build();
  }

  private static Severity severity(CoreHistory history, ConductionFinding code) {
    return history.findings().stream()
        .filter(finding -> finding.code() == code)
        .findFirst()
        .map(Finding::severity)
        .orElseThrow();
  }

  /**
   * By hand: the lag is 115.7407 K when the hold begins, and dies as its first mode: 1.1080 x
   * 115.7407 exp(-t / 2881.9 s), the coefficient being 8/(b^3 J1(b)) = 1.10802 (Carslaw and
   * Jaeger).
   */
  @Test
  void tellsTheLagAndTheRealTimeOfTheCore() {
    Profile profile = firing(3);
    CoreHistory history = EXACT.forecast(crucible(), profile);
    CorePoint greatest = history.greatestLag();
    assertThat(greatest.lag().si()).isCloseTo(115.7407, within(1e-3)); // 9 h: exp(-12)
    assertThat(greatest.time().in(HOUR)).isCloseTo(10, within(0.01));
    double left = 1.10802 * 115.7407 * Math.exp(-3 * 3600 / 2881.9);
    assertThat(1020 - celsiusOf(history.coreAt(hours(13)))).isCloseTo(left, within(0.005));
    // At 1000 °C when 20 K are left, and again when cooling has come that far.
    double begins = 2881.9 * Math.log(1.10802 * 115.7407 / 20);
    double warm = history.coreTimeAbove(celsius(1000)).si() - (3 * 3600 - begins);
    assertThat(warm).isBetween(0.0, 115.7407 * 36); // the core lags on cooling, too
    assertThat(profile.timeAbove(celsius(1000)).in(HOUR)).isCloseTo(3.4, within(1e-9));
    assertThat(severity(history, ConductionFinding.CORE_REACHES_PEAK)).isEqualTo(PASSED);
    assertThat(severity(history, ConductionFinding.CORE_LAG)).isEqualTo(NOTE);
    assertThat(history.points().get(0).core()).isEqualTo(celsius(20));
    assertThat(history.core().end())
        .isEqualTo(history.points().get(history.points().size() - 1).core());
  }

  /** Straight lines between the points are within 0.002 K of the exact curve. */
  @Test
  void hasPointsCloseEnoughForStraightLines() {
    EigenmodeSolution exact = EXACT.solve(crucible(), firing(3));
    CoreHistory history = EXACT.forecast(crucible(), firing(3));
    assertThat(history.points()).hasSizeLessThan(1500);
    for (int i = 1; i < history.points().size(); i++) {
      double from = history.points().get(i - 1).time().si();
      double to = history.points().get(i).time().si();
      double third =
          history.points().get(i - 1).core().si() * 2 / 3 + history.points().get(i).core().si() / 3;
      assertThat(third).isCloseTo(exact.coreAt(from + (to - from) / 3), within(0.002));
    }
  }

  @Test
  void warnsWhereTheCoreStaysCold() {
    CoreHistory history = EXACT.forecast(crucible(), firing(0.5));
    assertThat(severity(history, ConductionFinding.CORE_REACHES_PEAK)).isEqualTo(WARNING);
    // 1.10802 x 115.7407 exp(-1800 / 2881.9) = 68.7 K are left when cooling starts, some is gained
    // yet.
    assertThat(history.peakShortfall().si()).isLessThan(68.7);
    CoreHistory other = EnthalpyConduction.standard().forecast(crucible(), firing(0.5));
    assertThat(history.peakShortfall().si())
        .isCloseTo(other.peakShortfall().si(), within(0.05)); // grid of 60 cells
  }

  /**
   * The soak begins at t1 = 2881.9 s ln(1.10802 x 115.7407 / 20), by the first mode; on holding for
   * longer the end of it comes as much later. So a soak of 3 h asks for 3 h + t1 less the time that
   * the core stays hot into the cooling, which the exact solution of a long hold tells. (After the
   * shorter hold the core is yet 1.6 K short, which is at 100 K/h 58 s less into the cooling.)
   */
  @Test
  void findsTheHoldThatGivesTheCoreItsSoak() {
    double begins = 2881.9 * Math.log(1.10802 * 115.7407 / 20);
    CoreHistory longHold = EXACT.forecast(crucible(), firing(20));
    double into = longHold.coreTimeAbove(celsius(1000)).si() - (20 * 3600 - begins);
    Soak soak = new SoakHold(EXACT).of(crucible(), firing(1), celsius(1000), hours(3));
    double needed = soak.neededHold().orElseThrow().si();
    assertThat(needed).isCloseTo(3 * 3600 + begins - into, within(58.0));
    assertThat(soak.programmedHold()).isEqualTo(hours(1));
    assertThat(soak.finding().severity()).isEqualTo(WARNING);
    assertThat(soak.finding().code()).isEqualTo(ConductionFinding.CORE_SOAK);
    Profile changed = soak.neededProfile().orElseThrow();
    CoreHistory history = EXACT.forecast(crucible(), changed);
    assertThat(history.core().longestTimeAbove(celsius(1000)).in(MINUTE))
        .isBetween(180.0, 180 + 1.5 / 60);
    Soak again = new SoakHold(EXACT).of(crucible(), changed, celsius(1000), hours(3));
    assertThat(again.finding().severity()).isEqualTo(PASSED);
    assertThat(again.neededHold().orElseThrow().si()).isCloseTo(needed, within(1.0));
  }

  @Test
  void putsAHoldInWhereThePeakIsOnlyTouched() {
    Profile touched =
        Profile.from(celsius(20))
            .rampTo(celsius(500), kelvinPerHour(100))
            .coolTo(celsius(20), kelvinPerHour(100))
            .build();
    Soak soak = SoakHold.standard().of(crucible(), touched, celsius(480), hours(1));
    assertThat(soak.programmedHold().si()).isZero();
    Profile changed = soak.neededProfile().orElseThrow();
    assertThat(changed.segments()).hasSize(3);
    assertThat(changed.segments().get(1).isHold()).isTrue();
    assertThat(soak.coreSoak().si()).isZero();
    // No hold is needed for a soak that the core has anyway.
    Soak little = SoakHold.standard().of(crucible(), touched, celsius(100), minutes(1));
    assertThat(little.neededHold().orElseThrow().si()).isZero();
    assertThat(little.neededProfile()).contains(touched);
    Soak without = new SoakHold(EXACT).of(crucible(), firing(1), celsius(100), minutes(1));
    assertThat(without.neededHold().orElseThrow().si()).isZero();
    assertThat(without.neededProfile().orElseThrow().segments()).hasSize(2);
  }

  @Test
  void tellsWhereNoHoldHelps() {
    Soak soak = new SoakHold(EXACT).of(crucible(), firing(1), celsius(1020), hours(1));
    assertThat(soak.neededHold()).isEmpty();
    assertThat(soak.neededProfile()).isEmpty();
    assertThat(soak.finding().severity()).isEqualTo(STOP);
    assertThat(soak.finding().message()).contains("no hold at 1020 °C does it");
    assertThatThrownBy(() -> new SoakHold(EXACT).of(crucible(), firing(1), celsius(900), hours(0)))
        .hasMessageContaining("soak is 0 h; accepted is more than zero");
    // A profile that is nothing but a hold.
    Profile only = Profile.from(celsius(500)).hold(hours(5)).build();
    Charge cold = body(BodyShape.SLAB, 0.01, 3e-7).startTemperature(celsius(20)).build();
    assertThat(new SoakHold(EXACT).of(cold, only, celsius(400), minutes(10)).neededHold())
        .hasValueSatisfying(hold -> assertThat(hold.in(MINUTE)).isBetween(10.0, 20.0));
  }

  /** Incropera et al., sec. 5.2: the lumped balance holds below a Biot number of 0.1. */
  @Test
  void tellsWhetherTheSurfaceOrTheInsideDecides() {
    Charge.Builder steel = body(BodyShape.SLAB, 0.01, material(40, 7800, 500));
    Profile profile = firing(1);
    Charge filmed = steel.contact(film(20)).build(); // Bi = 20 x 0.01 / 40 = 0.005
    CoreHistory history = EXACT.forecast(filmed, profile);
    Finding finding =
        history.findings().stream()
            .filter(f -> f.code() == ConductionFinding.SURFACE_CONTACT)
            .findFirst()
            .orElseThrow();
    assertThat(finding.severity()).isEqualTo(NOTE);
    assertThat(finding.measured()).contains(ratio(0.005));
    Charge packed =
        body(BodyShape.CYLINDER, 0.05, material(0.3, 2000, 1000)).contact(film(20)).build();
    assertThat(severity(EXACT.forecast(packed, profile), ConductionFinding.SURFACE_CONTACT))
        .isEqualTo(PASSED);
    assertThat(severity(EXACT.forecast(crucible(), profile), ConductionFinding.SURFACE_CONTACT))
        .isEqualTo(NOTE);
    Charge radiant =
        steel.contact(SurfaceContact.of(wattsPerSquareMetreKelvin(0), ratio(0.8))).build();
    assertThat(
            severity(
                EnthalpyConduction.standard().forecast(radiant, profile),
                ConductionFinding.SURFACE_CONTACT))
        .isEqualTo(PASSED);
  }

  @Test
  void tellsWhereItLeavesThePropertiesStated() {
    ChargeMaterial stated =
        material(
            PropertyCurve.<ThermalConductivity>builder()
                .at(celsius(0), wattsPerMetreKelvin(0.2))
                .at(celsius(800), wattsPerMetreKelvin(0.5))
                .build(),
            2000,
            material(1, 1, 1000).heatCapacity().orElseThrow());
    Charge charge = body(BodyShape.SLAB, 0.02, stated).build();
    EnthalpyConduction model = EnthalpyConduction.standard();
    CoreHistory outside = model.forecast(charge, firing(1));
    assertThat(severity(outside, ConductionFinding.PROPERTIES_STATED)).isEqualTo(UNDETERMINED);
    Profile lower = Profile.from(celsius(20)).rampTo(celsius(700), kelvinPerHour(100)).build();
    assertThat(severity(model.forecast(charge, lower), ConductionFinding.PROPERTIES_STATED))
        .isEqualTo(PASSED);
  }

  private static Finding finding(CoreHistory history, ConductionFinding code) {
    return history.findings().stream().filter(f -> f.code() == code).findFirst().orElseThrow();
  }

  /**
   * The figures of the lag above: 115.7407 K behind after 10 h, at 1020 - 115.74 °C. The limit is
   * the larger of 2.5 K and 0.75 % of the peak in °C.
   */
  @Test
  void saysHowFarTheCoreIsBehind() {
    CoreHistory warm = EXACT.forecast(crucible(), firing(3));
    assertThat(finding(warm, ConductionFinding.CORE_LAG).message())
        .isEqualTo("the core is up to 115.7 K behind the kiln, 10.00 h after the start, at 904 °C");
    Finding reached = finding(warm, ConductionFinding.CORE_REACHES_PEAK);
    assertThat(reached.limit().orElseThrow().si()).isCloseTo(0.0075 * 1020, within(1e-9));
    assertThat(reached.message())
        .startsWith("the core gets to 101")
        .endsWith(" °C where the kiln peaks at 1020.0 °C");
    Finding cold =
        finding(EXACT.forecast(crucible(), firing(0.5)), ConductionFinding.CORE_REACHES_PEAK);
    assertThat(cold.message())
        .endsWith(" °C where the kiln peaks at 1020.0 °C: a longer hold is needed");
    Profile mild = Profile.from(celsius(20)).rampTo(celsius(200), kelvinPerHour(100)).build();
    assertThat(
            finding(EXACT.forecast(crucible(), mild), ConductionFinding.CORE_REACHES_PEAK)
                .limit()
                .orElseThrow()
                .si())
        .isEqualTo(2.5);
  }

  private static ConductionFinding code(CoreHistory history, int index) {
    return (ConductionFinding) history.findings().get(index).code();
  }

  /** Bi = h x sum of L / k with the better of the conductivities: 20 x 0.01 / 40, and so on. */
  @Test
  void saysWhetherTheSurfaceOrTheInsideDecides() {
    Charge.Builder steel = body(BodyShape.SLAB, 0.01, material(40, 7800, 500));
    Finding perfect =
        finding(EXACT.forecast(steel.build(), firing(1)), ConductionFinding.SURFACE_CONTACT);
    assertThat(perfect.message())
        .isEqualTo(
            "the surface is taken to be as hot as the kiln: the real core lags somewhat more");
    CoreHistory filmed = EXACT.forecast(steel.contact(film(20)).build(), firing(1));
    Finding film = finding(filmed, ConductionFinding.SURFACE_CONTACT);
    assertThat(film.message())
        .isEqualTo(
            "the Biot number of the surface is 0.005: the lag is the surface's, and only as good as"
                + " its coefficient");
    assertThat(film.limit()).contains(ratio(0.1));
    assertThat(code(filmed, 2)).isEqualTo(ConductionFinding.SURFACE_CONTACT);
    // 400 x 0.01 / 40 is just the limit
    Finding inside =
        finding(
            EXACT.forecast(steel.contact(film(400)).build(), firing(1)),
            ConductionFinding.SURFACE_CONTACT);
    assertThat(inside.severity()).isEqualTo(PASSED);
    assertThat(inside.message())
        .isEqualTo("the Biot number of the surface is 0.100: the lag is mostly that of the inside");
    // two layers, one of which conducts better hot: 10 x (0.01 / 0.5 + 0.01 / 40) = 0.2025
    ChargeMaterial rising =
        material(
            PropertyCurve.<ThermalConductivity>builder()
                .at(celsius(0), wattsPerMetreKelvin(0.2))
                .at(celsius(800), wattsPerMetreKelvin(0.5))
                .build(),
            2000,
            material(1, 1, 1000).heatCapacity().orElseThrow());
    Charge layered =
        body(BodyShape.SLAB, 0.01, rising)
            .addLayers(ChargeLayer.of(material(40, 7800, 500), metres(0.01)))
            .contact(film(10))
            .build();
    Finding both =
        finding(
            EnthalpyConduction.standard().forecast(layered, firing(1)),
            ConductionFinding.SURFACE_CONTACT);
    assertThat(both.measured().orElseThrow().si()).isCloseTo(0.2025, within(1e-12));
    Charge radiant =
        steel.contact(SurfaceContact.of(wattsPerSquareMetreKelvin(0), ratio(0.8))).build();
    assertThat(
            finding(
                    EnthalpyConduction.standard().forecast(radiant, firing(1)),
                    ConductionFinding.SURFACE_CONTACT)
                .message())
        .isEqualTo("the surface takes up heat by convection and radiation of the kiln");
  }

  /** A charge from 20 to 1020 °C against properties stated from 0 or 100 to 800 or 1100 °C. */
  @ParameterizedTest
  @CsvSource({
    "0, 1100, PASSED, stated for that",
    "0, 800, UNDETERMINED, stated for 0 to 800 °C only: taken as constant beyond",
    "100, 1100, UNDETERMINED, stated for 100 to 1100 °C only: taken as constant beyond"
  })
  void saysWhereThePropertiesAreStated(double low, double high, Severity severity, String told) {
    ChargeMaterial stated =
        ChargeMaterial.builder()
            .from(
                material(
                    PropertyCurve.<ThermalConductivity>builder()
                        .at(celsius(low), wattsPerMetreKelvin(2))
                        .at(celsius(high), wattsPerMetreKelvin(2.5))
                        .build(),
                    2000,
                    material(1, 1, 1000).heatCapacity().orElseThrow()))
            .conductivityFactor(ratio(1.5))
            .build();
    Charge charge = body(BodyShape.SLAB, 0.002, stated).build();
    CoreHistory history = EnthalpyConduction.standard().forecast(charge, firing(3));
    Finding finding = finding(history, ConductionFinding.PROPERTIES_STATED);
    assertThat(finding.severity()).isEqualTo(severity);
    assertThat(finding.message())
        .isEqualTo("the charge passes 20 to 1020 °C, properties of test material are " + told);
    if (severity == UNDETERMINED) {
      assertThat(finding.limit()).contains(celsius(high));
    }
    Finding known = finding(history, ConductionFinding.CONDUCTIVITY_KNOWN);
    assertThat(known.measured()).contains(ratio(1.5));
    assertThat(known.message())
        .isEqualTo(
            "the conductivity of test material is known within a factor of 1.50: the lag may be as"
                + " much longer or shorter; compute the slow charge as well");
  }

  @Test
  void saysWhereAConductivityIsNotKnown() {
    ChargeMaterial unknown =
        ChargeMaterial.builder().from(material(0.3, 2000, 1000)).conductivityKnown(false).build();
    CoreHistory history =
        EXACT.forecast(body(BodyShape.CYLINDER, 0.05, unknown).build(), firing(3));
    assertThat(finding(history, ConductionFinding.CONDUCTIVITY_KNOWN).message())
        .isEqualTo(
            "the conductivity of test material is not known: its heat is counted, its resistance is"
                + " not, and the core lags somewhat more");
    assertThat(EXACT.forecast(crucible(), firing(3)).findings())
        .extracting(Finding::code)
        .doesNotContain(ConductionFinding.CONDUCTIVITY_KNOWN);
  }

  /** What a soak says, with the numbers of the search above. */
  @Test
  void saysWhichHoldGivesTheSoak() {
    Soak soak = new SoakHold(EXACT).of(crucible(), firing(1), celsius(1000), hours(3));
    String hold = soak.neededHold().orElseThrow().format(HOUR, 2);
    assertThat(soak.finding().message())
        .isEqualTo(
            "the core is at or above 1000 °C for "
                + soak.coreSoak().format(HOUR, 2)
                + " at a stretch, asked are 3.00 h, for which a hold of "
                + hold
                + " does");
    assertThat(soak.finding().measured()).contains(soak.coreSoak());
    assertThat(soak.coreSoak().si())
        .isEqualTo(
            EXACT.forecast(crucible(), firing(1)).core().longestTimeAbove(celsius(1000)).si());
    // the longer of two holds at the peak is the one that is made longer, the later of equal ones
    Profile twice =
        Profile.from(celsius(20))
            .rampTo(celsius(1020), kelvinPerHour(100))
            .hold(hours(1))
            .coolTo(celsius(900), kelvinPerHour(100))
            .rampTo(celsius(1020), kelvinPerHour(100))
            .hold(hours(1))
            .coolTo(celsius(520), kelvinPerHour(100))
            .build();
    Soak later = new SoakHold(EXACT).of(crucible(), twice, celsius(1000), hours(3));
    assertThat(later.programmedHold()).isEqualTo(hours(1));
    List<Segment> changed = later.neededProfile().orElseThrow().segments();
    assertThat(changed.get(1).duration()).isEqualTo(hours(1));
    assertThat(changed.get(4).duration()).isEqualTo(later.neededHold().orElseThrow());
  }

  @Test
  void survivesSerialization() throws Exception {
    CoreHistory history =
        EnthalpyConduction.standard()
            .forecast(crucible(), Profile.from(celsius(20)).hold(seconds(60)).build());
    assertThat(thawed(history)).isEqualTo(history);
    assertThat(List.of(history.heat().orElseThrow().imbalance().si())).containsExactly(0.0);
  }
}
