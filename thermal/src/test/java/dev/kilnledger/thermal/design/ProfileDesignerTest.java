package dev.kilnledger.thermal.design;

import static dev.kilnledger.thermal.Workbench.carbon;
import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.thermal.Workbench.crucible;
import static dev.kilnledger.thermal.Workbench.debinding;
import static dev.kilnledger.thermal.Workbench.feedstock;
import static dev.kilnledger.thermal.Workbench.informed;
import static dev.kilnledger.thermal.Workbench.kiln;
import static dev.kilnledger.thermal.Workbench.sintering;
import static dev.kilnledger.thermal.Workbench.stainless;
import static dev.kilnledger.thermal.Workbench.thawed;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.minutes;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.FAHRENHEIT;
import static dev.kilnledger.units.TradeUnits.FAHRENHEIT_PER_HOUR;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.KELVIN_PER_HOUR;
import static dev.kilnledger.units.TradeUnits.MINUTE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.FindingCode;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.burnout.BurnOutFinding;
import dev.kilnledger.thermal.check.FiringCheck;
import dev.kilnledger.thermal.check.FiringFinding;
import dev.kilnledger.thermal.check.FiringRule;
import dev.kilnledger.thermal.conduction.ConductionFinding;
import dev.kilnledger.thermal.design.ProgrammeForm.Ramps;
import dev.kilnledger.thermal.design.ProgrammeForm.Scale;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.kiln.TransientKiln;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.Segment;
import dev.kilnledger.units.Amount;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Durations are arithmetic on the rules of a workshop, done by hand. */
class ProfileDesignerTest {
  private static final Source OWN = Source.user("the workshop's own rule");

  private enum Rule implements FindingCode {
    SLOW,
    REACHES,
    HOT,
    SHORT,
    CRUCIBLE,
    OPINION;

    @Override
    public String code() {
      return "workshop-" + name();
    }
  }

  private static <Q extends Quantity<Q>> Finding finding(
      Rule rule, boolean kept, Amount<Q> measured, Amount<Q> limit) {
    return Finding.builder()
        .code(rule)
        .subject("workshop")
        .severity(kept ? Severity.PASSED : Severity.WARNING)
        .message(measured + " against " + limit)
        .measured(measured)
        .limit(limit)
        .basis(OWN)
        .build();
  }

  private static Profile stage(FiringRoute route, int stage) {
    return route.stages().get(stage).profile();
  }

  /** At most 40 K/h from 250 to 400 °C, which debinding has to reach. */
  private static final FiringRule SLOW_THROUGH_BINDER =
      forecast -> {
        Profile profile = stage(forecast.setup().route(), 0);
        Span<Temperature> range = Span.of(celsius(250), celsius(400));
        double fastest =
            profile.fastestHeating(range).map(rate -> rate.in(KELVIN_PER_HOUR)).orElse(0.0);
        return List.of(
            finding(Rule.SLOW, fastest <= 40 + 1e-9, kelvinPerHour(fastest), kelvinPerHour(40)),
            finding(
                Rule.REACHES,
                !profile.peak().isLessThan(celsius(400)),
                profile.peak(),
                celsius(400)));
      };

  /** At least 90 min at a peak of 950 °C or more. */
  private static final FiringRule HOT_FOR_LONG =
      forecast -> {
        double had = holdAt950(forecast);
        return List.of(finding(Rule.HOT, had >= 90 - 1e-6, minutes(had), minutes(90)));
      };

  private static double holdAt950(FiringForecast forecast) {
    Profile profile = stage(forecast.setup().route(), 1);
    return profile.peak().isLessThan(celsius(950)) ? 0 : profile.holdAtPeak().in(MINUTE);
  }

  private static FiringRule holdsNoLongerThan(double minutes) {
    return forecast -> {
      double had = holdAt950(forecast);
      return List.of(finding(Rule.SHORT, had <= minutes, minutes(had), minutes(minutes)));
    };
  }

  private static final FiringRule OPINION =
      forecast ->
          List.of(
              Finding.builder()
                  .code(Rule.OPINION)
                  .subject("workshop")
                  .severity(Severity.STOP)
                  .message("the wrong getter")
                  .basis(OWN)
                  .build());

