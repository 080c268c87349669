package dev.kilnledger.examples.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** A thinned curve is the same to the eye: that is what its tolerance says. */
class CurveTest {
  @Test
  void everyPointLeftOutLiesWithinTheToleranceOfTheLineDrawn() {
    Random random = new Random(11);
    for (int round = 0; round < 50; round++) {
      Curve curve = walk(random, 400);
      Curve thinned = curve.thinned(0.7);
      assertThat(thinned.x()).hasSizeLessThan(curve.x().length);
      for (int i = 0; i < curve.x().length; i++) {
        assertThat(at(thinned, curve.x()[i])).isCloseTo(curve.y()[i], within(0.7 + 1e-9));
      }
    }
  }

  @Test
  void aStraightLineKeepsItsEndsAndACornerStays() {
    Curve line = new Curve(new double[] {0, 1, 2, 3, 4}, new double[] {0, 2, 4, 6, 8});
    assertThat(line.thinned(0.01).x()).containsExactly(0, 4);
    Curve corner = new Curve(new double[] {0, 1, 2, 3, 4}, new double[] {0, 5, 10, 5, 0});
    assertThat(corner.thinned(0.01).x()).containsExactly(0, 2, 4);
  }

  private static Curve walk(Random random, int points) {
    double[] x = new double[points];
    double[] y = new double[points];
    for (int i = 1; i < points; i++) {
      x[i] = x[i - 1] + 0.1 + random.nextDouble();
      y[i] = y[i - 1] + random.nextGaussian() * 0.3;
    }
    return new Curve(x, y);
  }

  private static double at(Curve curve, double x) {
    int i = 1;
    while (curve.x()[i] < x) {
      i++;
    }
    double share = (x - curve.x()[i - 1]) / (curve.x()[i] - curve.x()[i - 1]);
    return curve.y()[i - 1] + share * (curve.y()[i] - curve.y()[i - 1]);
  }
}
