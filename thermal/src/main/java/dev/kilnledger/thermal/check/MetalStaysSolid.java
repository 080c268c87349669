package dev.kilnledger.thermal.check;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.thermal.densification.DensificationLimits;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.kinetics.TemperatureHistory;
import java.util.List;

/**
 * The metal must stay below its solidus and must not be over-fired, wherever it lies in the charge:
 * so the hottest place counts, which has the temperature of the kiln.
 */
final class MetalStaysSolid implements FiringRule {
  @Override
  public List<Finding> check(FiringForecast forecast) {
    return DensificationLimits.standard()
        .check(forecast.setup().alloy(), TemperatureHistory.of(forecast.hottest().course()));
  }
}
