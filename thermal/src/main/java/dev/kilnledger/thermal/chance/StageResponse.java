package dev.kilnledger.thermal.chance;

import java.util.List;

/** What the core feels in one stage, as a sum of what each axis changes of it. */
final class StageResponse {
  private final double[] seconds;
  private final double[] middle;
  private final double peak;
  private final List<Axis> axes;

  StageResponse(double[] seconds, double[] middle, double peak, List<Axis> axes) {
    this.seconds = seconds;
    this.middle = middle;
    this.peak = peak;
    this.axes = axes;
  }

  double[] seconds() {
    return seconds;
  }

  Felt felt(Draw draw) {
    double[] kelvin = middle.clone();
    axes.forEach(axis -> axis.add(axis.weights(draw), kelvin));
    return new Felt(seconds, kelvin);
  }

  /** The highest temperature of the kiln, K. */
  double peak(Draw draw) {
    double sum = peak;
    for (Axis axis : axes) {
      sum += axis.peakChange(axis.weights(draw));
    }
    return sum;
  }
}
