package dev.kilnledger.thermal.load;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.MILLIMETRE;

import dev.kilnledger.core.equipment.Arrangement;
import dev.kilnledger.core.equipment.BoxCavity;
import dev.kilnledger.core.equipment.ChargePart;
import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.equipment.EquipmentCheck;
import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.PatternArranger;
import dev.kilnledger.core.equipment.Spacing;
import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.atmosphere.GetterBalance;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;

/**
 * Plans a charge: arranges the parts, fills the crucible with packing up to the cover over the
 * highest layer, and lays the getter on top.
 *
 * <p>Packing fills the cavity up to its height less the parts, which have the same size green and
 * brown; its mass is a span from the lowest apparent to the highest tap density. The getter holds
 * the carbon that the oxygen may ask for at most, over its highest ash, and the reserve: {@code m =
 * C (1 + reserve) / (1 - ash)}, rounded up to a tenth of a gram. The gas in the crucible is counted
 * with the lightest packing, which leaves the most of it. Where the getter has no room over the
 * packing fewer layers are laid in, or, where the number of parts is given, the other sides that
 * the part may stand on are tried.
 *
 * <p>Example: discs of 30 mm, 10 mm high, in a crucible of 160 mm inside and 140 mm high with 10 mm
 * of packing everywhere: nine to a layer and six layers, 130 mm with the cover. For 54 parts of
 * 7.07 cm3 the packing fills 20106 mm2 x 130 mm - 382 cm3 = 2232 cm3; with powder of 0.8 to 1.5
 * g/cm3 that is 1.8 to 3.3 kg. The getter has 10 mm left, 201 cm3.
 */
public final class LoadPlanner {
  private static final int TRIES = 8;
  private static final Source GEOMETRY = Source.recomputed("envelopes in the chamber, rows");

  private final GetterBalance getters;

  /**
   * A planner.
   *
   * @param getters the balance by which getters are weighed
   */
  public LoadPlanner(GetterBalance getters) {
    this.getters = getters;
  }

  /** {@return a planner by {@link GetterBalance#standard()}} */
  public static LoadPlanner standard() {
    return new LoadPlanner(GetterBalance.standard());
  }

  /**
   * Plans a charge in a given crucible.
   *
   * @param task what is wanted
   * @param crucible the crucible
   * @return the plan; with as many parts as fit where fewer fit than are wanted, which the findings
   *     tell
   */
  public LoadPlan plan(LoadTask task, Crucible crucible) {
    Optional<Arrangement> first = arrange(task, crucible, task.spacing().headroom());
    if (first.isEmpty()) {
      return plan(task, crucible, first, List.of());
    }
    ChargeFill fill = new ChargeFill(getters, task, crucible);
    Optional<Arrangement> tried = first;
    for (int i = 0; i < TRIES && tried.isPresent(); i++) {
      Arrangement arrangement = tried.get();
      List<StageLoad> stages = fill.stages(arrangement);
      Amount<Length> over = fill.over(stages);
      if (!over.isGreaterThan(arrangement.freeHeight())) {
        return plan(task, crucible, tried, stages);
      }
      // less packing leaves more gas, which asks for a little more getter
      tried = arrange(task, crucible, over).filter(other -> !shortOf(task, other));
    }
    return plan(task, crucible, first, fill.stages(first.get()));
  }

  private static boolean shortOf(LoadTask task, Arrangement arrangement) {
    return task.parts().isPresent() && arrangement.parts() < task.parts().getAsInt();
  }

  private static Optional<Arrangement> arrange(
      LoadTask task, Crucible crucible, Amount<Length> headroom) {
    Spacing spacing = Spacing.builder().from(task.spacing()).headroom(headroom).build();
    return PatternArranger.standard()
        .most(crucible.cavity(), task.part(), spacing)
        .map(most -> most.with(Math.min(most.capacity(), task.parts().orElse(most.capacity()))));
  }

  private LoadPlan plan(
      LoadTask task, Crucible crucible, Optional<Arrangement> arrangement, List<StageLoad> stages) {
    int asked = task.parts().orElse(arrangement.map(Arrangement::parts).orElse(1));
    LoadPlan.Builder plan =
        LoadPlan.builder()
            .task(task)
            .crucible(crucible)
            .arrangement(arrangement)
            .stages(stages)
            .addFindings(
                EquipmentCheck.standard().charging(task.part(), crucible, task.spacing(), asked));
    StageFindings findings = new StageFindings(task, crucible);
    stages.forEach(stage -> plan.addAllFindings(findings.of(stage)));
    return plan.cautions(cautions(task)).build();
  }

