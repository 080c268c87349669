package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.thermal.Workbench.bronze;
import static dev.kilnledger.thermal.Workbench.carbon;
import static dev.kilnledger.thermal.Workbench.circuit;
import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.thermal.Workbench.crucible;
import static dev.kilnledger.thermal.Workbench.debinding;
import static dev.kilnledger.thermal.Workbench.everyFiring;
import static dev.kilnledger.thermal.Workbench.informed;
import static dev.kilnledger.thermal.Workbench.kiln;
import static dev.kilnledger.thermal.Workbench.mullite;
import static dev.kilnledger.thermal.Workbench.route;
import static dev.kilnledger.thermal.Workbench.setup;
import static dev.kilnledger.thermal.Workbench.silver;
import static dev.kilnledger.thermal.Workbench.sintering;
import static dev.kilnledger.thermal.Workbench.sinteringProfile;
import static dev.kilnledger.thermal.Workbench.stainless;
import static dev.kilnledger.thermal.Workbench.talc;
import static dev.kilnledger.thermal.Workbench.thawed;
import static dev.kilnledger.thermal.Workbench.titanium;
import static dev.kilnledger.thermal.Workbench.tungsten;
import static dev.kilnledger.units.Amounts.amperes;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kilowatts;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.minutes;
import static dev.kilnledger.units.Amounts.volts;
import static dev.kilnledger.units.TradeUnits.KELVIN_PER_HOUR;
import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.RoundCavity;
import dev.kilnledger.core.equipment.SupplyCircuit;
import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.FindingCode;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.CrucibleMaterial;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.thermal.atmosphere.AtmosphereFinding;
import dev.kilnledger.thermal.burnout.BurnOutFinding;
import dev.kilnledger.thermal.conduction.ConductionFinding;
import dev.kilnledger.thermal.densification.DensificationFinding;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.kiln.KilnFinding;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.HeatingRate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class FiringCheckTest {
  private static final FiringCheck CHECK = FiringCheck.standard();

  /** The rules that answer with the codes asked for here: one alone is quicker than the check. */
  private static final Map<FindingCode, FiringRule> RULES =
      Map.ofEntries(
          entry(FiringFinding.PEAK_IN_SINTERING_WINDOW, new PeakInSinteringWindow()),
          entry(DensificationFinding.FELT_BELOW_SOLIDUS, new MetalStaysSolid()),
          entry(BurnOutFinding.BINDER_REMAINING, new BinderGone()),
          entry(FiringFinding.DEBINDING_RATE, new DebindingRate()),
          entry(FiringFinding.BINDER_FUMES, new BinderFumes()),
          entry(FiringFinding.KILN_REACHES_PEAK, new KilnReachesPeak()),
          entry(FiringFinding.KILN_HOLDS_PEAK, new KilnHoldsPeak()),
          entry(FiringFinding.KILN_SEGMENTS, new KilnSegments()),
          entry(FiringFinding.KILN_HEATING_RATE, new KilnHeatingRate()),
          entry(FiringFinding.CRUCIBLE_TEMPERATURE, new CrucibleTemperature()),
          entry(FiringFinding.CHARGE_VOLUME, new ChargeVolume()),
          entry(FiringFinding.PACKING_TEMPERATURE, new PackingTemperature()),
          entry(FiringFinding.PACKING_USE, new PackingUse()),
          entry(FiringFinding.CARBON_SUITS_ALLOY, new CarbonSuitsAlloy()),
          entry(AtmosphereFinding.CARBON_KEEPS_BRIGHT, new CarbonKeepsBright()),
          entry(AtmosphereFinding.CARBON_PICK_UP, new MetalTakesUp()),
          entry(FiringFinding.GETTER_LAID_IN, new GetterLaidIn()),
          entry(AtmosphereFinding.CARBON_LASTS, new CarbonLasts()),
          entry(FiringFinding.UNPROTECTED_INTERVAL, new UnprotectedInterval()),
          entry(FiringFinding.SUPPLY_CURRENT, new SupplyCurrent()),
          entry(FiringFinding.SUPPLY_VOLTAGE, new SupplyVoltage()));

  /** What is asked rule by rule below is asked by the standard check. */
  @Test
  void asksByEveryRule() {
    Set<FindingCode> codes = new HashSet<>();
    for (FiringSetup firing :
        List.of(setup(copper(), 1000).build(), informed(copper(), 1000).build())) {
      CHECK.check(firing).findings().forEach(finding -> codes.add(finding.code()));
    }
    assertThat(codes).containsAll(RULES.keySet());
  }

  private static FiringReport report(FindingCode code, FiringSetup.Builder setup) {
    return new FiringCheck(List.of(RULES.get(code))).check(setup.build());
  }

  private static Finding finding(FindingCode code, FiringSetup.Builder setup) {
    List<Finding> findings = report(code, setup).of(code);
    assertThat(findings).isNotEmpty();
    return findings.get(findings.size() - 1);
  }

  private static void answers(
      Severity severity, FindingCode code, FiringSetup.Builder setup, String message) {
    Finding finding = finding(code, setup);
    assertThat(finding.message()).isEqualTo(message);
    assertThat(finding.severity()).isEqualTo(severity);
  }

  private static Kiln.Builder ordinaryKiln() {
    return kiln(1300);
  }

  @Test
  void passesAFiringThatCanComeOutAndStillAnswersEveryRule() {
    FiringReport report = CHECK.check(setup(copper(), 1000).build());
    assertThat(report.worst()).isEqualTo(UNDETERMINED);
    assertThat(report.atLeast(UNDETERMINED))
        .as("what only the user can know, and has not said")
        .extracting(Finding::code)
        .containsExactly(
            BurnOutFinding.BINDER_REMAINING,
            KilnFinding.SENSOR_TOLERANCE,
            AtmosphereFinding.CARBON_LASTS,
            AtmosphereFinding.ROOM_CONCENTRATION);
    assertThat(report.findings())
        .extracting(Finding::code)
        .contains(FiringFinding.values())
        .contains(
            DensificationFinding.FELT_BELOW_SOLIDUS,
            DensificationFinding.OVER_FIRED,
            DensificationFinding.DENSITY_TARGET,
            ConductionFinding.CORE_LAG,
            ConductionFinding.CORE_SOAK,
            KilnFinding.REACHES_PEAK,
            KilnFinding.FOLLOWS_PROGRAMME,
            AtmosphereFinding.CARBON_KEEPS_BRIGHT,
            AtmosphereFinding.CARBON_TOO_SLOW,
            AtmosphereFinding.NITROGEN,
            AtmosphereFinding.CARBON_PICK_UP);
    assertThat(report.of(FiringFinding.PACKING_TEMPERATURE)).hasSize(2);
    assertThat(report.cautions()).containsExactlyInAnyOrderElementsOf(everyFiring());
    assertThat(FiringFinding.values())
        .extracting(FiringFinding::code)
        .doesNotHaveDuplicates()
        .allSatisfy(code -> assertThat(code).matches("[a-z]+(-[a-z]+)*"));
  }

  @Test
  void addsTheCautionsOfTheMetal() {
    assertThat(new FiringCheck(List.of()).check(setup(stainless(), 1250).build()).cautions())
        .containsAll(everyFiring())
        .contains(Caution.NICKEL_CHROMIUM);
  }

  @Test
  void asksAUsersOwnRuleLast() {
    FindingCode code = () -> "own-rule";
    FiringRule own =
        forecast ->
            List.of(
                Finding.builder()
                    .code(code)
                    .severity(WARNING)
                    .subject(forecast.setup().kiln().name())
                    .message("not on Sundays")
                    .basis(Source.user("house rule"))
                    .build());
    List<Finding> findings = CHECK.with(own).check(setup(copper(), 1000).build()).findings();
    assertThat(findings.get(findings.size() - 1).code()).isEqualTo(code);
    assertThat(CHECK.check(setup(copper(), 1000).build()).of(code)).isEmpty();
    assertThat(new FiringCheck(List.of()).check(setup(copper(), 1000).build()).worst())
        .isEqualTo(PASSED);
  }

  /** Pure copper melts at 1084.62 °C (ITS-90). Bronze is meant to melt in part in its window. */
  @Test
  void holdsTheHottestPlaceAgainstTheSolidus() {
    DensificationFinding code = DensificationFinding.FELT_BELOW_SOLIDUS;
    answers(
        PASSED,
        code,
        setup(copper(), 1000),
        "the part gets as hot as 1000 °C and its solidus is 1085 °C: it stays solid");
    answers(
        STOP,
        code,
        setup(copper(), 1090),
        "the part gets as hot as 1090 °C and its solidus is 1085 °C: it melts");
    answers(
        WARNING,
        code,
        setup(copper(), 1075),
        "the part gets as hot as 1075 °C and its solidus is 1085 °C: an error of thermocouple or"
            + " kiln may melt it");
    answers(
        WARNING,
        code,
        setup(bronze(), 860),
        "the part gets as hot as 860 °C and its solidus is 845 °C: part of it melts, as is meant"
            + " there, and a curve for the solid no longer holds");
    assertThat(finding(FiringFinding.PEAK_IN_SINTERING_WINDOW, setup(bronze(), 871)).severity())
        .isEqualTo(STOP);
  }

  @Test
  void holdsThePeakAgainstTheSinteringWindow() {
    FiringFinding code = FiringFinding.PEAK_IN_SINTERING_WINDOW;
    answers(
        PASSED,
        code,
        setup(copper(), 950),
        "the peak of 950 °C and the sintering window of 950 to 1050 °C agree");
    answers(
        STOP,
        code,
        setup(copper(), 900),
        "the peak of 900 °C and the sintering window of 950 to 1050 °C: copper will not sinter");
    answers(
        WARNING,
        code,
        setup(copper(), 1060),
        "the peak of 1060 °C and the sintering window of 950 to 1050 °C: over-fired, the grain"
            + " coarsens and the part slumps");
    assertThat(finding(code, setup(copper(), 1090)).severity()).isEqualTo(STOP);
  }

  private static FiringRoute debindingAt(Amount<HeatingRate> rate, double peakCelsius) {
    Profile profile = Profile.from(celsius(20)).rampTo(celsius(peakCelsius), rate).build();
    return FiringRoute.of(
        debinding().profile(profile).build(), sintering(1000).getter(carbon(), grams(300)).build());
  }

  @Test
  void holdsTheHeatingAgainstTheWall() {
    FiringFinding code = FiringFinding.DEBINDING_RATE;
    answers(
        PASSED,
        code,
        setup(copper(), 1000),
        "heated at up to 30.0 K/h between 250 °C and 400 °C, where 60.0 K/h is allowed for a"
            + " section of 3.0 mm");
    answers(
        WARNING,
        code,
        setup(copper(), 1000).thickestSection(millimetres(6)),
        "heated at up to 30.0 K/h between 250 °C and 400 °C, where 15.0 K/h is allowed for a"
            + " section of 6.0 mm: polylactide may blister or crack the part");
    FiringSetup.Builder thick =
        setup(copper(), 1000)
            .thickestSection(millimetres(12))
            .route(debindingAt(kelvinPerHour(60), 420));
    answers(
        STOP,
        code,
        thick,
        "heated at up to 60.0 K/h between 250 °C and 400 °C, where 5.0 K/h is allowed for a section"
            + " of 12.0 mm: polylactide may blister or crack the part");
    answers(
        UNDETERMINED,
        code,
        thick.route(debindingAt(kelvinPerHour(5), 420)),
        "heated at up to 5.0 K/h between 250 °C and 400 °C, where 5.0 K/h is allowed for a section"
            + " of 12.0 mm at the least: the rule does not reach so thick, fire a test piece");
  }

  @Test
  void allowsAQuarterOfTheRateForTwiceTheWall() {
    for (double wall = 3; wall < 5; wall += 0.25) {
      Amount<HeatingRate> allowed = allowedFor(wall);
      assertThat(allowedFor(2 * wall).in(KELVIN_PER_HOUR))
          .as("scaling with the square of the section, as issue and reference state")
          .isCloseTo(allowed.in(KELVIN_PER_HOUR) / 4, within(1e-9));
      FiringSetup.Builder justAllowed =
          setup(copper(), 1000).thickestSection(millimetres(wall)).route(debindingAt(allowed, 420));
      assertThat(finding(FiringFinding.DEBINDING_RATE, justAllowed).severity()).isEqualTo(PASSED);
    }
    assertThat(allowedFor(1).in(KELVIN_PER_HOUR)).isEqualTo(60);
  }

  @SuppressWarnings("unchecked") // the limit of this finding is a heating rate
  private static Amount<HeatingRate> allowedFor(double wall) {
    FiringSetup.Builder setup = setup(copper(), 1000).thickestSection(millimetres(wall));
    return (Amount<HeatingRate>) finding(FiringFinding.DEBINDING_RATE, setup).limit().orElseThrow();
  }

  @Test
  void looksAtTheSinteringStageWhereDebindingStoppedShort() {
    FiringSetup.Builder tooCool = setup(copper(), 1000).route(debindingAt(kelvinPerHour(30), 350));
    answers(
        WARNING,
        FiringFinding.DEBINDING_RATE,
        tooCool,
        "heated at up to 150.0 K/h between 250 °C and 400 °C, where 60.0 K/h is allowed for a"
            + " section of 3.0 mm: polylactide may blister or crack the part");
    // the core is cooler than the kiln by some 20 K at 30 K/h
    Finding left = finding(BurnOutFinding.BINDER_REMAINING, tooCool);
    assertThat(left.severity()).isEqualTo(WARNING);
    assertThat(left.message())
        .startsWith("in debinding the core reaches 33")
        .endsWith(
            "polylactide leaves between 250 °C and 400 °C: some of it stays and leaves in the heat"
                + " of sintering");
    assertThat(
            finding(
                    BurnOutFinding.BINDER_REMAINING,
                    setup(copper(), 1000).route(debindingAt(kelvinPerHour(30), 240)))
                .message())
        .endsWith(": none of it leaves");
    answers(
        UNDETERMINED,
        BurnOutFinding.BINDER_REMAINING,
        setup(copper(), 1000),
        "in debinding the core reaches 420 °C and polylactide leaves between 250 °C and 400 °C, but"
            + " how long that takes is not known: no kinetics of your feedstock are given");
  }

  /** By hand: 10 cm³ of 8.9 g/cm³ and 1.24 g/cm³ at 90 % by mass are 55.2 g with 5.5 g binder. */
  @Test
  void namesWhatTheBinderGivesOff() {
    answers(
        NOTE,
        FiringFinding.BINDER_FUMES,
        setup(copper(), 1000),
        "polylactide gives off as it leaves: acetaldehyde, carbon monoxide; 5.5 g of binder in the"
            + " charge");
  }

  @Test
  void holdsTheKilnAgainstThePeak() {
    FiringFinding code = FiringFinding.KILN_REACHES_PEAK;
    answers(
        PASSED,
        code,
        setup(stainless(), 1250),
        "the kiln stops at 1300 °C and the profile asks 1250 °C: 50 K to spare");
    answers(
        NOTE,
        code,
        setup(stainless(), 1251),
        "the kiln stops at 1300 °C and the profile asks 1251 °C: 49 K to spare");
    answers(
        STOP,
        code,
        setup(stainless(), 1350),
        "the kiln stops at 1300 °C and the profile asks 1350 °C: 50 K short");
  }

  @Test
  void tellsWhereNoProgrammeCanDoItInThisKiln() {
    answers(
        STOP,
        FiringFinding.KILN_REACHES_PEAK,
        setup(stainless(), 1100).kiln(kiln(1100).build()),
        "the kiln stops at 1100 °C and 316L sinters from 1250 °C up: no programme can do it in this"
            + " kiln");
    answers(
        STOP,
        FiringFinding.PEAK_IN_SINTERING_WINDOW,
        setup(stainless(), 1100).kiln(kiln(1100).build()),
        "the peak of 1100 °C and the sintering window of 1250 to 1370 °C: 316L will not sinter");
    answers(
        STOP,
        FiringFinding.KILN_REACHES_PEAK,
        setup(tungsten(), 1300),
        "the kiln stops at 1300 °C and tungsten sinters from 1800 °C up: no programme can do it in"
            + " this kiln");
  }

  @Test
  void holdsTheKilnAgainstTheHold() {
    FiringFinding code = FiringFinding.KILN_HOLDS_PEAK;
    answers(
        PASSED,
        code,
        setup(copper(), 1000),
        "the profile holds 1000 °C for 3.00 h, far enough below the kiln's 1300 °C");
    Kiln brief = kiln(1040).longestHoldAtPeak(hours(2)).build();
    answers(
        WARNING,
        code,
        setup(copper(), 1000).kiln(brief),
        "the profile holds 1000 °C for 3.00 h, and the kiln may stay at 1040 °C for 2.00 h");
    Kiln atEase = kiln(1050).longestHoldAtPeak(hours(2)).build();
    assertThat(finding(code, setup(copper(), 1000).kiln(atEase)).severity()).isEqualTo(PASSED);
    assertThat(finding(code, setup(copper(), 1000).kiln(bareKiln().build())).severity())
        .isEqualTo(PASSED);
    answers(
        UNDETERMINED,
        code,
        setup(copper(), 1000)
            .kiln(bareKiln().peakTemperature(celsius(1040)).programmeSegments(8).build()),
        "the profile holds 1000 °C for 3.00 h, and how long the kiln may stay at its highest is not"
            + " stated");
  }

  /** A kiln of which only what must be is known. */
  private static Kiln.Builder bareKiln() {
    Kiln kiln = ordinaryKiln().build();
    return Kiln.builder()
        .name("bare")
        .peakTemperature(kiln.peakTemperature())
        .chamber(kiln.chamber())
        .power(kiln.power())
        .voltage(kiln.voltage())
        .phases(kiln.phases());
  }

  @Test
  void countsTheSegmentsOfEachStage() {
    FiringFinding code = FiringFinding.KILN_SEGMENTS;
    answers(
        PASSED,
        code,
        setup(copper(), 1000),
        "the sintering profile has 5 segments, 1 of them cooling at the end, and the kiln takes 8");
    answers(
        NOTE,
        code,
        setup(copper(), 1000).kiln(ordinaryKiln().programmeSegments(4).build()),
        "the sintering profile has 5 segments, 1 of them cooling at the end, and the kiln takes 4:"
            + " it cools by itself, as fast as it will");
    answers(
        STOP,
        code,
        setup(copper(), 1000).kiln(ordinaryKiln().programmeSegments(3).build()),
        "the sintering profile has 5 segments, 1 of them cooling at the end, and the kiln takes 3:"
            + " the programme does not fit");
    answers(
        STOP,
        code,
        setup(copper(), 1000).kiln(bareKiln().build()),
        "the sintering profile has 5 segments, 1 of them cooling at the end, and the kiln cannot be"
            + " programmed");
  }

  @Test
  void holdsTheHeatingAgainstTheKiln() {
    FiringFinding code = FiringFinding.KILN_HEATING_RATE;
    answers(
        PASSED,
        code,
        setup(copper(), 1000).kiln(ordinaryKiln().fastestHeating(kelvinPerHour(150)).build()),
        "the profiles heat at up to 150 K/h, and the kiln may do 150 K/h");
    answers(
        WARNING,
        code,
        setup(copper(), 1000).kiln(ordinaryKiln().fastestHeating(kelvinPerHour(120)).build()),
        "the profiles heat at up to 150 K/h, and the kiln may do 120 K/h");
    answers(
        UNDETERMINED,
        code,
        setup(copper(), 1000).kiln(bareKiln().build()),
        "the profiles heat at up to 150 K/h, and how fast the kiln may heat is not stated");
  }

  /** Limits: 304 in air 927 °C (SSINA, High temperature properties), mullite 1650 °C (memory). */
  @Test
  void holdsTheCrucibleAgainstThePeak() {
    FiringFinding code = FiringFinding.CRUCIBLE_TEMPERATURE;
    answers(
        PASSED,
        code,
        setup(stainless(), 1250),
        "mullite stands 1650 °C in air, and the peak is 1250 °C");
    answers(
        STOP,
        code,
        setup(stainless(), 1250).crucible(crucible("stainless steel 304", 927)),
        "stainless steel 304 stands 927 °C in air, and the peak is 1250 °C");
  }

  @Test
  void holdsThePackingAgainstItsStage() {
    FiringRoute talcOnly =
        FiringRoute.of(
            debinding().packing(talc()).build(),
            sintering(850).packing(talc()).getter(carbon(), grams(300)).build());
    FiringSetup.Builder setup = setup(bronze(), 850).route(talcOnly);
    List<Finding> hot =
        report(FiringFinding.PACKING_TEMPERATURE, setup).of(FiringFinding.PACKING_TEMPERATURE);
    assertThat(hot).extracting(Finding::severity).containsExactly(PASSED, STOP);
    assertThat(hot)
        .extracting(Finding::message)
        .containsExactly(
            "talc stands 800 °C and the debinding stage reaches 420 °C",
            "talc stands 800 °C and the sintering stage reaches 850 °C: gives off its water above");
    List<Finding> uses = report(FiringFinding.PACKING_USE, setup).of(FiringFinding.PACKING_USE);
    assertThat(uses).extracting(Finding::severity).containsExactly(PASSED, WARNING);
    assertThat(uses.get(1).message())
        .isEqualTo("talc is not meant for sintering, where the sintering stage has it");
    answers(
        PASSED,
        FiringFinding.PACKING_USE,
        setup(bronze(), 850),
        "alumina is meant for sintering, where the sintering stage has it");
  }

  @Test
  void tellsWhatCarbonDoesToTheMetal() {
    FiringFinding code = FiringFinding.CARBON_SUITS_ALLOY;
    answers(
        PASSED,
        code,
        setup(copper(), 1000),
        "carbon, which is laid in, protects copper: what carbon does to copper");
    answers(
        NOTE,
        code,
        setup(stainless(), 1250),
        "carbon, which is laid in, protects 316L only partly: what carbon does to 316L");
    answers(
        NOTE,
        code,
        setup(silver(), 900),
        "carbon, which is laid in, is not needed for silver: what carbon does to silver");
    answers(
        STOP,
        code,
        setup(titanium(), 1250),
        "carbon, which is laid in, is the wrong protection for titanium: what carbon does to"
            + " titanium");
    answers(
        WARNING,
        code,
        setup(titanium(), 1250).route(withoutCarbon(1250)),
        "carbon, which is not laid in, is the wrong protection for titanium: what carbon does to"
            + " titanium");
  }

  private static FiringRoute withoutCarbon(double peakCelsius) {
    return FiringRoute.of(debinding().build(), sintering(peakCelsius).build());
  }

  @Test
  void asksForAGetterWhereTheMetalNeedsOne() {
    FiringFinding code = FiringFinding.GETTER_LAID_IN;
    answers(
        PASSED, code, setup(copper(), 1000), "the sintering stage has 300 g of granular carbon");
    answers(
        WARNING,
        code,
        setup(copper(), 1000).route(withoutCarbon(1000)),
        "the sintering stage has no getter: without carbon or another protection copper oxidises");
    answers(
        PASSED,
        code,
        setup(silver(), 900).route(withoutCarbon(900)),
        "the sintering stage has no getter, and none is wanted");
  }

  /**
   * By hand, for the programme alone: above 200 °C for 220/30 + 2 h of debinding, 9.3 h; the core
   * is later, but then hotter than 200 °C until the end.
   */
  @Test
  void tellsHowLongTheMetalOxidisesWithoutCarbon() {
    FiringFinding code = FiringFinding.UNPROTECTED_INTERVAL;
    Finding debinding =
        finding(code, setup(copper(), 1000).kiln(ordinaryKiln().wall(List.of()).build()));
    assertThat(debinding.severity()).isEqualTo(NOTE);
    assertThat(debinding.measured().orElseThrow().si() / 3600).isBetween(7.5, 9.3);
    assertThat(debinding.message())
        .startsWith("copper oxidises in the ")
        .endsWith(
            " h above 200 °C of the debinding stage, which has no getter, its cooling after the"
                + " programme not counted; carbon takes the oxygen back in sintering");
    assertThat(finding(code, setup(copper(), 1000).route(withoutCarbon(1000))).severity())
        .isEqualTo(WARNING);
    assertThat(report(code, setup(titanium(), 1250)).of(code).get(0).message())
        .endsWith(", and nothing takes back all of that oxygen in sintering");
    answers(PASSED, code, setup(silver(), 900), "silver needs no protection from oxygen");
  }

  @Test
  void asksTheGasOverCarbonWhatItDoesToTheMetal() {
    assertThat(finding(AtmosphereFinding.CARBON_KEEPS_BRIGHT, setup(copper(), 1000)).severity())
        .isEqualTo(PASSED);
    assertThat(finding(AtmosphereFinding.CARBON_PICK_UP, setup(copper(), 1000)).severity())
        .isEqualTo(PASSED);
    assertThat(finding(AtmosphereFinding.CARBON_PICK_UP, setup(stainless(), 1250)).severity())
        .isEqualTo(NOTE);
    answers(
        PASSED,
        AtmosphereFinding.CARBON_PICK_UP,
        setup(stainless(), 1250).route(withoutCarbon(1250)),
        "no carbon is laid in");
    answers(
        PASSED,
        AtmosphereFinding.CARBON_LASTS,
        setup(silver(), 900),
        "sintering: silver needs no protection from oxygen, however long the carbon lasts");
  }

  /** 3 kW / 230 V = 13.043 A; 11 kW / (sqrt(3) 400 V) = 15.877 A, by hand. */
  @Test
  void holdsTheCurrentAgainstTheCircuit() {
    FiringFinding code = FiringFinding.SUPPLY_CURRENT;
    answers(
        PASSED,
        code,
        setup(copper(), 1000),
        "the kiln draws 13.0 A for hours, and the circuit north wall carries 16.0 A for so long"
            + " (20 A breaker); the local code and a licensed electrician decide");
    answers(
        STOP,
        code,
        setup(copper(), 1000).supplyCircuit(circuit(16)),
        "the kiln draws 13.0 A for hours, and the circuit north wall carries 12.8 A for so long"
            + " (16 A breaker); the local code and a licensed electrician decide");
    FiringSetup.Builder bare =
        FiringSetup.builder()
            .feedstock(setup(copper(), 1000).build().feedstock())
            .thickestSection(millimetres(3))
            .route(route(1000))
            .kiln(ordinaryKiln().power(kilowatts(11)).voltage(volts(400)).phases(3).build())
            .crucible(crucible("mullite", 1650));
    Finding undetermined = finding(code, bare);
    assertThat(undetermined.severity()).isEqualTo(UNDETERMINED);
    assertThat(undetermined.message())
        .isEqualTo("the kiln is rated at 15.9 A, and the circuit that feeds it is not stated");
    assertThat(undetermined.measured().orElseThrow().si()).isCloseTo(15.877, within(0.0005));
    assertThat(finding(FiringFinding.SUPPLY_VOLTAGE, bare).severity()).isEqualTo(UNDETERMINED);
  }

  @Test
  void holdsTheVoltageAgainstTheCircuit() {
    FiringFinding code = FiringFinding.SUPPLY_VOLTAGE;
    answers(
        PASSED,
        code,
        setup(copper(), 1000),
        "the kiln wants 230 V in one phase, and the circuit north wall has 230 V in one phase");
    answers(
        WARNING,
        code,
        setup(copper(), 1000).supplyCircuit(supply(120, 1)),
        "the kiln wants 230 V in one phase, and the circuit south wall has 120 V in one phase: the"
            + " power falls with the square of the voltage");
    answers(
        STOP,
        code,
        setup(copper(), 1000).supplyCircuit(supply(400, 1)),
        "the kiln wants 230 V in one phase, and the circuit south wall has 400 V in one phase: the"
            + " elements are overloaded");
    answers(
        NOTE,
        code,
        setup(copper(), 1000).supplyCircuit(supply(400, 3)),
        "the kiln wants 230 V in one phase, and the circuit south wall has 400 V in three phases:"
            + " it takes one phase and the neutral, if there is one");
    Kiln three = ordinaryKiln().voltage(volts(400)).phases(3).build();
    answers(
        PASSED,
        code,
        setup(copper(), 1000).kiln(three).supplyCircuit(supply(400, 3)),
        "the kiln wants 400 V in three phases, and the circuit south wall has 400 V in three"
            + " phases");
    answers(
        STOP,
        code,
        setup(copper(), 1000).kiln(three),
        "the kiln wants 400 V in three phases, and the circuit north wall has 230 V in one phase:"
            + " the kiln cannot be connected");
  }

  private static SupplyCircuit supply(double voltage, int phases) {
    return SupplyCircuit.builder()
        .name("south wall")
        .voltage(volts(voltage))
        .phases(phases)
        .breakerRating(amperes(20))
        .build();
  }

  @Test
  void answersTheSameWhereverTheProfileIsCut() {
    Profile whole = sinteringProfile(1000);
    Profile cut =
        Profile.from(celsius(20))
            .rampTo(celsius(333), kelvinPerHour(150))
            .rampTo(celsius(600), kelvinPerHour(150))
            .hold(minutes(30))
            .rampTo(celsius(1000), kelvinPerHour(100))
            .hold(hours(1.3))
            .hold(hours(1.7))
            .coolTo(celsius(500), kelvinPerHour(150))
            .build();
    assertThat(severities(cut)).isEqualTo(severities(whole));
  }

  private static List<Severity> severities(Profile profile) {
    FiringStage stage = sintering(1000).profile(profile).getter(carbon(), grams(300)).build();
    FiringSetup setup =
        setup(copper(), 1000).route(FiringRoute.of(debinding().build(), stage)).build();
    return CHECK.check(setup).findings().stream().map(Finding::severity).toList();
  }

  @Test
  void refusesASectionOfNothing() {
    assertThatThrownBy(() -> setup(copper(), 1000).thickestSection(millimetres(0)).build())
        .hasMessage("firing setup: thickest section is 0 mm; accepted is more than zero");
  }

  @Test
  void comesBackFromSerialization() throws Exception {
    FiringSetup setup = setup(stainless(), 1250).build();
    assertThat(thawed(setup)).isEqualTo(setup);
    FiringReport report = CHECK.check(setup);
    assertThat(thawed(report)).isEqualTo(report);
  }

  /** 304: 870 °C heated and cooled often, 927 °C steadily (from memory; SSINA). */
  @Test
  void warnsAboveWhatACrucibleStandsAgainAndAgain() {
    CrucibleMaterial steel =
        CrucibleMaterial.builder()
            .from(crucible("stainless steel 304", 927).material())
            .cyclicLimit(Sourced.of(celsius(870), Source.fromMemory("ASM")))
            .remark("scales above 900 °C")
            .build();
    Crucible crucible = Crucible.builder().from(mullite()).material(steel).build();
    answers(
        WARNING,
        FiringFinding.CRUCIBLE_TEMPERATURE,
        setup(copper(), 900).crucible(crucible),
        "stainless steel 304 stands 927 °C in air, 870 °C when fired again and again, and the peak"
            + " is 900 °C; scales above 900 °C");
    assertThat(
            finding(FiringFinding.CRUCIBLE_TEMPERATURE, setup(copper(), 860).crucible(crucible))
                .severity())
        .isEqualTo(NOTE);
  }

  /** A resistor of 3 kW at 230 V draws 13.0 A there and 13.6 A at 240 V (Ohm's law, by hand). */
  @Test
  void drawsMoreOnACircuitOfHigherVoltage() {
    Finding finding =
        finding(FiringFinding.SUPPLY_CURRENT, setup(copper(), 1000).supplyCircuit(supply(240, 1)));
    assertThat(finding.measured().orElseThrow().si())
        .isCloseTo(3000 / 230.0 * 240 / 230, within(1e-9));
  }

  /** By hand: 1500 g at 1.5 to 0.8 g/cm3 is 1000 to 1875 cm3, 300 g at 0.5 to 0.4 600 to 750. */
  @Test
  void holdsThePackingAgainstTheCrucible() {
    FiringFinding code = FiringFinding.CHARGE_VOLUME;
    answers(
        PASSED,
        code,
        setup(copper(), 1000),
        "the charge of the sintering stage takes 1610 to 2635 cm³, by how densely the powder packs,"
            + " and the crucible holds 2815 cm³");
    Crucible low =
        Crucible.builder()
            .from(mullite())
            .cavity(RoundCavity.of(millimetres(160), millimetres(100)))
            .build();
    answers(
        UNDETERMINED,
        code,
        setup(copper(), 1000).crucible(low),
        "the charge of the sintering stage takes 1610 to 2635 cm³, by how densely the powder packs,"
            + " and the crucible holds 2011 cm³: state or weigh how much powder fills it");
    Crucible small =
        Crucible.builder()
            .from(mullite())
            .cavity(RoundCavity.of(millimetres(100), millimetres(120)))
            .build();
    assertThat(finding(code, setup(copper(), 1000).crucible(small)).severity()).isEqualTo(STOP);
  }
}
