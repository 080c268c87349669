package dev.kilnledger.thermal.densification;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.PERCENT;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.kinetics.ArrheniusIntegral;
import dev.kilnledger.thermal.kinetics.RunningIntegral;
import dev.kilnledger.thermal.kinetics.TemperatureHistory;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.Segment;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import dev.kilnledger.units.quantity.MolarEnergy;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/**
 * Forecasts relative density along a temperature history by a master sintering curve, the work of
 * sintering in closed form on every straight line. Where the part gets hotter than the curve was
 * observed, or never as hot, or denser than the runs went, a finding says so.
 *
 * <p>Example: 210 kJ/mol from 300 K to 1123 K at 150 K/h and 4 h there is a work of 1.747442e-10
 * s/K on the ramp and 2.189487e-9 s/K in the hold, whose sum has the decimal logarithm -8.626310.
 */
public final class Densification {
  private static final double LONGEST_HOLD_HOURS = 1000;
  private static final Densification STANDARD = new Densification();

  private Densification() {}

  /** {@return the calculator} */
  public static Densification standard() {
    return STANDARD;
  }

  /**
   * The work of sintering of a history.
   *
   * @param activationEnergy Q, above zero
   * @param history the temperature that the part feels
   * @return ln(Theta / (s/K)), natural
   * @throws IllegalArgumentException if the energy is not above zero
   */
  public double logWork(Amount<MolarEnergy> activationEnergy, TemperatureHistory history) {
    return new ArrheniusIntegral(activationEnergy).workAlong(history).logAtEnd();
  }

  /**
   * The hold at one temperature that gives the same work of sintering as a history.
   *
   * @param activationEnergy Q, above zero
   * @param history the temperature that the part feels
   * @param temperature of the hold, above 0 K
   * @return how long it takes
   * @throws IllegalArgumentException if the energy or temperature are not above zero, or the hold
   *     is longer than a double can tell
   */
  public Amount<Time> equivalentHold(
      Amount<MolarEnergy> activationEnergy,
      TemperatureHistory history,
      Amount<Temperature> temperature) {
    return Amounts.seconds(
            Math.exp(
                logWork(activationEnergy, history)
                    - logWorkPerSecond(activationEnergy, temperature)))
        .to(TradeUnits.HOUR);
  }

  private static double logWorkPerSecond(
      Amount<MolarEnergy> activationEnergy, Amount<Temperature> temperature) {
    return new ArrheniusIntegral(activationEnergy)
        .logMeanPerKelvin(temperature.si(), temperature.si());
  }

  /**
   * The density over a history by a curve whose uncertainty is not known.
   *
   * @param curve the curve
   * @param history the temperature that the part feels, from cold
   * @return the series without a band, with a note that says so
   */
  public DensityForecast along(SinteringCurve curve, TemperatureHistory history) {
    RunningIntegral work = new ArrheniusIntegral(curve.activationEnergy()).workAlong(history);
    return ImmutableDensityForecast.of(
        points(work, (time, logWork) -> Estimate.exactly(curve.densityAt(logWork))),
        List.of(
            inRange(curve, history)
                .orElseGet(
                    () ->
                        finding(curve, NOTE)
                            .message(
                                "the curve has no uncertainty with it, so the density has no band")
                            .build())));
  }

  /**
   * The density over a history by a curve fitted to the user's own runs.
   *
   * @param fitted the curve
   * @param history the temperature that the part feels, from cold
   * @return the series with the band in which one further reading lies at the confidence of the fit
   */
  public DensityForecast along(FittedSinteringCurve fitted, TemperatureHistory history) {
    Band band = new Band(fitted);
    WorkOfSintering work = new WorkOfSintering(fitted.curve().activationEnergy(), history);
    List<DensityPoint> points =
        points(work.along(), (time, logWork) -> band.density(logWork, work.byEnergyAt(time)));
    return ImmutableDensityForecast.of(
        points,
        List.of(range(fitted, history, points.get(points.size() - 1).density().expected())));
  }

  private static Finding range(
      FittedSinteringCurve fitted, TemperatureHistory history, Amount<VolumeFraction> density) {
    return inRange(fitted.curve(), history)
        .or(() -> beyond(fitted, density))
        .orElseGet(
            () ->
                finding(fitted.curve(), PASSED)
                    .message("the forecast lies within the temperatures and densities of your runs")
                    .build());
  }

  private static List<DensityPoint> points(
      RunningIntegral work, BiFunction<Double, Double, Estimate<VolumeFraction>> density) {
    List<DensityPoint> points = new ArrayList<>();
    for (double time : work.samples(work.start(), work.end())) {
      double logWork = work.logAt(time);
      DensityPoint.Builder point =
          DensityPoint.builder()
              .time(Amounts.seconds(time).to(TradeUnits.HOUR))
              .temperature(Amounts.kelvin(work.kelvinAt(time)).to(CELSIUS))
              .density(density.apply(time, logWork));
      if (Double.isFinite(logWork)) {
        point.logWork(Amounts.ratio(logWork / Math.log(10)));
      }
      points.add(point.build());
    }
    return points;
  }

