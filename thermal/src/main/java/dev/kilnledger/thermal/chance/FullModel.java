package dev.kilnledger.thermal.chance;

import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.util.List;

/** Some draws by the full model as well, on a random stream of their own. */
final class FullModel {
  private static final int CHECKED = 3;

  private FullModel() {}

  static ShortcutCheck check(FiringResponse response, DrawnFiring drawn, Inputs inputs, long seed) {
    Inputs.Drawing drawing = inputs.drawing(Blocks.streams(seed).get(Blocks.COUNT));
    double core = 0;
    double peak = 0;
    double soak = 0;
    for (int i = 0; i < CHECKED; i++) {
      Draw draw = drawing.next();
      FiringForecast full = FiringForecast.of(drawn.setup(draw));
      List<Felt> quick = response.felt(draw);
      for (int stage = 0; stage < quick.size(); stage++) {
        Felt felt = quick.get(stage);
        double[] exact = CommonTimes.at(felt.seconds, full.stages().get(stage).felt());
        for (int k = 0; k < exact.length; k++) {
          core = Math.max(core, Math.abs(exact[k] - felt.kelvin[k]));
        }
        peak =
            Math.max(peak, Math.abs(felt.hottest() - full.stages().get(stage).felt().peak().si()));
      }
      double exact =
          full.hottest()
              .felt()
              .longestTimeAbove(drawn.nominal().soakTemperature().orElseThrow())
              .si();
      soak = Math.max(soak, Math.abs(response.outcome(draw, quick).soak() - exact));
    }
    return ImmutableShortcutCheck.of(
        CHECKED,
        Amounts.kelvinDifference(core),
        Amounts.kelvinDifference(peak),
        Amounts.seconds(soak).to(TradeUnits.MINUTE));
  }
}
