package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.thermal.Workbench.carbon;
import static dev.kilnledger.thermal.Workbench.circuit;
import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.thermal.Workbench.crucible;
import static dev.kilnledger.thermal.Workbench.debinding;
import static dev.kilnledger.thermal.Workbench.informed;
import static dev.kilnledger.thermal.Workbench.kiln;
import static dev.kilnledger.thermal.Workbench.sintering;
import static dev.kilnledger.thermal.Workbench.stainless;
import static dev.kilnledger.thermal.Workbench.titanium;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.gramsPerHour;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kilowatts;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.minutes;
import static dev.kilnledger.units.Amounts.watts;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.FindingCode;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.atmosphere.AtmosphereFinding;
import dev.kilnledger.thermal.burnout.BurnOutFinding;
import dev.kilnledger.thermal.conduction.ConductionFinding;
import dev.kilnledger.thermal.densification.DensificationFinding;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.kiln.KilnFinding;
import dev.kilnledger.thermal.kiln.Thermocouple;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.Profile;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Firings of which each must fail for its own reason, and one beside them that is sound. */
class FiringsThatMustFailTest {
  private static final FiringCheck CHECK = FiringCheck.standard();

  private static Finding worst(FindingCode code, FiringSetup.Builder setup) {
    return worst(code, CHECK.check(setup.build()));
  }

  private static Finding worst(FindingCode code, FiringReport report) {
    return report.of(code).stream()
        .max((a, b) -> a.severity().compareTo(b.severity()))
        .orElseThrow(() -> new AssertionError("no finding " + code.code()));
  }

  private static void fails(
      Severity severity, FindingCode code, FiringSetup.Builder setup, String message) {
    fails(severity, code, CHECK.check(setup.build()), message);
  }

  private static void fails(
      Severity severity, FindingCode code, FiringReport report, String message) {
    Finding finding = worst(code, report);
    assertThat(finding.message()).isEqualTo(message);
    assertThat(finding.severity()).isEqualTo(severity);
  }

  @Test
  void aSoundFiringOfWhichAllIsKnownHasNothingWorseThanNotes() {
    FiringReport report = CHECK.check(informed(copper(), 1000).build());
    assertThat(report.atLeast(NOTE))
        .allSatisfy(
            finding -> assertThat(finding.severity()).as(finding.message()).isEqualTo(NOTE));
    assertThat(report.findings())
        .filteredOn(finding -> finding.severity() == PASSED)
        .extracting(Finding::code)
        .contains(
            BurnOutFinding.BINDER_REMAINING,
            BurnOutFinding.LOSS_RATE,
            ConductionFinding.CORE_SOAK,
            KilnFinding.REACHES_PEAK,
            KilnFinding.SENSOR_TOLERANCE,
            DensificationFinding.DENSITY_TARGET,
            AtmosphereFinding.CARBON_LASTS,
            AtmosphereFinding.CARBON_KEEPS_BRIGHT,
            AtmosphereFinding.ROOM_CONCENTRATION);
  }

  /**
   * At 30 K/h the loss is fastest at 630.71 K, where 60.8 % have left (recomputed independently):
   * 1e9 exp(-150000 / (R 630.71)) 0.392 = 53.3 % an hour. A wall of 12 mm stands a sixteenth of
   * what one of 3 mm does (German 1987, from memory). The core lags, but heats no faster: 3 %.
   */
  @Test
  void tooFastForAWallOfTwelveMillimetres() {
    Finding thin = worst(BurnOutFinding.LOSS_RATE, informed(copper(), 1000));
    assertThat(thin.severity()).isEqualTo(PASSED);
    assertThat(thin.measured().orElseThrow().si() * 3600).isCloseTo(0.533, within(0.016));

    Finding thick =
        worst(BurnOutFinding.LOSS_RATE, informed(copper(), 1000).thickestSection(millimetres(12)));
    assertThat(thick.severity()).isEqualTo(STOP);
    assertThat(thick.limit().orElseThrow().si() * 3600).isCloseTo(0.6 / 16, within(1e-12));
    assertThat(thick.message())
        .startsWith("binder leaves at 53.")
        .endsWith(
            " %/h where 3.75 %/h is allowed for a wall of 12.0 mm, at 358 °C in segment 2 of the"
                + " debinding stage: the part may blister or crack");
  }

