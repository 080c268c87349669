package dev.kilnledger.thermal.chance;

import dev.kilnledger.thermal.kinetics.ArrheniusIntegral;
import dev.kilnledger.thermal.kinetics.RunningIntegral;
import java.util.List;

/** What the core feels in one stage of one draw, as straight lines; s and K. */
final class Felt {
  /** A line whose exponent is so much larger than the smallest gives nothing: 1e-13 of it. */
  private static final double NOTHING = 30;

  /** Over no more of the exponent three points of Gauss are exact to 1e-6, and quicker. */
  private static final double SHORT = 1;

  private static final double NODE = Math.sqrt(0.6);

  final double[] seconds;
  final double[] kelvin;

  Felt(double[] seconds, double[] kelvin) {
    this.seconds = seconds;
    this.kelvin = kelvin;
  }

  double hottest() {
    double hottest = kelvin[0];
    for (double at : kelvin) {
      hottest = Math.max(hottest, at);
    }
    return hottest;
  }

  /** The longest time at or above a temperature at a stretch, s. */
  double longestAbove(double limit) {
    double longest = 0;
    double stretch = 0;
    for (int i = 1; i < kelvin.length; i++) {
      double from = kelvin[i - 1];
      double to = kelvin[i];
      double duration = seconds[i] - seconds[i - 1];
      if (from >= limit && to >= limit) {
        stretch += duration;
      } else if (from >= limit) {
        longest = Math.max(longest, stretch + duration * (from - limit) / (from - to));
        stretch = 0;
      } else {
        stretch = to > limit ? duration * (to - limit) / (to - from) : 0;
      }
      longest = Math.max(longest, stretch);
    }
    return longest;
  }

  /** ln of the reduced time over all of some stages. */
  static double logReducedTime(ArrheniusIntegral integral, List<Felt> stages) {
    return logIntegral(integral, stages, false);
  }

  /** ln of the work of sintering over all of some stages. */
  static double logWork(ArrheniusIntegral integral, List<Felt> stages) {
    return logIntegral(integral, stages, true);
  }

  private static double logIntegral(
      ArrheniusIntegral integral, List<Felt> stages, boolean perKelvin) {
    double sum = Double.NEGATIVE_INFINITY;
    for (Felt stage : stages) {
      sum = RunningIntegral.logSum(sum, stage.logIntegral(integral, perKelvin));
    }
    return sum;
  }

  private double logIntegral(ArrheniusIntegral integral, boolean perKelvin) {
    double least = integral.exponent(hottest());
    double sum = 0;
    double before = integral.exponent(kelvin[0]);
    for (int i = 1; i < kelvin.length; i++) {
      double after = integral.exponent(kelvin[i]);
      if (Math.min(before, after) < least + NOTHING) {
        double mean =
            Math.abs(after - before) < SHORT
                ? gauss(integral, kelvin[i - 1], kelvin[i], least, perKelvin)
                : closed(integral, kelvin[i - 1], kelvin[i], least, perKelvin);
        sum += (seconds[i] - seconds[i - 1]) * mean;
      }
      before = after;
    }
    return Math.log(sum) - least;
  }

  /** The mean over a line, times the exponential of the least exponent. */
  private static double gauss(
      ArrheniusIntegral integral, double from, double to, double least, boolean perKelvin) {
    double middle = (from + to) / 2;
    double away = NODE * (to - from) / 2;
    return (5 * value(integral, middle - away, least, perKelvin)
            + 8 * value(integral, middle, least, perKelvin)
            + 5 * value(integral, middle + away, least, perKelvin))
        / 18;
  }

  private static double value(
      ArrheniusIntegral integral, double kelvin, double least, boolean perKelvin) {
    double value = Math.exp(least - integral.exponent(kelvin));
    return perKelvin ? value / kelvin : value;
  }

  private static double closed(
      ArrheniusIntegral integral, double from, double to, double least, boolean perKelvin) {
    return Math.exp(
        least + (perKelvin ? integral.logMeanPerKelvin(from, to) : integral.logMean(from, to)));
  }
}
