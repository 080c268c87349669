package dev.kilnledger.thermal.densification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.kilnledger.thermal.densification.LevenbergMarquardt.Evaluation;
import dev.kilnledger.thermal.densification.LevenbergMarquardt.Optimum;
import java.util.SplittableRandom;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;
import org.junit.jupiter.api.Test;

class LevenbergMarquardtTest {

  /** The same noisy sigmoids fitted by Hipparchus, an independent implementation. */
  @Test
  void agreesWithAnIndependentLibrary() {
    SplittableRandom random = new SplittableRandom(7);
    for (int trial = 0; trial < 50; trial++) {
      double[] target = new double[40];
      double middle = random.nextDouble(-1, 1);
      for (int i = 0; i < target.length; i++) {
        target[i] =
            0.6 + 0.35 / (1 + Math.exp(-(x(i) - middle) / 0.7)) + 0.005 * random.nextDouble(-1, 1);
      }
      double[] start = {0.55, 0.4, 0, 1};
      Optimum own = LevenbergMarquardt.fit(LevenbergMarquardtTest::sigmoid, target, start).get();
      LeastSquaresOptimizer.Optimum theirs =
          new LevenbergMarquardtOptimizer()
              .optimize(
                  new LeastSquaresBuilder()
                      .start(start)
                      .model(
                          point -> {
                            Evaluation at = sigmoid(point.toArray());
                            return new Pair<>(
                                new ArrayRealVector(at.values()),
                                new Array2DRowRealMatrix(at.gradients()));
                          })
                      .target(target)
                      .lazyEvaluation(false)
                      .maxEvaluations(1000)
                      .maxIterations(1000)
                      .build());
      for (int j = 0; j < 4; j++) {
        // The other stops at a relative step of 1e-10; its covariance is off accordingly.
        assertThat(own.parameters()[j]).isCloseTo(theirs.getPoint().getEntry(j), within(1e-6));
        double variance = theirs.getCovariances(1e-14).getEntry(j, j);
        assertThat(own.covariance()[j][j]).isCloseTo(variance, within(1e-5 * variance));
      }
      assertThat(own.squares())
          .isLessThanOrEqualTo(theirs.getCost() * theirs.getCost() * (1 + 1e-12));
    }
  }

  @Test
  void hasNoAnswerWhereAParameterPlaysNoPart() {
    assertThat(
            LevenbergMarquardt.fit(
                p -> {
                  double[][] gradients = {{1, 2}, {2, 4}, {3, 6}};
                  double sum = p[0] + 2 * p[1];
                  return new Evaluation(new double[] {sum, 2 * sum, 3 * sum}, gradients);
                },
                new double[] {1, 2, 3.1},
                new double[] {0, 0}))
        .isEmpty();
  }

  private static double x(int i) {
    return (i - 20) / 5.0;
  }

  private static Evaluation sigmoid(double[] p) {
    double[] values = new double[40];
    double[][] gradients = new double[40][];
    for (int i = 0; i < 40; i++) {
      double share = 1 / (1 + Math.exp(-(x(i) - p[2]) / p[3]));
      double slope = p[1] * share * (1 - share) / p[3];
      values[i] = p[0] + p[1] * share;
      gradients[i] = new double[] {1, share, -slope, -slope * (x(i) - p[2]) / p[3]};
    }
    return new Evaluation(values, gradients);
  }
}
