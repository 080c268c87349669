package dev.kilnledger.thermal.burnout;

import dev.kilnledger.thermal.kinetics.ArrheniusIntegral;
import dev.kilnledger.thermal.kinetics.RunningIntegral;
import dev.kilnledger.units.Amounts;
import java.util.Arrays;
import java.util.List;

/**
 * The binder at one temperature on its way up, given by the reduced time of each step; K, s, 1/s.
 *
 * <p>Along a ramp of rate r the reduced time grows by a number that depends on the temperatures,
 * over r. So the integrals of a {@link Ramp} are worked out once for every rate that is tried.
 */
final class RampState {
  private final List<DecompositionStep> steps;
  private final ArrheniusIntegral[] integrals;
  private final LossRateLimit limit;
  private final double kelvin;
  private final double[] logs;

  /** Before anything has left. */
  RampState(BinderKinetics kinetics, LossRateLimit limit, double kelvin) {
    this(
        kinetics.steps(),
        kinetics.steps().stream()
            .map(step -> new ArrheniusIntegral(step.activationEnergy()))
            .toArray(ArrheniusIntegral[]::new),
        limit,
        kelvin,
        kinetics.steps().stream().mapToDouble(step -> Double.NEGATIVE_INFINITY).toArray());
  }

  private RampState(
      List<DecompositionStep> steps,
      ArrheniusIntegral[] integrals,
      LossRateLimit limit,
      double kelvin,
      double[] logs) {
    this.steps = steps;
    this.integrals = integrals;
    this.limit = limit;
    this.kelvin = kelvin;
    this.logs = logs;
  }

  double remaining() {
    double sum = 0;
    for (int i = 0; i < logs.length; i++) {
      sum += steps.get(i).massShare().si() * steps.get(i).curve().unconverted(logs[i]);
    }
    return sum;
  }

  /** The rate of loss as a share of the allowed one. */
  double use() {
    return use(kelvin, logs, limit.allowedAt(Amounts.kelvin(kelvin)).si());
  }

  private double use(double at, double[] reduced, double allowed) {
    double rate = 0;
    for (int i = 0; i < reduced.length; i++) {
      rate +=
          steps.get(i).massShare().si()
              * Math.exp(-integrals[i].exponent(at))
              * steps.get(i).curve().conversionPerReducedTime(reduced[i]);
    }
    return rate / allowed;
  }

  Ramp rampTo(double target) {
    return new Ramp(target);
  }

  /** The seconds at this temperature until so much remains. */
  double holdUntil(double remaining) {
    if (remaining() <= remaining) {
      return 0;
    }
    double low = 0;
    double high = 1;
    while (held(high).remaining() > remaining) {
      low = high;
      high *= 2;
    }
    while (high - low > 1e-12 * high) {
      double middle = (low + high) / 2;
      if (held(middle).remaining() > remaining) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  private RampState held(double seconds) {
    double[] later = logs.clone();
    for (int i = 0; i < later.length; i++) {
      later[i] =
          RunningIntegral.logSum(later[i], Math.log(seconds) - integrals[i].exponent(kelvin));
    }
    return new RampState(steps, integrals, limit, kelvin, later);
  }

  /** A ramp from here, of a rate that is still open. */
  final class Ramp {
    private static final double SAMPLE_KELVIN = 2;
    private static final int FEWEST_SAMPLES = 8;

    private final double[] temperatures;
    private final double[] allowed;
    private final double[][] logKelvins; // ln of the integral of exp(-E/RT) dT, by sample and step

    private Ramp(double target) {
      int pieces = (int) Math.max(FEWEST_SAMPLES, Math.ceil((target - kelvin) / SAMPLE_KELVIN));
      temperatures = new double[pieces + 1];
      allowed = new double[pieces + 1];
      logKelvins = new double[pieces + 1][logs.length];
      Arrays.fill(logKelvins[0], Double.NEGATIVE_INFINITY);
      for (int j = 0; j <= pieces; j++) {
        double at = j == pieces ? target : kelvin + (target - kelvin) * j / pieces;
        temperatures[j] = at;
        allowed[j] = limit.allowedAt(Amounts.kelvin(at)).si();
        for (int i = 0; j > 0 && i < logs.length; i++) {
          double before = temperatures[j - 1];
          logKelvins[j][i] =
              RunningIntegral.logSum(
                  logKelvins[j - 1][i], Math.log(at - before) + integrals[i].logMean(before, at));
        }
      }
    }

    double kelvin() {
      return temperatures[temperatures.length - 1] - temperatures[0];
    }

    /** The state at its end, when run at a rate in K/s. */
    RampState end(double rate) {
      int last = temperatures.length - 1;
      return new RampState(
          steps, integrals, limit, temperatures[last], logsAt(last, Math.log(rate)));
    }

    /**
     * The highest rate in K/s, up to the fastest, at which the limit is kept; zero if there is
     * none. The faster a ramp the more binder is left at each temperature, so the use grows with
     * the rate and bisection finds it.
     */
    double fastest(double fastest) {
      if (highestUse(fastest) <= 1) {
        return fastest;
      }
      double high = Math.log(fastest);
      double low = high - 1;
      while (highestUse(Math.exp(low)) > 1) {
        high = low;
        low -= 1;
        if (fastest / Math.exp(low) > 1e9) {
          return 0;
        }
      }
      while (high - low > 1e-9) {
        double middle = (low + high) / 2;
        if (highestUse(Math.exp(middle)) > 1) {
          high = middle;
        } else {
          low = middle;
        }
      }
      return Math.exp(low);
    }

    private double highestUse(double rate) {
      double logRate = Math.log(rate);
      double[] uses = new double[temperatures.length];
      int best = 0;
      for (int j = 0; j < uses.length; j++) {
        uses[j] = use(temperatures[j], logsAt(j, logRate), allowed[j]);
        if (uses[j] > uses[best]) {
          best = j;
        }
      }
      if (best == 0 || best == uses.length - 1) {
        return uses[best];
      }
      // The top of the parabola through the best sample and its neighbours.
      double before = uses[best - 1];
      double after = uses[best + 1];
      double bend = 2 * uses[best] - before - after;
      return bend > 0 ? uses[best] + (after - before) * (after - before) / (8 * bend) : uses[best];
    }

    private double[] logsAt(int sample, double logRate) {
      double[] reduced = new double[logs.length];
      for (int i = 0; i < reduced.length; i++) {
        reduced[i] = RunningIntegral.logSum(logs[i], logKelvins[sample][i] - logRate);
      }
      return reduced;
    }
  }
}
