package dev.kilnledger.thermal.burnout;

import dev.kilnledger.thermal.kinetics.ArrheniusIntegral;
import dev.kilnledger.thermal.kinetics.Frequencies;
import dev.kilnledger.thermal.kinetics.RunningIntegral;
import dev.kilnledger.thermal.kinetics.TemperatureHistory;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/** One kinetics along one history; times in s, temperatures in K, rates in 1/s. */
final class BurnOutRun {
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
  private static final int NARROWINGS = 60; // the bracket then is 3e-13 of what it was

  private final List<DecompositionStep> steps;
  private final ArrheniusIntegral[] integrals;
  private final RunningIntegral[] reducedTimes;

  BurnOutRun(BinderKinetics kinetics, TemperatureHistory history) {
    steps = kinetics.steps();
    integrals =
        steps.stream()
            .map(step -> new ArrheniusIntegral(step.activationEnergy()))
            .toArray(ArrheniusIntegral[]::new);
    reducedTimes =
        Arrays.stream(integrals)
            .map(integral -> integral.reducedTimeAlong(history))
            .toArray(RunningIntegral[]::new);
  }

  double start() {
    return reducedTimes[0].start();
  }

  double end() {
    return reducedTimes[0].end();
  }

  double kelvin(double time) {
    return reducedTimes[0].kelvinAt(time);
  }

  double remaining(double time) {
    double sum = 0;
    for (int i = 0; i < integrals.length; i++) {
      DecompositionStep step = steps.get(i);
      sum += step.massShare().si() * step.curve().unconverted(reducedTimes[i].logAt(time));
    }
    return sum;
  }

  double rate(double time) {
    double kelvin = kelvin(time);
    double sum = 0;
    for (int i = 0; i < integrals.length; i++) {
      DecompositionStep step = steps.get(i);
      sum +=
          step.massShare().si()
              * Math.exp(-integrals[i].exponent(kelvin))
              * step.curve().conversionPerReducedTime(reducedTimes[i].logAt(time));
    }
    return sum;
  }

  BurnOutPoint point(double time) {
    return BurnOutPoint.builder()
        .time(Amounts.seconds(time).to(TradeUnits.HOUR))
        .temperature(Amounts.kelvin(kelvin(time)).to(TradeUnits.CELSIUS))
        .remaining(Amounts.massFraction(remaining(time)))
        .rate(Frequencies.perSecond(rate(time)))
        .build();
  }

  /** When what remains has come down to a share; empty if it does not. */
  OptionalDouble timeTo(double remaining) {
    double low = start();
    double high = end();
    if (remaining(high) > remaining) {
      return OptionalDouble.empty();
    }
    // Until the two are neighbours among the doubles, or as good as.
    while (high - low > 4 * Math.ulp(high)) {
      double middle = low + (high - low) / 2;
      if (remaining(middle) > remaining) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return OptionalDouble.of(high);
  }

  /** Where in an interval a function of time is largest: the best sample, refined around. */
  double largest(double from, double to, DoubleUnaryOperator function) {
    double[] samples = samples(from, to);
    int best = 0;
    double value = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < samples.length; i++) {
      double at = function.applyAsDouble(samples[i]);
      if (at > value) {
        value = at;
        best = i;
      }
    }
    double refined =
        golden(
            samples[Math.max(0, best - 1)],
            samples[Math.min(samples.length - 1, best + 1)],
            function);
    return function.applyAsDouble(refined) > value ? refined : samples[best];
  }

  private static double golden(double from, double to, DoubleUnaryOperator function) {
    double low = from;
    double high = to;
    double left = high - GOLDEN * (high - low);
    double right = low + GOLDEN * (high - low);
    double atLeft = function.applyAsDouble(left);
    double atRight = function.applyAsDouble(right);
    for (int i = 0; i < NARROWINGS; i++) {
      if (atLeft > atRight) {
        high = right;
        right = left;
        atRight = atLeft;
        left = high - GOLDEN * (high - low);
        atLeft = function.applyAsDouble(left);
      } else {
        low = left;
        left = right;
        atLeft = atRight;
        right = low + GOLDEN * (high - low);
        atRight = function.applyAsDouble(right);
      }
    }
    return (low + high) / 2;
  }

  /** The times to draw; see {@link RunningIntegral#samples}. */
  double[] samples(double from, double to) {
    return reducedTimes[0].samples(from, to);
  }
}
