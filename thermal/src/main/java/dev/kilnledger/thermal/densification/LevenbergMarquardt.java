package dev.kilnledger.thermal.densification;

import java.util.Optional;

/**
 * Least squares for a smooth model with a handful of parameters: Levenberg's and Marquardt's damped
 * steps on the normal equations, each parameter scaled by its own curvature (Marquardt, J. SIAM 11
 * (1963) 431; from memory).
 */
@SuppressWarnings(
    "ArrayRecordComponent") // its records are never compared and never leave the package
final class LevenbergMarquardt {
  private static final int MOST_STEPS = 500;
  private static final double WEAKEST_DAMPING = 1e-12;
  private static final double STRONGEST_DAMPING = 1e12;
  private static final double SINGULAR = 1e-14;

  /** What is fitted. */
  interface Model {
    /** The model's values and their gradients at some parameters. */
    Evaluation at(double[] parameters);
  }

  /** Values, one for each reading, and for each the derivatives by the parameters. */
  record Evaluation(double[] values, double[][] gradients) {}

  /**
   * Where the squares are least.
   *
   * @param parameters the parameters there
   * @param squares the sum of squares
   * @param covariance of the parameters, for readings of unit variance
   */
  record Optimum(double[] parameters, double squares, double[][] covariance) {}

  private LevenbergMarquardt() {}

  /** The optimum next to a start; empty if the readings do not determine all parameters. */
  static Optional<Optimum> fit(Model model, double[] target, double[] start) {
    double[] parameters = start.clone();
    Evaluation evaluation = model.at(parameters);
    double squares = squares(evaluation, target);
    double damping = 1e-3;
    for (int step = 0; step < MOST_STEPS && damping < STRONGEST_DAMPING; step++) {
      double[][] normal = normal(evaluation.gradients());
      double[] trial = stepped(parameters, normal, downhill(evaluation, target), damping);
      Evaluation there = model.at(trial);
      double less = squares(there, target);
      if (less < squares) {
        parameters = trial;
        evaluation = there;
        squares = less;
        damping = Math.max(damping / 10, WEAKEST_DAMPING);
      } else {
        damping *= 10; // until no step, however short, leads further down
      }
    }
    double[] found = parameters;
    double least = squares;
    return inverse(normal(evaluation.gradients()), 0)
        .map(covariance -> new Optimum(found, least, covariance));
  }

  private static double squares(Evaluation evaluation, double[] target) {
    double sum = 0;
    for (int i = 0; i < target.length; i++) {
      double residual = target[i] - evaluation.values()[i];
      sum += residual * residual;
    }
    return Double.isNaN(sum) ? Double.POSITIVE_INFINITY : sum;
  }

  private static double[][] normal(double[][] gradients) {
    int size = gradients[0].length;
    double[][] normal = new double[size][size];
    for (double[] gradient : gradients) {
      for (int j = 0; j < size; j++) {
        for (int k = 0; k < size; k++) {
          normal[j][k] += gradient[j] * gradient[k];
        }
      }
    }
    return normal;
  }

  private static double[] downhill(Evaluation evaluation, double[] target) {
    double[] downhill = new double[evaluation.gradients()[0].length];
    for (int i = 0; i < target.length; i++) {
      double residual = target[i] - evaluation.values()[i];
      for (int j = 0; j < downhill.length; j++) {
        downhill[j] += evaluation.gradients()[i][j] * residual;
      }
    }
    return downhill;
  }

  private static double[] stepped(
      double[] parameters, double[][] normal, double[] downhill, double damping) {
    double[] trial = parameters.clone();
    inverse(normal, damping)
        .ifPresent(
            inverse -> {
              for (int j = 0; j < trial.length; j++) {
                for (int k = 0; k < trial.length; k++) {
                  trial[j] += inverse[j][k] * downhill[k];
                }
              }
            });
    return trial;
  }

  /** The inverse by Gauss and Jordan, scaled to a unit diagonal; empty if singular to rounding. */
  private static Optional<double[][]> inverse(double[][] matrix, double damping) {
    int size = matrix.length;
    double[] scale = new double[size];
    double[][] work = new double[size][2 * size];
    for (int j = 0; j < size; j++) {
      scale[j] = Math.sqrt(matrix[j][j]);
    }
    for (int j = 0; j < size; j++) {
      for (int k = 0; k < size; k++) {
        work[j][k] = matrix[j][k] / (scale[j] * scale[k]) + (j == k ? damping : 0);
      }
      work[j][size + j] = 1;
    }
    for (int column = 0; column < size; column++) {
      int pivot = column;
      for (int row = column + 1; row < size; row++) {
        pivot = Math.abs(work[row][column]) > Math.abs(work[pivot][column]) ? row : pivot;
      }
      double[] swapped = work[pivot];
      work[pivot] = work[column];
      work[column] = swapped;
      double head = swapped[column];
      if (!(Math.abs(head) > SINGULAR)) {
        return Optional.empty();
      }
      for (int k = 0; k < 2 * size; k++) {
        swapped[k] /= head;
      }
      for (int row = 0; row < size; row++) {
        double factor = work[row][column];
        for (int k = 0; row != column && k < 2 * size; k++) {
          work[row][k] -= factor * swapped[k];
        }
      }
    }
    double[][] inverse = new double[size][size];
    for (int j = 0; j < size; j++) {
      for (int k = 0; k < size; k++) {
        inverse[j][k] = work[j][size + k] / (scale[j] * scale[k]);
      }
    }
    return Optional.of(inverse);
  }
}