  private static final FiringCheck RULES =
      new FiringCheck(List.of(SLOW_THROUGH_BINDER, HOT_FOR_LONG));

  /** A kiln of 300 K/h of which no wall is known. */
  private static FiringSetup setup() {
    return informed(copper(), 1000).kiln(kiln(1300).wall(List.of()).build()).build();
  }

  private static DesignTask.Builder task() {
    return DesignTask.builder().setup(setup());
  }

  private static ProfileDesign design(FiringRule... more) {
    FiringCheck check = RULES;
    for (FiringRule rule : more) {
      check = check.with(rule);
    }
    return new ProfileDesigner(check).design(task().build());
  }

  // The example of the class's documentation.
  @Test
  void findsTheProfileThatAWorkshopWouldWriteDown() {
    ProfileDesign design = new ProfileDesigner(RULES).design(DesignTask.of(setup()));
    assertThat(design.passes()).isTrue();
    assertThat(design.finished()).isTrue();
    assertThat(design.unmended()).isEmpty();
    assertThat(design.contradictions()).isEmpty();
    assertThat(stage(design.route(), 0))
        .isEqualTo(
            Profile.from(celsius(20))
                .rampOver(celsius(250), minutes(46))
                .rampOver(celsius(400), minutes(225))
                .build());
    assertThat(design.duration().in(MINUTE)).isCloseTo(547, within(1e-6));
    assertThat(design.untilOpening()).isEqualTo(design.duration());

    StageDesign debinding = design.stages().get(0);
    Finding second = debinding.segments().get(1).forbids().orElseThrow();
    assertThat(second.code()).isEqualTo(Rule.SLOW);
    // 150 K in 224 min
    assertThat(second.measured().orElseThrow().si() * 3600)
        .isCloseTo(150 * 60 / 224.0, within(1e-9));
    assertThat(second.limit()).contains(kelvinPerHour(40));
    assertThat(debinding.forbidsLowerPeak().orElseThrow().code()).isEqualTo(Rule.REACHES);
    assertThat(debinding.stage().profile().tableInBothScales())
        .isEqualTo(
            """
            no.     from       to        rate     from       to         rate    takes    until
              1    20 °C   250 °C   300.0 K/h    68 °F   482 °F   540.0 °F/h   0:46 h   0:46 h
              2   250 °C   400 °C    40.0 K/h   482 °F   752 °F    72.0 °F/h   3:45 h   4:31 h
            """);
    StageDesign sintering = design.stages().get(1);
    assertThat(sintering.stage().profile())
        .isEqualTo(
            Profile.from(celsius(20))
                .rampOver(celsius(950), minutes(186))
                .hold(minutes(90))
                .build());
    assertThat(sintering.segments().get(1).forbids().orElseThrow().code()).isEqualTo(Rule.HOT);
    assertThat(sintering.forbidsLowerPeak().orElseThrow().code()).isEqualTo(Rule.HOT);
    assertThat(design.notes())
        .extracting(Finding::code)
        .containsExactly(
            DesignFinding.SEARCH_ENDED,
            DesignFinding.COOLING_NOT_PROGRAMMED,
            DesignFinding.COOLING_NOT_PROGRAMMED,
            DesignFinding.PEAK_FOR_SPEED);
    assertThat(design.notes().get(0).severity()).isEqualTo(Severity.PASSED);
    assertThat(design.notes().get(0).message()).isEqualTo("no segment passes one step faster");
  }

  @Test
  void theKilnsOwnRateIsAskedForWhereTheCheckDoesNotAsk() {
    FiringSetup unstated =
        FiringSetup.builder()
            .from(setup())
            .kiln(kiln(1300).wall(List.of()).fastestHeating(Optional.empty()).build())
            .build();
    ProfileDesign design = new ProfileDesigner(RULES).design(DesignTask.of(unstated));
    assertThat(design.duration().in(MINUTE)).isCloseTo(547, within(1e-6));
    assertThat(design.stages().get(0).segments().get(0).forbids().orElseThrow().code())
        .isEqualTo(DesignFinding.HEATING_ASSUMED);
    // Where it is stated, and no rule asks, it bounds the search all the same.
    assertThat(stage(design().route(), 0).fastestHeating().orElseThrow().in(KELVIN_PER_HOUR))
        .isLessThanOrEqualTo(300 + 1e-9);
  }

