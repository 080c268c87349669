package dev.kilnledger.thermal.firing;

import static dev.kilnledger.thermal.Workbench.carbon;
import static dev.kilnledger.thermal.Workbench.copper;
import static dev.kilnledger.thermal.Workbench.debinding;
import static dev.kilnledger.thermal.Workbench.informed;
import static dev.kilnledger.thermal.Workbench.kiln;
import static dev.kilnledger.thermal.Workbench.kinetics;
import static dev.kilnledger.thermal.Workbench.mullite;
import static dev.kilnledger.thermal.Workbench.setup;
import static dev.kilnledger.thermal.Workbench.sintering;
import static dev.kilnledger.thermal.Workbench.thawed;
import static dev.kilnledger.thermal.Workbench.wallLimit;
import static dev.kilnledger.units.Amounts.celsius;
import static dev.kilnledger.units.Amounts.grams;
import static dev.kilnledger.units.Amounts.hours;
import static dev.kilnledger.units.Amounts.kelvinPerHour;
import static dev.kilnledger.units.Amounts.kilograms;
import static dev.kilnledger.units.Amounts.kilojoulesPerMole;
import static dev.kilnledger.units.Amounts.millimetres;
import static dev.kilnledger.units.Amounts.minutes;
import static dev.kilnledger.units.Amounts.volumeFraction;
import static dev.kilnledger.units.Amounts.watts;
import static dev.kilnledger.units.Amounts.wattsPerMetreKelvin;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.KELVIN_DIFFERENCE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.core.equipment.BoxCavity;
import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.Binder;
import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.thermal.atmosphere.OxygenBudget;
import dev.kilnledger.thermal.atmosphere.RoomAnswer;
import dev.kilnledger.thermal.burnout.BinderKinetics;
import dev.kilnledger.thermal.burnout.BurnOutCurve;
import dev.kilnledger.thermal.burnout.BurnOutPoint;
import dev.kilnledger.thermal.burnout.DecompositionStep;
import dev.kilnledger.thermal.burnout.LossCheck;
import dev.kilnledger.thermal.burnout.PublishedKinetics;
import dev.kilnledger.thermal.burnout.ReactionOrder;
import dev.kilnledger.thermal.burnout.SegmentLoss;
import dev.kilnledger.thermal.burnout.WallRateLimit;
import dev.kilnledger.thermal.check.FiringCheck;
import dev.kilnledger.thermal.check.FiringFinding;
import dev.kilnledger.thermal.conduction.CorePoint;
import dev.kilnledger.thermal.conduction.PropertyCurve;
import dev.kilnledger.thermal.densification.DensificationLimits;
import dev.kilnledger.thermal.energy.RouteEnergy;
import dev.kilnledger.thermal.kiln.KilnPoint;
import dev.kilnledger.thermal.kiln.KilnRun;
import dev.kilnledger.thermal.kiln.SoakControl;
import dev.kilnledger.thermal.kiln.TransientKiln;
import dev.kilnledger.thermal.kinetics.Frequencies;
import dev.kilnledger.thermal.kinetics.TemperatureHistory;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.Segment;
import dev.kilnledger.units.Amount;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import javax.measure.quantity.Time;
import org.junit.jupiter.api.Test;

class FiringForecastTest {
  private static final double R = 8.314462618;

  private static FiringRoute route(Profile debinding) {
    return FiringRoute.of(
        debinding().profile(debinding).build(),
        sintering(1000).getter(carbon(), grams(300)).build());
  }

  private static StageForecast debindingOf(FiringSetup.Builder setup) {
    return FiringForecast.of(setup.build()).debinding().get(0);
  }

  /** What is computed is computed once; a finding on tables asks for none of it. */
  @Test
  void computesOnce() {
    FiringForecast forecast = FiringForecast.of(informed(copper(), 1000).build());
    assertThat(forecast.hottest().core()).isSameAs(forecast.stages().get(1).core());
    assertThat(forecast.burnOut().orElseThrow()).isSameAs(forecast.burnOut().orElseThrow());
    assertThat(forecast.energy()).isEqualTo(forecast.energy());
  }

