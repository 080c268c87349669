package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.HOUR;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Relations;
import java.util.List;
import javax.measure.quantity.Time;

/**
 * The kiln must be allowed to stay at the peak as long as the profile holds it. What the maker
 * states for the highest temperature does not bind 50 K or more below it.
 */
final class KilnHoldsPeak implements FiringRule {
  private static final Source BASIS = Source.user("the kiln's maker, as entered with the kiln");

  @Override
  public List<Finding> check(FiringForecast forecast) {
    FiringSetup setup = forecast.setup();
    Kiln kiln = setup.kiln();
    Profile profile = setup.route().hottest().profile();
    Amount<Time> hold = profile.holdAtPeak();
    Finding.Builder finding =
        FiringFinding.KILN_HOLDS_PEAK.about(kiln.name()).measured(hold).basis(BASIS);
    String told =
        "the profile holds " + profile.peak().format(CELSIUS, 0) + " for " + hold.format(HOUR, 2);
    boolean nearHighest =
        Excess.exceeds(
            KilnReachesPeak.MARGIN, Relations.difference(profile.peak(), kiln.peakTemperature()));
    if (!nearHighest) {
      return List.of(
          finding
              .severity(PASSED)
              .message(
                  told
                      + ", far enough below the kiln's "
                      + kiln.peakTemperature().format(CELSIUS, 0))
              .build());
    }
    if (kiln.longestHoldAtPeak().isEmpty()) {
      return List.of(
          finding
              .severity(UNDETERMINED)
              .message(told + ", and how long the kiln may stay at its highest is not stated")
              .build());
    }
    Amount<Time> longest = kiln.longestHoldAtPeak().get();
    return List.of(
        finding
            .severity(Excess.exceeds(hold, longest) ? WARNING : PASSED)
            .limit(longest)
            .message(
                told
                    + ", and the kiln may stay at "
                    + kiln.peakTemperature().format(CELSIUS, 0)
                    + " for "
                    + longest.format(HOUR, 2))
            .build());
  }
}
