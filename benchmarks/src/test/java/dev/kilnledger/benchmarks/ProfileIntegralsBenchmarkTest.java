package dev.kilnledger.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import dev.kilnledger.benchmarks.ProfileIntegralsBenchmark.Integrals;
import org.junit.jupiter.api.Test;

/**
 * Both integrals of the same profile by mpmath 1.3 with 40 digits, each ramp in twenty pieces of
 * its quadrature.
 */
class ProfileIntegralsBenchmarkTest {
  private static final double REDUCED_TIME = 0.02276990950756153; // s
  private static final double WORK = 6.961532557754628e-8; // s/K

  private final ProfileIntegralsBenchmark benchmark = new ProfileIntegralsBenchmark();

  private static double error(Integrals found) {
    return Math.max(
        Math.abs(found.reducedTime() / REDUCED_TIME - 1), Math.abs(found.work() / WORK - 1));
  }

  /** As promised, 1e-13; asked are 1e-8. */
  @Test
  void theClosedFormIsExact() {
    assertThat(error(benchmark.closedForm())).isLessThan(1e-13);
  }

  /** What the peers are asked for; the closed form is at least as good. */
  @Test
  void thePeersKeepTheSameTolerance() {
    assertThat(error(benchmark.integrator())).isLessThan(1e-8);
    assertThat(error(benchmark.quadrature())).isLessThan(1e-8);
    assertThat(error(benchmark.closedForm())).isLessThanOrEqualTo(error(benchmark.integrator()));
  }
}
