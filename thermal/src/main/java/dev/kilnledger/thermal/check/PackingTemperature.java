package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.units.TradeUnits.CELSIUS;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.units.Amount;
import java.util.List;
import javax.measure.quantity.Temperature;

/** The packing powder of each stage must stand its peak. */
final class PackingTemperature implements FiringRule {
  @Override
  public List<Finding> check(FiringForecast forecast) {
    return forecast.setup().route().stages().stream().map(PackingTemperature::check).toList();
  }

  private static Finding check(FiringStage stage) {
    Sourced<Amount<Temperature>> limit = stage.packing().temperatureLimit();
    Amount<Temperature> peak = stage.profile().peak();
    boolean over = peak.isGreaterThan(limit.value());
    String reason = over && !limit.condition().isEmpty() ? ": " + limit.condition() : "";
    return FiringFinding.PACKING_TEMPERATURE
        .about(stage.packing().name())
        .severity(over ? STOP : PASSED)
        .message(
            stage.packing().name()
                + " stands "
                + limit.value().format(CELSIUS, 0)
                + " and the "
                + stage.name()
                + " stage reaches "
                + peak.format(CELSIUS, 0)
                + reason)
        .measured(peak)
        .limit(limit.value())
        .basis(limit.source())
        .build();
  }
}