  @Test
  void whatNoProfileMendsDoesNotStopTheSearch() {
    ProfileDesign design = design(OPINION);
    assertThat(design.passes()).isFalse();
    assertThat(design.unmended()).extracting(Finding::code).containsExactly(Rule.OPINION);
    assertThat(design.contradictions()).isEmpty();
    assertThat(design.duration().in(MINUTE)).isCloseTo(547, within(1e-6));
  }

  @Test
  void limitsThatContradictAreToldTogether() {
    // 90 min at 950 °C or above, and no more than 60 min there.
    ProfileDesign design = design(holdsNoLongerThan(60));
    assertThat(design.passes()).isFalse();
    assertThat(design.finished()).isTrue();
    assertThat(design.contradictions()).hasSize(1);
    Contradiction contradiction = design.contradictions().get(0);
    List<FindingCode> both = new ArrayList<>(List.of(contradiction.broken().code()));
    contradiction.instead().forEach(finding -> both.add(finding.code()));
    assertThat(both).containsExactlyInAnyOrder(Rule.HOT, Rule.SHORT);
    assertThat(design.failing()).hasSize(1);
  }

  /** What is told of an opinion is no part of the contradiction. */
  @Test
  void whatContradictsIsToldApartFromWhatNoProfileMends() {
    ProfileDesign design = design(holdsNoLongerThan(60), OPINION);
    assertThat(design.unmended()).extracting(Finding::code).containsExactly(Rule.OPINION);
    assertThat(design.contradictions()).hasSize(1);
    assertThat(design.contradictions().get(0).broken().code()).isIn(Rule.HOT, Rule.SHORT);
  }

  /**
   * Only what turns at 333 °C may sinter for less than 20 h, which no guess does but the user's own
   * programme, of 5 h and a hold of 3 h; of that an hour is asked for. Of 10 h the first guess
   * takes more, and is shortened to them, before the user's own turns out to be the better one.
   */
  @ParameterizedTest
  @ValueSource(ints = {10, 20})
  void theUsersOwnProgrammeIsShortenedWhereItPasses(int least) {
    FiringRule turns =
        forecast -> {
          Profile profile = stage(forecast.setup().route(), 1);
          boolean own =
              profile.segments().get(0).end().equals(celsius(333))
                  && profile.holdAtPeak().in(MINUTE) >= 60 - 1e-6;
          return List.of(
              finding(
                  Rule.SLOW,
                  own || profile.duration().in(HOUR) >= least,
                  profile.duration(),
                  hours(least)));
        };
    FiringSetup own =
        FiringSetup.builder()
            .from(setup())
            .route(
                FiringRoute.of(
                    debinding().build(),
                    sintering(1000)
                        .profile(
                            Profile.from(celsius(20))
                                .rampOver(celsius(333), hours(2))
                                .rampOver(celsius(1000), hours(3))
                                .hold(hours(3))
                                .build())
                        .build()))
            .build();
    ProfileDesign design =
        new ProfileDesigner(new FiringCheck(List.of(turns))).design(DesignTask.of(own));
    Profile sintering = stage(design.route(), 1);
    assertThat(sintering.segments().get(0).end()).isEqualTo(celsius(333));
    assertThat(sintering.holdAtPeak().in(MINUTE)).isEqualTo(60);
    assertThat(sintering.duration().in(HOUR)).isLessThan(6);
  }

  @Test
  void notesTellHowItCools() {
    assertThat(note(design(), DesignFinding.COOLING_NOT_PROGRAMMED).message())
        .isEqualTo(
            "the debinding programme ends at 400 °C: how the kiln cools is not known, as its wall is"
                + " not stated; open it only when cold");
    FiringSetup walled = FiringSetup.builder().from(setup()).kiln(kiln(1300).build()).build();
    ProfileDesign design =
        new ProfileDesigner(new FiringCheck(List.of()))
            .design(DesignTask.builder().setup(walled).mostEvaluations(1).build());
    assertThat(note(design, DesignFinding.COOLING_NOT_PROGRAMMED).message())
        .contains(", from where the kiln cools by itself; open it only when cold");
    ProfileDesign cold =
        new ProfileDesigner(new FiringCheck(List.of()))
            .design(task().coolTo(celsius(900)).mostEvaluations(1).build());
    assertThat(cold.notes())
        .as("debinding ends below 900 °C, sintering at 1000 °C")
        .filteredOn(finding -> finding.code() == DesignFinding.COOLING_NOT_PROGRAMMED)
        .extracting(Finding::subject)
        .containsExactly("sintering");
  }

