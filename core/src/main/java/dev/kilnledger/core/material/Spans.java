package dev.kilnledger.core.material;

import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.MassFraction;
import dev.kilnledger.units.quantity.VolumeFraction;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import si.uom.quantity.Density;

/** Spans and estimates as short as a table writes them, for the standard library. */
final class Spans {
  private Spans() {}

  static Span<MassFraction> massPercent(double low, double high) {
    return Span.of(Amounts.massPercent(low), Amounts.massPercent(high));
  }

  static Span<MassFraction> massFraction(double low, double high) {
    return Span.of(Amounts.massFraction(low), Amounts.massFraction(high));
  }

  static Span<Temperature> celsius(double low, double high) {
    return Span.of(Amounts.celsius(low), Amounts.celsius(high));
  }

  static Span<Time> hours(double low, double high) {
    return Span.of(Amounts.hours(low), Amounts.hours(high));
  }

  static Span<Density> kilogramsPerCubicMetre(double low, double high) {
    return Span.of(Amounts.kilogramsPerCubicMetre(low), Amounts.kilogramsPerCubicMetre(high));
  }

  static Span<Dimensionless> vickers(double low, double high) {
    return Span.of(Amounts.ratio(low), Amounts.ratio(high));
  }

  static Estimate<VolumeFraction> volumeFraction(double low, double expected, double high) {
    return Estimate.of(
        Amounts.volumeFraction(low),
        Amounts.volumeFraction(expected),
        Amounts.volumeFraction(high));
  }

  static Estimate<MassFraction> massFraction(double low, double expected, double high) {
    return Estimate.of(
        Amounts.massFraction(low), Amounts.massFraction(expected), Amounts.massFraction(high));
  }

  static Estimate<Density> density(double low, double expected, double high) {
    return Estimate.of(
        Amounts.kilogramsPerCubicMetre(low),
        Amounts.kilogramsPerCubicMetre(expected),
        Amounts.kilogramsPerCubicMetre(high));
  }
}
