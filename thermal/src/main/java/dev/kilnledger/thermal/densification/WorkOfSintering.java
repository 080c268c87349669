package dev.kilnledger.thermal.densification;

import dev.kilnledger.thermal.kinetics.ArrheniusIntegral;
import dev.kilnledger.thermal.kinetics.RunningIntegral;
import dev.kilnledger.thermal.kinetics.TemperatureHistory;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.quantity.MolarEnergy;

/** ln Theta along a history, and its derivative by Q. */
final class WorkOfSintering {
  // Central difference: its own error and that of rounding are both near 1e-10 of the derivative.
  private static final double STEP = 1e-4;

  private final RunningIntegral work;
  private final RunningIntegral less;
  private final RunningIntegral more;
  private final double step;

  WorkOfSintering(Amount<MolarEnergy> energy, TemperatureHistory history) {
    step = STEP * energy.si();
    work = new ArrheniusIntegral(energy).workAlong(history);
    less = new ArrheniusIntegral(energy.multiply(1 - STEP)).workAlong(history);
    more = new ArrheniusIntegral(energy.multiply(1 + STEP)).workAlong(history);
  }

  RunningIntegral along() {
    return work;
  }

  double logAt(double seconds) {
    return work.logAt(seconds);
  }

  /** Per J/mol; zero at the start, where there is no work yet. */
  double byEnergyAt(double seconds) {
    return seconds == work.start() ? 0 : (more.logAt(seconds) - less.logAt(seconds)) / (2 * step);
  }
}