  private static Set<Caution> cautions(LoadTask task) {
    Set<Caution> cautions = EnumSet.of(Caution.HOT_WORK);
    cautions.addAll(task.passage().feedstock().alloy().cautions());
    for (PlannedStage stage : task.stages()) {
      cautions.addAll(stage.packing().cautions());
      if (stage.purpose() == FiringStage.Purpose.DEBINDING) {
        cautions.add(Caution.BINDER_FUMES);
        cautions.add(Caution.CARBON_MONOXIDE);
      }
      if (stage.getter().isPresent()) {
        cautions.add(Caution.CARBON_MONOXIDE);
      }
    }
    return cautions;
  }

  /**
   * Looks for the smallest crucible that holds the parts, stands the hottest stage and fits into
   * the kiln.
   *
   * @param task what is wanted, with the number of parts
   * @param crucibles the crucibles there are
   * @param kiln the kiln
   * @param around what is kept free around each crucible in the kiln, for the heat to get around
   * @return all crucibles, the smallest inside first, with the reasons that rule them out; a
   *     crucible whose outside is not known is ruled out
   * @throws IllegalArgumentException if the number of parts is not given or the distance is
   *     negative
   */
  public CrucibleChoice smallest(
      LoadTask task, List<Crucible> crucibles, Kiln kiln, Amount<Length> around) {
    new Problems("choice of a crucible")
        .require(task.parts().isPresent(), "parts is not given; accepted is 1 or more")
        .notNegative("distance around a crucible", around)
        .refuseIfAny();
    return CrucibleChoice.of(
        crucibles.stream()
            .sorted(Comparator.comparing(crucible -> crucible.cavity().volume()))
            .map(crucible -> option(plan(task, crucible), kiln, around))
            .toList());
  }

  private static CrucibleOption option(LoadPlan plan, Kiln kiln, Amount<Length> around) {
    List<Finding> findings = new ArrayList<>(plan.findings());
    findings.add(standsPeak(plan));
    findings.add(EquipmentCheck.standard().loading(kiln, plan.crucible()));
    int count = inChamber(plan.crucible(), kiln, around);
    if (plan.crucible().outside().isPresent()) {
      findings.add(inChamber(plan.crucible(), kiln, around, count));
    }
    return CrucibleOption.of(
        plan, count, findings, findings.stream().filter(LoadPlanner::rulesOut).toList());
  }

  /** What only a crucible of known outside or a stated inflow would settle counts as well. */
  private static boolean rulesOut(Finding finding) {
    return finding.code() != LoadFinding.GETTER_MASS && finding.severity().compareTo(NOTE) > 0;
  }

  private static Finding standsPeak(LoadPlan plan) {
    Amount<Temperature> peak =
        plan.task().stages().stream()
            .map(stage -> stage.profile().peak())
            .max(Comparator.naturalOrder())
            .orElseThrow();
    Amount<Temperature> limit = plan.crucible().material().serviceLimit().value();
    return LoadFinding.CRUCIBLE_STANDS_PEAK
        .about(plan.crucible().name())
        .severity(peak.isGreaterThan(limit) ? STOP : PASSED)
        .message(
            plan.crucible().material().name()
                + " stands "
                + limit.format(CELSIUS, 0)
                + " in air, and the peak is "
                + peak.format(CELSIUS, 0))
        .measured(peak)
        .limit(limit)
        .basis(plan.crucible().material().serviceLimit().source())
        .build();
  }

  private static int inChamber(Crucible crucible, Kiln kiln, Amount<Length> around) {
    Spacing spacing =
        Spacing.builder()
            .from(Spacing.of(Amounts.millimetres(0)))
            .wall(around)
            .betweenParts(around)
            .build();
    BoxCavity chamber = BoxCavity.of(kiln.chamber().x(), kiln.chamber().y(), kiln.chamber().z());
    return crucible
        .outside()
        .flatMap(
            outside -> PatternArranger.standard().most(chamber, ChargePart.of(outside), spacing))
        .map(Arrangement::perLayer)
        .orElse(0);
  }

  private static Finding inChamber(Crucible crucible, Kiln kiln, Amount<Length> around, int count) {
    return LoadFinding.CRUCIBLES_IN_CHAMBER
        .about(kiln.name())
        .severity(count == 0 ? STOP : count == 1 ? PASSED : NOTE)
        .message(
            (count == 0 ? "no crucible " : count == 1 ? "one crucible " : count + " crucibles ")
                + crucible.name()
                + (count > 1 ? " stand" : " stands")
                + " in the chamber with "
                + around.format(MILLIMETRE, 0)
                + " around"
                + (count > 1 ? ", side by side; stacking is not counted" : ""))
        .measured(Amounts.ratio(count))
        .basis(GEOMETRY)
        .build();
  }
}