  /** Nothing but the window holds the peak up at 950 °C; a peak that is asked for is no remark. */
  @Test
  void notesTellOfAPeakForSpeed() {
    Finding peak = note(design(), DesignFinding.PEAK_FOR_SPEED);
    assertThat(peak.measured()).contains(celsius(950));
    assertThat(peak.message())
        .isEqualTo(
            "nothing but the sintering window, from 950 to 1050 °C, holds the peak up: where a"
                + " density is wanted, state it with a sintering curve, or ask for a peak");
    ProfileDesign asked =
        new ProfileDesigner(RULES).design(task().peak(Span.of(celsius(950), celsius(950))).build());
    assertThat(asked.notes())
        .extracting(Finding::code)
        .doesNotContain(DesignFinding.PEAK_FOR_SPEED);
  }

  private static Finding note(ProfileDesign design, FindingCode code) {
    return design.notes().stream().filter(f -> f.code() == code).findFirst().orElseThrow();
  }

  @Test
  void aHoldBetweenTwoLimitsIsFoundBetweenTheGuesses() {
    // From 90 to 95 min, where the guesses are of 4 h, 1 h, 20 h.
    ProfileDesign design = design(holdsNoLongerThan(95));
    assertThat(design.passes()).isTrue();
    assertThat(design.contradictions()).isEmpty();
    assertThat(design.unmended()).isEmpty();
    assertThat(design.duration().in(MINUTE)).isBetween(546.0, 552.0);
  }

  /** The guesses peak at 1000, 1050 and 950 °C. */
  @ParameterizedTest
  @CsvSource({"985, 990", "1012, 1015", "955, 960", "1000, 1000", "1049, 1049"})
  void aPeakBetweenTwoLimitsIsFoundBetweenTheGuesses(int low, int high) {
    FiringRule narrow =
        forecast -> {
          Amount<Temperature> peak = forecast.setup().route().peak();
          return List.of(
              finding(Rule.HOT, peak.in(CELSIUS) >= low, peak, celsius(low)),
              finding(Rule.SHORT, peak.in(CELSIUS) <= high, peak, celsius(high)));
        };
    ProfileDesign design =
        new ProfileDesigner(new FiringCheck(List.of(SLOW_THROUGH_BINDER, narrow)))
            .design(task().build());
    assertThat(design.passes()).isTrue();
    assertThat(design.contradictions()).isEmpty();
    assertThat(design.unmended()).isEmpty();
    assertThat(design.route().peak().in(CELSIUS)).isBetween((double) low, (double) high);
  }

  /** What is accepted does not fail, neither the design nor what it is compared with. */
  @Test
  void whatIsAcceptedDoesNotFail() {
    FiringRule remark =
        forecast ->
            List.of(
                Finding.builder()
                    .from(OPINION.check(forecast).get(0))
                    .severity(Severity.NOTE)
                    .build());
    ProfileDesigner designer = new ProfileDesigner(RULES.with(remark));
    ProfileDesign design = designer.design(task().build());
    assertThat(design.passes()).isTrue();
    assertThat(designer.compare(design, design.route()).failing()).isEmpty();
    ProfileDesigner strict = new ProfileDesigner(RULES.with(remark));
    ProfileDesign strictly = strict.design(task().accepted(Severity.PASSED).build());
    assertThat(strictly.failing()).extracting(Finding::code).containsExactly(Rule.OPINION);
    assertThat(strict.compare(strictly, strictly.route()).failing()).hasSize(1);
  }

