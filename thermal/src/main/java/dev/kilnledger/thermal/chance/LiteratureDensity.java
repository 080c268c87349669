package dev.kilnledger.thermal.chance;

import static dev.kilnledger.thermal.chance.FiringInput.SINTERING_ENERGY;

import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.kinetics.ArrheniusIntegral;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.util.List;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/**
 * The interval of density without a curve of one's own powder: more work of sintering than the
 * coolest and shortest usual firing gives no less than the usual density, less than the hottest and
 * longest no more; as {@code DensificationLimits}, but for one activation energy at a time.
 */
final class LiteratureDensity implements DensityModel {
  private final Alloy alloy;
  private final double green;
  private final boolean known;

  LiteratureDensity(Alloy alloy, Amount<VolumeFraction> metalInGreen, boolean energyKnown) {
    this.alloy = alloy;
    green = metalInGreen.si();
    known = energyKnown;
  }

  @Override
  public double least(double[] values, List<Felt> stages) {
    return known && !(work(values, stages) < work(values, usual().low(), hold().low()))
        ? Math.max(green, densities().low().si())
        : green;
  }

  @Override
  public double most(double[] values, List<Felt> stages) {
    return known && !(work(values, stages) > work(values, usual().high(), hold().high()))
        ? Math.max(green, densities().high().si())
        : 1;
  }

  private Span<Temperature> usual() {
    return alloy.sinteringWindow().value();
  }

  private Span<Time> hold() {
    return alloy.sinteringHold().value();
  }

  private Span<VolumeFraction> densities() {
    return alloy.expectedRelativeDensity().value().span();
  }

  private static double work(double[] values, List<Felt> stages) {
    return Felt.logWork(integral(values), stages);
  }

  private static double work(double[] values, Amount<Temperature> at, Amount<Time> hold) {
    return Math.log(hold.si()) + integral(values).logMeanPerKelvin(at.si(), at.si());
  }

  private static ArrheniusIntegral integral(double[] values) {
    return new ArrheniusIntegral(
        Amounts.kilojoulesPerMole(values[SINTERING_ENERGY.ordinal()] / 1000));
  }
}
