package dev.kilnledger.thermal.atmosphere;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.GRAM;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.VOLUME_PERCENT;

import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.material.Alloy;
import dev.kilnledger.core.material.Getter;
import dev.kilnledger.core.source.Input;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.core.source.Sourced;
import dev.kilnledger.core.source.Span;
import dev.kilnledger.thermal.profile.GetterFill;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.MassFraction;
import dev.kilnledger.units.quantity.VolumeFraction;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.AmountOfSubstance;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/**
 * Holds the carbon laid in against the oxygen that comes to it: the air in the crucible at the
 * start, the air drawn in on cooling (p V / R (1/T_cold - 1/T_hot)), and what gets in through lid
 * and packing, which decides and must be stated.
 *
 * <p>Least: carbon burns only where it is quick, all to carbon dioxide, and the gas driven out on
 * heating is gone before. Most: it burns from its onset on, all to carbon monoxide, and the whole
 * first air stays. The truth lies between; above about 800 °C nearer to the most.
 *
 * <p>Below about 650 °C carbon burns too slowly to protect anything (common practice), whatever its
 * mass: that time is told apart.
 *
 * <p>Example: a litre of gas, heated from 20 to 1000 °C at 140 K/h, held for 3 h and cooled at 100
 * K/h, with 0.05 g of oxygen an hour through lid and packing and carbon that burns from 350 °C on,
 * takes 0.211 to 0.790 g of carbon.
 */
public final class GetterBalance {
  private static final Source MODEL =
      Source.recomputed("ideal gas law and the mass balance of C + O2 = CO2 and 2 C + O2 = 2 CO");
  private static final Source SLOW =
      Source.commonPractice("below about 650 °C carbon takes up oxygen too slowly to protect");

  /** From which share of carbon monoxide on a mixture with air can burn. */
  private static final Amount<VolumeFraction> FLAMMABLE = Amounts.volumePercent(12.5);

  private static final Source FLAMMABILITY =
      Source.fromMemory("lower flammable limit of carbon monoxide in air at 20 °C, 12.5 vol%");

  private static final Input OXYGEN_MASS =
      Input.of(
          "M",
          Amounts.gramsPerMole(1000 * Species.OXYGEN.kilogramsPerMole()),
          Source.published("IUPAC abridged standard atomic weights, 2021"));

  private final AirGas air;
  private final Amount<Temperature> quickFrom;
  private final Sourced<Amount<Temperature>> oxidationLimit;

  /**
   * A balance of its own.
   *
   * @param air the air
   * @param quickFrom from which temperature on carbon is quick enough to protect
   * @param oxidationLimit below which the metal stays as it is in air, up to where carbon is quick
   * @throws IllegalArgumentException if the metal oxidises only where carbon is quick already
   */
  public GetterBalance(
      AirGas air, Amount<Temperature> quickFrom, Sourced<Amount<Temperature>> oxidationLimit) {
    new Problems("getter balance")
        .require(
            !oxidationLimit.value().isGreaterThan(quickFrom),
            "oxidation limit is "
                + oxidationLimit.value()
                + "; accepted is up to "
                + quickFrom
                + ", where carbon is quick")
        .refuseIfAny();
    this.air = air;
    this.quickFrom = quickFrom;
    this.oxidationLimit = oxidationLimit;
  }

  /** {@return 1 atm, carbon quick from 650 °C, metal safe in air below 200 °C (common practice)} */
  public static GetterBalance standard() {
    return new GetterBalance(
        AirGas.standard(),
        Amounts.celsius(650),
        Sourced.of(
            Amounts.celsius(200),
            Source.commonPractice("fine metal tarnishes in air above about 200 °C")));
  }

  /** {@return below which the metal is taken to stay as it is in air} */
  public Sourced<Amount<Temperature>> oxidationLimit() {
    return oxidationLimit;
  }

