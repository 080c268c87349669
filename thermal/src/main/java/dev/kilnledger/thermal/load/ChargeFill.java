package dev.kilnledger.thermal.load;

import dev.kilnledger.core.equipment.Arrangement;
import dev.kilnledger.core.equipment.Crucible;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.material.Getter;
import dev.kilnledger.core.material.PackingPowder;
import dev.kilnledger.core.part.Passage;
import dev.kilnledger.core.source.Estimate;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.atmosphere.CrucibleAir;
import dev.kilnledger.thermal.atmosphere.GetterBalance;
import dev.kilnledger.thermal.profile.FiringStage;
import dev.kilnledger.thermal.profile.GetterFill;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.TradeUnits;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import si.uom.quantity.Density;

/** Fills a crucible around and over the parts arranged in it. */
final class ChargeFill {
  /** What carbon is asked for does not depend on how much there is; the balance wants some. */
  private static final Amount<Mass> ANY = Amounts.grams(1);

  private final GetterBalance getters;
  private final LoadTask task;
  private final Crucible crucible;
  private final double floor;

  ChargeFill(GetterBalance getters, LoadTask task, Crucible crucible) {
    this.getters = getters;
    this.task = task;
    this.crucible = crucible;
    this.floor = crucible.cavity().volume().si() / crucible.cavity().height().si();
  }

  List<StageLoad> stages(Arrangement arrangement) {
    return task.stages().stream().map(stage -> stage(stage, arrangement)).toList();
  }

  /** What has to be free over the packing: the deepest getter, and the headroom asked for. */
  Amount<Length> over(List<StageLoad> stages) {
    double deepest =
        stages.stream()
            .flatMap(stage -> stage.getter().stream())
            .mapToDouble(getter -> getter.depth().high().si())
            .max()
            .orElse(0);
    return Amounts.metres(deepest + task.spacing().headroom().si()).to(TradeUnits.MILLIMETRE);
  }

  private StageLoad stage(PlannedStage planned, Arrangement arrangement) {
    Passage passage = task.passage();
    boolean green = planned.purpose() == FiringStage.Purpose.DEBINDING;
    double part = (green ? passage.green() : passage.brown()).volume().si();
    double volume = floor * arrangement.fillHeight().si() - arrangement.parts() * part;
    Estimate<Mass> packing = packing(volume, planned.packing());
    StageLoad.Builder load =
        StageLoad.builder()
            .planned(planned)
            .fillHeight(arrangement.fillHeight())
            .packingVolume(Amounts.litres(1000 * volume))
            .packingMass(packing);
    Optional<GetterLoad> getter =
        planned
            .getter()
            .flatMap(carbon -> getter(planned, carbon, packing.span().low(), arrangement.parts()));
    double depth = getter.map(g -> g.depth().high().si()).orElse(0.0);
    return load.getter(getter)
        .roomLeft(
            Amounts.metres(Math.max(0, arrangement.freeHeight().si() - depth))
                .to(TradeUnits.MILLIMETRE))
        .build();
  }

  private static Estimate<Mass> packing(double volume, PackingPowder powder) {
    double apparent = powder.apparentDensity().value().low().si();
    Span<Density> tap = powder.tapDensity().value();
    return Estimate.of(
        Amounts.kilograms(volume * Math.min(apparent, tap.low().si())),
        Amounts.kilograms(volume * (tap.low().si() + tap.high().si()) / 2),
        Amounts.kilograms(volume * tap.high().si()));
  }

  private Optional<GetterLoad> getter(
      PlannedStage planned, Getter getter, Amount<Mass> lightestPacking, int parts) {
    Alloy alloy = task.passage().feedstock().alloy();
    CrucibleAir air = air(planned, lightestPacking, parts);
    double carbon =
        getters
            .budget(planned.profile(), GetterFill.of(getter, ANY), air, alloy)
            .carbonNeeded()
            .high()
            .si();
    double grams =
        1000 * carbon * (1 + task.getterReserve().si()) / (1 - getter.ash().value().high().si());
    if (grams == 0) {
      return Optional.empty();
    }
    GetterFill fill = GetterFill.of(getter, Amounts.grams(Math.ceil(10 * grams) / 10));
    return Optional.of(
        GetterLoad.of(fill, depth(fill), getters.budget(planned.profile(), fill, air, alloy)));
  }

  private Span<Length> depth(GetterFill fill) {
    Span<Density> bulk = fill.getter().bulkDensity().value();
    return Span.of(depth(fill, bulk.high()), depth(fill, bulk.low()));
  }

  private Amount<Length> depth(GetterFill fill, Amount<Density> bulk) {
    return Amounts.metres(fill.mass().si() / bulk.si() / floor).to(TradeUnits.MILLIMETRE);
  }

  /** The gas in the crucible: most of it with the lightest packing. */
  private CrucibleAir air(PlannedStage planned, Amount<Mass> lightestPacking, int parts) {
    FiringStage stage =
        FiringStage.sintering()
            .profile(planned.profile())
            .packing(planned.packing())
            .packingMass(lightestPacking)
            .build();
    Passage passage = task.passage();
    return CrucibleAir.builder()
        .voidVolume(
            CrucibleAir.voidVolume(
                crucible, stage, passage.feedstock().alloy(), passage.metal().multiply(parts)))
        .oxygenInflow(task.oxygenInflow())
        .build();
  }
}
