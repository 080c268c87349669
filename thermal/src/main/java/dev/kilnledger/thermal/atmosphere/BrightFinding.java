package dev.kilnledger.thermal.atmosphere;

import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.BAR;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.PERCENT;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;

/** The finding on one element under carbon. */
final class BrightFinding {
  private BrightFinding() {}

  static Finding of(
      Alloy alloy,
      ElementProtection answer,
      Amount<Temperature> temperature,
      Amount<Pressure> carbonMonoxide,
      Source basis) {
    String symbol = answer.element().symbol();
    Finding.Builder finding =
        AtmosphereFinding.CARBON_KEEPS_BRIGHT
            .about(alloy.name())
            .severity(severity(alloy, answer))
            .measured(temperature)
            .basis(basis)
            .message(
                symbol
                    + " ("
                    + answer.atomFraction().format(PERCENT, 1)
                    + " of the atoms) "
                    + verdict(answer)
                    + " under carbon at "
                    + temperature.format(CELSIUS, 0)
                    + " and "
                    + carbonMonoxide.format(BAR, 2)
                    + " of carbon monoxide"
                    + crossings(answer));
    answer.inAlloy().flatMap(Reduction::expected).ifPresent(finding::limit);
    return finding.build();
  }

  private static String crossings(ElementProtection answer) {
    return answer.oxide().map(oxide -> "; " + oxide.formula()).orElse("")
        + answer.inAlloy().map(r -> " is undone in the alloy " + r.words()).orElse("")
        + answer.pure().map(r -> ", over the pure element " + r.words()).orElse("");
  }

  private static String verdict(ElementProtection answer) {
    return switch (answer.bright()) {
      case YES -> "stays bright";
      case NO -> "oxidises";
      case UNCERTAIN -> "may oxidise, the data leave it open,";
      case UNKNOWN -> "cannot be told, for lack of data there,";
    };
  }

  private static Severity severity(Alloy alloy, ElementProtection answer) {
    return switch (answer.bright()) {
      case YES -> PASSED;
      case NO -> answer.element() == alloy.composition().balance() ? STOP : WARNING;
      case UNCERTAIN, UNKNOWN -> UNDETERMINED;
    };
  }
}