  /** Without kinetics the rule of thumb: 30 K/h, where 60 (3/12)² = 3.75, but at least 5 is. */
  @Test
  void tooFastForAWallOfTwelveMillimetresByTheRuleOfThumb() {
    fails(
        STOP,
        FiringFinding.DEBINDING_RATE,
        informed(copper(), 1000).kinetics(List.of()).thickestSection(millimetres(12)),
        "heated at up to 30.0 K/h between 250 °C and 400 °C, where 5.0 K/h is allowed for a section"
            + " of 12.0 mm: polylactide may blister or crack the part");
  }

  @Test
  void aKilnRatedFiftyKelvinTooLow() {
    fails(
        STOP,
        FiringFinding.KILN_REACHES_PEAK,
        informed(copper(), 1000).kiln(kiln(950).build()),
        "the kiln stops at 950 °C and the profile asks 1000 °C: 50 K short");
  }

  /**
   * By hand: 6 faces of 0.0625 m² lose 0.4437 W/K through 115 mm of 0.35 W/(m K), 50 mm of 0.12 and
   * a film of 10 W/(m2 K); 413 W hold 20 + 413 / 0.4437 = 951 °C, and no more in a finite time.
   */
  @Test
  void aKilnTooWeakForItsRating() {
    FiringReport weak =
        CHECK.check(informed(copper(), 1000).kiln(kiln(1300).power(watts(413)).build()).build());
    Finding finding = worst(KilnFinding.REACHES_PEAK, weak);
    assertThat(finding.severity()).isEqualTo(STOP);
    assertThat(finding.message())
        .startsWith("sintering: the programme asks 1000 °C and the kiln gets to ")
        .endsWith(" K short; at full power it approaches 951 °C");
    assertThat(worst(KilnFinding.FOLLOWS_PROGRAMME, weak).severity()).isEqualTo(WARNING);
    assertThat(worst(ConductionFinding.CORE_SOAK, weak).severity()).isEqualTo(STOP);
  }

  /**
   * 10 g of carbon against at least 20 g/h of oxygen, which take 7.5 g/h of it to carbon dioxide
   * (12 g to 32 g): spent some 1.3 h after carbon is quick, long before the kiln has cooled.
   */
  @Test
  void carbonSpentBeforeTheChargeHasCooled() {
    FiringRoute little =
        FiringRoute.of(debinding().build(), sintering(1000).getter(carbon(), grams(10)).build());
    FiringSetup setup =
        informed(copper(), 1000)
            .route(little)
            .oxygenInflow(
                Sourced.of(Span.of(gramsPerHour(20), gramsPerHour(40)), Source.user("leaky lid")))
            .build();
    FiringForecast forecast = FiringForecast.of(setup);
    Finding finding = CHECK.check(forecast).of(AtmosphereFinding.CARBON_LASTS).get(0);
    assertThat(finding.severity()).isEqualTo(STOP);
    // 3.87 h to 600 °C, 0.5 h of hold, 0.5 h to 650 °C, then 9 to 9.8 g of carbon
    assertThat(forecast.hottest().oxygen().orElseThrow().spentAtLatest().orElseThrow().in(HOUR))
        .isCloseTo(4.87 + 9.8 / (20 * 12.011 / 31.998), within(0.1));
    assertThat(finding.message())
        .startsWith("sintering: 10.0 g of granular carbon hold 9.0 to 9.8 g of carbon")
        .contains(": spent after 6.2 h at the latest, before the charge is below 200 °C after ");
  }

  @Test
  void titaniumInCarbon() {
    FiringReport report = CHECK.check(informed(titanium(), 1250).build());
    fails(
        STOP,
        FiringFinding.CARBON_SUITS_ALLOY,
        report,
        "carbon, which is laid in, is the wrong protection for titanium: what carbon does to"
            + " titanium");
    fails(
        STOP,
        AtmosphereFinding.NITROGEN,
        report,
        "nitrogen stays when carbon has burnt the oxygen away, and titanium (100.0 % by mass) forms"
            + " its nitride: vacuum or argon is the usual way");
    Finding oxide = worst(AtmosphereFinding.CARBON_KEEPS_BRIGHT, report);
    assertThat(oxide.severity()).isEqualTo(STOP);
    assertThat(oxide.message())
        .startsWith("sintering: Ti (100.0 % of the atoms) oxidises under carbon at 1250 °C");
  }

