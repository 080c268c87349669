package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.thermal.Workbench.carbon;
import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.thermal.Workbench.crucible;
import static dev.kilnledger.thermal.Workbench.debinding;
import static dev.kilnledger.thermal.Workbench.feedstock;
import static dev.kilnledger.thermal.Workbench.informed;
import static dev.kilnledger.thermal.Workbench.kinetics;
import static dev.kilnledger.thermal.Workbench.mullite;
import static dev.kilnledger.thermal.Workbench.setup;
import static dev.kilnledger.thermal.Workbench.sintering;
import static dev.kilnledger.thermal.Workbench.stainless;
import static dev.kilnledger.thermal.Workbench.wallLimit;
import static dev.kilnledger.thermal.check.Rules.all;
import static dev.kilnledger.thermal.check.Rules.first;
import static dev.kilnledger.units.Amounts.amperes;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.cubicMetres;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvin;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.kilojoulesPerMole;
import static dev.kilnledger.units.Amounts.massFraction;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.volts;
import static dev.kilnledger.units.Amounts.wattsPerMetreKelvin;
import static dev.kilnledger.units.TradeUnits.GRAM;
import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.RoundCavity;
import dev.kilnledger.core.equipment.SupplyCircuit;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.Binder;
import dev.kilnledger.core.material.CrucibleMaterial;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.atmosphere.AtmosphereFinding;
import dev.kilnledger.thermal.atmosphere.RoomAir;
import dev.kilnledger.thermal.burnout.BinderKinetics;
import dev.kilnledger.thermal.burnout.BurnOutFinding;
import dev.kilnledger.thermal.burnout.DecompositionStep;
import dev.kilnledger.thermal.burnout.ReactionOrder;
import dev.kilnledger.thermal.conduction.ConductionFinding;
import dev.kilnledger.thermal.conduction.PropertyCurve;
import dev.kilnledger.thermal.firing.CoreSoak;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.kinetics.Frequencies;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.quantity.ThermalConductivity;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What single rules answer where the user knows more, or less, than usual. */
class SingleRulesTest {
  private static Feedstock with(Binder.Builder binder) {
    return Feedstock.builder().from(feedstock(copper())).binder(binder.build()).build();
  }

  private static Binder.Builder polylactide() {
    return Binder.builder().from(feedstock(copper()).binder());
  }

  private static FiringRoute debindingTo(double celsius) {
    Profile profile = Profile.from(celsius(20)).rampTo(celsius(celsius), kelvinPerHour(30)).build();
    return FiringRoute.of(
        debinding().profile(profile).build(), sintering(1000).getter(carbon(), grams(300)).build());
  }

  @Test
  void namesNoFumesThatAreNotStated() {
    Finding unknown =
        first(
            new BinderFumes(),
            setup(copper(), 1000).feedstock(with(polylactide().hazardousProducts(List.of()))));
    assertThat(unknown.severity()).isEqualTo(UNDETERMINED);
    assertThat(unknown.message())
        .isEqualTo(
            "what polylactide gives off as it leaves is not stated: see the safety data sheet");
    assertThat(
            first(new BinderFumes(), setup(copper(), 1000).partsVolume(Optional.empty())).message())
        .isEqualTo("polylactide gives off as it leaves: acetaldehyde, carbon monoxide");
  }

  /** 150 kJ/mol and 1e9 1/s lose 99 % up to 392 °C at 30 K/h, and half up to 351 °C. */
  @ParameterizedTest
  @CsvSource({"440, PASSED", "360, WARNING", "240, STOP"})
  void tellsWhatKineticsLeaveOfTheBinder(double celsius, Severity severity) {
    List<Finding> findings =
        all(new BinderGone(), informed(copper(), 1000).route(debindingTo(celsius)));
    Finding left = findings.get(0);
    assertThat(left.severity()).isEqualTo(severity);
    assertThat(left.limit()).contains(massFraction(0.01));
    assertThat(left.message())
        .matches("[0-9]+\\.[0-9] % by mass of the binder is left after debinding.*")
        .endsWith(
            severity == PASSED
                ? "after debinding"
                : "after debinding: it leaves in the heat of sintering, or stays as carbon");
    assertThat(findings)
        .filteredOn(finding -> finding.code() == BurnOutFinding.BINDER_REMAINING)
        .as("said once")
        .hasSize(1);
    if (severity == PASSED) {
      assertThat(findings).as("kinetics observed where the binder leaves").hasSize(1);
    }
  }

