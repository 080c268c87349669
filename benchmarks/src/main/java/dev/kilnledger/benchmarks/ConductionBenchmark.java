package dev.kilnledger.benchmarks;

import dev.kilnledger.thermal.conduction.Charge;
import dev.kilnledger.thermal.conduction.CoreHistory;
import dev.kilnledger.thermal.conduction.EnthalpyConduction;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amounts;
import java.util.concurrent.TimeUnit;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
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
 * The core of a {@link PackedCylinder} over {@link LongFiring}, to 0.5 K at every quarter of an
 * hour, on sixty cells.
 *
 * <p>The finite volumes of the library are held against the same cells integrated by {@link
 * AdaptiveBdf2}, as Hipparchus has no integrator for stiff equations, and for scale by an explicit
 * one of Hipparchus with adaptive steps, whose steps stability limits. The tolerance of each is the
 * loosest with which it keeps to 0.5 K; the library tells a history with findings beside it.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class ConductionBenchmark {
  private static final double OWN = 0.6; // K in a step
  private static final double EXPLICIT = 0.148;

  private final double implicit;

  private final Charge charge = PackedCylinder.charge();
  private final Profile profile = LongFiring.profile();
  private final EnthalpyConduction model =
      EnthalpyConduction.adaptive(PackedCylinder.CELLS, Amounts.kelvinDifference(OWN));
  private final double[] seconds = LongFiring.seconds();
  private final double[] kelvin = LongFiring.kelvin();

  /** As measured. */
  public ConductionBenchmark() {
    this(0.26);
  }

  /** With another error of the stiff method in a step, K. */
  ConductionBenchmark(double implicit) {
    this.implicit = implicit;
  }

  /** {@return the history by the library's finite volumes} */
  @Benchmark
  public CoreHistory finiteVolumes() {
    return model.forecast(charge, profile);
  }

  /** {@return the core each quarter of an hour by a stiff method on the same cells} */
  @Benchmark
  public double[] stiffIntegrator() {
    PackedCylinder.Cells cells = new PackedCylinder.Cells();
    AdaptiveBdf2 method =
        new AdaptiveBdf2(
            cells::rates, AdaptiveBdf2.even(PackedCylinder.CELLS, kelvin[0]), implicit);
    double[] core = new double[PackedCylinder.QUARTERS_OF_AN_HOUR];
    for (int i = 0; i + 1 < seconds.length; i++) {
      double slope = slope(i);
      cells.follow(seconds[i], kelvin[i], slope);
      method.to(seconds[i + 1], 60, step -> fill(core, step));
    }
    return core;
  }

  /** Fills in the quarters of an hour that a step has passed. */
  private static void fill(double[] core, AdaptiveBdf2 method) {
    double from = method.time - method.step;
    double c = PackedCylinder.Cells.core(method.state);
    double b = PackedCylinder.Cells.core(method.before);
    double bend = 0; // the second divided difference
    if (method.stepBefore > 0) {
      double a = PackedCylinder.Cells.core(method.earlier);
      bend =
          ((c - b) / method.step - (b - a) / method.stepBefore) / (method.step + method.stepBefore);
    }
    for (int i = (int) Math.floor(from / 900); 900.0 * (i + 1) <= method.time; i++) {
      double at = 900.0 * (i + 1) - from;
      if (at > 0) {
        core[i] = b + (c - b) * at / method.step + bend * at * (at - method.step);
      }
    }
  }

  /** {@return the core each quarter of an hour by an explicit method on the same cells} */
  @Benchmark
  public double[] explicitIntegrator() {
    PackedCylinder.Cells cells = new PackedCylinder.Cells();
    OrdinaryDifferentialEquation equations =
        new OrdinaryDifferentialEquation() {
          @Override
          public int getDimension() {
            return PackedCylinder.CELLS;
          }

          @Override
          public double[] computeDerivatives(double time, double[] state) {
            double[] rate = new double[state.length];
            cells.rates(time, state, rate);
            return rate;
          }
        };
    double[] core = new double[PackedCylinder.QUARTERS_OF_AN_HOUR];
    double[] state = AdaptiveBdf2.even(PackedCylinder.CELLS, kelvin[0]);
    for (int i = 0; i + 1 < seconds.length; i++) {
      cells.follow(seconds[i], kelvin[i], slope(i));
      ODEIntegrator method =
          new DormandPrince54Integrator(1e-3, seconds[i + 1] - seconds[i], EXPLICIT, 0);
      method.addStepHandler(
          step -> {
            double from = step.getPreviousState().getTime();
            double to = step.getCurrentState().getTime();
            for (int q = (int) Math.floor(from / 900); 900.0 * (q + 1) <= to; q++) {
              if (900.0 * (q + 1) > from) {
                core[q] =
                    PackedCylinder.Cells.core(
                        step.getInterpolatedState(900.0 * (q + 1)).getPrimaryState());
              }
            }
          });
      state =
          method
              .integrate(equations, new ODEState(seconds[i], state), seconds[i + 1])
              .getPrimaryState();
    }
    return core;
  }

  private double slope(int piece) {
    return (kelvin[piece + 1] - kelvin[piece]) / (seconds[piece + 1] - seconds[piece]);
  }
}
