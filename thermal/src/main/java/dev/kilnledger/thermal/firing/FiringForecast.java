package dev.kilnledger.thermal.firing;

import dev.kilnledger.core.internal.ValueStyle;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.thermal.atmosphere.ReleaseStep;
import dev.kilnledger.thermal.atmosphere.RoomAnswer;
import dev.kilnledger.thermal.atmosphere.WellMixedRoom;
import dev.kilnledger.thermal.burnout.BinderKinetics;
import dev.kilnledger.thermal.burnout.BurnOut;
import dev.kilnledger.thermal.burnout.BurnOutCurve;
import dev.kilnledger.thermal.burnout.BurnOutForecast;
import dev.kilnledger.thermal.burnout.LossCheck;
import dev.kilnledger.thermal.burnout.LossRateLimit;
import dev.kilnledger.thermal.burnout.PublishedKinetics;
import dev.kilnledger.thermal.conduction.Charge;
import dev.kilnledger.thermal.conduction.Soak;
import dev.kilnledger.thermal.conduction.SoakHold;
import dev.kilnledger.thermal.densification.Densification;
import dev.kilnledger.thermal.densification.DensificationLimits;
import dev.kilnledger.thermal.densification.DensityForecast;
import dev.kilnledger.thermal.densification.LiteratureForecast;
import dev.kilnledger.thermal.energy.RouteEnergy;
import dev.kilnledger.thermal.kinetics.TemperatureHistory;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.io.Serializable;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.immutables.value.Value;

/**
 * A firing computed: stage by stage what the kiln does, what the core of the charge feels and what
 * the gas in the crucible does; and over all stages the binder, the density, the room.
 *
 * <p>Each part is computed when it is first asked for, and once: who asks for tables alone pays for
 * nothing else, and all who ask share one computation. Every curve is told point by point: {@code
 * KilnRun.points}, {@code CoreHistory.points}, {@code BurnOutCurve.points}, {@code
 * DensityForecast.points}, {@code OxygenBudget.points}, {@code RoomAnswer.points}.
 *
 * <pre>{@code
 * FiringForecast forecast = FiringForecast.of(setup);
 * forecast.hottest().core().greatestLag();   // how far the core is behind the kiln
 * forecast.coreSoak().had();                 // how long it is hot enough
 * forecast.afterDebinding();                 // what is left of the binder
 * }</pre>
 */
@Value.Immutable
@ValueStyle
public interface FiringForecast extends Serializable {
  /** How much cooler than the peak the core may be and still count as there, K. */
  double NEAR_PEAK = 5;

  /** {@return the firing} */
  @Value.Parameter
  FiringSetup setup();

  /**
   * The forecast of a firing.
   *
   * @param setup the firing
   * @return its forecast, nothing of it computed yet
   */
  static FiringForecast of(FiringSetup setup) {
    return ImmutableFiringForecast.of(setup);
  }

  /** {@return stages that were forecast before, of the same firing by other routes} */
  @Value.Auxiliary
  List<StageForecast> known();

  /**
   * The forecast of the same firing by another route, which takes over every stage that is the same
   * with all that is computed of it.
   *
   * @param route the other route
   * @return its forecast
   */
  default FiringForecast forRoute(FiringRoute route) {
    return ImmutableFiringForecast.builder()
        .setup(FiringSetup.builder().from(setup()).route(route).build())
        .known(stages())
        .build();
  }

  /** {@return the stages in the order of the route} */
  @Value.Lazy
  default List<StageForecast> stages() {
    return setup().route().stages().stream().map(this::forecast).toList();
  }

  private StageForecast forecast(FiringStage stage) {
    return known().stream()
        .filter(before -> before.stage().equals(stage))
        .findFirst()
        .orElseGet(() -> ImmutableStageForecast.of(setup(), stage));
  }

  /** {@return the stages for debinding, in order} */
  default List<StageForecast> debinding() {
    return stagesFor(FiringStage.Purpose.DEBINDING);
  }

  /** {@return the stages for sintering, in order} */
  default List<StageForecast> sintering() {
    return stagesFor(FiringStage.Purpose.SINTERING);
  }

  private List<StageForecast> stagesFor(FiringStage.Purpose purpose) {
    return stages().stream().filter(stage -> stage.stage().purpose() == purpose).toList();
  }

  /** {@return the stage whose programme gets hottest, the first of them if several do} */
  default StageForecast hottest() {
    FiringStage hottest = setup().route().hottest();
    return stages().stream()
        .filter(stage -> stage.stage().equals(hottest))
        .findFirst()
        .orElseThrow();
  }

  /** {@return what the kiln takes, by the same runs; empty where its wall is not known} */
  default Optional<RouteEnergy> energy() {
    return setup().kiln().wall().isEmpty()
        ? Optional.empty()
        : Optional.of(
            RouteEnergy.of(
                setup().route(),
                stages().stream().map(stage -> stage.kiln().orElseThrow().energy()).toList()));
  }

  /** {@return how long the core is hot enough in the hottest stage} */
  @Value.Lazy
  default CoreSoak coreSoak() {
    Amount<Temperature> temperature = soakTemperature();
    double expected = hottest().felt().longestTimeAbove(temperature).si();
    double low = expected;
    double high = expected;
    if (isSpread(hottest().charge())) {
      double slowest = hottest().feltAtSlowest().longestTimeAbove(temperature).si();
      double quickest = hottest().feltAtQuickest().longestTimeAbove(temperature).si();
      low = Math.min(low, Math.min(slowest, quickest));
      high = Math.max(high, Math.max(slowest, quickest));
    }
    return ImmutableCoreSoak.of(
        temperature,
        setup().soak().orElseGet(() -> setup().alloy().sinteringHold().value().low()),
        Estimate.of(
            Amounts.hours(low / 3600), Amounts.hours(expected / 3600), Amounts.hours(high / 3600)));
  }