  /**
   * The budget of one firing.
   *
   * @param history the temperature of the charge over time: the programme, or what the kiln really
   *     does; where it ends too hot for the metal to be safe, whether the carbon outlasts what
   *     follows is undetermined
   * @param getter the carbon laid in
   * @param crucibleAir the air in the crucible and what gets in
   * @param alloy the metal
   * @return the budget
   */
  public OxygenBudget budget(
      Profile history, GetterFill getter, CrucibleAir crucibleAir, Alloy alloy) {
    BudgetRun run = new BudgetRun(air, quickFrom, oxidationLimit.value(), getter, crucibleAir);
    history.segments().forEach(run::add);
    Optional<Amount<Time>> earliest =
        run.reached(getter.mass().si() * (1 - getter.getter().ash().value().high().si()), true);
    Optional<Amount<Time>> latest =
        run.reached(getter.mass().si() * (1 - getter.getter().ash().value().low().si()), false);
    Span<Mass> carbon = carbonLaidIn(getter);
    OxygenBudget.Builder budget =
        OxygenBudget.builder()
            .exchangeKnown(crucibleAir.oxygenInflow().isPresent())
            .carbonLaidIn(carbon)
            .addAllPoints(run.points())
            .tooSlow(run.tooSlow())
            .carbonMonoxide(run.carbonMonoxide())
            .addCautions(Caution.CARBON_MONOXIDE, Caution.HOT_WORK);
    earliest.ifPresent(budget::spentAtEarliest);
    latest.ifPresent(budget::spentAtLatest);
    addLines(budget, run, history, getter.getter(), crucibleAir);
    return budget
        .addFindings(
            lasts(history, getter, carbon, crucibleAir, run, earliest, latest),
            tooSlow(alloy, run, crucibleAir),
            flammable(alloy, history))
        .addAllFindings(MetalInCarbonGas.standard().findings(alloy))
        .build();
  }

  private static Span<Mass> carbonLaidIn(GetterFill getter) {
    Span<MassFraction> ash = getter.getter().ash().value();
    return Span.of(
        getter.mass().multiply(1 - ash.high().si()), getter.mass().multiply(1 - ash.low().si()));
  }

  private void addLines(
      OxygenBudget.Builder budget,
      BudgetRun run,
      Profile history,
      Getter getter,
      CrucibleAir crucibleAir) {
    Input pressure = Input.of("p", air.pressure(), Source.user("the air of the model"));
    Input volume = Input.of("V", crucibleAir.voidVolume(), Source.user("the air in the crucible"));
    Amount<Temperature> start = history.start();
    budget.addLines(
        line(
            "air in the crucible at the start",
            run.first(),
            "0.20946 x p x V / (8.314462618 x T) x M x share, T at least: what is not driven out"
                + " before carbon is quick",
            List.of(
                pressure,
                volume,
                Input.of("T least", quickFrom.isGreaterThan(start) ? quickFrom : start, SLOW),
                Input.of("T most", start, Source.user("the programme")),
                OXYGEN_MASS,
                Input.of("share least", Amounts.ratio(run.getsQuick() ? 1 : 0), MODEL),
                Input.of("share most", Amounts.ratio(run.firstShare()), MODEL)),
            MODEL),
        line(
            "air drawn in on cooling while carbon burns",
            run.drawnIn(),
            "0.20946 x n x M, n = sum over coolings down to T of p V / R (1/T_cold - 1/T_hot)",
            List.of(
                Input.of("n least", airOf(run.drawnIn().low()), MODEL),
                Input.of("n most", airOf(run.drawnIn().high()), MODEL),
                OXYGEN_MASS,
                pressure,
                volume,
                Input.of("T least", quickFrom, SLOW),
                Input.of("T most", run.onset(), getter.oxidationOnset().source())),
            MODEL));
    crucibleAir
        .oxygenInflow()
        .ifPresent(
            inflow ->
                budget.addLines(
                    line(
                        "exchange through lid and packing",
                        run.exchanged(),
                        "inflow x time, in which carbon burns",
                        List.of(
                            Input.of("inflow least", inflow.value().low(), inflow.source()),
                            Input.of("inflow most", inflow.value().high(), inflow.source()),
                            Input.of("time least", run.quickTime(), MODEL),
                            Input.of("time most", run.burningTime(), MODEL)),
                        inflow.source())));
  }

  /** The air that holds a mass of oxygen. */
  private static Amount<AmountOfSubstance> airOf(Amount<Mass> oxygen) {
    return Amounts.moles(oxygen.si() / AirGas.oxygenMass(1));
  }

  private static BudgetLine line(
      String what, Span<Mass> oxygen, String formula, List<Input> inputs, Source source) {
    return BudgetLine.builder()
        .what(what)
        .oxygen(oxygen)
        .carbon(
            Span.of(AirGas.carbonFor(oxygen.low()).low(), AirGas.carbonFor(oxygen.high()).high()))
        .formula(formula)
        .inputs(inputs)
        .source(source)
        .build();
  }

