package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.KELVIN_PER_HOUR;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.HeatingRate;
import java.util.Comparator;
import java.util.List;

/** No stage may heat faster than the kiln's maker allows. */
final class KilnHeatingRate implements FiringRule {
  private static final Source BASIS = Source.user("the kiln's maker, as entered with the kiln");

  @Override
  public List<Finding> check(FiringForecast forecast) {
    FiringSetup setup = forecast.setup();
    Kiln kiln = setup.kiln();
    Amount<HeatingRate> fastest =
        setup.route().stages().stream()
            .flatMap(stage -> stage.profile().fastestHeating().stream())
            .max(Comparator.naturalOrder())
            .orElse(Amounts.kelvinPerHour(0));
    Finding.Builder finding =
        FiringFinding.KILN_HEATING_RATE.about(kiln.name()).measured(fastest).basis(BASIS);
    String told = "the profiles heat at up to " + fastest.format(KELVIN_PER_HOUR, 0);
    if (kiln.fastestHeating().isEmpty()) {
      return List.of(
          finding
              .severity(UNDETERMINED)
              .message(told + ", and how fast the kiln may heat is not stated")
              .build());
    }
    Amount<HeatingRate> allowed = kiln.fastestHeating().get();
    return List.of(
        finding
            .severity(Excess.exceeds(fastest, allowed) ? WARNING : PASSED)
            .limit(allowed)
            .message(told + ", and the kiln may do " + allowed.format(KELVIN_PER_HOUR, 0))
            .build());
  }
}
