package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.VOLT;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.SupplyCircuit;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.units.Amount;
import java.util.List;
import javax.measure.quantity.ElectricPotential;

/**
 * The circuit must have the kiln's voltage within 10 % and at least its phases. A kiln of one phase
 * may hang between a phase and the neutral of a circuit of three, at its voltage / sqrt(3).
 */
final class SupplyVoltage implements FiringRule {
  private static final double TOLERANCE = 0.10;
  private static final Source BASIS =
      Source.fromMemory("EN 50160: supply voltage within 10 % of the nominal one");

  @Override
  public List<Finding> check(FiringForecast forecast) {
    FiringSetup setup = forecast.setup();
    Kiln kiln = setup.kiln();
    Finding.Builder finding =
        FiringFinding.SUPPLY_VOLTAGE.about(kiln.name()).limit(kiln.voltage()).basis(BASIS);
    String told =
        "the kiln wants " + kiln.voltage().format(VOLT, 0) + " in " + phases(kiln.phases());
    if (setup.supplyCircuit().isEmpty()) {
      return List.of(
          finding
              .severity(UNDETERMINED)
              .message(told + ", and the circuit that feeds it is not stated")
              .build());
    }
    SupplyCircuit circuit = setup.supplyCircuit().get();
    boolean onePhaseOfThree = kiln.phases() == 1 && circuit.phases() == 3;
    Amount<ElectricPotential> voltage =
        onePhaseOfThree ? circuit.voltage().divide(Math.sqrt(3)) : circuit.voltage();
    double ratio = voltage.ratio(kiln.voltage());
    told +=
        ", and the circuit "
            + circuit.name()
            + " has "
            + circuit.voltage().format(VOLT, 0)
            + " in "
            + phases(circuit.phases());
    Severity severity;
    String verdict;
    if (kiln.phases() > circuit.phases()) {
      severity = STOP;
      verdict = ": the kiln cannot be connected";
    } else if (ratio > 1 + TOLERANCE) {
      severity = STOP;
      verdict = ": the elements are overloaded";
    } else if (ratio < 1 - TOLERANCE) {
      severity = WARNING;
      verdict = ": the power falls with the square of the voltage";
    } else if (onePhaseOfThree) {
      severity = NOTE;
      verdict = ": it takes one phase and the neutral, if there is one";
    } else {
      severity = PASSED;
      verdict = "";
    }
    return List.of(finding.severity(severity).measured(voltage).message(told + verdict).build());
  }

  private static String phases(int count) {
    return count == 1 ? "one phase" : "three phases";
  }
}
