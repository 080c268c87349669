package dev.kilnledger.thermal.burnout;

/**
 * The least-squares line {@code y = intercept + slope x} with the variances of its two numbers (any
 * textbook of statistics).
 */
final class StraightLine {
  private final int count;
  private final double meanX;
  private final double slope;
  private final double intercept;
  private final double spreadX; // sum of squares about the mean
  private final double squares; // of the residuals

  /** Through points whose x are not all the same. */
  StraightLine(double[] x, double[] y) {
    count = x.length;
    double sumX = 0;
    double sumY = 0;
    for (int i = 0; i < count; i++) {
      sumX += x[i];
      sumY += y[i];
    }
    meanX = sumX / count;
    double meanY = sumY / count;
    double xx = 0;
    double xy = 0;
    for (int i = 0; i < count; i++) {
      xx += (x[i] - meanX) * (x[i] - meanX);
      xy += (x[i] - meanX) * (y[i] - meanY);
    }
    spreadX = xx;
    slope = xy / xx;
    intercept = meanY - slope * meanX;
    double sum = 0;
    for (int i = 0; i < count; i++) {
      double residual = y[i] - meanY - slope * (x[i] - meanX);
      sum += residual * residual;
    }
    squares = sum;
  }

  double slope() {
    return slope;
  }

  double intercept() {
    return intercept;
  }

  int degreesOfFreedom() {
    return count - 2;
  }

  double varianceOfSlope() {
    return squares / degreesOfFreedom() / spreadX;
  }

  double varianceOfIntercept() {
    return squares / degreesOfFreedom() * (1.0 / count + meanX * meanX / spreadX);
  }

  double covariance() {
    return -meanX * varianceOfSlope();
  }
}