  @Test
  void comesBackFromSerializationAndComputesTheSame() throws Exception {
    FiringForecast forecast = FiringForecast.of(informed(copper(), 1000).build());
    Profile felt = forecast.hottest().felt();
    FiringForecast thawed = (FiringForecast) thawed(forecast);
    assertThat(thawed).isEqualTo(forecast);
    assertThat(thawed.hottest().felt()).isEqualTo(felt);
  }

  /** A kiln that keeps up does what it is told, so the course comes back as the programme. */
  @Test
  void followsTheProgrammeWhereTheKilnCan() {
    StageForecast stage = FiringForecast.of(setup(copper(), 1000).build()).hottest();
    List<Segment> programme = stage.stage().profile().segments();
    for (int i = 0; i < 4; i++) {
      Segment ran = stage.course().segments().get(i);
      assertThat(ran.end()).isEqualTo(programme.get(i).end());
      assertThat(ran.duration().si()).isCloseTo(programme.get(i).duration().si(), within(1e-6));
    }
    assertThat(stage.course().end().in(CELSIUS)).isCloseTo(60, within(1e-9));
    assertThat(stage.course().duration().si())
        .isCloseTo(stage.kiln().orElseThrow().untilOpening().si(), within(1e-3));
  }

  /**
   * The course is drawn by few straight lines: none is further from what the kiln does than 0.05 K,
   * or from the core than 0.02 K, and a line more is drawn only where it must be.
   */
  @Test
  void staysWithinItsToleranceOfEveryPoint() {
    StageForecast stage = FiringForecast.of(setup(copper(), 1000).build()).hottest();
    KilnRun run = stage.kiln().orElseThrow();
    Profile course = stage.course();
    List<KilnPoint> points = new ArrayList<>(run.points());
    points.addAll(run.coolingPoints().subList(1, run.coolingPoints().size()));
    for (KilnPoint point : points) {
      double kelvin = course.temperatureAt(least(point.time(), course.duration())).si();
      assertThat(kelvin).as("at " + point.time()).isCloseTo(point.actual().si(), within(0.05001));
    }
    assertThat(course.segments().size()).isBetween(5, points.size() / 10);
    // the programme is five straight lines, and its cooling by itself bends one way
    assertThat(course.segments().subList(0, 4))
        .extracting(Segment::isHold)
        .containsExactly(false, true, false, true);

    Profile felt = stage.felt();
    for (CorePoint point : stage.core().points()) {
      double kelvin = felt.temperatureAt(least(point.time(), felt.duration())).si();
      assertThat(kelvin).as("at " + point.time()).isCloseTo(point.core().si(), within(0.02001));
    }
    assertThat(felt.segments()).hasSizeLessThan(stage.core().points().size() / 2);
    assertThat(felt.duration().si()).isCloseTo(course.duration().si(), within(0.01));
  }

  private static Amount<Time> least(Amount<Time> one, Amount<Time> other) {
    return one.isLessThan(other) ? one : other;
  }

  /**
   * The window of the copper begins at 950 °C, its usual holds at 1 h; 5 K below the peak is near.
   */
  @Test
  void soaksInTheWindowOrNearThePeak() {
    CoreSoak usual = FiringForecast.of(setup(copper(), 1000).build()).coreSoak();
    assertThat(usual.temperature()).isEqualTo(celsius(950));
    assertThat(usual.asked()).isEqualTo(hours(1));
    CoreSoak low = FiringForecast.of(setup(copper(), 952).build()).coreSoak();
    assertThat(low.temperature().in(CELSIUS)).isCloseTo(947, within(1e-9));
    CoreSoak asked =
        FiringForecast.of(
                setup(copper(), 1000).soak(hours(2)).soakTemperature(celsius(990)).build())
            .coreSoak();
    assertThat(asked.temperature()).isEqualTo(celsius(990));
    assertThat(asked.asked()).isEqualTo(hours(2));
    // the better the packing conducts the longer the core is hot
    assertThat(usual.had().span().low()).isLessThan(usual.had().expected());
    assertThat(usual.had().span().high()).isGreaterThan(usual.had().expected());
  }