  /** A hundred times as slow a reaction leaves much where the other leaves nothing. */
  @Test
  void tellsWhereKineticsDisagreeOrAreGuessed() {
    BinderKinetics slow =
        BinderKinetics.builder()
            .from(kinetics())
            .steps(
                List.of(
                    DecompositionStep.of(
                        kilojoulesPerMole(150), ReactionOrder.first(Frequencies.perSecond(1e7)))))
            .build();
    Finding open =
        first(new BinderGone(), informed(copper(), 1000).route(debindingTo(440)).addKinetics(slow));
    assertThat(open.severity()).isEqualTo(UNDETERMINED);
    assertThat(open.message())
        .startsWith("0.0 to ")
        .endsWith("or stays as carbon; the kinetics given do not agree");
    BinderKinetics narrow =
        BinderKinetics.builder()
            .from(kinetics())
            .range(Span.of(celsius(300), celsius(320)))
            .build();
    List<Finding> guessed =
        all(
            new BinderGone(),
            informed(copper(), 1000).route(debindingTo(440)).kinetics(List.of(narrow)));
    assertThat(guessed)
        .extracting(Finding::code)
        .containsExactly(BurnOutFinding.BINDER_REMAINING, BurnOutFinding.KINETICS_RANGE);
    assertThat(guessed.get(1).severity()).isEqualTo(UNDETERMINED);
  }

  /**
   * Fastest at about r E / (e R Tp2) = 51 %/h on 30 K/h; 60 %/h are allowed for 3 mm, a quarter for
   * 6 mm, a sixteenth for 12 mm: 0.85, 3.4 and 14 times as much.
   */
  @ParameterizedTest
  @CsvSource({"3, 60.0, PASSED", "6, 15.0, WARNING", "12, 3.75, STOP"})
  void holdsTheLossAgainstTheLimitOfTheWall(double wall, String allowed, Severity severity) {
    List<Finding> findings =
        all(
            new BinderLeavesSlowly(),
            informed(copper(), 1000).thickestSection(millimetres(wall)).route(debindingTo(440)));
    Finding loss = findings.get(0);
    assertThat(loss.code()).isEqualTo(BurnOutFinding.LOSS_RATE);
    assertThat(loss.severity()).isEqualTo(severity);
    assertThat(loss.message())
        .matches("binder leaves at 5[0-9]\\.[0-9] %/h where .*")
        .contains(" where " + allowed + " %/h is allowed for a wall of " + wall + " mm, at 3")
        .endsWith(
            " °C in segment 1 of the debinding stage"
                + (severity == PASSED ? "" : ": the part may blister or crack"));
    assertThat(findings.subList(1, findings.size()))
        .extracting(Finding::code)
        .containsExactly(
            BurnOutFinding.POWDER_BED, BurnOutFinding.LIMIT_RANGE, BurnOutFinding.KINETICS_RANGE);
  }

  /**
   * One reaction of 30 kJ/mol, fastest at 560 K, is as slow as it is wide: with it the 27 %/h of
   * 4.5 mm are kept, with the other, which gets to 50 %/h, they are not.
   */
  @Test
  void leavesOpenWhatKineticsDisagreeOn() {
    BinderKinetics gentle =
        BinderKinetics.builder()
            .from(kinetics())
            .steps(
                List.of(
                    DecompositionStep.ofPeak(
                        kilojoulesPerMole(30), kelvin(560), kelvinPerHour(30))))
            .build();
    Finding open =
        first(
            new BinderLeavesSlowly(),
            informed(copper(), 1000)
                .thickestSection(millimetres(4.5))
                .route(debindingTo(440))
                .addKinetics(gentle));
    assertThat(open.severity()).isEqualTo(UNDETERMINED);
    assertThat(open.message())
        .endsWith(", by the quickest of 2 kinetics: the part may blister or crack");
  }

  @Test
  void tellsOfTheCarbonWhatConcernsIt() {
    assertThat(all(new CarbonLasts(), informed(copper(), 1000)))
        .extracting(Finding::code)
        .containsExactly(
            AtmosphereFinding.CARBON_LASTS,
            AtmosphereFinding.CARBON_TOO_SLOW,
            AtmosphereFinding.FLAMMABLE_AT_LID);
  }

  /** pi / 4 x 10 cm x 10 cm x 12 cm. */
  @Test
  void stopsAChargeThatDoesNotGoIn() {
    Crucible small =
        Crucible.builder()
            .from(mullite())
            .cavity(RoundCavity.of(millimetres(100), millimetres(120)))
            .build();
    Finding never = first(new ChargeVolume(), setup(copper(), 1000).crucible(small));
    assertThat(never.severity()).isEqualTo(STOP);
    assertThat(never.message()).endsWith(" and the crucible holds 942 cm³");
  }

