package dev.kilnledger.costing.job;

import dev.kilnledger.core.equipment.ChargePart;
import dev.kilnledger.core.equipment.EquipmentCheck;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.firing.FiringUse;
import dev.kilnledger.core.part.MassBalancePassage;
import dev.kilnledger.core.part.Passage;
import dev.kilnledger.core.part.SelfWeightCheck;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.costing.ledger.Ledger;
import dev.kilnledger.costing.ledger.LedgerPlan;
import dev.kilnledger.costing.resource.Consumed;
import dev.kilnledger.costing.resource.Driver;
import dev.kilnledger.costing.resource.Resource;
import dev.kilnledger.thermal.check.FiringCheck;
import dev.kilnledger.thermal.check.FiringReport;
import dev.kilnledger.thermal.energy.FiringEnergy;
import dev.kilnledger.thermal.energy.RouteEnergy;
import dev.kilnledger.thermal.firing.FiringForecast;
import dev.kilnledger.thermal.firing.FiringSetup;
import dev.kilnledger.thermal.load.LoadPlan;
import dev.kilnledger.thermal.load.LoadPlanner;
import dev.kilnledger.thermal.load.LoadTask;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Relations;
import dev.kilnledger.units.TradeUnits;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * Answers a job: follows the part through its passage, plans the charge, holds printer, crucible,
 * support and firing against their checks, forecasts the energy, and counts what the parts cost.
 *
 * <p>A job that will not come out is answered all the same, with the findings that say so; the cost
 * is then that of trying. Quantities derived for the ledger are counted in whole tenths of a gram
 * and hundredths of a kilowatt hour, rounded up.
 */
public final class WholeJob {
  private final FiringCheck check;
  private final Optional<FiringEnergy> energy;

  /**
   * An answer by given rules, the energy being that of the forecast firing.
   *
   * @param check the rules a firing is held against
   */
  public WholeJob(FiringCheck check) {
    this.check = check;
    this.energy = Optional.empty();
  }

  /**
   * An answer by given models.
   *
   * @param check the rules a firing is held against
   * @param energy the model of its energy, in place of the forecast's heat balance
   */
  public WholeJob(FiringCheck check, FiringEnergy energy) {
    this.check = check;
    this.energy = Optional.of(energy);
  }

  /** {@return an answer by the standard rules and the heat balance of the kiln over time} */
  public static WholeJob standard() {
    return new WholeJob(FiringCheck.standard());
  }

  /**
   * Answers a job.
   *
   * @param job the job
   * @return passage, findings and statement
   * @throws IllegalArgumentException if the part contradicts itself, the price book lacks an item
   *     or offers it in a measure that does not fit, or the kiln lacks what the energy model needs
   *     and no measured firing is given; the message says what would be accepted
   */
  public JobAnswer answer(Job job) {
    Passage passage = passage(job);
    return answer(job, passage, check(setup(job, passage)));
  }

  /**
   * Answers a job whose firing is computed already. Nearly all the time of an answer goes into its
   * firing, so who has many jobs that are fired alike computes it once:
   *
   * <pre>{@code
   * CheckedFiring firing = wholeJob.check(wholeJob.setup(one));
   * wholeJob.answer(one, firing);
   * wholeJob.answer(another, firing);
   * }</pre>
   *
   * @param job the job
   * @param firing its firing, by {@link #check} of its {@link #setup}
   * @return the same as without
   * @throws IllegalArgumentException if the job is fired otherwise, and as without
   */
  public JobAnswer answer(Job job, CheckedFiring firing) {
    Passage passage = passage(job);
    if (!setup(job, passage).equals(firing.forecast().setup())) {
      throw new IllegalArgumentException(
          "job of "
              + job.part().name()
              + ": the firing given is of another setup; accepted is the firing of its own");
    }
    return answer(job, passage, firing);
  }

  /**
   * What a job fires. Jobs whose setups are equal are fired alike, whatever else they differ in.
   *
   * @param job the job
   * @return its firing, nothing of it computed
   * @throws IllegalArgumentException if the part contradicts itself
   */
  public FiringSetup setup(Job job) {
    return setup(job, passage(job));
  }

  /**
   * Computes a firing as far as the rules ask, and holds it against them.
   *
   * @param setup the firing
   * @return forecast and findings
   */
  public CheckedFiring check(FiringSetup setup) {
    FiringForecast forecast = FiringForecast.of(setup);
    return CheckedFiring.of(forecast, check.check(forecast));
  }

  private static Passage passage(Job job) {
    return MassBalancePassage.standard().passage(job.part(), job.feedstock(), job.conditions());
  }