  /** With the hold that is told the core of the slowest charge just gets its soak. */
  @Test
  void tellsTheHoldThatSoaksTheSlowestCore() {
    FiringSetup.Builder setup = setup(copper(), 1000).soak(hours(4)).soakTemperature(celsius(990));
    FiringForecast forecast = FiringForecast.of(setup.build());
    double hold = forecast.holdForSoak().orElseThrow().in(HOUR);
    assertThat(hold).isGreaterThan(4);
    FiringForecast held = FiringForecast.of(setup.route(heldFor(hold)).build());
    assertThat(held.coreSoak().had().span().low().in(HOUR))
        .as("found to a second, the course drawn within 0.05 K")
        .isCloseTo(4, within(0.02));
  }

  private static FiringRoute heldFor(double hours) {
    Profile profile =
        Profile.from(celsius(20))
            .rampTo(celsius(600), kelvinPerHour(150))
            .hold(minutes(30))
            .rampTo(celsius(1000), kelvinPerHour(100))
            .hold(hours(hours))
            .coolTo(celsius(500), kelvinPerHour(150))
            .build();
    return FiringRoute.of(
        debinding().build(), sintering(1000).profile(profile).getter(carbon(), grams(300)).build());
  }

  /**
   * Three segments, then what cools after them and the second between, five, and the last cooling.
   */
  @Test
  void namesThePlaceOfEverySegmentOfTheRoute() {
    FiringForecast cooling = FiringForecast.of(setup(copper(), 1000).build());
    assertThat(IntStream.rangeClosed(1, 11).mapToObj(cooling::place))
        .containsExactly(
            "segment 1 of the debinding stage",
            "segment 2 of the debinding stage",
            "segment 3 of the debinding stage",
            "cooling after the debinding stage",
            "cooling after the debinding stage",
            "segment 1 of the sintering stage",
            "segment 2 of the sintering stage",
            "segment 3 of the sintering stage",
            "segment 4 of the sintering stage",
            "segment 5 of the sintering stage",
            "cooling after the sintering stage");
    FiringForecast bare =
        FiringForecast.of(setup(copper(), 1000).kiln(kiln(1300).wall(List.of()).build()).build());
    assertThat(IntStream.rangeClosed(3, 5).mapToObj(bare::place))
        .containsExactly(
            "segment 3 of the debinding stage",
            "cooling after the debinding stage",
            "segment 1 of the sintering stage");
  }

  @Test
  void takesTheProgrammeItselfWhereTheWallIsNotKnown() {
    FiringForecast forecast =
        FiringForecast.of(setup(copper(), 1000).kiln(kiln(1300).wall(List.of()).build()).build());
    assertThat(forecast.hottest().kiln()).isEmpty();
    assertThat(forecast.hottest().course()).isEqualTo(forecast.hottest().stage().profile());
    assertThat(forecast.hottest().coolingKnown()).isFalse();
    assertThat(forecast.energy()).isEmpty();
  }

  /** A controller that waits takes longer, and its segments with it. */
  @Test
  void letsTheControllerWait() {
    FiringSetup setup =
        setup(copper(), 1000)
            .kiln(kiln(1300).power(watts(900)).build())
            .soakControl(SoakControl.GUARANTEED)
            .build();
    StageForecast stage = FiringForecast.of(setup).hottest();
    double waited = stage.kiln().orElseThrow().waited().si();
    assertThat(waited).isGreaterThan(0);
    assertThat(stage.programme().duration().si())
        .isCloseTo(stage.stage().profile().duration().si() + waited, within(1e-6));
  }

  @Test
  void takesTheEnergyFromTheSameRun() {
    FiringSetup setup = setup(copper(), 1000).build();
    RouteEnergy alone =
        TransientKiln.standard()
            .forRoute(
                setup.kiln(),
                setup.crucible(),
                setup.route(),
                setup.alloy(),
                setup.metal().orElseThrow());
    assertThat(FiringForecast.of(setup).energy()).contains(alone);
  }

