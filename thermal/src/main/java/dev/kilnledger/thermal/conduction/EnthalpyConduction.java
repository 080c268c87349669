package dev.kilnledger.thermal.conduction;

import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.Segment;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.SpecificEnergy;
import dev.kilnledger.units.quantity.TemperatureDifference;
import java.util.Optional;
import javax.measure.quantity.Time;

/**
 * Conduction by conservative finite volumes in the enthalpy form, for any layers, properties that
 * depend on temperature, convection, radiation and a back face:
 *
 * <pre>dE_i/dt = A q (inner face) - A q (outer face),   q = (K(T_i) - K(T_i+1)) / dx</pre>
 *
 * with E the enthalpy of a cell and K the integral of the conductivity over temperature, so that
 * variable properties cost no accuracy (S. V. Patankar, Numerical Heat Transfer and Fluid Flow; the
 * transformation is Kirchhoff's). Where layers meet and at the surfaces the face's temperature
 * balances what comes and goes. In time TR-BDF2, L-stable, with Newton's method, on steps that land
 * on the ends of segments. Second order in space and in time; what a cell loses its neighbour
 * gains, and the heat balance told with the result closes to some 1e-12 (1e-9 is promised).
 *
 * <p>Beyond the ends of a property's table its end values are taken, with a finding.
 *
 * <p>Example: a cylinder of 10 mm radius and 10 000 kg/m3 at 0 °C, whose conductivity rises from
 * 0.10 W/(m K) at 0 °C to 0.20 at 200 °C and whose heat capacity goes from 1000 J/(kg K) to 1200 at
 * 100 °C and back, is after 999 s in gas of 700 °C with 10 W/(m2 K) at 182.4 °C outside and 20.0 °C
 * inside.
 */
public final class EnthalpyConduction implements Conduction {
  private static final Source MODEL =
      Source.recomputed(
          "finite volumes in enthalpy form, TR-BDF2 (Patankar; Bank et al. 1985; Hosea and Shampine"
              + " 1996)");
  private static final int FEWEST_CELLS = 6;
  private static final int MOST_POINTS_IN_STEP = 200;

  /**
   * How far the kiln may be off the rate of before when the first step after a corner ends, in
   * tolerances: with less there are more steps, with more of them are tried in vain (measured).
   */
  private static final double AFTER_CORNER = 20;

  private final int cells;
  private final double tolerance; // K; infinity where the step is fixed
  private final double fixedStep; // s; infinity where it adapts
  private final double straight; // K, from the curve to the line between two points

  private EnthalpyConduction(int cells, double tolerance, double fixedStep) {
    this.cells = cells;
    this.tolerance = tolerance;
    this.fixedStep = fixedStep;
    this.straight =
        tolerance < Double.POSITIVE_INFINITY
            ? Math.max(CoreTrack.STRAIGHT, tolerance / 10)
            : CoreTrack.STRAIGHT;
  }

  /** {@return the model with 60 cells and an error of 0.001 K in a step} */
  public static EnthalpyConduction standard() {
    return adaptive(60, Amounts.kelvinDifference(1e-3));
  }

  /**
   * The model with steps that adapt to the error. Points are told so close that the lines between
   * them are within 0.002 K of the curve, or within a tenth of the tolerance where that is more.
   *
   * @param cells how many cells all layers share, 6 or more; each layer has 6 at least
   * @param tolerance the error of a step, above zero
   * @return the model
   * @throws IllegalArgumentException with all problems
   */
  public static EnthalpyConduction adaptive(int cells, Amount<TemperatureDifference> tolerance) {
    problems(cells).positive("tolerance", tolerance).refuseIfAny();
    return new EnthalpyConduction(cells, tolerance.si(), Double.POSITIVE_INFINITY);
  }

  /**
   * The model with even steps in each segment.
   *
   * @param cells how many cells all layers share, 6 or more; each layer has 6 at least
   * @param step the longest step, above zero
   * @return the model
   * @throws IllegalArgumentException with all problems
   */
  public static EnthalpyConduction fixedStep(int cells, Amount<Time> step) {
    problems(cells).positive("step", step).refuseIfAny();
    return new EnthalpyConduction(cells, Double.POSITIVE_INFINITY, step.si());
  }

  private static Problems problems(int cells) {
    return new Problems("enthalpy conduction")
        .require(
            cells >= FEWEST_CELLS, cells + " cells; accepted are " + FEWEST_CELLS + " or more");
  }

