package dev.kilnledger.thermal.chance;

import static dev.kilnledger.thermal.chance.FiringInput.CURVE_LOCATION;
import static dev.kilnledger.thermal.chance.FiringInput.CURVE_WIDTH;
import static dev.kilnledger.thermal.chance.FiringInput.DENSITY_SCATTER;
import static dev.kilnledger.thermal.chance.FiringInput.INITIAL_DENSITY;
import static dev.kilnledger.thermal.chance.FiringInput.SINTERING_ENERGY;

import dev.kilnledger.thermal.densification.FittedSinteringCurve;
import dev.kilnledger.thermal.densification.SinteringCurve;
import dev.kilnledger.thermal.kinetics.ArrheniusIntegral;
import dev.kilnledger.units.Amounts;
import java.util.List;

/**
 * The density by the user's own curve, its four numbers off as their covariance says: numbers =
 * fitted + L z, with L L' the covariance (Cholesky) and z what was drawn. The first number is Q, so
 * that the first of z moves Q and with it, by their correlation, all the others.
 */
final class CurveDensity implements DensityModel {
  private static final int SIZE = 4;
  private static final double ENERGY = 1e5; // J/mol, the unit of Q among the fitted numbers
  private static final double LEAST_ENERGY = 0.1; // of Q: what is drawn lower means nothing

  private final double[] fitted;
  private final double[][] root;
  private final double scatter;
  private final double perEnergy; // of a on Q: a = c - Q / (R Tr)

  CurveDensity(FittedSinteringCurve curve) {
    SinteringCurve middle = curve.curve();
    double energy = middle.activationEnergy().si() / ENERGY;
    double base = middle.base().factor();
    perEnergy = ENERGY / (ArrheniusIntegral.GAS_CONSTANT * curve.reference().si());
    fitted =
        new double[] {
          energy,
          middle.location().si() * base + energy * perEnergy,
          Math.log(middle.width().si() * base),
          middle.initialDensity().si()
        };
    root = root(curve.covariance());
    scatter = curve.scatter().si();
  }

  @Override
  public double least(Draw draw, List<Felt> stages) {
    double[] z = {
      draw.get(SINTERING_ENERGY),
      draw.get(CURVE_LOCATION),
      draw.get(CURVE_WIDTH),
      draw.get(INITIAL_DENSITY)
    };
    double[] numbers = fitted.clone();
    for (int i = 0; i < SIZE; i++) {
      for (int j = 0; j <= i; j++) {
        numbers[i] += root[i][j] * z[j];
      }
    }
    double energy = Math.max(numbers[0], LEAST_ENERGY * fitted[0]);
    ArrheniusIntegral integral =
        new ArrheniusIntegral(Amounts.kilojoulesPerMole(energy * ENERGY / 1000));
    double location = numbers[1] - energy * perEnergy;
    double steps = (Felt.logWork(integral, stages) - location) / Math.exp(numbers[2]);
    double density = numbers[3] + (1 - numbers[3]) / (1 + Math.exp(-steps));
    return Math.max(0, Math.min(1, density + scatter * draw.get(DENSITY_SCATTER)));
  }

  @Override
  public double most(Draw draw, List<Felt> stages) {
    return least(draw, stages);
  }

  /**
   * The lower triangle whose product with its transpose is the covariance, which may be singular.
   */
  static double[][] root(List<Double> covariance) {
    double[][] root = new double[SIZE][SIZE];
    for (int j = 0; j < SIZE; j++) {
      for (int i = j; i < SIZE; i++) {
        double sum = covariance.get(i * SIZE + j);
        for (int k = 0; k < j; k++) {
          sum -= root[i][k] * root[j][k];
        }
        if (i == j) {
          // what is left of a variance that the numbers before explain may be rounding
          root[j][j] = sum > 1e-14 * covariance.get(j * SIZE + j) ? Math.sqrt(sum) : 0;
        } else {
          root[i][j] = root[j][j] == 0 ? 0 : sum / root[j][j];
        }
      }
    }
    return root;
  }
}