  /**
   * Carslaw and Jaeger: a slab heated at r comes to lag r L²/2a. By hand: 1.5 kg at 1250 kg/m³ fill
   * a crucible of 160 mm to 59.68 mm, L = 29.84 mm, a = 0.3 / (1250 x 1100) = 2.1818e-7 m²/s, at 30
   * K/h 17.00 K. No parts, so it is one body; the last slow ramp lasts six time constants.
   */
  @Test
  void lagsLikeASlabOfPacking() {
    FiringSetup setup =
        FiringSetup.builder()
            .feedstock(setup(copper(), 1000).build().feedstock())
            .thickestSection(millimetres(3))
            .route(route(Profile.from(celsius(20)).rampTo(celsius(420), kelvinPerHour(30)).build()))
            .kiln(kiln(1300).build())
            .crucible(mullite())
            .build();
    StageForecast stage = FiringForecast.of(setup).debinding().get(0);
    double half = 1.5 / 1250 / (Math.PI * 0.08 * 0.08) / 2;
    double lag = 30 / 3600.0 * half * half / 2 / (0.3 / (1250 * 1100));
    assertThat(lag).isCloseTo(17.00, within(0.01));
    assertThat(stage.core().greatestLag().lag().in(KELVIN_DIFFERENCE))
        .isCloseTo(lag, within(0.001));
    assertThat(stage.charge().layers()).hasSize(1);
    assertThat(setup.metal()).isEmpty();
  }

  /** The metal in the middle is quicker than packing in its place, and in a box as well. */
  @Test
  void putsTheMetalIntoTheMiddle() {
    Crucible box =
        Crucible.builder()
            .from(mullite())
            .cavity(BoxCavity.of(millimetres(150), millimetres(150), millimetres(120)))
            .build();
    StageForecast round = debindingOf(setup(copper(), 1000));
    StageForecast boxed = debindingOf(setup(copper(), 1000).crucible(box));
    // metal, packing, and the wall of the crucible
    assertThat(round.charge().layers()).hasSize(3);
    // by hand: (1.2 l + 10 cm³) / (150 mm)² is 53.8 mm high
    double inside =
        boxed.charge().layers().get(0).thickness().si()
            + boxed.charge().layers().get(1).thickness().si();
    assertThat(inside * 2000).isCloseTo(53.8, within(0.05));
    assertThat(boxed.core().greatestLag().lag()).isLessThan(round.core().greatestLag().lag());
  }

  @Test
  void takesAMeasuredConductivityAsCertain() {
    FiringSetup.Builder measured =
        setup(copper(), 1000)
            .packingConductivity(
                Sourced.of(
                    PropertyCurve.constant(wattsPerMetreKelvin(0.3)), Source.user("hot wire")));
    FiringForecast forecast = FiringForecast.of(measured.build());
    FiringForecast estimated = FiringForecast.of(setup(copper(), 1000).build());
    assertThat(forecast.hottest().charge().slow().layers().get(1))
        .isEqualTo(forecast.hottest().charge().layers().get(1));
    assertThat(forecast.coreSoak().had().expected())
        .isEqualTo(estimated.coreSoak().had().expected());
    assertThat(width(estimated)).isGreaterThan(5 * width(forecast));
  }

  private static double width(FiringForecast forecast) {
    return forecast.coreSoak().had().span().high().si()
        - forecast.coreSoak().had().span().low().si();
  }

  /**
   * Debinding to 340 °C leaves some of the binder, the rest goes in sintering: for a first order
   * -ln of what is left is A times the integral of exp(-E/RT) over both stages. Here by the
   * trapezoidal rule along the core's own points, an integration of its own; 0.5 % for points that
   * were left out and for the rule itself.
   */
  @Test
  void carriesTheBinderOverIntoSintering() {
    Profile tooCool = Profile.from(celsius(20)).rampTo(celsius(350), kelvinPerHour(30)).build();
    FiringForecast forecast =
        FiringForecast.of(informed(copper(), 1000).route(route(tooCool)).build());
    DoubleUnaryOperator rate = kelvin -> 1e9 * Math.exp(-150_000 / (R * kelvin));
    double debound = integral(forecast.debinding().get(0).core().points(), rate);
    double left = forecast.afterDebinding().orElseThrow().remaining().high().si();
    assertThat(-Math.log(left)).isCloseTo(debound, within(0.005 * debound));
    assertThat(left).isBetween(0.1, 0.9);

    BurnOutCurve curve = forecast.burnOut().orElseThrow().curves().get(0);
    double between = forecast.debinding().get(0).course().duration().si();
    BurnOutPoint startOfSintering =
        curve.points().stream().filter(p -> p.time().si() > between).findFirst().orElseThrow();
    assertThat(startOfSintering.remaining().si()).isCloseTo(left, within(1e-6));
    assertThat(curve.end().remaining().si()).isLessThan(1e-6);
    // it leaves fastest where sintering heats at 150 K/h, and that is told as such
    int worst =
        forecast.lossChecks().get(0).segments().stream()
            .max((a, b) -> a.use().compareTo(b.use()))
            .orElseThrow()
            .row()
            .number();
    assertThat(forecast.place(worst)).isEqualTo("segment 1 of the sintering stage");
    assertThat(forecast.place(1)).isEqualTo("segment 1 of the debinding stage");
    assertThat(forecast.place(2)).isEqualTo("cooling after the debinding stage");
    assertThatThrownBy(() -> forecast.place(99)).hasMessage("segment 99 is none of the route's");
  }