  /**
   * {@inheritDoc}
   *
   * @throws ArithmeticException if the equations of a step cannot be solved however short it is
   */
  @Override
  public CoreHistory forecast(Charge charge, Profile profile) {
    ChargeGrid grid = new ChargeGrid(charge, cells);
    double kiln = profile.start().si();
    double behind = charge.back().map(back -> back.temperature().si()).orElse(0.0);
    double start = charge.startTemperature().orElse(profile.start()).si();
    Run run =
        new Run(
            new TrBdf2(grid, start, kiln, behind, tolerance),
            new CoreTrack(charge, profile, MODEL),
            kiln);
    boolean even = start == kiln && charge.back().isEmpty();
    double step =
        Math.min(fixedStep, even ? profile.duration().si() : profile.duration().si() * 1e-5);
    double rate = 0;
    for (Segment segment : profile.segments()) {
      double rateBefore = rate;
      rate = (segment.end().si() - segment.start().si()) / segment.duration().si();
      step = Math.min(step, AFTER_CORNER * tolerance / Math.abs(rate - rateBefore));
      step = Math.min(fixedStep, run.pass(segment, step));
    }
    return run.history(grid.mass());
  }

  /** One computation on its way through a profile. */
  private final class Run {
    private final TrBdf2 steps;
    private final CoreTrack track;
    private final double storedAtStart;
    private double time;
    private double supplied;
    private double givenOff;

    Run(TrBdf2 steps, CoreTrack track, double kiln) {
      this.steps = steps;
      this.track = track;
      storedAtStart = steps.stored();
      TrBdf2.Moment start = steps.after();
      track.add(0, kiln, start.surface(), start.innermostFace(), start.core());
    }

    /** Steps through a segment, beginning with a length of step; returns the length to go on by. */
    double pass(Segment segment, double firstStep) {
      double duration = segment.duration().si();
      double from = time;
      double end = time + duration;
      double kilnStart = segment.start().si();
      double rate = (segment.end().si() - kilnStart) / duration;
      double step = fixedStep < Double.POSITIVE_INFINITY ? fixedStep : firstStep;
      while (time < end) {
        double left = end - time;
        double count = Math.max(1, Math.ceil(left / step - 1e-9));
        double length = left / count;
        double kiln = kilnStart + rate * (time - from);
        double next = count == 1 ? end : time + length;
        double kilnNext = count == 1 ? segment.end().si() : kiln + rate * length;
        if (!steps.tryStep(length, kiln, kilnNext)) {
          step = shortened(length / 2, duration);
          continue;
        }
        double growth = 1;
        if (tolerance < Double.POSITIVE_INFINITY) {
          double error = steps.error() / tolerance;
          growth = Math.min(4, Math.max(0.2, 0.9 / Math.cbrt(error)));
          if (error > 1) {
            step = shortened(length * growth, duration);
            continue;
          }
        }
        record(time, next, kiln, kilnNext);
        balance(steps.supplied());
        steps.accept();
        time = next;
        step = Math.min(fixedStep, Math.max(step, length) * growth);
      }
      return step;
    }

    private double shortened(double step, double duration) {
      if (step < 1e-13 * duration) {
        throw new ArithmeticException(
            "no step can be solved at "
                + Amounts.seconds(time)
                + "; accepted are properties without jumps");
      }
      return step;
    }

    private void balance(double heat) {
      supplied += Math.max(heat, 0);
      givenOff -= Math.min(heat, 0);
    }

    /** Adds the end of the tried step, and points between where the curve through it bends. */
    private void record(double from, double to, double kilnFrom, double kilnTo) {
      TrBdf2.Moment a = steps.before();
      TrBdf2.Moment b = steps.between();
      TrBdf2.Moment c = steps.after();
      double bend =
          Math.max(
              Math.abs(bend(a.core(), b.core(), c.core())),
              Math.abs(bend(a.surface(), b.surface(), c.surface())));
      int pieces =
          (int)
              Math.min(MOST_POINTS_IN_STEP, Math.max(1, Math.ceil(Math.sqrt(bend / 4 / straight))));
      for (int i = 1; i < pieces; i++) {
        double s = (double) i / pieces;
        track.add(
            from + s * (to - from),
            kilnFrom + s * (kilnTo - kilnFrom),
            between(a.surface(), b.surface(), c.surface(), s),
            between(a.innermostFace(), b.innermostFace(), c.innermostFace(), s),
            between(a.core(), b.core(), c.core(), s));
      }
      track.add(to, kilnTo, c.surface(), c.innermostFace(), c.core());
    }

    CoreHistory history(double mass) {
      return track.history(
          Optional.of(
              ImmutableHeatBalance.of(
                  perMass(supplied, mass),
                  perMass(givenOff, mass),
                  perMass(steps.stored() - storedAtStart, mass))));
    }
  }

  private static Amount<SpecificEnergy> perMass(double joules, double kilograms) {
    return Amounts.joulesPerGram(joules / kilograms / 1000);
  }

  /** The coefficient of s (s - 1) in the parabola through a at 0, b at gamma and c at 1. */
  private static double bend(double a, double b, double c) {
    return (c - a - (b - a) / TrBdf2.GAMMA) / (1 - TrBdf2.GAMMA);
  }

  private static double between(double a, double b, double c, double s) {
    return a + s * (c - a) + s * (s - 1) * bend(a, b, c);
  }
}
