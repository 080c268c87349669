package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.thermal.Workbench.informed;
import static dev.kilnledger.thermal.Workbench.kiln;
import static dev.kilnledger.thermal.Workbench.setup;
import static dev.kilnledger.thermal.Workbench.sintering;
import static dev.kilnledger.thermal.Workbench.stainless;
import static dev.kilnledger.thermal.check.Rules.all;
import static dev.kilnledger.thermal.check.Rules.assertTold;
import static dev.kilnledger.thermal.check.Rules.first;
import static dev.kilnledger.units.Amounts.amperes;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.ratio;
import static dev.kilnledger.units.Amounts.volts;
import static dev.kilnledger.units.Amounts.watts;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.SupplyCircuit;
import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.Workbench;
import dev.kilnledger.thermal.energy.EnergyFinding;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.kiln.KilnFinding;
import dev.kilnledger.thermal.kiln.Thermocouple;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.Profile;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rules of kiln, thermocouple and supply: what they measure, their limits and boundaries. */
class KilnRulesTest {
  private static final Source MAKER = Source.user("the kiln's maker, as entered with the kiln");

  private static FiringSetup.Builder firedIn(Kiln.Builder kiln) {
    return setup(copper(), 1000).kiln(kiln.build());
  }

  private static FiringSetup.Builder debindingBy(Profile profile) {
    return setup(copper(), 1000)
        .route(
            FiringRoute.of(
                Workbench.debinding().profile(profile).build(), sintering(1000).build()));
  }

  @Test
  void hasFiftyKelvinToSpareOrTellsHowMany() {
    FiringRule rule = new KilnReachesPeak();
    Finding none = first(rule, firedIn(kiln(1000)));
    assertTold(none, NOTE, "the kiln stops at 1000 °C and the profile asks 1000 °C: 0 K to spare");
    assertThat(none.code()).isEqualTo(FiringFinding.KILN_REACHES_PEAK);
    assertThat(none.subject()).isEqualTo("front loader");
    assertThat(none.basis())
        .isEqualTo(
            Source.commonPractice(
                "an electric kiln lasts with 50 K or more to spare below its rating"));
    assertThat(first(rule, firedIn(kiln(1049))).severity()).isEqualTo(NOTE);
    Finding enough = first(rule, firedIn(kiln(1050)));
    assertTold(
        enough, PASSED, "the kiln stops at 1050 °C and the profile asks 1000 °C: 50 K to spare");
    assertThat(enough.measured()).contains(celsius(1050));
    assertThat(enough.limit()).contains(celsius(1000));
    assertTold(
        first(rule, firedIn(kiln(999))),
        STOP,
        "the kiln stops at 999 °C and the profile asks 1000 °C: 1 K short");
  }

  /** The window of the steel begins at 1250 °C. */
  @Test
  void reachesTheWindowWhereItStopsAtItsBeginning() {
    FiringRule rule = new KilnReachesPeak();
    Finding just = first(rule, setup(stainless(), 1250).kiln(kiln(1250).build()));
    assertThat(just.severity()).isEqualTo(NOTE);
    Finding never = first(rule, setup(stainless(), 1250).kiln(kiln(1249).build()));
    assertThat(never.severity()).isEqualTo(STOP);
    assertThat(never.message()).endsWith("no programme can do it in this kiln");
    assertThat(never.measured()).contains(celsius(1249));
    assertThat(never.limit()).contains(celsius(1250));
  }

  @Test
  void holdsThePeakAsLongAsTheMakerSays() {
    FiringRule rule = new KilnHoldsPeak();
    Finding just = first(rule, firedIn(kiln(1040).longestHoldAtPeak(hours(3))));
    assertTold(
        just,
        PASSED,
        "the profile holds 1000 °C for 3.00 h, and the kiln may stay at 1040 °C for 3.00 h");
    assertThat(just.subject()).isEqualTo("front loader");
    assertThat(just.measured()).contains(hours(3));
    assertThat(just.limit()).contains(hours(3));
    assertThat(just.basis()).isEqualTo(MAKER);
    assertThat(first(rule, firedIn(kiln(1040).longestHoldAtPeak(hours(2.99)))).severity())
        .isEqualTo(WARNING);
    assertThat(first(rule, firedIn(kiln(1049).longestHoldAtPeak(hours(1)))).severity())
        .isEqualTo(WARNING);
    Finding atEase = first(rule, firedIn(kiln(1050).longestHoldAtPeak(hours(1))));
    assertTold(
        atEase,
        PASSED,
        "the profile holds 1000 °C for 3.00 h, far enough below the kiln's 1050 °C");
    assertThat(atEase.limit()).isEmpty();
    Finding open = first(rule, firedIn(kiln(1040).longestHoldAtPeak(Optional.empty())));
    assertThat(open.severity()).isEqualTo(UNDETERMINED);
    assertThat(open.limit()).isEmpty();
  }

