package dev.kilnledger.thermal.load;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.units.TradeUnits.GRAM;
import static dev.kilnledger.units.TradeUnits.KILOGRAM;
import static dev.kilnledger.units.TradeUnits.LITRE;
import static dev.kilnledger.units.TradeUnits.MILLIMETRE;
import static dev.kilnledger.units.TradeUnits.PERCENT;

import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;

/** What is found about packing and getter of a stage. */
final class StageFindings {
  private static final Source BULK =
      Source.recomputed("cavity up to the cover less the parts, times apparent to tap density");
  private static final Source BALANCE =
      Source.recomputed("carbon that the oxygen may ask for, its ash and the reserve");
  private static final Source LAYER = Source.recomputed("mass over bulk density and floor area");

  private final LoadTask task;
  private final Crucible crucible;

  StageFindings(LoadTask task, Crucible crucible) {
    this.task = task;
    this.crucible = crucible;
  }

  List<Finding> of(StageLoad stage) {
    List<Finding> findings = new ArrayList<>();
    findings.add(packing(stage));
    stage.planned().getter().ifPresent(getter -> findings.add(mass(stage, getter.name())));
    stage.getter().ifPresent(load -> findings.add(room(stage, load)));
    return findings;
  }

  private static Finding packing(StageLoad stage) {
    return LoadFinding.PACKING_MASS
        .about(stage.planned().packing().name())
        .severity(NOTE)
        .measured(stage.packingMass().expected())
        .basis(BULK)
        .message(
            "the "
                + stage.planned().name()
                + " stage takes "
                + stage.packingVolume().format(LITRE, 2)
                + " of "
                + stage.planned().packing().name()
                + ", "
                + stage.packingMass().span().format(KILOGRAM, 2)
                + " by grade and by how densely it is packed, about "
                + stage.packingMass().expected().format(KILOGRAM, 2)
                + " tapped")
        .build();
  }

  private Finding mass(StageLoad stage, String getter) {
    Finding.Builder finding = LoadFinding.GETTER_MASS.about(getter).basis(BALANCE);
    if (stage.getter().isEmpty()) {
      return finding
          .severity(NOTE)
          .message(
              "the "
                  + stage.planned().name()
                  + " stage stays too cool for "
                  + getter
                  + " to burn: none is laid in")
          .build();
    }
    GetterLoad load = stage.getter().get();
    String mass = load.fill().mass().format(GRAM, 1);
    return finding
        .severity(load.enough() ? PASSED : UNDETERMINED)
        .measured(load.fill().mass())
        .message(
            "the oxygen of the "
                + stage.planned().name()
                + " stage may ask for "
                + load.budget().carbonNeeded().high().format(GRAM, 1)
                + " of carbon"
                + (load.enough() ? "" : " from the crucible's own air alone")
                + "; with the highest ash and "
                + task.getterReserve().format(PERCENT, 0)
                + " in reserve that is "
                + (load.enough()
                    ? mass + " of " + getter
                    : "at least "
                        + mass
                        + " of "
                        + getter
                        + ", and the exchange through lid and packing, which decides, is not"
                        + " stated"))
        .build();
  }

  private Finding room(StageLoad stage, GetterLoad load) {
    Amount<Length> free =
        Amounts.metres(crucible.cavity().height().si() - stage.fillHeight().si()).to(MILLIMETRE);
    Amount<Length> needed = load.depth().high().add(task.spacing().headroom());
    boolean fits = !needed.isGreaterThan(free);
    return LoadFinding.GETTER_ROOM
        .about(crucible.name())
        .severity(fits ? PASSED : STOP)
        .measured(needed)
        .limit(free)
        .basis(LAYER)
        .message(
            "the getter of the "
                + stage.planned().name()
                + " stage lies "
                + load.depth().format(MILLIMETRE, 1)
                + " deep"
                + (task.spacing().headroom().si() > 0
                    ? " and " + task.spacing().headroom() + " are to stay free over it"
                    : "")
                + ", and over the packing there are "
                + free.format(MILLIMETRE, 1)
                + (fits ? "" : ": fewer layers or a taller crucible"))
        .build();
  }
}
