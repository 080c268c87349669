package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.units.TradeUnits.CELSIUS;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.kiln.KilnFinding;
import dev.kilnledger.units.Amount;
import java.util.List;
import javax.measure.quantity.Temperature;

/** A tolerance of the thermocouple must be stated at the peak. */
final class SensorTolerance implements FiringRule {
  private static final Source BASIS = Source.user("the thermocouple, as entered with the kiln");

  @Override
  public List<Finding> check(FiringForecast forecast) {
    Amount<Temperature> peak = forecast.setup().route().peak();
    return List.of(
        forecast
            .setup()
            .thermocouple()
            .map(thermocouple -> thermocouple.finding(peak))
            .orElseGet(
                () ->
                    Finding.builder()
                        .code(KilnFinding.SENSOR_TOLERANCE)
                        .subject(forecast.setup().kiln().name())
                        .severity(UNDETERMINED)
                        .message(
                            "the type of the thermocouple is not stated, so nothing is known of"
                                + " its tolerance at "
                                + peak.format(CELSIUS, 0))
                        .basis(BASIS)
                        .build()));
  }
}
