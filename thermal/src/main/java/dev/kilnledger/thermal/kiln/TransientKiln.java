package dev.kilnledger.thermal.kiln;

import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.KELVIN_PER_HOUR;
import static dev.kilnledger.units.TradeUnits.KILOWATT_HOUR;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.internal.Problems;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.energy.ChargeItem;
import dev.kilnledger.thermal.energy.EnergyBalance;
import dev.kilnledger.thermal.energy.FiringEnergy;
import dev.kilnledger.thermal.energy.SteadyWall;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.quantity.HeatingRate;
import dev.kilnledger.units.quantity.TemperatureDifference;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/**
 * The heat balance of a kiln over time:
 *
 * <pre>sum m c dT/dt = P - A q(T, wall),   P from zero to the rated power,</pre>
 *
 * with the wall's layers conducting and storing heat (Fourier's equation in one dimension, film
 * outside). Chamber, charge and inner face share one temperature: the lag of the charge's core is
 * not in it. The elements give what the programme needs, as far as they can; where they cannot, the
 * kiln falls behind and catches up at full power. Conductivities may change with temperature, the
 * other properties are constant; area and film as in {@link SteadyWall}.
 *
 * <p>Second order in space (60 cells a layer) and time (steps of a minute unless stated otherwise),
 * stable at any step; a change between following and full power is placed within one step. The
 * energy balance closes to rounding.
 *
 * <p>Example: 3 kW, a loss of 1.9 W/K, 35 kJ/K in a room of 20 °C: 20 to 1100 °C takes 5.89 h at
 * full power; the ceiling is 1599 °C.
 */
public final class TransientKiln implements FiringEnergy {
  static final Source MODEL =
      Source.recomputed(
          "transient heat balance: Fourier's equation through the wall's layers, TR-BDF2, power"
              + " limited");

  /** How long a kiln is watched as it cools, and as it heats at full power. */
  static final Amount<Time> LONGEST_RUN = Amounts.days(30);

  private final Amount<Temperature> ambient;
  private final SoakControl soak;
  private final Amount<TemperatureDifference> band;
  private final Amount<Temperature> opening;
  private final Amount<Time> step;

  /**
   * A model of its own.
   *
   * @param ambient the temperature of the room, and of the kiln's outside at the start
   * @param soak what the controller does where the kiln is late
   * @param band how near to a hold's temperature counts as there, above zero
   * @param opening below which the kiln may be opened, above ambient
   * @param step the time step, above zero
   * @throws IllegalArgumentException with all problems
   */
  public TransientKiln(
      Amount<Temperature> ambient,
      SoakControl soak,
      Amount<TemperatureDifference> band,
      Amount<Temperature> opening,
      Amount<Time> step) {
    new Problems("transient kiln")
        .positive("band", band)
        .positive("step", step)
        .require(
            opening.isGreaterThan(ambient),
            "opening temperature is " + opening + "; accepted is more than the room's " + ambient)
        .refuseIfAny();
    this.ambient = ambient;
    this.soak = soak;
    this.band = band;
    this.opening = opening;
    this.step = step;
  }

  /**
   * {@return the model for a room of 20 °C, a controller that goes by the clock, a band of 5 K,
   * opening below 60 °C (common practice: what a hand can touch), and steps of a minute}
   */
  public static TransientKiln standard() {
    return withSoak(SoakControl.BY_THE_CLOCK);
  }

  /**
   * The standard model with a controller of a kind.
   *
   * @param soak what the controller does where the kiln is late
   * @return the model
   */
  public static TransientKiln withSoak(SoakControl soak) {
    return new TransientKiln(
        Amounts.celsius(20),
        soak,
        Amounts.kelvinDifference(5),
        Amounts.celsius(60),
        Amounts.minutes(1));
  }

  /**
   * {@inheritDoc}
   *
   * @throws IllegalArgumentException if the kiln's wall has no layers
   */
  @Override
  public EnergyBalance balance(Kiln kiln, Profile profile, List<ChargeItem> charge) {
    return run(kiln, profile, charge).energy();
  }

  /**
   * Runs a programme from cold: wall and charge begin at the programme's first temperature.
   *
   * @param kiln the kiln
   * @param profile its programme
   * @param charge what it heats
   * @return what the kiln really does
   * @throws IllegalArgumentException if the kiln's wall has no layers
   */
  public KilnRun run(Kiln kiln, Profile profile, List<ChargeItem> charge) {
    checkWall(kiln);
    HeatedWall wall = new HeatedWall(kiln, capacity(charge), ambient.si(), profile.start().si());
    ProgrammeRun run =
        new ProgrammeRun(wall, kiln.power().si(), step.si(), waitingBand(), profile.start().si());
    profile.segments().forEach(run::add);
    return new RunReport(this, kiln, profile, charge, run, cooling(run, opening)).build();
  }

  /**
   * How long a kiln with its charge needs to cool with the power off, after a programme.
   *
   * @param kiln the kiln
   * @param profile the programme before
   * @param charge what is in it
   * @param to the temperature to cool to, above that of the room
   * @return the time from the end of the programme, zero if it is cooler already, and 30 days where
   *     those are not enough
   * @throws IllegalArgumentException if the kiln's wall has no layers or the temperature is not
   *     above that of the room
   */
  public Amount<Time> coolingTime(
      Kiln kiln, Profile profile, List<ChargeItem> charge, Amount<Temperature> to) {
    checkWall(kiln);
    new Problems("cooling of kiln " + kiln.name())
        .require(
            to.isGreaterThan(ambient),
            "temperature is " + to + "; accepted is more than the room's " + ambient)
        .refuseIfAny();
    HeatedWall wall = new HeatedWall(kiln, capacity(charge), ambient.si(), profile.start().si());
    ProgrammeRun run =
        new ProgrammeRun(wall, kiln.power().si(), step.si(), waitingBand(), profile.start().si());
    profile.segments().forEach(run::add);
    List<KilnPoint> cooling = cooling(run, to);
    return timeOf(cooling);
  }