  private static double integral(List<CorePoint> points, DoubleUnaryOperator rate) {
    double sum = 0;
    for (int i = 1; i < points.size(); i++) {
      double seconds = points.get(i).time().si() - points.get(i - 1).time().si();
      double from = points.get(i - 1).core().si();
      double to = points.get(i).core().si();
      int pieces = (int) Math.max(1, Math.abs(to - from));
      for (int j = 0; j < pieces; j++) {
        double a = from + (to - from) * j / pieces;
        double b = from + (to - from) * (j + 1) / pieces;
        sum += seconds / pieces * (rate.applyAsDouble(a) + rate.applyAsDouble(b)) / 2;
      }
    }
    return sum;
  }

  /** The sigmoid of the trapezoidal work along the core; 0.5 % of the work as above. */
  @Test
  void densifiesAlongTheCore() {
    FiringForecast forecast = FiringForecast.of(informed(copper(), 1000).build());
    double work =
        integral(
            forecast.hottest().core().points(),
            kelvin -> Math.exp(-210_000 / (R * kelvin)) / kelvin);
    double steps = (Math.log(work) + 19.5) / 0.8;
    double density = forecast.density().orElseThrow().density().expected().si();
    assertThat(density).isCloseTo(0.55 + 0.45 / (1 + Math.exp(-steps)), within(0.001));
    assertThat(forecast.targetDensity()).isEqualTo(volumeFraction(0.9));
  }

  /** Half the energy of activation, and as fast at 300 °C: wider, so slower where it is fastest. */
  private static BinderKinetics gentle() {
    double frequency = 1e9 * Math.exp(-75_000 / (R * 573.15));
    return BinderKinetics.builder()
        .from(kinetics())
        .name("gentle")
        .steps(
            List.of(
                DecompositionStep.of(
                    kilojoulesPerMole(75), ReactionOrder.first(Frequencies.perSecond(frequency)))))
        .build();
  }

  @Test
  void fillsTheRoomByTheKineticsThatAreQuickest() {
    List<RoomAnswer> quick = FiringForecast.of(informed(copper(), 1000).build()).binderGasInRoom();
    List<RoomAnswer> slow =
        FiringForecast.of(informed(copper(), 1000).kinetics(List.of(gentle())).build())
            .binderGasInRoom();
    assertThat(slow).isNotEqualTo(quick);
    for (List<BinderKinetics> both :
        List.of(List.of(kinetics(), gentle()), List.of(gentle(), kinetics()))) {
      FiringForecast forecast = FiringForecast.of(informed(copper(), 1000).kinetics(both).build());
      assertThat(forecast.binderGasInRoom()).isEqualTo(quick);
    }
  }

  @Test
  void fillsNoRoomWithoutRoomBinderOrKinetics() {
    FiringForecast outside =
        FiringForecast.of(informed(copper(), 1000).room(Optional.empty()).build());
    assertThat(outside.binderGasInRoom()).isEmpty();
    assertThat(outside.carbonMonoxideInRoom()).isEmpty();
    FiringForecast massless =
        FiringForecast.of(informed(copper(), 1000).partsVolume(Optional.empty()).build());
    assertThat(massless.binderGasInRoom()).isEmpty();
    FiringForecast unknown =
        FiringForecast.of(informed(copper(), 1000).kinetics(List.of()).build());
    assertThat(unknown.binderGasInRoom()).isEmpty();
    OxygenBudget budget = unknown.hottest().oxygen().orElseThrow();
    assertThat(unknown.carbonMonoxideInRoom())
        .extracting(RoomAnswer::release)
        .containsExactly(budget.carbonMonoxide());
  }