  @Tag("sampled")
  @Test
  void theKilnIsFollowedDownToWhereCoolingIsAskedFor() {
    FiringSetup walled = FiringSetup.builder().from(setup()).kiln(kiln(1300).build()).build();
    DesignTask task =
        DesignTask.builder().setup(walled).coolingRamps(1).coolTo(celsius(350)).build();
    ProfileDesign design = new ProfileDesigner(RULES).design(task);
    assertThat(design.passes()).isTrue();
    for (int stage = 0; stage < 2; stage++) {
      Profile profile = stage(design.route(), stage);
      assertThat(profile.end()).isEqualTo(celsius(350));
      assertThat(
              TransientKiln.standard()
                  .run(walled.kiln(), profile, List.of())
                  .findings()
                  .get(2)
                  .severity())
          .as("an empty kiln, which cools faster, follows all the more")
          .isEqualTo(Severity.PASSED);
      assertThat(profile.segments().stream().filter(Segment::isCooling)).hasSize(1);
    }
    assertThat(design.untilOpening()).isGreaterThan(design.duration());
  }

  @Test
  void programmesByRateInFahrenheitAreWholeAndPass() {
    ProfileDesign design =
        new ProfileDesigner(RULES)
            .design(task().form(ProgrammeForm.of(Scale.FAHRENHEIT, Ramps.BY_RATE)).build());
    assertThat(design.passes()).isTrue();
    for (int stage = 0; stage < 2; stage++) {
      for (Segment segment : stage(design.route(), stage).segments()) {
        double end = segment.end().in(FAHRENHEIT);
        double rate = segment.rate().in(FAHRENHEIT_PER_HOUR);
        assertThat(end).isEqualTo(Math.rint(end));
        assertThat(rate).isCloseTo(Math.rint(rate), within(1e-6));
      }
    }
    // 250 and 400 °C are 482 and 752 °F, 40 and 300 K/h 72 and 540 °F/h; 950 °C are 1742 °F.
    assertThat(design.duration().in(HOUR))
        .isCloseTo(414 / 540.0 + 270 / 72.0 + 1674 / 540.0 + 1.5, within(0.02));
  }

  @Test
  void aPeakThatIsAskedForIsKept() {
    ProfileDesign design =
        new ProfileDesigner(RULES)
            .design(task().peak(Span.of(celsius(1010), celsius(1010))).build());
    assertThat(design.passes()).isTrue();
    assertThat(design.route().peak()).isEqualTo(celsius(1010));
    // 990 K at 300 K/h, and 90 min.
    assertThat(design.stages().get(1).duration().in(MINUTE)).isCloseTo(198 + 90, within(1e-6));
    assertThat(design.stages().get(1).forbidsLowerPeak().orElseThrow().code())
        .isEqualTo(DesignFinding.PEAK_AS_ASKED);
  }

  @Test
  void anInterruptedSearchTellsItsBestSoFar() {
    ProfileDesigner designer = new ProfileDesigner(RULES);
    ProfileDesign whole = designer.design(task().build());
    for (int limit : new int[] {1, 5, 20, 60}) {
      AtomicInteger evaluations = new AtomicInteger();
      ProfileDesign cut =
          designer.design(
              task().build(),
              fraction -> {
                if (evaluations.incrementAndGet() == limit) {
                  Thread.currentThread().interrupt();
                }
              });
      assertThat(Thread.interrupted()).as("the thread stays interrupted").isTrue();
      assertThat(cut.finished()).isFalse();
      assertThat(cut.evaluations()).isEqualTo(limit);
      assertThat(cut.duration()).isGreaterThanOrEqualTo(whole.duration());
      assertThat(cut.notes().get(0).code()).isEqualTo(DesignFinding.SEARCH_ENDED);
      assertThat(cut.notes().get(0).severity()).isEqualTo(Severity.UNDETERMINED);
      assertThat(cut.notes().get(0).message())
          .isEqualTo("the search was ended early, interrupted: a faster route may exist");
      assertThat(cut.report().findings()).isNotEmpty();
    }
    ProfileDesign limited = designer.design(task().mostEvaluations(20).build());
    assertThat(limited.finished()).isFalse();
    assertThat(limited.evaluations()).isEqualTo(20);
  }

  @Test
  void progressNeverFallsAndEndsAtOne() {
    List<Double> told = new ArrayList<>();
    ProfileDesign design = new ProfileDesigner(RULES).design(task().build(), told::add);
    assertThat(told).isSorted().hasSize(design.evaluations() + 1);
    assertThat(told.get(0)).isBetween(0.0, 0.1);
    assertThat(told.get(told.size() - 2)).isLessThan(1);
    assertThat(told.get(told.size() - 1)).isEqualTo(1);
  }