  @Test
  void takesAProgrammeOfJustAsManySegments() {
    FiringRule rule = new KilnSegments();
    List<Finding> just = all(rule, firedIn(kiln(1300).programmeSegments(5)));
    assertThat(just).hasSize(2);
    assertTold(
        just.get(0),
        PASSED,
        "the debinding profile has 3 segments, 0 of them cooling at the end, and the kiln takes 5");
    assertTold(
        just.get(1),
        PASSED,
        "the sintering profile has 5 segments, 1 of them cooling at the end, and the kiln takes 5");
    assertThat(just.get(1).subject()).isEqualTo("front loader");
    assertThat(just.get(1).measured()).contains(ratio(5));
    assertThat(just.get(1).limit()).contains(ratio(5));
    assertThat(just.get(1).basis()).isEqualTo(MAKER);
  }

  @Test
  void heatsAsFastAsTheFastestOfItsSegments() {
    FiringRule rule = new KilnHeatingRate();
    Profile quick = Profile.from(celsius(20)).rampTo(celsius(420), kelvinPerHour(200)).build();
    Finding first = first(rule, debindingBy(quick));
    assertTold(first, PASSED, "the profiles heat at up to 200 K/h, and the kiln may do 300 K/h");
    assertThat(first.measured().orElseThrow().si() * 3600).isCloseTo(200, within(1e-9));
    assertThat(first.limit()).contains(kelvinPerHour(300));
    assertThat(first.subject()).isEqualTo("front loader");
    assertThat(first.basis()).isEqualTo(MAKER);
    Finding open = first(rule, firedIn(kiln(1300).fastestHeating(Optional.empty())));
    assertTold(
        open,
        UNDETERMINED,
        "the profiles heat at up to 150 K/h, and how fast the kiln may heat is not stated");
    assertThat(open.limit()).isEmpty();
  }

  @Test
  void heatsNotAtAllInAProgrammeOfHolds() {
    FiringRoute holds =
        FiringRoute.of(
            Workbench.debinding()
                .profile(Profile.from(celsius(400)).hold(hours(2)).build())
                .build(),
            sintering(1000).profile(Profile.from(celsius(1000)).hold(hours(2)).build()).build());
    assertTold(
        first(new KilnHeatingRate(), setup(copper(), 1000).route(holds)),
        PASSED,
        "the profiles heat at up to 0 K/h, and the kiln may do 300 K/h");
  }

  @Test
  void isTakenToFollowWhereItsWallIsNotKnown() {
    List<Finding> open = all(new KilnFollows(), firedIn(kiln(1300).wall(List.of())));
    assertThat(open).hasSize(2);
    assertTold(
        open.get(1),
        UNDETERMINED,
        "sintering: the layers of the kiln's wall are not known, so it is taken to follow the"
            + " programme, and nothing is known of its cooling");
    assertThat(open.get(1).code()).isEqualTo(KilnFinding.FOLLOWS_PROGRAMME);
    assertThat(open.get(1).subject()).isEqualTo("front loader");
    assertThat(open.get(1).basis())
        .isEqualTo(Source.user("the layers of the kiln's wall, as entered with the kiln"));
  }

  /** The power that is drawn is a matter of the energy, not of the programme. */
  @Test
  void tellsOfItsRunWhatConcernsTheProgramme() {
    List<Finding> findings = all(new KilnFollows(), setup(copper(), 1000));
    assertThat(findings)
        .extracting(Finding::code)
        .doesNotContain(EnergyFinding.POWER_WITHIN_RATING)
        .contains(KilnFinding.FOLLOWS_PROGRAMME, KilnFinding.REACHES_PEAK, KilnFinding.OPENING);
    assertThat(findings.get(0).message()).startsWith("debinding: ");
    assertThat(findings.get(findings.size() - 1).message()).startsWith("sintering: ");
  }

