package dev.kilnledger.thermal.burnout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class StraightLineTest {
  /**
   * By hand: means 3 and 4, sums of squares and products about them 10 and 6; so 2.2 + 0.6 x. The
   * residuals -0.8, 0.6, 1, -0.6 and -0.2 have 2.4 for their squares, 0.8 for each of three degrees
   * of freedom; the variances are 0.8 / 10 and 0.8 (1/5 + 9/10), the covariance -3 x 0.08.
   */
  @Test
  void isTheLineOfLeastSquaresWithItsVariances() {
    StraightLine line =
        new StraightLine(new double[] {1, 2, 3, 4, 5}, new double[] {2, 4, 5, 4, 5});
    assertThat(line.slope()).isCloseTo(0.6, within(1e-14));
    assertThat(line.intercept()).isCloseTo(2.2, within(1e-14));
    assertThat(line.degreesOfFreedom()).isEqualTo(3);
    assertThat(line.varianceOfSlope()).isCloseTo(0.08, within(1e-14));
    assertThat(line.varianceOfIntercept()).isCloseTo(0.88, within(1e-14));
    assertThat(line.covariance()).isCloseTo(-0.24, within(1e-14));
  }
}