  private JobAnswer answer(Job job, Passage passage, CheckedFiring checked) {
    FiringForecast forecast = checked.forecast();
    FiringReport report = checked.report();
    Optional<RouteEnergy> taken =
        job.measuredFiring().isPresent()
            ? Optional.empty()
            : Optional.of(energy(job, passage, forecast));
    FiringUse firing =
        job.measuredFiring()
            .or(() -> taken.map(route -> route.toFiringUse(job.partsPerCharge())))
            .orElseThrow();

    List<Finding> findings = new ArrayList<>(passage.findings());
    EquipmentCheck equipment = EquipmentCheck.standard();
    findings.addAll(equipment.printing(passage, job.printer(), job.route().peak()));
    LoadPlan load = LoadPlanner.standard().plan(task(job, passage), job.crucible());
    findings.addAll(load.findings());
    findings.add(equipment.loading(job.kiln(), job.crucible()));
    findings.addAll(SelfWeightCheck.standard().check(passage, job.support()));
    findings.addAll(report.findings());
    if (energy.isPresent()) {
      // the forecast's own balance has told its findings in the report
      taken.ifPresent(route -> findings.addAll(route.findings()));
    }

    return JobAnswer.builder()
        .job(job)
        .passage(passage)
        .load(load)
        .forecast(forecast)
        .energy(taken)
        .firing(firing)
        .findings(findings)
        .cautions(report.cautions())
        .statement(Ledger.standard().statement(plan(job, passage, firing), job.parts()))
        .build();
  }

  private static LoadTask task(Job job, Passage passage) {
    return LoadTask.builder()
        .passage(passage)
        .part(
            ChargePart.builder()
                .envelope(passage.green().envelope())
                .outline(job.outline())
                .build())
        .spacing(job.spacing())
        .route(job.route())
        .parts(job.partsPerCharge())
        .oxygenInflow(job.oxygenInflow())
        .build();
  }

  private static FiringSetup setup(Job job, Passage passage) {
    double oversize =
        Math.max(
            passage.oversize().x().expected().si(),
            Math.max(
                passage.oversize().y().expected().si(), passage.oversize().z().expected().si()));
    return FiringSetup.builder()
        .from(job)
        .thickestSection(job.part().thickestSection().multiply(oversize))
        .partsVolume(passage.green().volume().multiply(job.partsPerCharge()))
        .greenMass(passage.green().mass().multiply(job.partsPerCharge()))
        .build();
  }

  private RouteEnergy energy(Job job, Passage passage, FiringForecast forecast) {
    return energy
        .map(
            model ->
                model.forRoute(
                    job.kiln(),
                    job.crucible(),
                    job.route(),
                    job.feedstock().alloy(),
                    passage.metal().multiply(job.partsPerCharge())))
        .or(forecast::energy)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "kiln "
                        + job.kiln().name()
                        + ": the wall has no layers; accepted is at least one, a measured firing,"
                        + " or a model of the energy that needs none such as DutyFactorEnergy"));
  }

  private static LedgerPlan plan(Job job, Passage passage, FiringUse firing) {
    List<Resource> resources = new ArrayList<>();
    resources.add(
        Consumed.builder()
            .item(job.filamentItem())
            .driver(Driver.PART)
            .quantity(roundedUp(passage.filamentMass(), TradeUnits.GRAM, 1))
            .tails(job.filamentTails())
            .source(Source.recomputed("filament of the green part, by its passage"))
            .build());
    if (firing.energy().si() > 0) {
      resources.add(
          perFiring(
              job.energyItem(), roundedUp(firing.energy(), TradeUnits.KILOWATT_HOUR, 2), firing));
    }
    if (firing.getter().si() > 0) {
      resources.add(
          perFiring(
              job.getterItem().orElseThrow(),
              roundedUp(firing.getter(), TradeUnits.GRAM, 1),
              firing));
    }
    resources.addAll(job.resources());
    return LedgerPlan.builder()
        .prices(job.prices())
        .resources(resources)
        .partsPerFiring(job.partsPerCharge())
        .charging(job.charging())
        .failures(job.failures())
        .putAmounts(Driver.FIRING_TIME, roundedUp(firing.duration(), TradeUnits.HOUR, 2))
        .putAmounts(Driver.PRINTED_MASS, roundedUp(passage.filamentMass(), TradeUnits.GRAM, 1))
        .putAmounts(
            Driver.EXTRUDED_VOLUME,
            roundedUp(
                Relations.volumeOf(passage.filamentMass(), job.feedstock().density()),
                TradeUnits.CUBIC_MILLIMETRE,
                0))
        .addEquipment(job.printerItem(), job.kilnItem(), job.crucibleItem())
        .timePerPart(job.timePerPart())
        .groups(job.groups())
        .shipping(job.shipping())
        .overheads(job.overheads())
        .tax(job.tax())
        .leftovers(job.leftovers())
        .buying(job.buying())
        .rounding(job.rounding())
        .covered(job.covered())
        .build();
  }

  private static Consumed perFiring(String item, Amount<?> quantity, FiringUse firing) {
    return Consumed.builder()
        .item(item)
        .driver(Driver.FIRING)
        .quantity(quantity)
        .source(firing.source())
        .build();
  }

  /** A derived quantity has no shortest decimal of its own; the ledger counts in decimals. */
  private static <Q extends Quantity<Q>> Amount<Q> roundedUp(
      Amount<Q> amount, Unit<Q> unit, int decimals) {
    double rounded = amount.decimalIn(unit).setScale(decimals, RoundingMode.CEILING).doubleValue();
    return Amount.of(rounded, unit);
  }
}
