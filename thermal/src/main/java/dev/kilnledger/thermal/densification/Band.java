package dev.kilnledger.thermal.densification;

import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.VolumeFraction;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * The band in which one further reading lies: {@code rho +- t sqrt(s² + g' C g)}, with s the
 * scatter of the readings, g the derivatives by the fitted numbers and C their covariance, cut off
 * at 0 and 1.
 */
final class Band {
  private final FittedSinteringCurve fitted;
  private final SigmoidModel model;
  private final double[] numbers;
  private final double[][] covariance = new double[SigmoidModel.SIZE][SigmoidModel.SIZE];
  private final double t;

  Band(FittedSinteringCurve fitted) {
    this.fitted = fitted;
    SinteringCurve curve = fitted.curve();
    model = new SigmoidModel(fitted.reference().si());
    numbers =
        model.numbers(
            curve.activationEnergy().si(),
            curve.location().si(),
            curve.width().si(),
            curve.initialDensity().si());
    for (int i = 0; i < covariance.length; i++) {
      for (int j = 0; j < covariance.length; j++) {
        covariance[i][j] = fitted.covariance().get(i * SigmoidModel.SIZE + j);
      }
    }
    t =
        TDistribution.of(fitted.degreesOfFreedom())
            .inverseSurvivalProbability((1 - fitted.confidence().si()) / 2);
  }

  Estimate<VolumeFraction> density(double logWork, double logWorkByEnergy) {
    double density = model.density(numbers, logWork);
    double[] gradient = model.gradient(numbers, logWork, logWorkByEnergy);
    double scatter = fitted.scatter().si();
    double half = t * Math.sqrt(scatter * scatter + SigmoidModel.variance(gradient, covariance));
    return Estimate.of(
        Amounts.volumeFraction(Math.max(0, density - half)),
        Amounts.volumeFraction(density),
        Amounts.volumeFraction(Math.min(1, density + half)));
  }
}
