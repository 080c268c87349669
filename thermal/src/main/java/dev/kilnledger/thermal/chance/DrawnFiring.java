package dev.kilnledger.thermal.chance;

import static dev.kilnledger.thermal.chance.FiringInput.DRIFT;
import static dev.kilnledger.thermal.chance.FiringInput.KILN_OFFSET;
import static dev.kilnledger.thermal.chance.FiringInput.METAL_SHARE;
import static dev.kilnledger.thermal.chance.FiringInput.PACKING_CONDUCTIVITY;
import static dev.kilnledger.thermal.chance.FiringInput.THERMOCOUPLE;

import dev.kilnledger.core.material.Feedstock;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.conduction.PropertyCurve;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.internal.PeakHold;
import dev.kilnledger.thermal.kiln.Thermocouple;
import dev.kilnledger.thermal.profile.FiringRoute;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.Segment;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import dev.kilnledger.units.quantity.ThermalConductivity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Temperature;

/**
 * What a draw makes of a firing: the programme becomes what the kiln really aims at, which is the
 * reading asked for plus the offset, less what the thermocouple reads too high; packing and
 * feedstock become those drawn. What is asked of the core stays as it was.
 */
final class DrawnFiring {
  private static final Source DRAWN = Source.recomputed("a draw of what is not known exactly");

  private final FiringSetup setup;
  private final PropertyCurve<ThermalConductivity> conductivity;
  private final double correction; // of all programmes, K

  DrawnFiring(FiringForecast forecast) {
    setup =
        FiringSetup.builder()
            .from(forecast.setup())
            .soakTemperature(forecast.coreSoak().temperature())
            .soak(forecast.coreSoak().asked())
            .build();
    conductivity = PackingLayer.of(forecast.hottest()).material().conductivity();
    correction = 0;
  }

  private DrawnFiring(
      FiringSetup setup, PropertyCurve<ThermalConductivity> conductivity, double correction) {
    this.setup = setup;
    this.conductivity = conductivity;
    this.correction = correction;
  }

  /** The same with another hold at the peak of its hottest stage. */
  DrawnFiring withHold(double seconds) {
    FiringStage hottest = setup.route().hottest();
    List<FiringStage> stages = new ArrayList<>(setup.route().stages());
    stages.set(
        stages.indexOf(hottest),
        FiringStage.sintering()
            .from(hottest)
            .profile(PeakHold.of(hottest.profile()).with(seconds))
            .build());
    return new DrawnFiring(
        FiringSetup.builder().from(setup).route(FiringRoute.of(stages)).build(),
        conductivity,
        correction);
  }

  /** The same with all programmes hotter, K. */
  DrawnFiring withCorrection(double kelvin) {
    return new DrawnFiring(setup, conductivity, kelvin);
  }

  FiringSetup nominal() {
    return setup;
  }

  /** How much hotter than programmed the kiln gets at the peak of a stage, K. */
  double atPeak(int stage, Draw draw) {
    return correction
        + draw.get(KILN_OFFSET)
        - draw.get(DRIFT)
        - draw.get(THERMOCOUPLE) * tolerance(peak(stage));
  }

  private Amount<Temperature> peak(int stage) {
    return setup.route().stages().get(stage).profile().peak();
  }

  FiringSetup setup(Draw draw) {
    return setup(draw, draw.get(THERMOCOUPLE));
  }

  /** With another share of the tolerance read too high everywhere but at the peaks. */
  FiringSetup setup(Draw draw, double shareElsewhere) {
    List<FiringStage> stages = new ArrayList<>();
    for (FiringStage stage : setup.route().stages()) {
      Profile aimed = aimed(stage.profile(), atPeak(stages.size(), draw), shareElsewhere);
      stages.add(FiringStage.sintering().from(stage).profile(aimed).build());
    }
    return FiringSetup.builder()
        .from(setup)
        .route(FiringRoute.of(stages))
        .feedstock(feedstock(draw.get(METAL_SHARE)))
        .packingConductivity(Sourced.of(times(conductivity, draw.get(PACKING_CONDUCTIVITY)), DRAWN))
        .build();
  }

  private Profile aimed(Profile profile, double atPeak, double share) {
    double tolerance = tolerance(profile.peak());
    List<Segment> segments = new ArrayList<>();
    for (Segment segment : bent(profile)) {
      segments.add(
          Segment.of(
              shifted(segment.start(), atPeak - share * (tolerance(segment.start()) - tolerance)),
              shifted(segment.end(), atPeak - share * (tolerance(segment.end()) - tolerance)),
              segment.duration()));
    }
    return Profile.of(segments);
  }

  /** The segments, cut where the tolerance begins to grow with temperature. */
  private List<Segment> bent(Profile profile) {
    Optional<Amount<Temperature>> bend = setup.thermocouple().map(DrawnFiring::bend);
    List<Segment> segments = new ArrayList<>();
    for (Segment segment : profile.segments()) {
      double share =
          bend.isEmpty() || segment.isHold()
              ? 0
              : (bend.get().si() - segment.start().si())
                  / (segment.end().si() - segment.start().si());
      if (share > 0 && share < 1) {
        Amount<Temperature> at = bend.orElseThrow();
        segments.add(Segment.of(segment.start(), at, segment.duration().multiply(share)));
        segments.add(Segment.of(at, segment.end(), segment.duration().multiply(1 - share)));
      } else {
        segments.add(segment);
      }
    }
    return segments;
  }

  /** A fixed number of kelvin below, a share of the degrees Celsius above: where both are one. */
  private static Amount<Temperature> bend(Thermocouple type) {
    Amount<Temperature> end = type.range().high();
    double fixed = type.tolerance(Amounts.celsius(0)).orElseThrow().si();
    double share = type.tolerance(end).orElseThrow().si() / end.in(TradeUnits.CELSIUS);
    return Amounts.celsius(fixed / share);
  }

  /** The tolerance, beyond the range for which it is stated that at its end, K. */
  private double tolerance(Amount<Temperature> temperature) {
    if (setup.thermocouple().isEmpty()) {
      return 0;
    }
    Thermocouple type = setup.thermocouple().get();
    Span<Temperature> range = type.range();
    Amount<Temperature> within = temperature.isLessThan(range.high()) ? temperature : range.high();
    return type.tolerance(within.isLessThan(range.low()) ? range.low() : within).orElseThrow().si();
  }

  private static Amount<Temperature> shifted(Amount<Temperature> temperature, double kelvin) {
    return kelvin == 0
        ? temperature
        : Amounts.kelvin(temperature.si() + kelvin).to(TradeUnits.CELSIUS);
  }

  private Feedstock feedstock(double metalShare) {
    return metalShare == setup.feedstock().metalMassFraction().si()
        ? setup.feedstock()
        : Feedstock.builder()
            .from(setup.feedstock())
            .statedMetalMassFraction(Amounts.massFraction(metalShare))
            .statedBinderMassFraction(Optional.empty())
            .statedSolidsLoading(Optional.empty())
            .build();
  }

  private static PropertyCurve<ThermalConductivity> times(
      PropertyCurve<ThermalConductivity> curve, double factor) {
    return PropertyCurve.<ThermalConductivity>builder()
        .addAllTemperatures(curve.temperatures())
        .addAllValues(curve.values().stream().map(value -> value.multiply(factor)).toList())
        .build();
  }
}