  private Finding lasts(
      Profile history,
      GetterFill getter,
      Span<Mass> carbon,
      CrucibleAir crucibleAir,
      BudgetRun run,
      Optional<Amount<Time>> earliest,
      Optional<Amount<Time>> latest) {
    Amount<Time> safe = run.safeFrom();
    boolean surely = latest.filter(time -> time.isLessThan(safe)).isPresent();
    boolean maybe = earliest.filter(time -> time.isLessThan(safe)).isPresent();
    boolean known = crucibleAir.oxygenInflow().isPresent();
    String laidIn =
        getter.mass().format(GRAM, 1)
            + " of "
            + getter.getter().name()
            + " hold "
            + carbon.format(GRAM, 1)
            + " of carbon";
    String asked = run.asked().format(GRAM, 2);
    Finding.Builder finding =
        AtmosphereFinding.CARBON_LASTS
            .about(getter.getter().name())
            .measured(carbon.low())
            .limit(run.asked().high())
            .basis(MODEL);
    if (surely) {
      return finding
          .severity(STOP)
          .message(
              laidIn
                  + " and the oxygen takes "
                  + asked
                  + ": spent after "
                  + latest.orElseThrow().format(HOUR, 1)
                  + " at the latest, before the charge is below "
                  + oxidationLimit.value().format(CELSIUS, 0)
                  + " after "
                  + safe.format(HOUR, 1))
          .build();
    }
    if (!known) {
      return finding
          .severity(UNDETERMINED)
          .message(
              laidIn
                  + "; the crucible's own air takes "
                  + asked
                  + ", but the exchange through lid and packing, which decides, is not stated")
          .build();
    }
    if (!maybe && history.end().isGreaterThan(oxidationLimit.value())) {
      return finding
          .severity(UNDETERMINED)
          .message(
              laidIn
                  + " and the oxygen takes "
                  + asked
                  + " up to "
                  + history.end().format(CELSIUS, 0)
                  + "; how the charge cools from there is not known")
          .build();
    }
    return finding
        .severity(maybe ? WARNING : PASSED)
        .message(
            laidIn
                + " and the oxygen takes "
                + asked
                + (maybe
                    ? ": it may be spent after "
                        + earliest.orElseThrow().format(HOUR, 1)
                        + ", before the charge is below "
                        + oxidationLimit.value().format(CELSIUS, 0)
                    : ": it lasts"))
        .build();
  }

  private Finding tooSlow(Alloy alloy, BudgetRun run, CrucibleAir crucibleAir) {
    String risk =
        Oxide.of(alloy.composition().balance())
            .map(
                oxide -> {
                  double metal =
                      run.oxygenWhileSlow()
                          / Species.OXYGEN.kilogramsPerMole()
                          * oxide.metalPerOxygen()
                          * AtomFractions.atomicWeight(oxide.element());
                  return "; the oxygen that may come then turns up to "
                      + Amounts.grams(metal).format(GRAM, 2)
                      + " of "
                      + oxide.element().symbol()
                      + " to "
                      + oxide.formula()
                      + (crucibleAir.oxygenInflow().isPresent()
                          ? ""
                          : ", exchange through lid and packing not counted");
                })
            .orElse("");
    return AtmosphereFinding.CARBON_TOO_SLOW
        .about(alloy.name())
        .severity(run.tooSlow().si() == 0 ? PASSED : NOTE)
        .measured(run.tooSlow())
        .limit(quickFrom)
        .basis(SLOW)
        .message(
            "for "
                + run.tooSlow().format(HOUR, 1)
                + " the charge is between "
                + oxidationLimit.value().format(CELSIUS, 0)
                + " and "
                + quickFrom.format(CELSIUS, 0)
                + ", where the metal oxidises and carbon is too slow, "
                + run.tooSlowOnCooling().format(HOUR, 1)
                + " of it after the peak"
                + risk)
        .build();
  }

  private static Finding flammable(Alloy alloy, Profile history) {
    double oxygen = AirGas.OXYGEN_SHARE;
    // a mole of air becomes 2 x of monoxide in 1 + x of gas
    Amount<VolumeFraction> most = Amounts.volumePercent(100 * 2 * oxygen / (1 + oxygen));
    return AtmosphereFinding.FLAMMABLE_AT_LID
        .about(alloy.name())
        .severity(most.isGreaterThan(FLAMMABLE) ? NOTE : PASSED)
        .measured(most)
        .limit(FLAMMABLE)
        .basis(FLAMMABILITY)
        .message(
            "after the peak of "
                + history.peak().format(CELSIUS, 0)
                + " the gas in the crucible may hold "
                + most.format(VOLUME_PERCENT, 0)
                + " of carbon monoxide and burns when the lid is opened hot: open only when cold,"
                + " with extraction and an alarm")
        .build();
  }
}
