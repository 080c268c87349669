package dev.kilnledger.thermal.atmosphere;

import java.util.List;

/**
 * The concentration in a well-mixed room, V dc/dt = G - Q c, exact on every step of the release; SI
 * units. Without supply air it only rises.
 */
final class RoomCurve {
  /** Longest averaging time, which the curve goes on for after the release, s. */
  private static final double TAIL = 8 * 3600.0;

  private static final int PIECES = 1000;

  private final double volume;
  private final double flow;
  private final double[] times;
  private final double[] concentrations; // kg/m3
  private final double[] integrals; // of the concentration over time

  private int filled;

  RoomCurve(List<ReleaseStep> steps, double volume, double flow) {
    this.volume = volume;
    this.flow = flow;
    double length = steps.stream().mapToDouble(step -> step.duration().si()).sum() + TAIL;
    double piece = length / PIECES;
    int count = 1 + pieces(TAIL, piece);
    for (ReleaseStep step : steps) {
      count += pieces(step.duration().si(), piece);
    }
    this.times = new double[count];
    this.concentrations = new double[count];
    this.integrals = new double[count];
    this.filled = 1;
    for (ReleaseStep step : steps) {
      run(step.duration().si(), step.rate().si(), piece);
    }
    run(TAIL, 0, piece);
  }

  private static int pieces(double duration, double piece) {
    return (int) Math.ceil(duration / piece);
  }

  private void run(double duration, double rate, double piece) {
    int pieces = pieces(duration, piece);
    double length = duration / pieces;
    double x = flow * length / volume;
    // (1 - exp(-x)) / x and its mean over the piece, with their limits at no flow
    double mean = x < 1e-6 ? 1 - x / 2 : -Math.expm1(-x) / x;
    double meanOfRise = x < 1e-3 ? 0.5 - x / 6 + x * x / 24 : (1 - mean) / x;
    double rise = rate * length / volume;
    for (int i = 0; i < pieces; i++) {
      double c = concentrations[filled - 1];
      times[filled] = times[filled - 1] + length;
      concentrations[filled] = c * Math.exp(-x) + rise * mean;
      integrals[filled] = integrals[filled - 1] + length * (c * mean + rise * meanOfRise);
      filled++;
    }
  }

  int size() {
    return times.length;
  }

  double time(int i) {
    return times[i];
  }

  double concentration(int i) {
    return concentrations[i];
  }

  /** The highest mean over a time, s; the air is clean before the start. */
  double highest(double averagedOver) {
    double highest = 0;
    int behind = 0;
    for (int i = 0; i < times.length; i++) {
      if (averagedOver == 0) {
        highest = Math.max(highest, concentrations[i]);
        continue;
      }
      double from = times[i] - averagedOver;
      while (behind + 1 < i && times[behind + 1] <= from) {
        behind++;
      }
      highest = Math.max(highest, (integrals[i] - integralAt(from, behind)) / averagedOver);
    }
    return highest;
  }

  private double integralAt(double time, int behind) {
    if (time <= 0) {
      return 0;
    }
    double share = (time - times[behind]) / (times[behind + 1] - times[behind]);
    return integrals[behind] + share * (integrals[behind + 1] - integrals[behind]);
  }
}