  /** What is published of a polymer is not of this feedstock: nothing is sure that exceeds. */
  @Test
  void leavesOpenWhatPublishedKineticsSay() {
    FiringSetup.Builder setup =
        setup(copper(), 1000)
            .feedstock(with(polylactide().name("poly(methyl methacrylate)")))
            .addLossLimits(wallLimit())
            .thickestSection(millimetres(12))
            .route(debindingTo(440));
    Finding loss = first(new BinderLeavesSlowly(), setup);
    assertThat(loss.severity()).isEqualTo(UNDETERMINED);
    assertThat(loss.message())
        .endsWith(", by the quickest of 5 kinetics: the part may blister or crack");
    Finding gone = first(new BinderGone(), setup);
    assertThat(gone.message())
        .endsWith(
            "; by 5 published kinetics, none of them of your feedstock, 0.0 to 0.0 % by mass of"
                + " it is left after debinding");
    assertThat(gone.severity()).isEqualTo(NOTE);
    // said to leave up to 280 °C, of which the published kinetics know nothing
    Binder.Builder early =
        polylactide()
            .name("poly(methyl methacrylate)")
            .decomposition(
                Sourced.of(Span.of(celsius(200), celsius(280)), Source.user("the maker")));
    Finding some = first(new BinderGone(), setup.feedstock(with(early)).route(debindingTo(310)));
    assertThat(some.severity()).isEqualTo(UNDETERMINED);
  }

  /**
   * Iron at 760 °C: at 1 bar of monoxide real wuestite is undone from 719 °C and stoichiometric
   * FeO, by the polynomials, from 771 °C (993 and 1044 K); at 0.35 bar both are, some 50 K lower.
   */
  @Test
  void tellsWhereTheNitrogenDecidesWhetherItStaysBright() {
    Finding iron = first(new CarbonKeepsBright(), setup(stainless(), 760));
    assertThat(iron.severity()).isEqualTo(UNDETERMINED);
    assertThat(iron.message())
        .startsWith("sintering: Fe (100.0 % of the atoms) ")
        .contains(" 1.00 bar of carbon monoxide")
        .contains("; but Fe (100.0 % of the atoms) ")
        .contains(" 0.35 bar of carbon monoxide");
  }

  @Test
  void leavesTheGetterOpenWhereThereIsNoRoomForGas() {
    Finding full =
        first(
            new CarbonLasts(),
            setup(copper(), 1000).partsVolume(Optional.empty()).greenMass(kilograms(50)));
    assertThat(full.severity()).isEqualTo(UNDETERMINED);
    assertThat(full.message())
        .isEqualTo("sintering: packing and metal leave no room for gas in it");
  }

  /** 1500 g at 1.5 to 0.8 g/cm3, and what the parts take is not known. */
  @Test
  void leavesTheVolumeOpenWithoutTheParts() {
    Finding open = first(new ChargeVolume(), setup(copper(), 1000).partsVolume(Optional.empty()));
    assertThat(open.severity()).isEqualTo(UNDETERMINED);
    assertThat(open.message())
        .isEqualTo(
            "the charge of the debinding stage takes 1000 to 1875 cm³, by how densely the powder"
                + " packs, without the parts, and the crucible holds 2815 cm³: state or weigh how"
                + " much powder fills it");
  }

  @Test
  void asksForTheSoakThatIsAskedFor() {
    CoreSoak had = FiringForecast.of(setup(copper(), 1000).build()).coreSoak();
    Finding passed = first(new CoreGetsSoak(), setup(copper(), 1000));
    assertThat(passed.severity()).isEqualTo(PASSED);
    assertThat(passed.message())
        .matches(
            "the core is at or above 950 °C for [0-9.]+ h at a stretch \\([0-9.]+ to [0-9.]+ h, by"
                + " how well the packing conducts\\), asked are 1\\.00 h");
    assertThat(passed.measured()).contains(had.had().expected());
    // what it has as expected is more than the slowest charge gives it
    FiringSetup.Builder middle = setup(copper(), 1000).soak(had.had().expected());
    assertThat(first(new CoreGetsSoak(), middle).severity()).isEqualTo(UNDETERMINED);
    Finding longer = first(new CoreGetsSoak(), setup(copper(), 1000).soak(hours(9)));
    assertThat(longer.severity()).isEqualTo(WARNING);
    assertThat(longer.message())
        .contains(", asked are 9.00 h: with a hold of ")
        .endsWith(" h at 1000 °C it is");
    Finding never = first(new CoreGetsSoak(), setup(copper(), 1000).soakTemperature(celsius(1001)));
    assertThat(never.severity()).isEqualTo(STOP);
    assertThat(never.message()).endsWith(", asked are 1.00 h: no hold at 1000 °C does it");
  }

