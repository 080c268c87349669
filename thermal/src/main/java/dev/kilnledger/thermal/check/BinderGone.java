package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.MASS_PERCENT;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.material.Binder;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.burnout.BurnOut;
import dev.kilnledger.thermal.burnout.BurnOutFinding;
import dev.kilnledger.thermal.burnout.BurnOutForecast;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.MassFraction;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javax.measure.quantity.Temperature;

/**
 * The binder must be gone by the end of debinding, along what the core feels: by the kinetics of
 * the user. Without them the core must at least pass the range in which the binder leaves; that
 * does not tell how long it takes, so the answer stays open, whatever published kinetics say.
 */
final class BinderGone implements FiringRule {
  private static final double NEARLY_ALL = 0.9;

  @Override
  public List<Finding> check(FiringForecast forecast) {
    return forecast.setup().kinetics().isEmpty()
        ? List.of(byRange(forecast))
        : byKinetics(forecast, forecast.afterDebinding().orElseThrow());
  }

  private static List<Finding> byKinetics(FiringForecast forecast, BurnOutForecast binder) {
    Span<MassFraction> left = binder.remaining();
    boolean surely = left.high().si() <= BurnOut.COMPLETE_BELOW;
    boolean maybe = left.low().si() <= BurnOut.COMPLETE_BELOW;
    Severity severity =
        surely ? PASSED : maybe ? UNDETERMINED : left.low().si() > NEARLY_ALL ? STOP : WARNING;
    List<Finding> findings = new ArrayList<>();
    findings.add(
        finding(forecast, severity)
            .message(
                told(left)
                    + " of the binder is left after debinding"
                    + (surely ? "" : ": it leaves in the heat of sintering, or stays as carbon")
                    + (maybe && !surely ? "; the kinetics given do not agree" : ""))
            .measured(left.high())
            .limit(Amounts.massFraction(BurnOut.COMPLETE_BELOW))
            .basis(forecast.setup().kinetics().get(0).source())
            .build());
    binder.curves().stream()
        .flatMap(curve -> curve.findings().stream())
        .filter(finding -> finding.code() == BurnOutFinding.KINETICS_RANGE)
        .filter(finding -> finding.severity() != PASSED)
        .forEach(findings::add);
    return findings;
  }

  private static Finding byRange(FiringForecast forecast) {
    Binder binder = forecast.setup().binder();
    Span<Temperature> range = binder.decomposition().value();
    Amount<Temperature> hottest =
        forecast.debinding().stream()
            .map(stage -> stage.felt().peak())
            .max(Comparator.naturalOrder())
            .orElseThrow();
    Severity severity;
    String verdict;
    Source basis = binder.decomposition().source();
    if (!hottest.isGreaterThan(range.low())) {
      severity = STOP;
      verdict = ": none of it leaves";
    } else if (hottest.isLessThan(range.high())) {
      severity = WARNING;
      verdict = ": some of it stays and leaves in the heat of sintering";
    } else if (forecast.afterDebinding().isPresent()) {
      Span<MassFraction> left = forecast.afterDebinding().get().remaining();
      severity = left.high().si() <= BurnOut.COMPLETE_BELOW ? NOTE : UNDETERMINED;
      basis = forecast.candidates().get(0).source();
      verdict =
          "; by "
              + forecast.candidates().size()
              + " published kinetics, none of them of your feedstock, "
              + told(left)
              + " of it is left after debinding";
    } else {
      severity = UNDETERMINED;
      verdict = ", but how long that takes is not known: no kinetics of your feedstock are given";
    }
    return finding(forecast, severity)
        .message(
            "in debinding the core reaches "
                + hottest.format(CELSIUS, 0)
                + " and "
                + binder.name()
                + " leaves between "
                + range.low().format(CELSIUS, 0)
                + " and "
                + range.high().format(CELSIUS, 0)
                + verdict)
        .measured(hottest)
        .limit(range.high())
        .basis(basis)
        .build();
  }

  private static String told(Span<MassFraction> left) {
    return left.low().equals(left.high())
        ? left.high().format(MASS_PERCENT, 1)
        : left.format(MASS_PERCENT, 1);
  }

  private static Finding.Builder finding(FiringForecast forecast, Severity severity) {
    return Finding.builder()
        .code(BurnOutFinding.BINDER_REMAINING)
        .subject(forecast.setup().binder().name())
        .severity(severity);
  }
}
