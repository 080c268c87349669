package dev.kilnledger.benchmarks;

import java.util.Arrays;

/**
 * The second-order backward difference formula with variable steps, the stiff method that most
 * engineers would write: for equations each of which knows its two neighbours only.
 *
 * <p>Each step begins with the explicit leapfrog of the same order as guess, whose distance from
 * the result tells the error (Gresho and Sani, Incompressible Flow and the Finite Element Method,
 * sec. 3.16, from memory for the place; the formulas are derivable). Newton's method with the
 * matrix of differences taken once a step in three evaluations, as every third column may be moved
 * at once. It begins anew, with one step of backward Euler, wherever the equations have a corner.
 */
final class AdaptiveBdf2 {
  /** The equations. */
  interface Equations {
    void rates(double time, double[] state, double[] rate);
  }

  /** Hears of each step; between the last two states and this a parabola may be drawn. */
  interface Listener {
    void step(AdaptiveBdf2 method);
  }

  private static final double SETTLED = 0.02; // of the tolerance
  private static final double DIFFERENCE = 1e-3; // K

  private final Equations equations;
  private final double tolerance;
  private final int n;
  double time;
  double[] state;
  double[] before;
  double[] earlier;
  double step; // that led to the state
  double stepBefore; // that led to the one before; zero where there was none
  private double lastBeta; // the implicit share of the last step tried, s
  private double[] next;
  private double[] rate; // at the state
  private final double[] known;
  private final double[] guess;
  private final double[] rateHere;
  private final double[] rateMoved;
  private final double[] moved;
  private final double[] lower;
  private final double[] diagonal;
  private final double[] upper;
  private final double[] inverse;
  private final double[] change;

  AdaptiveBdf2(Equations equations, double[] start, double tolerance) {
    this.equations = equations;
    this.tolerance = tolerance;
    n = start.length;
    state = start.clone();
    before = new double[n];
    earlier = new double[n];
    next = new double[n];
    rate = new double[n];
    known = new double[n];
    guess = new double[n];
    rateHere = new double[n];
    rateMoved = new double[n];
    moved = new double[n];
    lower = new double[n];
    diagonal = new double[n];
    upper = new double[n];
    inverse = new double[n];
    change = new double[n];
  }

  /** Goes on to a time, beyond a corner. */
  void to(double end, double firstStep, Listener listener) {
    equations.rates(time, state, rate);
    step = 0;
    double length = firstStep;
    while (time < end) {
      double left = end - time;
      double h = left / Math.max(1, Math.ceil(left / length - 1e-9));
      double reached = h == left ? end : time + h;
      double error = tryStep(h, reached) / tolerance;
      double growth =
          Math.min(3, Math.max(0.2, 0.9 / (step > 0 ? Math.cbrt(error) : Math.sqrt(error))));
      if (!(error <= 1)) {
        length = h * (error > 0 ? growth : 0.2);
        continue;
      }
      for (int i = 0; i < n; i++) {
        rate[i] = (next[i] - known[i]) / lastBeta;
      }
      double[] free = earlier;
      earlier = before;
      before = state;
      state = next;
      next = free;
      stepBefore = step;
      step = h;
      time = reached;
      listener.step(this);
      length = h * growth;
    }
  }

  private double tryStep(double h, double reached) {
    double share;
    if (step > 0) {
      double w = h / step;
      double ofState = (1 + w) * (1 + w) / (1 + 2 * w);
      lastBeta = h * (1 + w) / (1 + 2 * w);
      for (int i = 0; i < n; i++) {
        known[i] = state[i] + (ofState - 1) * (state[i] - before[i]);
        guess[i] = state[i] + (1 + w) * h * rate[i] - w * w * (state[i] - before[i]);
      }
      share = (h + step) / (3 * h + 2 * step);
    } else {
      lastBeta = h;
      for (int i = 0; i < n; i++) {
        known[i] = state[i];
        guess[i] = state[i] + h * rate[i];
      }
      share = 0.5;
    }
    System.arraycopy(guess, 0, next, 0, n);
    if (!solve(reached)) {
      return Double.POSITIVE_INFINITY;
    }
    double largest = 0;
    for (int i = 0; i < n; i++) {
      largest = Math.max(largest, Math.abs(next[i] - guess[i]));
    }
    return share * largest;
  }

  private boolean solve(double at) {
    for (int i = 0; i < 8; i++) {
      equations.rates(at, next, rateHere);
      if (i == 0) {
        factor(at);
      }
      double largest = correct();
      if (!Double.isFinite(largest)) {
        return false;
      }
      if (largest <= SETTLED * tolerance) {
        return true;
      }
    }
    return false;
  }

  /** The matrix 1 - beta d rate / d state at the guess, whose rates are known, and its factors. */
  private void factor(double at) {
    System.arraycopy(next, 0, moved, 0, n);
    for (int colour = 0; colour < 3; colour++) {
      for (int i = colour; i < n; i += 3) {
        moved[i] = next[i] + DIFFERENCE;
      }
      equations.rates(at, moved, rateMoved);
      for (int i = colour; i < n; i += 3) {
        moved[i] = next[i];
        double scale = -lastBeta / DIFFERENCE;
        diagonal[i] = 1 + scale * (rateMoved[i] - rateHere[i]);
        if (i > 0) {
          upper[i - 1] = scale * (rateMoved[i - 1] - rateHere[i - 1]);
        }
        if (i < n - 1) {
          lower[i + 1] = scale * (rateMoved[i + 1] - rateHere[i + 1]);
        }
      }
    }
    inverse[0] = 1 / diagonal[0];
    for (int i = 1; i < n; i++) {
      inverse[i] = 1 / (diagonal[i] - lower[i] * upper[i - 1] * inverse[i - 1]);
    }
  }

  private double correct() {
    for (int i = 0; i < n; i++) {
      double open = known[i] + lastBeta * rateHere[i] - next[i];
      change[i] = (open - (i == 0 ? 0 : lower[i] * change[i - 1])) * inverse[i];
    }
    double largest = 0;
    for (int i = n - 1; i >= 0; i--) {
      if (i < n - 1) {
        change[i] -= upper[i] * inverse[i] * change[i + 1];
      }
      next[i] += change[i];
      largest = Math.max(largest, Math.abs(change[i]));
    }
    return largest;
  }

  /** {@return a state at rest} */
  static double[] even(int size, double kelvin) {
    double[] state = new double[size];
    Arrays.fill(state, kelvin);
    return state;
  }
}
