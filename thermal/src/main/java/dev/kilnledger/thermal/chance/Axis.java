package dev.kilnledger.thermal.chance;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;

/**
 * How one input, or one sum of inputs, changes what the core feels in a stage: known at some places
 * about the middle, where the change is none, and interpolated between them.
 */
final class Axis {
  private final ToDoubleFunction<Draw> place; // of a draw, zero at the medians
  private final boolean curved;
  private final double[] places; // ascending, without the middle
  private final double[][] changes; // K at each place, at the common times
  private final double[] peakChanges; // K at each place, of the kiln's peak

  Axis(
      ToDoubleFunction<Draw> place,
      boolean curved,
      double[] places,
      double[][] changes,
      double[] peakChanges) {
    this.place = place;
    this.curved = curved;
    this.places = places;
    this.changes = changes;
    this.peakChanges = peakChanges;
  }

  double[] weights(Draw draw) {
    double at = place.applyAsDouble(draw);
    return curved ? polynomial(at) : lines(at);
  }

  double peakChange(double[] weights) {
    double sum = 0;
    for (int k = 0; k < weights.length; k++) {
      sum += weights[k] * peakChanges[k];
    }
    return sum;
  }

  void add(double[] weights, double[] kelvin) {
    for (int k = 0; k < weights.length; k++) {
      double weight = weights[k];
      if (weight != 0) {
        double[] change = changes[k];
        for (int i = 0; i < kelvin.length; i++) {
          kelvin[i] += weight * change[i];
        }
      }
    }
  }

  /** Straight from place to place, the middle among them, and on beyond the last. */
  private double[] lines(double at) {
    double[] weights = new double[places.length];
    int middle = -Arrays.binarySearch(places, 0) - 1; // how many places are below it
    int count = places.length + 1;
    int right = 1;
    while (right < count - 1 && with(right, middle) < at) {
      right++;
    }
    double from = with(right - 1, middle);
    double share = (at - from) / (with(right, middle) - from);
    set(weights, right - 1, middle, 1 - share);
    set(weights, right, middle, share);
    return weights;
  }

  /** The place with a number among all, the middle included. */
  private double with(int number, int middle) {
    return number == middle ? 0 : places[number < middle ? number : number - 1];
  }

  private static void set(double[] weights, int number, int middle, double weight) {
    if (number != middle) {
      weights[number < middle ? number : number - 1] = weight;
    }
  }

  /** Lagrange's polynomial through all places and the middle. */
  private double[] polynomial(double at) {
    double x =
        Math.max(Math.min(0, places[0]), Math.min(Math.max(0, places[places.length - 1]), at));
    double[] weights = new double[places.length];
    for (int k = 0; k < places.length; k++) {
      double weight = x / places[k];
      for (int j = 0; j < places.length; j++) {
        if (j != k) {
          weight *= (x - places[j]) / (places[k] - places[j]);
        }
      }
      weights[k] = weight;
    }
    return weights;
  }
}
