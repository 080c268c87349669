package dev.kilnledger.thermal.conduction;

import java.util.Arrays;

/**
 * Steps of the TR-BDF2 method for {@code dE/dt = flow}, E being the heat in each cell: a
 * trapezoidal step over the share 2 - sqrt 2, then a second-order backward difference to the end.
 * Second order, L-stable, stiffly accurate (Bank et al., IEEE Trans. Electron Devices 32 (1985)
 * 1992); error by the embedded third-order formula of Hosea and Shampine (Appl. Numer. Math. 20
 * (1996) 21), passed through the step's own matrix so that stiff modes do not count. Not for
 * several threads.
 */
final class TrBdf2 {
  static final double GAMMA = 2 - Math.sqrt(2);

  private static final double IMPLICIT = GAMMA / 2;
  private static final double WEIGHT = Math.sqrt(2) / 4;
  private static final double SETTLED = 1e-8; // K
  private static final double SHARE_OF_TOLERANCE = 1e-2;
  private static final double ROUNDED = 1e-6; // K, below which lack of progress is rounding
  private static final double LONGEST_GUESS = 3; // steps of before
  private static final int UNDAMPED = 10;
  private static final int MOST_ITERATIONS = 60;

  private final ChargeGrid grid;
  private final double behind;
  private final double settled; // K
  private double[] earlier; // K, at the start of the step before
  private double[] middleBefore; // within it
  private double[] start;
  private double[] middle;
  private double[] trial;
  private final double[] heat; // J, at the start of the step
  private final double[] flow1;
  private final double[] flow2;
  private final double[] known;
  private final double[] right;
  private final double[] lower; // the factors of the step's matrix
  private final double[] inverse;
  private final double[] upper;
  private final double[] correction;
  private double supply1;
  private double supply2;
  private double length;
  private double lengthBefore;
  private double lengthOfFactors;

  private Moment before;
  private Moment between;
  private Moment after;

  /** What a history tells of one moment, K. */
  record Moment(double surface, double innermostFace, double core) {}

  /**
   * The charge at an even temperature.
   *
   * @param tolerance the error that a step is allowed, K: equations are solved to a hundredth of
   *     it, or to 1e-8 K where none is stated
   */
  TrBdf2(ChargeGrid grid, double temperature, double kiln, double behind, double tolerance) {
    this.grid = grid;
    this.behind = behind;
    settled =
        tolerance < Double.POSITIVE_INFINITY
            ? Math.max(SETTLED, SHARE_OF_TOLERANCE * tolerance)
            : SETTLED;
    int n = grid.size();
    earlier = new double[n];
    middleBefore = new double[n];
    start = new double[n];
    middle = new double[n];
    trial = new double[n];
    heat = new double[n];
    flow1 = new double[n];
    flow2 = new double[n];
    known = new double[n];
    right = new double[n];
    lower = new double[n];
    inverse = new double[n];
    upper = new double[n];
    correction = new double[n];
    Arrays.fill(start, temperature);
    grid.evaluate(start, kiln, behind);
    System.arraycopy(grid.heat, 0, heat, 0, n);
    System.arraycopy(grid.flow, 0, flow1, 0, n);
    supply1 = grid.supply();
    after = new Moment(grid.surfaceTemperature(), grid.innermostFace(), grid.core(start));
    before = after;
    between = after;
  }

  /**
   * Tries a step, from where the last accepted one ended.
   *
   * @param seconds its length
   * @return whether the equations could be solved
   */
  boolean tryStep(double seconds, double kilnAtStart, double kilnAtEnd) {
    length = seconds;
    for (int i = 0; i < known.length; i++) {
      known[i] = heat[i] + seconds * IMPLICIT * flow1[i];
    }
    guessMiddle();
    if (!solve(middle, kilnAtStart + GAMMA * (kilnAtEnd - kilnAtStart))) {
      return false;
    }
    between = moment(middle);
    supply2 = grid.supply();
    System.arraycopy(grid.flow, 0, flow2, 0, flow2.length);
    for (int i = 0; i < known.length; i++) {
      known[i] = heat[i] + seconds * WEIGHT * (flow1[i] + flow2[i]);
    }
    guessEnd();
    if (!solve(trial, kilnAtEnd)) {
      return false;
    }
    after = moment(trial);
    return true;
  }

  /** Goes on by the parabola of the step before, where that is no longer ago than it may tell. */
  private void guessMiddle() {
    double ahead = GAMMA * length / lengthBefore; // in steps of before
    if (!(ahead < LONGEST_GUESS)) {
      System.arraycopy(start, 0, middle, 0, middle.length);
      return;
    }
    goOn(ahead, -1, middleBefore, GAMMA - 1, middle);
  }

  /** Goes on by the parabola through the starts of the step before and of this, and its middle. */
  private void guessEnd() {
    double past = lengthBefore / length;
    if (!(LONGEST_GUESS * past > 1)) {
      for (int i = 0; i < trial.length; i++) {
        trial[i] = start[i] + (middle[i] - start[i]) / GAMMA;
      }
      return;
    }
    goOn(1, -past, middle, GAMMA, trial);
  }

  /**
   * Follows the parabola through the start of this step, at zero, that of the step before and one
   * more.
   *
   * @param time the time to which it goes on
   * @param timeOfEarlier when the step before started
   * @param other the other temperatures, K
   * @param timeOfOther when they were
   * @param guess what is written
   */
  private void goOn(
      double time, double timeOfEarlier, double[] other, double timeOfOther, double[] guess) {
    double between = timeOfEarlier - timeOfOther;
    double atEarlier = time * (time - timeOfOther) / (timeOfEarlier * between);
    double atOther = -time * (time - timeOfEarlier) / (timeOfOther * between);
    double atStart = 1 - atEarlier - atOther;
    for (int i = 0; i < guess.length; i++) {
      guess[i] = atEarlier * earlier[i] + atOther * other[i] + atStart * start[i];
    }
  }

