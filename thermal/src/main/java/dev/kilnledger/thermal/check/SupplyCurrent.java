package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.units.TradeUnits.AMPERE;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.SupplyCircuit;
import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.units.Amount;
import java.util.List;
import javax.measure.quantity.ElectricCurrent;

/**
 * The kiln's current must flow for hours: at rated power P / U or P / (sqrt(3) U), and as its
 * elements are resistors, more in proportion on a circuit of higher voltage than rated.
 */
final class SupplyCurrent implements FiringRule {
  @Override
  public List<Finding> check(FiringForecast forecast) {
    FiringSetup setup = forecast.setup();
    Kiln kiln = setup.kiln();
    Amount<ElectricCurrent> current = kiln.ratedCurrent();
    Finding.Builder finding =
        FiringFinding.SUPPLY_CURRENT
            .about(kiln.name())
            .measured(current)
            .basis(Caution.ELECTRICAL_LOAD.source());
    String told = "the kiln is rated at " + current.format(AMPERE, 1);
    if (setup.supplyCircuit().isEmpty()) {
      return List.of(
          finding
              .severity(UNDETERMINED)
              .message(told + ", and the circuit that feeds it is not stated")
              .build());
    }
    SupplyCircuit circuit = setup.supplyCircuit().get();
    Amount<ElectricCurrent> allowed = circuit.continuousRating();
    current = current.multiply(circuit.voltage().ratio(kiln.voltage()));
    Severity severity = Excess.exceeds(current, allowed) ? STOP : PASSED;
    return List.of(
        finding
            .severity(severity)
            .measured(current)
            .limit(allowed)
            .message(
                "the kiln draws "
                    + current.format(AMPERE, 1)
                    + " for hours, and the circuit "
                    + circuit.name()
                    + " carries "
                    + allowed.format(AMPERE, 1)
                    + " for so long ("
                    + circuit.breakerRating().format(AMPERE, 0)
                    + " breaker); the local code and a licensed electrician decide")
            .build());
  }
}