  @Test
  void theUsersOwnRouteIsComparedSegmentBySegment() {
    ProfileDesigner designer = new ProfileDesigner(RULES);
    ProfileDesign design = designer.design(task().build());
    FiringRoute own =
        FiringRoute.of(
            debinding()
                .profile(
                    Profile.from(celsius(20))
                        .rampTo(celsius(250), kelvinPerHour(100))
                        .rampTo(celsius(400), kelvinPerHour(60))
                        .hold(hours(1))
                        .build())
                .build(),
            sintering(1000).getter(carbon(), grams(300)).build());
    ProfileComparison comparison = designer.compare(design, own);
    assertThat(comparison.failing()).extracting(Finding::code).containsExactly(Rule.SLOW);
    List<SegmentComparison> debinding = comparison.stages().get(0).segments();
    assertThat(debinding.get(0).pace()).isEqualTo(SegmentComparison.Pace.SLOWER);
    assertThat(debinding.get(0).designed().orElseThrow().in(MINUTE)).isCloseTo(46, within(1e-9));
    assertThat(debinding.get(1).pace()).isEqualTo(SegmentComparison.Pace.FASTER);
    assertThat(debinding.get(2).pace()).isEqualTo(SegmentComparison.Pace.SLOWER);
    assertThat(debinding.get(2).designed()).contains(hours(0));
    List<SegmentComparison> sintering = comparison.stages().get(1).segments();
    assertThat(sintering)
        .extracting(SegmentComparison::pace)
        .containsExactly(
            SegmentComparison.Pace.SLOWER, // 150 K/h to 600 °C
            SegmentComparison.Pace.NOT_IN_DESIGN, // a hold there
            SegmentComparison.Pace.SLOWER, // 100 K/h
            SegmentComparison.Pace.SLOWER, // 3 h at the peak
            SegmentComparison.Pace.NOT_IN_DESIGN); // cooling
    assertThatThrownBy(
            () ->
                designer.compare(
                    design,
                    FiringRoute.of(
                        List.of(own.stages().get(0), own.stages().get(0), own.stages().get(1)))))
        .hasMessage(
            "comparison of a design: the other route has the stages [DEBINDING, DEBINDING,"
                + " SINTERING]; accepted are those of the design, [DEBINDING, SINTERING]");
  }

  /** The whole check on a charge of packing alone, which the exact model of conduction takes. */
  @Tag("sampled")
  @Test
  void theStandardCheckIsPassedButForWhatNoProfileMends() {
    FiringSetup setup = FiringSetup.builder().from(setup()).partsVolume(Optional.empty()).build();
    DesignTask task = DesignTask.builder().setup(setup).debindingRamps(2).build();
    ProfileDesigner designer = ProfileDesigner.standard();
    ProfileDesign design = designer.design(task);
    assertThat(design.finished()).isTrue();
    assertThat(design.contradictions()).isEmpty();
    assertThat(design.failing()).containsExactlyElementsOf(design.unmended());
    assertThat(design.unmended())
        .extracting(Finding::severity)
        .as("inputs that are missing: the wall, so the cooling, and the parts")
        .containsOnly(Severity.UNDETERMINED);
    // What is told is what the check says of just that route.
    assertThat(design.report().findings())
        .isEqualTo(
            FiringCheck.standard()
                .check(FiringSetup.builder().from(setup).route(design.route()).build())
                .findings());
    assertThat(design.stages().get(0).segments())
        .extracting(reason -> reason.forbids().orElseThrow().code())
        .contains(BurnOutFinding.BINDER_REMAINING)
        .isSubsetOf(
            FiringFinding.KILN_HEATING_RATE,
            BurnOutFinding.LOSS_RATE,
            BurnOutFinding.BINDER_REMAINING);
    List<SegmentReason> sintering = design.stages().get(1).segments();
    assertThat(sintering.get(sintering.size() - 1).forbids().orElseThrow().code())
        .isEqualTo(ConductionFinding.CORE_SOAK);
    // The workshop's profile of 60 K/h and more holds is slower and passes no less.
    ProfileComparison comparison = designer.compare(design, setup.route());
    assertThat(design.duration()).isLessThan(comparison.route().duration());
  }