  @Test
  void holdsTheLossAgainstEachLimitByAllKinetics() {
    WallRateLimit measured = wallLimit();
    WallRateLimit strict =
        WallRateLimit.builder().from(measured).knownRate(Frequencies.perSecond(1e-5)).build();
    FiringForecast forecast =
        FiringForecast.of(
            informed(copper(), 1000)
                .lossLimits(List.of(measured, strict))
                .addKinetics(gentle())
                .thickestSection(millimetres(6))
                .build());
    assertThat(forecast.lossChecks())
        .extracting(check -> ((WallRateLimit) check.limit()).knownRate())
        .containsExactly(
            measured.knownRate(), measured.knownRate(), strict.knownRate(), strict.knownRate());
    assertThat(forecast.lossChecks())
        .extracting(check -> ((WallRateLimit) check.limit()).wall())
        .containsOnly(millimetres(6));
    List<LossCheck> checks = forecast.lossChecks();
    assertThat(checks.get(0).segments()).isNotEqualTo(checks.get(1).segments());
    assertThat(checks.get(0).segments())
        .extracting(SegmentLoss::converted)
        .isEqualTo(checks.get(2).segments().stream().map(SegmentLoss::converted).toList());
  }

  @Test
  void takesPublishedKineticsOfTheSamePolymer() {
    Feedstock feedstock = setup(copper(), 1000).build().feedstock();
    Binder acrylate =
        Binder.builder().from(feedstock.binder()).name("poly(methyl methacrylate)").build();
    FiringSetup setup =
        setup(copper(), 1000)
            .feedstock(Feedstock.builder().from(feedstock).binder(acrylate).build())
            .build();
    FiringForecast forecast = FiringForecast.of(setup);
    assertThat(forecast.candidates()).isNotEmpty().isEqualTo(PublishedKinetics.of(acrylate));
    assertThat(forecast.afterDebinding().orElseThrow().curves())
        .extracting(BurnOutCurve::kinetics)
        .isEqualTo(forecast.candidates());
    FiringForecast own =
        FiringForecast.of(FiringSetup.builder().from(setup).addKinetics(kinetics()).build());
    assertThat(own.candidates()).containsExactly(kinetics());
  }

  /** Sintered twice: the first is as hot as the second, and both make it denser. */
  @Test
  void keepsTheStagesApartByTheirPurpose() {
    FiringStage once = sintering(1000).name("once").getter(carbon(), grams(300)).build();
    FiringStage again = sintering(1000).name("again").getter(carbon(), grams(300)).build();
    FiringForecast forecast =
        FiringForecast.of(
            informed(copper(), 1000)
                .route(FiringRoute.of(List.of(debinding().build(), once, again)))
                .build());
    assertThat(forecast.debinding()).containsExactly(forecast.stages().get(0));
    assertThat(forecast.sintering())
        .containsExactly(forecast.stages().get(1), forecast.stages().get(2));
    assertThat(forecast.hottest()).isSameAs(forecast.stages().get(1));
    FiringForecast single = FiringForecast.of(informed(copper(), 1000).build());
    assertThat(forecast.density().orElseThrow().density().expected())
        .isGreaterThan(single.density().orElseThrow().density().expected());
    assertThat(single.literatureDensity())
        .isEqualTo(
            DensificationLimits.standard()
                .forecast(
                    copper(),
                    TemperatureHistory.of(single.hottest().felt()),
                    single.setup().feedstock().solidsLoading()));
    assertThat(forecast.carbonMonoxideInRoom()).hasSize(2);
  }

  /** Of 1 kW a kiln is at 1000 °C for half of its hold: what it is late is added to the hold. */
  @Test
  void addsToTheHoldWhatALateKilnTakesOfIt() {
    FiringSetup.Builder setup =
        setup(copper(), 1000)
            .kiln(kiln(1300).power(watts(1000)).build())
            .soak(hours(2))
            .soakTemperature(celsius(970));
    FiringForecast forecast = FiringForecast.of(setup.build());
    assertThat(forecast.hottest().course().holdAtPeak()).isLessThan(hours(1.5));
    double hold = forecast.holdForSoak().orElseThrow().in(HOUR);
    FiringForecast held = FiringForecast.of(setup.route(heldFor(hold)).build());
    assertThat(held.coreSoak().had().span().low().in(HOUR))
        .as("found to a second, the course drawn within 0.05 K")
        .isCloseTo(2, within(0.02));
  }

