package dev.kilnledger.thermal.energy;

import static dev.kilnledger.units.TradeUnits.KILOWATT_HOUR;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.source.Input;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Relations;
import java.util.List;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Time;

/**
 * Energy by a stated share of the time during which the elements are on: rated power times hours
 * times duty factor, the hours counted up to the final cooling. For kilns whose wall is not known;
 * the charge plays no part. Potters' practice for the duty factor: 15 % in preheating, 50 to 60 %
 * typically, 65 % in high firing.
 *
 * <p>Example: 11.52 kW, on for 9 % of 8 h, take 8.2944 kWh.
 */
public final class DutyFactorEnergy implements FiringEnergy {
  private static final Source MODEL =
      Source.commonPractice(
          "rated power x hours x duty factor; potters take 15 % for preheating, 50 to 60 %"
              + " typically, 65 % for high firing");

  private final Amount<Dimensionless> dutyFactor;

  /**
   * A model with a stated duty factor.
   *
   * @param dutyFactor the share of the time the elements are on, above 0 and up to 1
   * @throws IllegalArgumentException if the duty factor is out of range
   */
  public DutyFactorEnergy(Amount<Dimensionless> dutyFactor) {
    new Problems("duty factor energy")
        .require(
            dutyFactor.si() > 0 && dutyFactor.si() <= 1,
            "duty factor is " + dutyFactor + "; accepted is above 0 and up to 1")
        .refuseIfAny();
    this.dutyFactor = dutyFactor;
  }

  @Override
  public EnergyBalance balance(Kiln kiln, Profile profile, List<ChargeItem> charge) {
    Amount<Time> time = profile.durationBeforeFinalCooling();
    return EnergyBalance.builder()
        .model(MODEL)
        .poweredTime(time)
        .addLines(
            EnergyLine.builder()
                .use(EnergyLine.Use.WHOLE)
                .subject(kiln.name())
                .energy(
                    Relations.energyOf(kiln.power(), time)
                        .multiply(dutyFactor.si())
                        .to(KILOWATT_HOUR))
                .formula("P x t x duty factor, t before the final cooling")
                .addInputs(
                    Input.of("P", kiln.power(), Source.user("as entered with the kiln")),
                    Input.of("t", time, Source.user("the programme")),
                    Input.of("duty factor", dutyFactor, MODEL))
                .source(MODEL)
                .build())
        .addFindings(
            Finding.builder()
                .code(EnergyFinding.POWER_WITHIN_RATING)
                .severity(Severity.UNDETERMINED)
                .subject(kiln.name())
                .message(
                    "a duty factor does not tell whether the kiln's power is enough for the"
                        + " profile")
                .limit(kiln.power())
                .basis(MODEL)
                .build())
        .build();
  }
}
