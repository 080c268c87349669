package dev.kilnledger.thermal.densification;

import dev.kilnledger.thermal.kinetics.ArrheniusIntegral;

/**
 * The sigmoid of a sintering curve as a function of the four numbers that are fitted, and its
 * derivatives by them.
 *
 * <p>They are Q in 100 kJ/mol, c = a + Q / (R Tr), ln b, and rho0. Along usual runs a moves with Q
 * almost as -Q / (R Tr) where Tr is a temperature at which the powder sinters, so c hardly moves
 * with Q and the least squares are well conditioned; ln b keeps b above zero.
 */
final class SigmoidModel {
  /** How many numbers are fitted. */
  static final int SIZE = 4;

  /** The unit of Q, in J/mol. */
  static final double ENERGY = 1e5;

  private final double perEnergy; // ENERGY / (R Tr)

  /** About a reference temperature, in K. */
  SigmoidModel(double referenceKelvin) {
    perEnergy = ENERGY / (ArrheniusIntegral.GAS_CONSTANT * referenceKelvin);
  }

  double[] numbers(double joulesPerMole, double location, double width, double initialDensity) {
    double energy = joulesPerMole / ENERGY;
    return new double[] {energy, location + energy * perEnergy, Math.log(width), initialDensity};
  }

  double location(double[] numbers) {
    return numbers[1] - numbers[0] * perEnergy;
  }

  double width(double[] numbers) {
    return Math.exp(numbers[2]);
  }

  /** The row that turns a change of the numbers into a change of a. */
  double[] locationGradient() {
    return new double[] {-perEnergy, 1, 0, 0};
  }

  double density(double[] numbers, double logWork) {
    return numbers[3] + (1 - numbers[3]) * share(numbers, logWork);
  }

  /** The derivatives by the numbers, given that of ln Theta by Q in J/mol. */
  double[] gradient(double[] numbers, double logWork, double logWorkByEnergy) {
    double share = share(numbers, logWork);
    double[] gradient = new double[SIZE];
    gradient[3] = 1 - share;
    double bySteps = (1 - numbers[3]) * share * (1 - share);
    if (bySteps > 0) {
      double width = width(numbers);
      gradient[0] = bySteps * (logWorkByEnergy * ENERGY + perEnergy) / width;
      gradient[1] = -bySteps / width;
      gradient[2] = -bySteps * (logWork - location(numbers)) / width;
    }
    return gradient;
  }

  private double share(double[] numbers, double logWork) {
    return 1 / (1 + Math.exp(-(logWork - location(numbers)) / width(numbers)));
  }

  /** The variance of a number that changes by a gradient with the fitted ones. */
  static double variance(double[] gradient, double[][] covariance) {
    double sum = 0;
    for (int i = 0; i < gradient.length; i++) {
      for (int j = 0; j < gradient.length; j++) {
        sum += gradient[i] * covariance[i][j] * gradient[j];
      }
    }
    return Math.max(0, sum);
  }
}