  @Test
  void tellsWhereTheConductivityIsNotStated() {
    assertThat(all(new CoreLag(), setup(copper(), 1000)))
        .extracting(Finding::code)
        .containsExactly(ConductionFinding.CORE_LAG, ConductionFinding.CORE_LAG);
    FiringSetup.Builder cold =
        setup(copper(), 1000)
            .packingConductivity(
                Sourced.of(
                    PropertyCurve.<ThermalConductivity>builder()
                        .at(celsius(0), wattsPerMetreKelvin(0.2))
                        .at(celsius(600), wattsPerMetreKelvin(0.3))
                        .build(),
                    Source.user("hot wire")));
    List<Finding> lags = all(new CoreLag(), cold);
    assertThat(lags)
        .extracting(Finding::code)
        .containsExactly(
            ConductionFinding.CORE_LAG,
            ConductionFinding.CORE_LAG,
            ConductionFinding.PROPERTIES_STATED);
    assertThat(lags.get(2).message())
        .startsWith("sintering: the charge passes ")
        .endsWith(" are stated for 0 to 600 °C only: taken as constant beyond");
  }

  /** 304: 870 °C heated and cooled often, 927 °C steadily (from memory; SSINA). */
  @Test
  void holdsThePeakAgainstTheLimitThatIsPassed() {
    CrucibleMaterial steel =
        CrucibleMaterial.builder()
            .from(crucible("stainless steel 304", 927).material())
            .cyclicLimit(Sourced.of(celsius(870), Source.fromMemory("ASM")))
            .build();
    Crucible crucible = Crucible.builder().from(mullite()).material(steel).build();
    Finding often = first(new CrucibleTemperature(), setup(copper(), 900).crucible(crucible));
    assertThat(often.limit()).contains(celsius(870));
    assertThat(often.basis()).isEqualTo(Source.fromMemory("ASM"));
    Finding hot = first(new CrucibleTemperature(), setup(copper(), 950).crucible(crucible));
    assertThat(hot.limit()).contains(celsius(927));
    assertThat(hot.basis()).isEqualTo(steel.serviceLimit().source());
    Finding just = first(new CrucibleTemperature(), setup(copper(), 870).crucible(crucible));
    assertThat(just.severity()).isEqualTo(PASSED);
    assertThat(just.limit()).contains(celsius(927));
  }

  /** A stage that is at 450 °C from the start does not heat from 250 to 400 °C. */
  @Test
  void leavesTheRateOpenWhereNothingHeatsThroughTheRange() {
    FiringRoute hot =
        FiringRoute.of(
            debinding().profile(Profile.from(celsius(450)).hold(hours(1)).build()).build(),
            sintering(1000).getter(carbon(), grams(300)).build());
    Finding open = first(new DebindingRate(), setup(copper(), 1000).route(hot));
    assertThat(open.severity()).isEqualTo(UNDETERMINED);
    assertThat(open.message())
        .isEqualTo("no stage heats through the range of 250 to 400 °C in which polylactide leaves");
  }

  @Test
  void tellsWhatGoesIntoARoomThatIsNotStated() {
    Finding known = first(new GasInRoom(), informed(copper(), 1000).room(Optional.empty()));
    assertThat(known.severity()).isEqualTo(UNDETERMINED);
    assertThat(known.message())
        .matches(
            "the room is not stated, into which up to [0-9.]+ g of carbon monoxide come from the"
                + " carbon and 5\\.5 g of binder as gas: lead both outside and use an alarm");
    double grams =
        FiringForecast.of(informed(copper(), 1000).build())
            .hottest()
            .oxygen()
            .orElseThrow()
            .carbonMonoxide()
            .mass()
            .in(GRAM);
    assertThat(grams).isGreaterThan(1);
    assertThat(known.message())
        .contains(String.format(Locale.ROOT, "up to %.1f g of carbon monoxide", grams));
    assertThat(
            first(new GasInRoom(), setup(copper(), 1000).partsVolume(Optional.empty())).message())
        .endsWith(
            " come from the carbon, exchange through lid and packing not counted, besides the gas"
                + " of the binder: lead both outside and use an alarm");
  }

