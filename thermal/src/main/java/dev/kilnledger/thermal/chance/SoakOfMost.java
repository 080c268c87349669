package dev.kilnledger.thermal.chance;

import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.thermal.firing.FiringForecast;
import java.util.Arrays;
import java.util.Optional;

/** The soak that a share of all firings has at least, of a firing that is changed a little. */
final class SoakOfMost {
  private final FiringForecast forecast;
  private final Inputs inputs;
  private final DrawnFiring drawn;
  private final double share;
  private final int draws;
  private final long seed;
  private final int threads;

  SoakOfMost(UncertainFiring firing, double share, int draws, long seed, int threads) {
    forecast = FiringForecast.of(firing.setup());
    inputs = new Inputs(firing, forecast);
    drawn = new DrawnFiring(forecast);
    this.share = share;
    this.draws = draws;
    this.seed = seed;
    this.threads = threads;
  }

  /** What is asked of the core, s. */
  double asked() {
    return forecast.coreSoak().asked().si();
  }

  /** The soak with another hold at the peak, s; not a number if interrupted. */
  double withHold(double seconds) {
    return of(drawn.withHold(seconds));
  }

  /** The soak with all programmes hotter, s; not a number if interrupted. */
  double withCorrection(double kelvin) {
    return of(drawn.withCorrection(kelvin));
  }

  private double of(DrawnFiring changed) {
    int hottest = forecast.stages().indexOf(forecast.hottest());
    Optional<StageResponse> stage =
        new Preparation(changed, inputs).stage(hottest, Progress.unheard());
    if (stage.isEmpty()) {
      return Double.NaN;
    }
    double limit = forecast.coreSoak().temperature().si();
    double[] soaks =
        Blocks.run(
                seed,
                threads,
                (block, random) -> {
                  Inputs.Drawing drawing = inputs.drawing(random);
                  double[] some = new double[DrawnBlock.size(block, draws)];
                  for (int i = 0; i < some.length; i++) {
                    some[i] = stage.get().felt(drawing.next()).longestAbove(limit);
                  }
                  return some;
                },
                Progress.unheard())
            .stream()
            .flatMapToDouble(Arrays::stream)
            .sorted()
            .toArray();
    if (soaks.length < draws) {
      return Double.NaN;
    }
    // the product may be a rounding error more than it is
    return soaks[draws - Math.max(1, (int) Math.ceil(share * draws * (1 - 1e-14)))];
  }
}