  /** The largest error of the tried step over the cells, K, estimated. */
  double error() {
    for (int i = 0; i < right.length; i++) {
      right[i] =
          length
              * ((4 * WEIGHT - 1) / 3 * flow1[i] - flow2[i] / 3 + 2 * IMPLICIT / 3 * grid.flow[i]);
    }
    if (lengthOfFactors != length) {
      factor();
    }
    return substitute();
  }

  /** The heat supplied in the tried step, J. */
  double supplied() {
    return length * (WEIGHT * (supply1 + supply2) + IMPLICIT * grid.supply());
  }

  /** Goes on from the end of the tried step. */
  void accept() {
    for (int i = 0; i < heat.length; i++) {
      heat[i] = known[i] + length * IMPLICIT * grid.flow[i]; // so that all that flows is counted
    }
    System.arraycopy(grid.flow, 0, flow1, 0, flow1.length);
    supply1 = grid.supply();
    double[] free = earlier;
    earlier = start;
    start = trial;
    trial = free;
    free = middleBefore;
    middleBefore = middle;
    middle = free;
    lengthBefore = length;
    before = after;
  }

  /** The heat in all cells where the last accepted step ended, J. */
  double stored() {
    return Arrays.stream(heat).sum();
  }

  Moment before() {
    return before;
  }

  Moment between() {
    return between;
  }

  Moment after() {
    return after;
  }

  private Moment moment(double[] t) {
    return new Moment(grid.surfaceTemperature(), grid.innermostFace(), grid.core(t));
  }

  /**
   * Newton's method for heat(t) = known + length x share x flow(t), from a guess in t. Ends with
   * the grid evaluated at the solution.
   */
  private boolean solve(double[] t, double kiln) {
    double lastChange = Double.POSITIVE_INFINITY;
    boolean stalled = false;
    for (int i = 0; i < MOST_ITERATIONS; i++) {
      grid.evaluate(t, kiln, behind);
      if (isSettled() || (lastChange < ROUNDED && stalled)) {
        return true;
      }
      factor();
      double change = substitute();
      if (!Double.isFinite(change)) {
        return false;
      }
      // A transition may throw the iterates to and fro between its two sides.
      double share = i < UNDAMPED || change < ROUNDED ? 1 : 0.5;
      for (int c = 0; c < t.length; c++) {
        t[c] += share * correction[c];
      }
      stalled = change > lastChange / 2;
      lastChange = change;
    }
    return false;
  }

  /** Takes the right side from the last evaluation; whether it is next to nothing in every cell. */
  private boolean isSettled() {
    int open = 0;
    double share = length * IMPLICIT;
    for (int c = 0; c < right.length; c++) {
      right[c] = known[c] + share * grid.flow[c] - grid.heat[c];
      open += Math.abs(right[c]) <= settled * grid.capacity[c] ? 0 : 1; // what is no number is open
    }
    return open == 0;
  }

  /**
   * Factors the step's matrix at the last evaluation, capacity less length x share x derivative of
   * the flows.
   */
  private void factor() {
    double scale = -length * IMPLICIT;
    int n = inverse.length;
    for (int i = 0; i < n; i++) {
      lower[i] = scale * grid.flowPerInner[i];
      upper[i] = scale * grid.flowPerOuter[i];
      inverse[i] = grid.capacity[i] + scale * grid.flowPerCell[i];
    }
    // One division waits for the other, so two rows of them go from both ends to the middle.
    int middle = n / 2;
    for (int i = 1, j = n - 2; i < middle; i++, j--) {
      inverse[i] -= lower[i] * upper[i - 1] / inverse[i - 1];
      if (j > middle) {
        inverse[j] -= upper[j] * lower[j + 1] / inverse[j + 1];
      }
    }
    inverse[middle] -=
        lower[middle] * upper[middle - 1] / inverse[middle - 1]
            + upper[middle] * lower[middle + 1] / inverse[middle + 1];
    for (int i = 0; i < n; i++) {
      inverse[i] = 1 / inverse[i];
    }
    for (int i = 0; i < n; i++) {
      lower[i] *= inverse[i];
      upper[i] *= inverse[i];
    }
    lengthOfFactors = length;
  }

  /** Solves for the right side by the factors, and tells the largest entry of the solution. */
  private double substitute() {
    int n = correction.length;
    int middle = n / 2;
    double top = 0;
    double bottom = 0;
    for (int i = 0, j = n - 1; i < middle; i++, j--) {
      top = right[i] * inverse[i] - lower[i] * top;
      correction[i] = top;
      if (j > middle) {
        bottom = right[j] * inverse[j] - upper[j] * bottom;
        correction[j] = bottom;
      }
    }
    top = right[middle] * inverse[middle] - lower[middle] * top - upper[middle] * bottom;
    bottom = top;
    correction[middle] = top;
    double largest = Math.abs(top);
    for (int i = middle - 1, j = middle + 1; i >= 0; i--, j++) {
      top = correction[i] - upper[i] * top;
      correction[i] = top;
      largest = Math.abs(top) > largest ? Math.abs(top) : largest;
      if (j < n) {
        bottom = correction[j] - lower[j] * bottom;
        correction[j] = bottom;
        largest = Math.abs(bottom) > largest ? Math.abs(bottom) : largest;
      }
    }
    return Double.isNaN(top)
        ? top
        : largest; // no number anywhere is none in the middle, and then all
  }
}