  @Test
  void tellsWhatTheRoomGets() {
    RoomAir room = RoomAir.ofChanges(cubicMetres(50), 10);
    List<Finding> informed = all(new GasInRoom(), informed(copper(), 1000).room(room));
    assertThat(informed)
        .filteredOn(finding -> finding.message().startsWith("if all of the binder left as it: "))
        .isNotEmpty()
        .allMatch(finding -> finding.severity() == PASSED || finding.severity() == UNDETERMINED);
    assertThat(informed)
        .filteredOn(finding -> finding.message().contains("is not known, for lack"))
        .isEmpty();
    assertThat(informed)
        .as("the carbon's monoxide, with its five limits")
        .filteredOn(finding -> finding.message().contains(" g of carbon monoxide lead to "))
        .filteredOn(finding -> !finding.message().startsWith("if "))
        .hasSize(5);
    assertThat(informed)
        .as("what has no limit is named with the fumes")
        .noneMatch(finding -> finding.message().contains("for which no limit is known"));
    List<Finding> hall =
        all(
            new GasInRoom(),
            informed(copper(), 1000).room(RoomAir.ofChanges(cubicMetres(10_000), 10)));
    assertThat(hall).extracting(Finding::severity).containsOnly(PASSED);
    List<Finding> bare = all(new GasInRoom(), setup(copper(), 1000).room(room));
    assertThat(bare.get(bare.size() - 1).message())
        .isEqualTo(
            "how fast the binder leaves is not known, for lack of its kinetics: lead its gases"
                + " outside");
    List<Finding> massless =
        all(new GasInRoom(), informed(copper(), 1000).room(room).partsVolume(Optional.empty()));
    assertThat(massless.get(massless.size() - 1).message())
        .isEqualTo(
            "how fast the binder leaves is not known, for lack of its mass: lead its gases"
                + " outside");
    // a closet without air: all of the binder at once is too much, but need not be formaldehyde
    List<Finding> closet =
        all(new GasInRoom(), informed(copper(), 1000).room(RoomAir.ofChanges(cubicMetres(1), 0)));
    assertThat(closet)
        .filteredOn(finding -> finding.message().startsWith("if all of the binder left as it: "))
        .extracting(Finding::severity)
        .contains(UNDETERMINED);
  }

  @Test
  void leavesTheSensorOpenWhereItsTypeIsNotStated() {
    assertThat(first(new SensorTolerance(), setup(copper(), 1000)).message())
        .isEqualTo(
            "the type of the thermocouple is not stated, so nothing is known of its tolerance at"
                + " 1000 °C");
  }

  /** Within 10 % of 230 V: 207 and 253 V are the ends. */
  @ParameterizedTest
  @CsvSource({"206, WARNING", "207, PASSED", "253, PASSED", "254, STOP"})
  void standsATenthOfTheVoltage(double voltage, Severity severity) {
    SupplyCircuit circuit =
        SupplyCircuit.builder()
            .name("south wall")
            .voltage(volts(voltage))
            .phases(1)
            .breakerRating(amperes(20))
            .build();
    assertThat(first(new SupplyVoltage(), setup(copper(), 1000).supplyCircuit(circuit)).severity())
        .isEqualTo(severity);
  }

  /** Iron at 740 °C: bright at 0.35 bar, between the accounts of its oxide at 1 bar. */
  @Test
  void leavesOpenWhetherCarbonTakesTheOxygenBack() {
    Finding open = first(new UnprotectedInterval(), setup(stainless(), 740));
    assertThat(open.severity()).isEqualTo(UNDETERMINED);
    assertThat(open.message()).startsWith("316L oxidises in the ");
  }

  @Test
  void reportsWhatIsAsSevereOrMore() {
    FiringReport report =
        FiringReport.of(
            List.of(
                first(new SensorTolerance(), setup(copper(), 1000)),
                first(new CrucibleTemperature(), setup(copper(), 1000)),
                first(new BinderFumes(), setup(copper(), 1000))),
            Set.of());
    assertThat(report.worst()).isEqualTo(UNDETERMINED);
    assertThat(report.atLeast(UNDETERMINED)).hasSize(1);
    assertThat(report.atLeast(NOTE)).hasSize(2);
    assertThat(report.atLeast(PASSED)).hasSize(3);
    assertThat(report.atLeast(WARNING)).isEmpty();
  }
}
