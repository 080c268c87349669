package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.units.TradeUnits.CELSIUS;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.material.CrucibleMaterial;
import dev.kilnledger.units.Amount;
import java.util.List;
import javax.measure.quantity.Temperature;

/** The crucible must stand the peak in air. */
final class CrucibleTemperature implements FiringRule {
  @Override
  public List<Finding> check(FiringSetup setup) {
    CrucibleMaterial material = setup.crucible().material();
    Amount<Temperature> limit = material.serviceLimit().value();
    Amount<Temperature> peak = setup.route().peak();
    return List.of(
        FiringFinding.CRUCIBLE_TEMPERATURE
            .about(setup.crucible().name())
            .severity(peak.isGreaterThan(limit) ? STOP : PASSED)
            .message(
                material.name()
                    + " stands "
                    + limit.format(CELSIUS, 0)
                    + " in air and the peak is "
                    + peak.format(CELSIUS, 0))
            .measured(peak)
            .limit(limit)
            .basis(material.serviceLimit().source())
            .build());
  }
}
