package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.KELVIN_DIFFERENCE;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.Relations;
import dev.kilnledger.units.quantity.TemperatureDifference;
import java.util.List;
import javax.measure.quantity.Temperature;

/**
 * The kiln must be rated for the peak, and for the metal's sintering window at all; less than 50 K
 * to spare is worth a note, as elements age fast there.
 */
final class KilnReachesPeak implements FiringRule {
  private static final Source BASIS =
      Source.commonPractice("an electric kiln lasts with 50 K or more to spare below its rating");

  /** From how much below its highest temperature on a kiln works at ease. */
  static final Amount<TemperatureDifference> MARGIN = Amounts.kelvinDifference(50);

  @Override
  public List<Finding> check(FiringForecast forecast) {
    FiringSetup setup = forecast.setup();
    Kiln kiln = setup.kiln();
    Amount<Temperature> rated = kiln.peakTemperature();
    Amount<Temperature> peak = setup.route().peak();
    Amount<Temperature> least = setup.alloy().sinteringWindow().value().low();
    Finding.Builder finding =
        FiringFinding.KILN_REACHES_PEAK.about(kiln.name()).measured(rated).basis(BASIS);
    if (rated.isLessThan(least)) {
      return List.of(
          finding
              .severity(STOP)
              .limit(least)
              .message(
                  "the kiln stops at "
                      + rated.format(CELSIUS, 0)
                      + " and "
                      + setup.alloy().name()
                      + " sinters from "
                      + least.format(CELSIUS, 0)
                      + " up: no programme can do it in this kiln")
              .build());
    }
    finding.limit(peak);
    Amount<TemperatureDifference> spare = Relations.difference(peak, rated);
    String told =
        "the kiln stops at "
            + rated.format(CELSIUS, 0)
            + " and the profile asks "
            + peak.format(CELSIUS, 0)
            + ": ";
    if (spare.si() < 0) {
      return List.of(
          finding
              .severity(STOP)
              .message(told + spare.negate().format(KELVIN_DIFFERENCE, 0) + " short")
              .build());
    }
    return List.of(
        finding
            .severity(Excess.exceeds(MARGIN, spare) ? NOTE : PASSED)
            .message(told + spare.format(KELVIN_DIFFERENCE, 0) + " to spare")
            .build());
  }
}
