package dev.kilnledger.thermal.atmosphere;

import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.profile.GetterFill;
import dev.kilnledger.thermal.profile.Segment;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/** Follows the temperature of a charge and counts the oxygen that comes to the carbon; SI units. */
final class BudgetRun {
  /** How finely curves are drawn, s. The counts are exact on every straight piece. */
  private static final double STEP = 300;

  private static final double MONOXIDE_PER_CARBON =
      Species.CARBON_MONOXIDE.kilogramsPerMole() / Species.GRAPHITE.kilogramsPerMole();

  private final AirGas air;
  private final double quick;
  private final double onset;
  private final double limit;
  private final double volume;
  private final double inflowLow;
  private final double inflowHigh;
  private final List<BudgetPoint> points = new ArrayList<>();
  private final List<ReleaseStep> monoxide = new ArrayList<>();

  private double time;
  private double firstAir = Double.NaN; // kg O2 in the void at the start
  private double hottest;
  private double firstShare; // of the first air that has burnt
  private double drawnLow;
  private double drawnHigh;
  private double quickTime;
  private double burningTime;
  private double slowTime;
  private double slowTimeAfterPeak;
  private double oxygenWhileSlow;
  private double lastAtLimit;

  BudgetRun(
      AirGas air,
      Amount<Temperature> quickFrom,
      Amount<Temperature> oxidationLimit,
      GetterFill getter,
      CrucibleAir crucibleAir) {
    this.air = air;
    this.quick = quickFrom.si();
    this.onset = Math.min(quick, getter.getter().oxidationOnset().value().low().si());
    this.limit = oxidationLimit.si();
    this.volume = crucibleAir.voidVolume().si();
    this.inflowLow = crucibleAir.oxygenInflow().map(i -> i.value().low().si()).orElse(0.0);
    this.inflowHigh = crucibleAir.oxygenInflow().map(i -> i.value().high().si()).orElse(0.0);
  }

  void add(Segment segment) {
    double from = segment.start().si();
    double to = segment.end().si();
    if (Double.isNaN(firstAir)) {
      firstAir = AirGas.oxygenMass(air.moles(volume, from));
      hottest = from;
      burnFirst();
      point(from);
    }
    int steps = (int) Math.ceil(segment.duration().si() / STEP);
    double length = segment.duration().si() / steps;
    for (int i = 1; i <= steps; i++) {
      advance(
          from + (to - from) * (i - 1) / steps,
          i == steps ? to : from + (to - from) * i / steps,
          length);
    }
  }

  private void advance(double from, double to, double length) {
    double before = askedHigh();
    boolean towardsPeak = to > hottest;
    if (towardsPeak) {
      hottest = to;
      burnFirst();
    }
    drawnLow += drawn(from, to, quick);
    drawnHigh += drawn(from, to, onset);
    double quickShare = shareAbove(from, to, quick);
    double limitShare = shareAbove(from, to, limit);
    quickTime += length * quickShare;
    burningTime += length * shareAbove(from, to, onset);
    double slow = length * (limitShare - quickShare);
    slowTime += slow;
    slowTimeAfterPeak = towardsPeak ? 0 : slowTimeAfterPeak + slow;
    oxygenWhileSlow += inflowHigh * slow + drawn(Math.min(from, quick), to, limit);
    time += length;
    if (limitShare > 0) {
      // on cooling the share above the limit comes first
      lastAtLimit = to < limit ? time - length * (1 - limitShare) : time;
    }
    monoxide.add(
        ReleaseStep.of(
            Amounts.seconds(length),
            Amounts.gramsPerHour(
                Math.max(0, askedHigh() - before) * MONOXIDE_PER_CARBON / length * 3.6e6)));
    point(to);
  }

  /** The first air burns as the charge is first heated from the onset to where carbon is quick. */
  private void burnFirst() {
    firstShare =
        hottest >= quick ? 1 : Math.max(0, (hottest - onset) / Math.max(1e-9, quick - onset));
  }