  private Amount<Temperature> soakTemperature() {
    Amount<Temperature> nearPeak =
        Amounts.kelvin(setup().route().peak().si() - NEAR_PEAK).to(TradeUnits.CELSIUS);
    Amount<Temperature> window = setup().alloy().sinteringWindow().value().low();
    return setup()
        .soakTemperature()
        .orElseGet(() -> window.isLessThan(nearPeak) ? window : nearPeak);
  }

  private static boolean isSpread(Charge charge) {
    return charge.layers().stream()
        .anyMatch(layer -> layer.material().conductivityFactor().si() > 1);
  }

  /**
   * {@return the hold at the peak with which the core has its soak, even where the charge conducts
   * as badly as it well may; empty if no hold does}
   */
  @Value.Lazy
  default Optional<Amount<Time>> holdForSoak() {
    Charge slow = hottest().charge().slow();
    Profile course = hottest().course();
    Soak soak =
        new SoakHold(ChargeInCrucible.model(slow))
            .of(slow, course, coreSoak().temperature(), coreSoak().asked());
    // the kiln may come late to its peak: what its hold lacks is added to the programmed one
    double late = hottest().stage().profile().holdAtPeak().si() - soak.programmedHold().si();
    return soak.neededHold().map(hold -> Amounts.hours((hold.si() + Math.max(0, late)) / 3600));
  }

  /** {@return the temperature of the core over all stages, cold for a second in between} */
  @Value.Lazy
  default TemperatureHistory felt() {
    return WholeRoute.felt(stages());
  }

  /** {@return the kinetics of the binder: the user's, or those published for it, if any} */
  default List<BinderKinetics> candidates() {
    return setup().kinetics().isEmpty()
        ? PublishedKinetics.of(setup().binder())
        : setup().kinetics();
  }

  /** {@return the binder over all stages, by each of the kinetics; empty where there are none} */
  @Value.Lazy
  default Optional<BurnOutForecast> burnOut() {
    return candidates().isEmpty()
        ? Optional.empty()
        : Optional.of(BurnOut.standard().forecast(candidates(), felt()));
  }

  /** {@return the binder up to the end of debinding; empty where there are no kinetics} */
  @Value.Lazy
  default Optional<BurnOutForecast> afterDebinding() {
    return candidates().isEmpty()
        ? Optional.empty()
        : Optional.of(BurnOut.standard().forecast(candidates(), WholeRoute.felt(debinding())));
  }

  /**
   * {@return the rate of loss over all stages held against each limit, carried over to the thickest
   * section, by each of the kinetics: for each limit as many as there are kinetics}
   */
  @Value.Lazy
  default List<LossCheck> lossChecks() {
    if (setup().lossLimits().isEmpty()) {
      return List.of(); // without running the kiln
    }
    Profile programme = WholeRoute.programme(stages());
    return setup().lossLimits().stream()
        .map(limit -> limit.forWall(setup().thickestSection()))
        .flatMap(limit -> candidates().stream().map(one -> check(one, programme, limit)))
        .toList();
  }

  private LossCheck check(BinderKinetics kinetics, Profile programme, LossRateLimit limit) {
    return BurnOut.standard().check(kinetics, programme, felt(), limit);
  }

  /**
   * Where a segment of {@link #lossChecks()} stands, which are numbered through all stages.
   *
   * @param number its number there
   * @return words such as {@code "segment 2 of the debinding stage"}
   * @throws IllegalArgumentException if there is no such segment
   */
  default String place(int number) {
    return WholeRoute.place(stages(), number);
  }

  /** {@return the relative density wanted} */
  default Amount<VolumeFraction> targetDensity() {
    return setup()
        .targetDensity()
        .orElseGet(() -> setup().alloy().expectedRelativeDensity().value().span().low());
  }

  /** {@return the density along the core by the user's own curve; empty where there is none} */
  @Value.Lazy
  default Optional<DensityForecast> density() {
    return setup()
        .sinteringCurve()
        .map(curve -> Densification.standard().along(curve, WholeRoute.felt(sintering())));
  }

  /** {@return what the literature tells of the density along the core: an interval} */
  @Value.Lazy
  default LiteratureForecast literatureDensity() {
    return DensificationLimits.standard()
        .forecast(
            setup().alloy(), WholeRoute.felt(sintering()), setup().feedstock().solidsLoading());
  }

  /** {@return the getter's carbon monoxide in the room, stage by stage; empty without a room} */
  @Value.Lazy
  default List<RoomAnswer> carbonMonoxideInRoom() {
    return setup().room().stream()
        .flatMap(
            room ->
                stages().stream()
                    .flatMap(stage -> stage.oxygen().stream())
                    .map(budget -> WellMixedRoom.standard().answer(budget.carbonMonoxide(), room)))
        .toList();
  }

  /**
   * {@return the binder's products in the room, each as if it were all of the binder, by the
   * kinetics that give it off the quickest; empty without a room, kinetics or mass of binder}
   */
  @Value.Lazy
  default List<RoomAnswer> binderGasInRoom() {
    Optional<BurnOutCurve> quickest =
        burnOut().stream()
            .flatMap(forecast -> forecast.curves().stream())
            .max(Comparator.comparing(curve -> curve.peak().rate()));
    if (setup().room().isEmpty() || setup().binderMass().isEmpty() || quickest.isEmpty()) {
      return List.of();
    }
    List<ReleaseStep> steps = BinderGas.steps(quickest.get(), setup().binderMass().get());
    return WellMixedRoom.standard().binderProducts(setup().binder(), steps, setup().room().get());
  }
}
