package dev.kilnledger.thermal.chance;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * The least hold that gives a soak: the soak grows with the hold, and once the core is there by
 * about as much, so that regula falsi (the method of Illinois) finds it in a few steps.
 */
final class HoldSearch {
  private static final double TO = 60; // s
  private static final double LEAST = 1; // s
  private static final double MORE = 48 * 3600; // s

  private final DoubleUnaryOperator soak;
  private final double programmed;
  private final double asked;

  HoldSearch(DoubleUnaryOperator soak, double programmed, double asked) {
    this.soak = soak;
    this.programmed = Math.max(LEAST, programmed);
    this.asked = asked;
  }

  /** Empty if two days more do not do it, or the soak is not a number. */
  Optional<Double> least() {
    double here = excess(programmed);
    if (Double.isNaN(here)) {
      return Optional.empty();
    }
    return here >= 0 ? between(LEAST, excess(LEAST), programmed, here) : longer(here);
  }

  private double excess(double hold) {
    return soak.applyAsDouble(hold) - asked;
  }

  private Optional<Double> longer(double here) {
    double low = programmed;
    double atLow = here;
    double high = programmed - here + TO;
    double atHigh = excess(high);
    while (atHigh < 0) {
      if (high > programmed + MORE) {
        return Optional.empty();
      }
      low = high;
      atLow = atHigh;
      high = programmed + 4 * (high - programmed);
      atHigh = excess(high);
    }
    return between(low, atLow, high, atHigh);
  }

  private Optional<Double> between(double from, double atFrom, double to, double atTo) {
    double low = from;
    double high = to;
    double weightLow = atFrom;
    double weightHigh = atTo;
    if (atFrom >= 0) {
      return Optional.of(0.0);
    }
    while (high - low > TO && !Double.isNaN(weightLow + weightHigh)) {
      // never nearer to an end than half the accuracy asked, so that both ends move
      double x = high - weightHigh * (high - low) / (weightHigh - weightLow);
      x = Math.min(Math.max(x, low + TO / 2), high - TO / 2);
      double at = excess(x);
      if (at >= 0) {
        high = x;
        weightHigh = at;
        weightLow /= 2;
      } else {
        low = x;
        weightLow = at;
        weightHigh /= 2;
      }
    }
    return Double.isNaN(weightLow + weightHigh) ? Optional.empty() : Optional.of(high);
  }
}
