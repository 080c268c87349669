package dev.kilnledger.thermal.check;

import dev.kilnledger.thermal.firing.FiringSetup;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.CELSIUS;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.units.Amount;
import java.util.Comparator;
import java.util.List;
import javax.measure.quantity.Temperature;

/** The debinding stages must get as hot as the end of the binder's range. */
final class DebindingComplete implements FiringRule {
  @Override
  public List<Finding> check(FiringSetup setup) {
    String binder = setup.binder().name();
    Span<Temperature> range = setup.binder().decomposition().value();
    Amount<Temperature> hottest =
        setup.route().debinding().stream()
            .map(stage -> stage.profile().peak())
            .max(Comparator.naturalOrder())
            .orElseThrow();
    String told =
        "debinding reaches "
            + hottest.format(CELSIUS, 0)
            + " and "
            + binder
            + " leaves between "
            + range.low().format(CELSIUS, 0)
            + " and "
            + range.high().format(CELSIUS, 0);
    Severity severity;
    String verdict;
    if (!hottest.isGreaterThan(range.low())) {
      severity = STOP;
      verdict = ": none of it leaves";
    } else if (hottest.isLessThan(range.high())) {
      severity = WARNING;
      verdict = ": some of it stays and leaves in the heat of sintering";
    } else {
      severity = PASSED;
      verdict = "";
    }
    return List.of(
        FiringFinding.DEBINDING_COMPLETE
            .about(binder)
            .severity(severity)
            .message(told + verdict)
            .measured(hottest)
            .limit(range.high())
            .basis(setup.binder().decomposition().source())
            .build());
  }
}