  /**
   * Oxygen drawn in on a cooling from one temperature to another, as far as it is above a floor.
   */
  private double drawn(double from, double to, double floor) {
    double cold = Math.max(to, floor);
    return from > cold ? AirGas.oxygenMass(air.moles(volume, cold) - air.moles(volume, from)) : 0;
  }

  private static double shareAbove(double from, double to, double limit) {
    double high = Math.max(from, to);
    double low = Math.min(from, to);
    if (low >= limit) {
      return 1;
    }
    return high <= limit ? 0 : (high - limit) / (high - low);
  }

  private void point(double t) {
    points.add(
        BudgetPoint.of(
            Amounts.hours(time / 3600), Amounts.kelvin(t), grams(askedLow(), askedHigh())));
  }

  private double firstLow() {
    // cooler carbon never gets quick, and then nothing is sure to burn
    return hottest >= quick
        ? firstAir * Math.min(1, air.moles(volume, quick) / air.moles(volume, startTemperature()))
        : 0;
  }

  private double startTemperature() {
    return points.isEmpty() ? hottest : points.get(0).temperature().si();
  }

  private double askedLow() {
    return AirGas.CARBON_TO_DIOXIDE * (firstLow() + drawnLow + inflowLow * quickTime);
  }

  private double askedHigh() {
    return AirGas.CARBON_TO_MONOXIDE
        * (firstAir * firstShare + drawnHigh + inflowHigh * burningTime);
  }

  /** When the carbon asked for, at most or at least, reaches a mass, kg. */
  Optional<Amount<Time>> reached(double mass, boolean atMost) {
    ToDoubleFunction<BudgetPoint> asked =
        point -> (atMost ? point.carbonAsked().high() : point.carbonAsked().low()).si();
    for (int i = 1; i < points.size(); i++) {
      double after = asked.applyAsDouble(points.get(i));
      if (after > mass) {
        double before = asked.applyAsDouble(points.get(i - 1));
        double start = points.get(i - 1).time().si();
        double share = Math.max(0, (mass - before) / (after - before));
        return Optional.of(
            Amounts.hours((start + share * (points.get(i).time().si() - start)) / 3600));
      }
    }
    return Optional.empty();
  }

  List<BudgetPoint> points() {
    return points;
  }

  GasRelease carbonMonoxide() {
    return GasRelease.of(Substance.carbonMonoxide(), monoxide);
  }

  Span<Mass> first() {
    return grams(firstLow(), firstAir * firstShare);
  }

  /** The share of the first air that burns, at most; at least it is all or nothing. */
  double firstShare() {
    return firstShare;
  }

  boolean getsQuick() {
    return hottest >= quick;
  }

  Amount<Temperature> onset() {
    return Amounts.kelvin(onset).to(TradeUnits.CELSIUS);
  }

  Span<Mass> drawnIn() {
    return grams(drawnLow, drawnHigh);
  }

  Span<Mass> exchanged() {
    return grams(inflowLow * quickTime, inflowHigh * burningTime);
  }

  Span<Mass> asked() {
    return grams(askedLow(), askedHigh());
  }

  Amount<Time> quickTime() {
    return Amounts.hours(quickTime / 3600);
  }

  Amount<Time> burningTime() {
    return Amounts.hours(burningTime / 3600);
  }

  Amount<Time> tooSlow() {
    return Amounts.hours(slowTime / 3600);
  }

  Amount<Time> tooSlowOnCooling() {
    return Amounts.hours(slowTimeAfterPeak / 3600);
  }

  /** At most, kg. */
  double oxygenWhileSlow() {
    return oxygenWhileSlow;
  }

  /** From when on the charge is below the oxidation limit for good; the end if it never is. */
  Amount<Time> safeFrom() {
    return Amounts.hours(lastAtLimit / 3600);
  }

  private static Span<Mass> grams(double low, double high) {
    return Span.of(
        Amounts.kilograms(low).to(TradeUnits.GRAM), Amounts.kilograms(high).to(TradeUnits.GRAM));
  }
}