  /**
   * The kiln from cold at full power: the fastest heating it can follow at each temperature on the
   * way, as far as its wall lets it get, at most up to the temperature asked for.
   *
   * @param kiln the kiln
   * @param charge what it heats
   * @param to the highest temperature looked at, above that of the room
   * @return a curve in ascending temperature, which ends below the temperature asked for where the
   *     kiln comes within 1 K of its {@linkplain #ceiling ceiling}
   * @throws IllegalArgumentException if the kiln's wall has no layers or the temperature is not
   *     above that of the room
   */
  public List<FullPowerPoint> fullPower(
      Kiln kiln, List<ChargeItem> charge, Amount<Temperature> to) {
    checkWall(kiln);
    new Problems("full power of kiln " + kiln.name())
        .require(
            to.isGreaterThan(ambient),
            "temperature is " + to + "; accepted is more than the room's " + ambient)
        .refuseIfAny();
    double power = kiln.power().si();
    HeatedWall wall = new HeatedWall(kiln, capacity(charge), ambient.si(), ambient.si());
    List<FullPowerPoint> curve = new ArrayList<>();
    double end = Math.min(to.si(), ceiling(kiln).si() - 1);
    double time = 0;
    while (wall.chamber() < end && time < LONGEST_RUN.si()) {
      double before = wall.chamber();
      wall.heat(power, step.si());
      // the slope over a step belongs to its middle
      curve.add(
          FullPowerPoint.of(
              Amounts.kelvin((before + wall.chamber()) / 2),
              Amounts.kelvinPerHour((wall.chamber() - before) / step.si() * 3600),
              Amounts.hours((time + step.si() / 2) / 3600)));
      time += step.si();
    }
    return List.copyOf(curve);
  }

  /**
   * The fastest heating that can be followed at a temperature, from cold.
   *
   * @param kiln the kiln
   * @param charge what it heats
   * @param at the temperature, above that of the room
   * @return the rate, empty if the kiln does not get there
   * @throws IllegalArgumentException as {@link #fullPower}
   */
  public Optional<Amount<HeatingRate>> fastestHeating(
      Kiln kiln, List<ChargeItem> charge, Amount<Temperature> at) {
    List<FullPowerPoint> curve = fullPower(kiln, charge, Amounts.kelvin(at.si() + 1));
    for (int i = 1; i < curve.size(); i++) {
      double low = curve.get(i - 1).temperature().si();
      double high = curve.get(i).temperature().si();
      if (high >= at.si()) {
        double share = (at.si() - low) / (high - low);
        double slow = curve.get(i - 1).rate().si();
        double rate = slow + Math.max(0, share) * (curve.get(i).rate().si() - slow);
        return Optional.of(Amounts.kelvinPerHour(rate * 3600).to(KELVIN_PER_HOUR));
      }
    }
    return Optional.empty();
  }

  /**
   * The temperature that a kiln approaches at full power and never passes: T_ambient + P / (U A),
   * where the wall passes all of the power.
   *
   * @param kiln the kiln
   * @return the temperature; its rating may well be lower
   * @throws IllegalArgumentException if the kiln's wall has no layers
   */
  public Amount<Temperature> ceiling(Kiln kiln) {
    return new SteadyWall(kiln).insideAt(kiln.power(), ambient);
  }

  Amount<Temperature> openingTemperature() {
    return opening;
  }

  Amount<TemperatureDifference> nearBand() {
    return band;
  }

  Amount<Temperature> ambientTemperature() {
    return ambient;
  }

  private double waitingBand() {
    return soak == SoakControl.GUARANTEED ? band.si() : Double.POSITIVE_INFINITY;
  }

  /** From the last point of a run, power off, until a temperature is met or given up. */
  private List<KilnPoint> cooling(ProgrammeRun run, Amount<Temperature> to) {
    HeatedWall wall = run.wall().copy();
    List<KilnPoint> points = new ArrayList<>();
    points.add(run.points().get(run.points().size() - 1));
    double start = points.get(0).time().si();
    double time = 0;
    while (wall.chamber() > to.si() && time < LONGEST_RUN.si()) {
      double before = wall.chamber();
      wall.heat(0, step.si());
      boolean above = wall.chamber() > to.si();
      time += step.si() * (above ? 1 : (before - to.si()) / (before - wall.chamber()));
      Amount<Temperature> actual = above ? Amounts.kelvin(wall.chamber()) : to;
      points.add(
          KilnPoint.builder()
              .time(Amounts.hours((start + time) / 3600))
              .programmed(actual)
              .actual(actual)
              .skin(Amounts.kelvin(wall.skin()))
              .power(Amounts.watts(0))
              .build());
    }
    return points;
  }

  static Amount<Time> timeOf(List<KilnPoint> points) {
    return points.get(points.size() - 1).time().subtract(points.get(0).time()).to(HOUR);
  }

  private static double capacity(List<ChargeItem> charge) {
    return charge.stream()
        .mapToDouble(item -> item.mass().si() * item.heatCapacity().value().si())
        .sum();
  }

  private static void checkWall(Kiln kiln) {
    new Problems("kiln " + kiln.name())
        .require(
            !kiln.wall().isEmpty(),
            "the wall has no layers; accepted is at least one, or a model that needs none such as"
                + " DutyFactorEnergy")
        .refuseIfAny();
  }

  /** The energy as kWh. */
  static Amount<Energy> kilowattHours(double joules) {
    return Amounts.joules(joules).to(KILOWATT_HOUR);
  }
}