  /** IEC 60584-1:2013, class 2: type S to 1.5 K or 0.25 % of the reading, 2.5 K at 1000 °C. */
  @Test
  void readsTheTemperatureAsItsThermocoupleDoes() {
    Finding known = first(new SensorTolerance(), informed(copper(), 1000));
    assertThat(known.severity()).isEqualTo(PASSED);
    assertThat(known.message()).contains("2.5 K");
    assertThat(known).isEqualTo(Thermocouple.S.finding(celsius(1000)));
    Finding open = first(new SensorTolerance(), setup(copper(), 1000));
    assertThat(open.severity()).isEqualTo(UNDETERMINED);
    assertThat(open.code()).isEqualTo(KilnFinding.SENSOR_TOLERANCE);
    assertThat(open.subject()).isEqualTo("front loader");
    assertThat(open.basis()).isEqualTo(Source.user("the thermocouple, as entered with the kiln"));
  }

  /** 3.68 kW at 230 V are 16 A, as much as a breaker of 20 A carries for hours. */
  @Test
  void drawsJustWhatItsCircuitCarries() {
    FiringRule rule = new SupplyCurrent();
    Finding just = first(rule, firedIn(kiln(1300).power(watts(3680))));
    assertThat(just.severity()).isEqualTo(PASSED);
    assertThat(just.measured().orElseThrow().si()).isCloseTo(16, within(1e-9));
    assertThat(just.limit().orElseThrow().si()).isCloseTo(16, within(1e-9));
    assertThat(just.subject()).isEqualTo("front loader");
    assertThat(just.basis()).isEqualTo(Caution.ELECTRICAL_LOAD.source());
    assertThat(first(rule, firedIn(kiln(1300).power(watts(3690)))).severity()).isEqualTo(STOP);
  }

  @Test
  void drawsAnUnknownShareOfACircuitThatIsNotStated() {
    FiringSetup.Builder open = setup(copper(), 1000).supplyCircuit(Optional.empty());
    Finding current = first(new SupplyCurrent(), open);
    assertTold(
        current,
        UNDETERMINED,
        "the kiln is rated at 13.0 A, and the circuit that feeds it is not stated");
    assertThat(current.measured().orElseThrow().si()).isCloseTo(3000 / 230.0, within(1e-9));
    assertThat(current.limit()).isEmpty();
    Finding voltage = first(new SupplyVoltage(), open);
    assertTold(
        voltage,
        UNDETERMINED,
        "the kiln wants 230 V in one phase, and the circuit that feeds it is not stated");
    assertThat(voltage.measured()).isEmpty();
    assertThat(voltage.limit()).contains(volts(230));
    assertThat(
            first(new SupplyVoltage(), open.kiln(kiln(1300).voltage(volts(400)).phases(3).build()))
                .message())
        .startsWith("the kiln wants 400 V in three phases, and ");
  }

  /** Between a phase and the neutral there are 400 V / sqrt(3) = 230.94 V, or 230 V / sqrt(3). */
  @ParameterizedTest
  @CsvSource({
    "230, 1, 230, 1, 230.000, PASSED",
    "230, 1, 400, 3, 230.940, NOTE",
    "230, 1, 230, 3, 132.791, WARNING",
    "230, 1, 480, 3, 277.128, STOP",
    "400, 3, 400, 3, 400.000, PASSED",
    "400, 3, 230, 3, 230.000, WARNING",
    "230, 3, 400, 3, 400.000, STOP",
    "400, 3, 400, 1, 400.000, STOP"
  })
  void hangsOnThePhasesOfItsCircuit(
      double wanted,
      int phases,
      double given,
      int circuitPhases,
      double measured,
      String severity) {
    SupplyCircuit circuit =
        SupplyCircuit.builder()
            .name("south wall")
            .voltage(volts(given))
            .phases(circuitPhases)
            .breakerRating(amperes(20))
            .build();
    Finding voltage =
        first(
            new SupplyVoltage(),
            firedIn(kiln(1300).voltage(volts(wanted)).phases(phases)).supplyCircuit(circuit));
    assertThat(voltage.severity().name()).isEqualTo(severity);
    assertThat(voltage.measured().orElseThrow().si()).isCloseTo(measured, within(0.0005));
    assertThat(voltage.limit()).contains(volts(wanted));
    assertThat(voltage.subject()).isEqualTo("front loader");
    assertThat(voltage.basis())
        .isEqualTo(Source.fromMemory("EN 50160: supply voltage within 10 % of the nominal one"));
  }
}
