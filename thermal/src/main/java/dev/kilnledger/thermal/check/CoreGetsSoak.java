package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.HOUR;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.conduction.ConductionFinding;
import dev.kilnledger.thermal.firing.CoreSoak;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.units.Amount;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Time;

/**
 * The core must be hot for as long as asked. How well the packing conducts is known within a factor
 * only, unless it was measured: where that decides, the answer is undetermined.
 */
final class CoreGetsSoak implements FiringRule {
  @Override
  public List<Finding> check(FiringForecast forecast) {
    CoreSoak soak = forecast.coreSoak();
    Span<Time> had = soak.had().span();
    boolean surely = !Excess.exceeds(soak.asked(), had.low());
    boolean maybe = !Excess.exceeds(soak.asked(), had.high());
    // the hold is sought only where it is told
    Optional<Amount<Time>> hold = surely ? Optional.empty() : forecast.holdForSoak();
    Severity severity = surely ? PASSED : maybe ? UNDETERMINED : hold.isPresent() ? WARNING : STOP;
    String peak = forecast.setup().route().peak().format(CELSIUS, 0);
    String remedy =
        surely
            ? ""
            : hold.map(
                    time -> ": with a hold of " + time.format(HOUR, 2) + " at " + peak + " it is")
                .orElse(": no hold at " + peak + " does it");
    return List.of(
        Finding.builder()
            .code(ConductionFinding.CORE_SOAK)
            .subject(forecast.setup().crucible().name())
            .severity(severity)
            .message(
                "the core is at or above "
                    + soak.temperature().format(CELSIUS, 0)
                    + " for "
                    + soak.had().expected().format(HOUR, 2)
                    + " at a stretch"
                    + (had.low().equals(had.high())
                        ? ""
                        : " (" + had.format(HOUR, 2) + ", by how well the packing conducts)")
                    + ", asked are "
                    + soak.asked().format(HOUR, 2)
                    + remedy)
            .measured(soak.had().expected())
            .limit(soak.asked())
            .basis(forecast.hottest().core().model())
            .build());
  }
}