  @Test
  void stainlessInAKilnThatStopsAtElevenHundred() {
    FiringReport report = CHECK.check(informed(stainless(), 1100).kiln(kiln(1100).build()).build());
    fails(
        STOP,
        FiringFinding.KILN_REACHES_PEAK,
        report,
        "the kiln stops at 1100 °C and 316L sinters from 1250 °C up: no programme can do it in this"
            + " kiln");
    fails(
        STOP,
        FiringFinding.PEAK_IN_SINTERING_WINDOW,
        report,
        "the peak of 1100 °C and the sintering window of 1250 to 1370 °C: 316L will not sinter");
  }

  @Test
  void aSteelCrucibleAtTwelveHundredAndFifty() {
    fails(
        STOP,
        FiringFinding.CRUCIBLE_TEMPERATURE,
        informed(stainless(), 1250).crucible(crucible("stainless steel 304", 927)),
        "stainless steel 304 stands 927 °C in air, and the peak is 1250 °C");
  }

  /** IEC 60584-1:2013, class 2: type K to 1200 °C. */
  @Test
  void aThermocoupleOfTypeKAboveTwelveHundred() {
    fails(
        WARNING,
        KilnFinding.SENSOR_TOLERANCE,
        informed(stainless(), 1250).thermocouple(Thermocouple.K),
        "no tolerance is stated at 1250 °C, only for -40 to 1200 °C: choose a type made for it");
    assertThat(
            worst(
                    KilnFinding.SENSOR_TOLERANCE,
                    informed(copper(), 1000).thermocouple(Thermocouple.K))
                .message())
        .contains("may read wrong by 7.5 K"); // 0.75 % of 1000 °C
  }

  /** 3.6 kW / 230 V = 15.65 A on a breaker of 16 A, 80 % of which are 12.8 A. */
  @Test
  void aCurrentAboveWhatTheCircuitCarriesForHours() {
    fails(
        STOP,
        FiringFinding.SUPPLY_CURRENT,
        informed(copper(), 1000)
            .kiln(kiln(1300).power(kilowatts(3.6)).build())
            .supplyCircuit(circuit(16)),
        "the kiln draws 15.7 A for hours, and the circuit north wall carries 12.8 A for so long (16"
            + " A breaker); the local code and a licensed electrician decide");
  }

  /** The hold that is told does it, for a core that was short of its soak. */
  @Test
  void tellsTheHoldThatACoreNeeds() {
    FiringSetup asking = informed(copper(), 1000).soak(hours(6)).build();
    FiringForecast forecast = FiringForecast.of(asking);
    Finding shortOf = CHECK.check(forecast).of(ConductionFinding.CORE_SOAK).get(0);
    assertThat(shortOf.severity()).isEqualTo(WARNING);
    assertThat(shortOf.message()).contains("asked are 6.00 h: with a hold of ");
    double hold = forecast.holdForSoak().orElseThrow().in(HOUR);
    FiringRoute longer =
        FiringRoute.of(
            debinding().build(),
            sintering(1000)
                .profile(
                    Profile.from(celsius(20))
                        .rampTo(celsius(600), kelvinPerHour(150))
                        .hold(minutes(30))
                        .rampTo(celsius(1000), kelvinPerHour(100))
                        .hold(hours(hold + 0.001))
                        .coolTo(celsius(500), kelvinPerHour(150))
                        .build())
                .getter(carbon(), grams(300))
                .build());
    FiringForecast again =
        FiringForecast.of(FiringSetup.builder().from(asking).route(longer).build());
    assertThat(CHECK.check(again).of(ConductionFinding.CORE_SOAK).get(0).severity())
        .isEqualTo(PASSED);
    // hardly more than needed: a wall that was hot for longer cools more slowly, by minutes
    assertThat(again.coreSoak().had().span().low().in(HOUR)).isBetween(6.0, 6.1);
    assertThat(again.hottest().course().peak().in(CELSIUS)).isCloseTo(1000, within(1e-9));
  }
}
