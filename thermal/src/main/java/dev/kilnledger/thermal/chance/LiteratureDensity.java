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
  public double least(Draw draw, List<Felt> stages) {
    return known && !(work(draw, stages) < work(draw, usual().low(), hold().low()))
        ? Math.max(green, densities().low().si())
        : green;
  }

  @Override
  public double most(Draw draw, List<Felt> stages) {
    return known && !(work(draw, stages) > work(draw, usual().high(), hold().high()))
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

  private static double work(Draw draw, List<Felt> stages) {
    return Felt.logWork(integral(draw), stages);
  }

  private static double work(Draw draw, Amount<Temperature> at, Amount<Time> hold) {
    return Math.log(hold.si()) + integral(draw).logMeanPerKelvin(at.si(), at.si());
  }

  private static ArrheniusIntegral integral(Draw draw) {
    return new ArrheniusIntegral(Amounts.kilojoulesPerMole(draw.get(SINTERING_ENERGY) / 1000));
  }
}
