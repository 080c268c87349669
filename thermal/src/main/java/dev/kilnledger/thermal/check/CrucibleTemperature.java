package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.CELSIUS;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.material.CrucibleMaterial;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.units.Amount;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Temperature;

/**
 * The crucible must stand the peak in air; above what it stands when heated and cooled again and
 * again it is warned of, and what else spoils it is noted.
 */
final class CrucibleTemperature implements FiringRule {
  @Override
  public List<Finding> check(FiringForecast forecast) {
    FiringSetup setup = forecast.setup();
    CrucibleMaterial material = setup.crucible().material();
    Amount<Temperature> limit = material.serviceLimit().value();
    Amount<Temperature> peak = setup.route().peak();
    Optional<Sourced<Amount<Temperature>>> cyclic = material.cyclicLimit();
    boolean tooHot = peak.isGreaterThan(limit);
    boolean tooOften = cyclic.isPresent() && peak.isGreaterThan(cyclic.get().value());
    boolean remarked = !material.remark().isEmpty();
    return List.of(
        FiringFinding.CRUCIBLE_TEMPERATURE
            .about(setup.crucible().name())
            .severity(tooHot ? STOP : tooOften ? WARNING : remarked ? NOTE : PASSED)
            .message(
                material.name()
                    + " stands "
                    + limit.format(CELSIUS, 0)
                    + " in air"
                    + cyclic
                        .map(
                            c ->
                                ", " + c.value().format(CELSIUS, 0) + " when fired again and again")
                        .orElse("")
                    + ", and the peak is "
                    + peak.format(CELSIUS, 0)
                    + (remarked ? "; " + material.remark() : ""))
            .measured(peak)
            .limit(tooOften && !tooHot ? cyclic.get().value() : limit)
            .basis(tooOften && !tooHot ? cyclic.get().source() : material.serviceLimit().source())
            .build());
  }
}
