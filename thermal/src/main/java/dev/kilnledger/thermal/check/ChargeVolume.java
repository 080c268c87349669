package dev.kilnledger.thermal.check;

import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.units.TradeUnits.CUBIC_CENTIMETRE;

import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.util.List;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import si.uom.quantity.Density;

/**
 * Packing, getter and parts of each stage must have room in the crucible: mass over bulk density,
 * the packing from tapped in its densest grade to poured in its lightest, and the parts' volume.
 */
final class ChargeVolume implements FiringRule {
  private static final Source BASIS =
      Source.recomputed("mass over bulk density, the range over the usual grades");

  @Override
  public List<Finding> check(FiringForecast forecast) {
    FiringSetup setup = forecast.setup();
    return setup.route().stages().stream().map(stage -> check(setup, stage)).toList();
  }

  private static Finding check(FiringSetup setup, FiringStage stage) {
    double parts = setup.greenVolume().map(Amount::si).orElse(0.0);
    double least = parts;
    double most = parts;
    Amount<Mass> packing = stage.packingMass();
    least += packing.si() / stage.packing().tapDensity().value().high().si();
    most += packing.si() / stage.packing().apparentDensity().value().low().si();
    if (stage.getter().isPresent()) {
      Span<Density> bulk = stage.getter().get().getter().bulkDensity().value();
      double getter = stage.getter().get().mass().si();
      least += getter / bulk.high().si();
      most += getter / bulk.low().si();
    }
    Amount<Volume> cavity = setup.crucible().cavity().volume();
    boolean never = least > cavity.si();
    boolean always = most <= cavity.si() && setup.greenVolume().isPresent();
    Span<Volume> needed = Span.of(Amounts.cubicMetres(least), Amounts.cubicMetres(most));
    return FiringFinding.CHARGE_VOLUME
        .about(setup.crucible().name())
        .severity(never ? STOP : always ? PASSED : UNDETERMINED)
        .message(
            "the charge of the "
                + stage.name()
                + " stage takes "
                + needed.format(CUBIC_CENTIMETRE, 0)
                + ", by how densely the powder packs"
                + (setup.greenVolume().isEmpty() ? ", without the parts" : "")
                + ", and the crucible holds "
                + cavity.format(CUBIC_CENTIMETRE, 0)
                + (always || never ? "" : ": state or weigh how much powder fills it"))
        .measured(needed.high())
        .limit(cavity)
        .basis(BASIS)
        .build();
  }
}