  /**
   * The hold that reaches a density at the end of a profile, everything else in it as it is. The
   * part follows the programme without lag.
   *
   * @param fitted the curve
   * @param profile the programme, with a hold
   * @param segment the number of the hold, from 1 up, as in the profile's rows
   * @param target the relative density wanted, between those the curve goes from and to
   * @return the hold expected to do, and the one with which the low end of the band does
   * @throws IllegalArgumentException if the segment is no hold or the density is out of range
   */
  public HoldToDensity holdToReach(
      FittedSinteringCurve fitted, Profile profile, int segment, Amount<VolumeFraction> target) {
    int count = profile.segments().size();
    new Problems("hold to a density")
        .require(
            segment >= 1 && segment <= count && profile.segments().get(segment - 1).isHold(),
            "segment " + segment + " of " + count + " is no hold; accepted is the number of a hold")
        .refuseIfAny();
    Segment hold = profile.segments().get(segment - 1);
    SinteringCurve curve = fitted.curve();
    double wanted = curve.logWorkFor(target);
    ArrheniusIntegral integral = new ArrheniusIntegral(curve.activationEnergy());
    double others = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      if (i != segment - 1) {
        Segment other = profile.segments().get(i);
        double mean = integral.logMeanPerKelvin(other.start().si(), other.end().si());
        others = RunningIntegral.logSum(others, Math.log(other.duration().si()) + mean);
      }
    }
    double expected = 0;
    if (wanted > others) {
      // Theta of the hold = Theta wanted - Theta of the others = t exp(-Q / R T) / T
      double logHold = wanted + Math.log1p(-Math.exp(others - wanted));
      expected =
          Math.exp(logHold - logWorkPerSecond(curve.activationEnergy(), hold.start())) / 3600;
    }
    return ImmutableHoldToDensity.of(
        Amounts.hours(expected),
        safe(fitted, profile, segment, target, expected),
        range(fitted, TemperatureHistory.of(profile), target));
  }

  private Optional<Amount<Time>> safe(
      FittedSinteringCurve fitted,
      Profile profile,
      int segment,
      Amount<VolumeFraction> target,
      double expected) {
    double low = expected;
    double high = LONGEST_HOLD_HOURS;
    if (!reaches(fitted, profile, segment, target, high)) {
      return Optional.empty();
    }
    if (reaches(fitted, profile, segment, target, low)) {
      return Optional.of(Amounts.hours(low));
    }
    while (high - low > 1e-9 * high) {
      double middle = low > high / 2 ? (low + high) / 2 : Math.sqrt(Math.max(low, 1e-6) * high);
      if (reaches(fitted, profile, segment, target, middle)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return Optional.of(Amounts.hours(high));
  }

  private static boolean reaches(
      FittedSinteringCurve fitted,
      Profile profile,
      int segment,
      Amount<VolumeFraction> target,
      double hours) {
    List<Segment> segments = new ArrayList<>(profile.segments());
    Segment hold = segments.remove(segment - 1);
    if (hours > 0) {
      segments.add(segment - 1, Segment.of(hold.start(), hold.end(), Amounts.hours(hours)));
    }
    if (segments.isEmpty()) {
      return false;
    }
    TemperatureHistory history = TemperatureHistory.of(Profile.of(segments));
    WorkOfSintering work = new WorkOfSintering(fitted.curve().activationEnergy(), history);
    double end = work.along().end();
    return !new Band(fitted)
        .density(work.logAt(end), work.byEnergyAt(end))
        .span()
        .low()
        .isLessThan(target);
  }

  private static Optional<Finding> inRange(SinteringCurve curve, TemperatureHistory history) {
    Amount<Temperature> hottest = history.hottest().temperature();
    if (curve.range().contains(hottest)) {
      return Optional.empty();
    }
    boolean above = hottest.isGreaterThan(curve.range().high());
    return Optional.of(
        finding(curve, UNDETERMINED)
            .message(
                "the part gets "
                    + (above ? "as hot as " : "no hotter than ")
                    + hottest.format(CELSIUS, 0)
                    + ", and the curve was observed from "
                    + curve.range().format(CELSIUS, 0)
                    + (above ? ": above" : ": below")
                    + ", another mechanism may set in")
            .measured(hottest)
            .limit(above ? curve.range().high() : curve.range().low())
            .build());
  }

  private static Optional<Finding> beyond(
      FittedSinteringCurve fitted, Amount<VolumeFraction> density) {
    Span<VolumeFraction> seen = fitted.densities();
    if (!density.isGreaterThan(seen.high())) {
      return Optional.empty();
    }
    return Optional.of(
        finding(fitted.curve(), Severity.WARNING)
            .message(
                "a relative density of "
                    + percent(density)
                    + " is forecast, and your runs went up to "
                    + percent(seen.high())
                    + ": the last pores close more slowly than the curve knows")
            .measured(density)
            .limit(seen.high())
            .build());
  }

  private static Finding.Builder finding(SinteringCurve curve, Severity severity) {
    return DensificationFinding.SINTERING_CURVE
        .about(curve.name())
        .severity(severity)
        .basis(curve.source());
  }

  private static String percent(Amount<VolumeFraction> density) {
    return Amounts.ratio(density.si()).format(PERCENT, 1);
  }
}
