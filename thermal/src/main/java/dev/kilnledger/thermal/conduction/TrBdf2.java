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
  private static final double ROUNDED = 1e-6; // K, below which lack of progress is rounding
  private static final int UNDAMPED = 10;
  private static final int MOST_ITERATIONS = 60;

  private final ChargeGrid grid;
  private final double behind;
  private final double[] start; // K
  private final double[] trial;
  private final double[] heat; // J, at the start of the step
  private final double[] flow1;
  private final double[] flow2;
  private final double[] right;
  private final double[] upper;
  private final double[] correction;
  private double supply1;
  private double supply2;
  private double length;

  private Moment before;
  private Moment between;
  private Moment after;

  /** What a history tells of one moment, K. */
  record Moment(double surface, double innermostFace, double core) {}

  TrBdf2(ChargeGrid grid, double temperature, double kiln, double behind) {
    this.grid = grid;
    this.behind = behind;
    int n = grid.size();
    start = new double[n];
    trial = new double[n];
    heat = new double[n];
    flow1 = new double[n];
    flow2 = new double[n];
    right = new double[n];
    upper = new double[n];
    correction = new double[n];
    Arrays.fill(trial, temperature);
    grid.evaluate(trial, kiln, behind);
    after = moment();
    before = after;
    between = after;
    accept();
  }

  /**
   * Tries a step, from where the last accepted one ended.
   *
   * @param seconds its length
   * @return whether the equations could be solved
   */
  boolean tryStep(double seconds, double kilnAtStart, double kilnAtEnd) {
    length = seconds;
    System.arraycopy(start, 0, trial, 0, start.length);
    for (int i = 0; i < right.length; i++) {
      right[i] = heat[i] + seconds * IMPLICIT * flow1[i];
    }
    if (!solve(kilnAtStart + GAMMA * (kilnAtEnd - kilnAtStart))) {
      return false;
    }
    between = moment();
    supply2 = grid.supply();
    System.arraycopy(grid.flow, 0, flow2, 0, flow2.length);
    for (int i = 0; i < right.length; i++) {
      right[i] = heat[i] + seconds * WEIGHT * (flow1[i] + flow2[i]);
    }
    if (!solve(kilnAtEnd)) {
      return false;
    }
    after = moment();
    return true;
  }

  /** The largest error of the tried step over the cells, K, estimated. */
  double error() {
    for (int i = 0; i < right.length; i++) {
      right[i] =
          length
              * ((4 * WEIGHT - 1) / 3 * flow1[i] - flow2[i] / 3 + 2 * IMPLICIT / 3 * grid.flow[i]);
    }
    return linearSolve();
  }

  /** The heat supplied in the tried step, J. */
  double supplied() {
    return length * (WEIGHT * (supply1 + supply2) + IMPLICIT * grid.supply());
  }

  /** Goes on from the end of the tried step. */
  void accept() {
    System.arraycopy(trial, 0, start, 0, start.length);
    System.arraycopy(grid.flow, 0, flow1, 0, flow1.length);
    for (int i = 0; i < heat.length; i++) {
      heat[i] = grid.heat(i, start[i]);
    }
    supply1 = grid.supply();
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

  private Moment moment() {
    return new Moment(grid.surfaceTemperature(), grid.innermostFace(), grid.core(trial));
  }

  /** Newton's method for heat(trial) = right + length x share x flow(trial). */
  private boolean solve(double kiln) {
    double[] known = right.clone();
    double lastChange = Double.POSITIVE_INFINITY;
    for (int i = 0; i < MOST_ITERATIONS; i++) {
      grid.evaluate(trial, kiln, behind);
      for (int c = 0; c < trial.length; c++) {
        right[c] = known[c] + length * IMPLICIT * grid.flow[c] - grid.heat(c, trial[c]);
      }
      double change = linearSolve();
      // A transition may throw the iterates to and fro between its two sides.
      double share = i < UNDAMPED || change < ROUNDED ? 1 : 0.5;
      for (int c = 0; c < trial.length; c++) {
        trial[c] += share * correction[c];
      }
      if (change <= SETTLED || (change < ROUNDED && change > lastChange / 2)) {
        grid.evaluate(trial, kiln, behind);
        return true;
      }
      if (!Double.isFinite(change)) {
        return false;
      }
      lastChange = change;
    }
    return false;
  }

  /**
   * Solves the step's matrix at the last evaluation, capacity less length x share x derivative of
   * the flows, for the right side, and tells the largest entry of the solution.
   */
  private double linearSolve() {
    int n = trial.length;
    double scale = length * IMPLICIT;
    double pivot = 1;
    for (int i = 0; i < n; i++) {
      double lower = i == 0 ? 0 : -scale * grid.flowPerInner[i];
      double diagonal = grid.capacity(i, trial[i]) - scale * grid.flowPerCell[i];
      pivot = diagonal - (i == 0 ? 0 : lower * upper[i - 1]);
      upper[i] = -scale * grid.flowPerOuter[i] / pivot;
      correction[i] = (right[i] - (i == 0 ? 0 : lower * correction[i - 1])) / pivot;
    }
    double largest = Math.abs(correction[n - 1]);
    for (int i = n - 2; i >= 0; i--) {
      correction[i] -= upper[i] * correction[i + 1];
      largest = Math.max(largest, Math.abs(correction[i]));
    }
    return largest;
  }
}
