package dev.kilnledger.benchmarks;

import dev.kilnledger.thermal.kinetics.ArrheniusIntegral;
import dev.kilnledger.thermal.kinetics.TemperatureHistory;
import dev.kilnledger.units.Amounts;
import java.util.concurrent.TimeUnit;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What decides over binder and density at the end of {@link LongFiring}: the reduced time of a
 * binder of 150 kJ/mol and the work of sintering at 210 kJ/mol, to 1e-8 of each.
 *
 * <p>The closed form is held against two ways of Hipparchus at that tolerance, both piece by piece,
 * so that they meet no corner within: an integrator of order 8 with both integrals as one state,
 * and Gauss-Legendre quadrature that doubles its pieces until they agree, holds being left to a
 * product. The closed form is exact to 1e-13, the peers to what they were asked.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class ProfileIntegralsBenchmark {
  static final double BINDER = 150;
  static final double SINTERING = 210;

  private static final double TOLERANCE = 1e-8;
  private static final double BINDER_KELVIN = 1000 * BINDER / ArrheniusIntegral.GAS_CONSTANT;
  private static final double SINTERING_KELVIN = 1000 * SINTERING / ArrheniusIntegral.GAS_CONSTANT;

  private final TemperatureHistory history = TemperatureHistory.of(LongFiring.profile());
  private final double[] seconds = LongFiring.seconds();
  private final double[] kelvin = LongFiring.kelvin();

  /**
   * The two integrals.
   *
   * @param reducedTime of the binder, s
   * @param work of sintering, s/K
   */
  public record Integrals(double reducedTime, double work) {}

  /** {@return the integrals in closed form} */
  @Benchmark
  public Integrals closedForm() {
    return new Integrals(
        Math.exp(
            new ArrheniusIntegral(Amounts.kilojoulesPerMole(BINDER))
                .reducedTimeAlong(history)
                .logAtEnd()),
        Math.exp(
            new ArrheniusIntegral(Amounts.kilojoulesPerMole(SINTERING))
                .workAlong(history)
                .logAtEnd()));
  }

  /** {@return the integrals by an integrator of order 8 with adaptive steps} */
  @Benchmark
  public Integrals integrator() {
    // What is gained before the hot end is nothing beside it: errors are told by the whole, about.
    double[] absolute = {TOLERANCE * 2e-2, TOLERANCE * 7e-8};
    double[] state = {0, 0};
    for (int i = 0; i + 1 < seconds.length; i++) {
      ODEIntegrator method =
          new DormandPrince853Integrator(
              1e-3, seconds[i + 1] - seconds[i], absolute, new double[] {TOLERANCE, TOLERANCE});
      state =
          method
              .integrate(new Rates(i), new ODEState(seconds[i], state), seconds[i + 1])
              .getPrimaryState();
    }
    return new Integrals(state[0], state[1]);
  }

  /** {@return the integrals by Gauss-Legendre quadrature, refined until it agrees} */
  @Benchmark
  public Integrals quadrature() {
    IterativeLegendreGaussIntegrator rule =
        new IterativeLegendreGaussIntegrator(5, TOLERANCE, 1e-300);
    double reducedTime = 0;
    double work = 0;
    for (int i = 0; i + 1 < seconds.length; i++) {
      reducedTime += over(i, rule, ProfileIntegralsBenchmark::rate);
      work += over(i, rule, ProfileIntegralsBenchmark::workRate);
    }
    return new Integrals(reducedTime, work);
  }

  private double over(
      int piece, IterativeLegendreGaussIntegrator rule, DoubleUnaryOperator integrand) {
    double duration = seconds[piece + 1] - seconds[piece];
    double from = kelvin[piece];
    double to = kelvin[piece + 1];
    if (from == to) {
      return duration * integrand.applyAsDouble(from);
    }
    double sum =
        rule.integrate(100_000, integrand::applyAsDouble, Math.min(from, to), Math.max(from, to));
    return sum * duration / Math.abs(to - from);
  }

  private static double rate(double kelvin) {
    return Math.exp(-BINDER_KELVIN / kelvin);
  }

  private static double workRate(double kelvin) {
    return Math.exp(-SINTERING_KELVIN / kelvin) / kelvin;
  }

  /** The two rates along one piece of the profile. */
  private final class Rates implements OrdinaryDifferentialEquation {
    private final double start;
    private final double from;
    private final double slope;

    Rates(int piece) {
      start = seconds[piece];
      from = kelvin[piece];
      slope = (kelvin[piece + 1] - from) / (seconds[piece + 1] - start);
    }

    @Override
    public int getDimension() {
      return 2;
    }

    @Override
    public double[] computeDerivatives(double time, double[] state) {
      double now = from + slope * (time - start);
      return new double[] {rate(now), workRate(now)};
    }
  }
}