  /** The gas given off is the binder that is gone. */
  @Test
  void givesOffAllOfTheBinder() {
    FiringForecast forecast = FiringForecast.of(informed(copper(), 1000).build());
    double binder = forecast.setup().binderMass().orElseThrow().si();
    assertThat(forecast.binderGasInRoom())
        .isNotEmpty()
        .allSatisfy(
            answer ->
                assertThat(answer.release().mass().si()).isCloseTo(binder, within(1e-3 * binder)))
        .allSatisfy(
            answer ->
                assertThat(answer.release().steps().subList(0, answer.release().steps().size() - 1))
                    .allSatisfy(
                        step -> assertThat(step.duration().si()).isBetween(299.999, 900.0)));
    double left = forecast.burnOut().orElseThrow().curves().get(0).end().remaining().si();
    assertThat(forecast.binderGasInRoom().get(0).release().mass().si())
        .as("all that has gone, summed over its steps")
        .isCloseTo(binder * (1 - left), within(1e-9 * binder));
    assertThat(forecast.carbonMonoxideInRoom()).hasSize(1);
    assertThat(FiringForecast.of(setup(copper(), 1000).build()).binderGasInRoom()).isEmpty();
  }

  @Test
  void takesWhatIsPublishedWhereTheUserHasNoKinetics() {
    FiringForecast none = FiringForecast.of(setup(copper(), 1000).build());
    assertThat(none.candidates()).isEmpty();
    assertThat(none.burnOut()).isEmpty();
    assertThat(PublishedKinetics.of(none.setup().binder())).isEmpty();
    assertThat(FiringForecast.of(informed(copper(), 1000).build()).candidates())
        .containsExactly(kinetics());
  }

  /** More metal than fits is a matter of the charge's volume, not an exception. */
  @Test
  void answersWhereTheMetalDoesNotFitIn() {
    FiringSetup setup = informed(copper(), 1000).greenMass(kilograms(50)).build();
    FiringSetup full =
        FiringSetup.builder().from(setup).partsVolume(java.util.Optional.empty()).build();
    assertThat(FiringCheck.standard().check(full).of(FiringFinding.CHARGE_VOLUME).get(0).severity())
        .isEqualTo(Severity.STOP);
    assertThat(FiringForecast.of(full).hottest().oxygen()).isEmpty();
  }

  @Test
  void namesTheStageOfAFinding() {
    FiringStage stage = sintering(1000).name("second").getter(carbon(), grams(300)).build();
    FiringSetup setup =
        setup(copper(), 1000).route(FiringRoute.of(debinding().build(), stage)).build();
    assertThat(FiringForecast.of(setup).hottest().course().duration().in(HOUR)).isGreaterThan(14);
    assertThat(FiringCheck.standard().check(setup).findings())
        .anySatisfy(finding -> assertThat(finding.message()).startsWith("second: the core is"));
  }

  @Test
  void anotherRouteTakesOverTheStagesThatAreTheSame() {
    FiringForecast before = FiringForecast.of(informed(copper(), 1000).build());
    FiringRoute other =
        FiringRoute.of(
            before.setup().route().stages().get(0),
            sintering(1020).getter(carbon(), grams(300)).build());
    FiringForecast after = before.forRoute(other);
    FiringForecast fresh = FiringForecast.of(after.setup());
    assertThat(after).isEqualTo(fresh);
    assertThat(after.setup().route()).isEqualTo(other);
    assertThat(after.stages().get(0)).isSameAs(before.stages().get(0));
    assertThat(after.stages().get(1)).isNotSameAs(before.stages().get(1));
    assertThat(after.coreSoak()).isEqualTo(fresh.coreSoak());
    assertThat(FiringCheck.standard().check(after)).isEqualTo(FiringCheck.standard().check(fresh));
  }
}
