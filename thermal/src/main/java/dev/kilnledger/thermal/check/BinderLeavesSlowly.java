package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.CELSIUS;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.thermal.burnout.LossCheck;
import dev.kilnledger.thermal.burnout.SegmentLoss;
import dev.kilnledger.thermal.firing.FiringForecast;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The binder must leave no faster than the wall stands, along what the core feels, in debinding
 * and, as far as binder is left, in sintering. Where no limit on the loss or no kinetics are given,
 * the {@linkplain DebindingRate heating rate} is held against the wall instead.
 */
final class BinderLeavesSlowly implements FiringRule {
  private static final double STOP_FROM = 4;
  private final FiringRule ruleOfThumb = new DebindingRate();

  @Override
  public List<Finding> check(FiringForecast forecast) {
    if (forecast.lossChecks().isEmpty()) {
      return ruleOfThumb.check(forecast);
    }
    List<Finding> findings = new ArrayList<>();
    int kinetics = forecast.candidates().size();
    for (int i = 0; i < forecast.lossChecks().size(); i += kinetics) {
      List<LossCheck> byEach = forecast.lossChecks().subList(i, i + kinetics);
      findings.add(verdict(forecast, byEach));
      // what the limit does not tell
      findings.addAll(byEach.get(0).findings().subList(1, byEach.get(0).findings().size()));
    }
    return findings;
  }

  private static Finding verdict(FiringForecast forecast, List<LossCheck> byEach) {
    List<SegmentLoss> worst =
        byEach.stream()
            .map(BinderLeavesSlowly::worst)
            .sorted(Comparator.comparing(SegmentLoss::use))
            .toList();
    SegmentLoss most = worst.get(worst.size() - 1);
    double least = worst.get(0).use().si();
    boolean surely = most.use().si() <= 1 + LossCheck.ROUNDING;
    boolean maybe = least <= 1 + LossCheck.ROUNDING;
    boolean own = !forecast.setup().kinetics().isEmpty();
    Severity severity =
        surely ? PASSED : maybe || !own ? UNDETERMINED : least > STOP_FROM ? STOP : WARNING;
    return Finding.builder()
        .code(byEach.get(0).limit().code())
        .subject(forecast.setup().binder().name())
        .severity(severity)
        .message(
            byEach.get(0).limit().tell(most.nearest())
                + ", at "
                + most.nearest().temperature().format(CELSIUS, 0)
                + " in "
                + forecast.place(most.row().number())
                + (byEach.size() == 1 ? "" : ", by the quickest of " + byEach.size() + " kinetics")
                + (surely ? "" : ": the part may blister or crack"))
        .measured(most.nearest().rate())
        .limit(byEach.get(0).limit().allowedAt(most.nearest().temperature()))
        .basis(byEach.get(0).limit().source())
        .build();
  }

  private static SegmentLoss worst(LossCheck check) {
    return check.segments().stream().max(Comparator.comparing(SegmentLoss::use)).orElseThrow();
  }
}