  @Test
  void aCrucibleTooWeakIsToldAndTheDesignGoesOn() {
    // Steel that stands 1100 °C, for a metal sintered from 1250 °C up.
    FiringSetup setup =
        FiringSetup.builder()
            .from(setup())
            .feedstock(feedstock(stainless()))
            .crucible(crucible("steel", 1100))
            .partsVolume(Optional.empty())
            .sinteringCurve(Optional.empty())
            .build();
    FiringCheck check = RULES.with(CRUCIBLE_STANDS);
    DesignTask hot =
        DesignTask.builder().setup(setup).peak(Span.of(celsius(1250), celsius(1300))).build();
    ProfileDesign design = new ProfileDesigner(check).design(hot);
    assertThat(design.passes()).isFalse();
    assertThat(design.finished()).isTrue();
    assertThat(design.unmended()).extracting(Finding::code).containsExactly(Rule.CRUCIBLE);
    assertThat(design.route().peak()).as("no hotter than it must be").isEqualTo(celsius(1250));
    // 271 min of debinding; 1230 K at 300 K/h, and 90 min
    assertThat(design.duration().in(MINUTE)).isCloseTo(271 + 246 + 90, within(1e-6));
  }

  /** What the crucible stands, against the peak. */
  private static final FiringRule CRUCIBLE_STANDS =
      forecast -> {
        Amount<Temperature> limit = forecast.setup().crucible().material().serviceLimit().value();
        Amount<Temperature> peak = forecast.setup().route().peak();
        return List.of(finding(Rule.CRUCIBLE, !peak.isGreaterThan(limit), peak, limit));
      };

  @Test
  void rulesOfThumbAreWhatTheySay() {
    // The binder of the bench leaves from 250 to 400 °C; copper sinters from 950 to 1050 °C.
    Profile debinding = RuleOfThumb.standard().debinding(setup().binder());
    assertThat(debinding.duration().in(HOUR)).isCloseTo(2.3 + 15 + 2, within(1e-9));
    Profile sintering = RuleOfThumb.standard().sintering(copper());
    assertThat(sintering.peak().in(CELSIUS)).isCloseTo(1000, within(1e-9));
    assertThat(sintering.duration().in(HOUR)).isCloseTo(9.8 + 4, within(1e-9));
  }

  @Test
  void tasksThatNoProgrammeCanDoAreRefused() {
    assertThatThrownBy(
            () ->
                task()
                    .accepted(Severity.STOP)
                    .coolTo(celsius(10))
                    .debindingRamps(0)
                    .coolingRamps(7)
                    .mostEvaluations(0)
                    .build())
        .hasMessage(
            "design task: accepted is STOP, which everything is; accepted are PASSED to WARNING"
                + "; and it cools to 10 °C in a room of 20 °C; accepted is more than the room's"
                + " temperature"
                + "; and most evaluations are 0; accepted is 1 or more"
                + "; and debinding ramps are 0; accepted is from 1 to 6"
                + "; and cooling ramps are 7; accepted is from 0 to 6");
  }

  @Test
  void rampsAndPeaksAreAcceptedUpToTheirBounds() {
    for (int ramps : new int[] {1, 6}) {
      assertThat(task().debindingRamps(ramps).sinteringRamps(ramps).coolingRamps(ramps).build())
          .isNotNull();
    }
    assertThat(task().coolingRamps(0).mostEvaluations(1).build().coolingRamps()).isZero();
    assertThatThrownBy(() -> task().sinteringRamps(0).build())
        .hasMessage("design task: sintering ramps are 0; accepted is from 1 to 6");
    assertThatThrownBy(
            () -> task().coolTo(celsius(60)).peak(Span.of(celsius(60), celsius(900))).build())
        .hasMessageContaining("accepted is above 60 °C, where it cools to");
    assertThatThrownBy(() -> task().coolTo(celsius(20)).build())
        .hasMessageContaining("accepted is more than the room's temperature");
    assertThat(DesignFinding.SEARCH_ENDED.code()).isEqualTo("search-ended");
  }

  @Test
  void aDesignSurvivesSerialization() throws Exception {
    ProfileDesign design =
        new ProfileDesigner(new FiringCheck(List.of())).design(task().mostEvaluations(3).build());
    assertThat(thawed(design)).isEqualTo(design);
  }
}
