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
import dev.kilnledger.units.Amount;
import java.util.List;
import javax.measure.quantity.ElectricCurrent;

/** The kiln's current at rated power, P / U or P / (sqrt(3) U), must flow for hours. */
final class SupplyCurrent implements FiringRule {
  @Override
  public List<Finding> check(FiringSetup setup) {
    Kiln kiln = setup.kiln();
    Amount<ElectricCurrent> current = kiln.ratedCurrent();
    Finding.Builder finding =
        FiringFinding.SUPPLY_CURRENT
            .about(kiln.name())
            .measured(current)
            .basis(Caution.ELECTRICAL_LOAD.source());
    String told = "the kiln draws " + current.format(AMPERE, 1);
    if (setup.supplyCircuit().isEmpty()) {
      return List.of(
          finding
              .severity(UNDETERMINED)
              .message(told + ", and the circuit that feeds it is not stated")
              .build());
    }
    SupplyCircuit circuit = setup.supplyCircuit().get();
    Amount<ElectricCurrent> allowed = circuit.continuousRating();
    Severity severity = Excess.exceeds(current, allowed) ? STOP : PASSED;
    return List.of(
        finding
            .severity(severity)
            .limit(allowed)
            .message(
                told
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
