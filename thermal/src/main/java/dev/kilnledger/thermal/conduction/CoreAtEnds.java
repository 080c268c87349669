package dev.kilnledger.thermal.conduction;

import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.Segment;
import java.util.List;

/**
 * The core of a body at the ends of segments by its modes, the lowest first. A mode counts there by
 * what a segment leaves of it, so a handful do; the first whose share cannot matter ends the sum,
 * as all higher ones die away faster.
 */
final class CoreAtEnds {
  private static final double SHARE_OF_TOLERANCE = 0.1; // of the first left out: the rest are less

  private final UniformBody body;
  private final double tolerance;
  private final int mostModes;

  CoreAtEnds(UniformBody body, double tolerance, int mostModes) {
    this.body = body;
    this.tolerance = tolerance;
    this.mostModes = mostModes;
  }

  /** The temperatures, K, of a charge that begins at an even temperature. */
  double[] of(Profile profile, double charge) {
    List<Segment> segments = profile.segments();
    int count = segments.size();
    double[] seconds = new double[count];
    double[] rateChanges = new double[count]; // K/s, at the start of each
    double[] core = new double[count];
    double kiln = segments.get(0).start().si();
    double step = kiln - charge;
    double rate = 0;
    double lag = body.lagPerRate(0);
    for (int i = 0; i < count; i++) {
      double end = segments.get(i).end().si();
      seconds[i] = segments.get(i).duration().si();
      double next = (end - kiln) / seconds[i];
      rateChanges[i] = next - rate;
      core[i] = end - next * lag; // the quasi-steady part
      rate = next;
      kiln = end;
    }
    int number = 0;
    double most;
    do {
      most = add(Eigenmode.of(body.shape(), body.biot(), number), step, rateChanges, seconds, core);
      number++;
    } while (most > SHARE_OF_TOLERANCE * tolerance && number < mostModes);
    return core;
  }

  /** Adds a mode, and tells the most that it could make at any end, whatever the signs. */
  private double add(
      Eigenmode mode, double step, double[] rateChanges, double[] seconds, double[] core) {
    double decay = body.decayRate(mode);
    double perRate = mode.coefficient() / decay;
    double deviation = -mode.coefficient() * step;
    double bound = Math.abs(deviation);
    double most = 0;
    double left = 1;
    for (int i = 0; i < seconds.length; i++) {
      if (i == 0 || seconds[i] != seconds[i - 1]) {
        left = Math.exp(-decay * seconds[i]);
      }
      double jump = perRate * rateChanges[i];
      deviation = (deviation + jump) * left;
      bound = (bound + Math.abs(jump)) * left;
      core[i] += deviation;
      most = Math.max(most, bound);
    }
    return most;
  }
}
