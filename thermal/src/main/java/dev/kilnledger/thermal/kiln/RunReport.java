package dev.kilnledger.thermal.kiln;

import static dev.kilnledger.core.finding.Severity.NOTE;
import static dev.kilnledger.core.finding.Severity.PASSED;
import static dev.kilnledger.core.finding.Severity.STOP;
import static dev.kilnledger.core.finding.Severity.UNDETERMINED;
import static dev.kilnledger.core.finding.Severity.WARNING;
import static dev.kilnledger.units.TradeUnits.CELSIUS;
import static dev.kilnledger.units.TradeUnits.HOUR;
import static dev.kilnledger.units.TradeUnits.KELVIN_DIFFERENCE;
import static dev.kilnledger.units.TradeUnits.KILOWATT;

import dev.kilnledger.core.equipment.Kiln;
import dev.kilnledger.core.equipment.WallLayer;
import dev.kilnledger.core.finding.Caution;
import dev.kilnledger.core.finding.Finding;
import dev.kilnledger.core.finding.Severity;
import dev.kilnledger.core.source.Input;
import dev.kilnledger.core.source.Source;
import dev.kilnledger.thermal.energy.ChargeItem;
import dev.kilnledger.thermal.energy.EnergyBalance;
import dev.kilnledger.thermal.energy.EnergyFinding;
import dev.kilnledger.thermal.energy.EnergyLine;
import dev.kilnledger.thermal.energy.SteadyWall;
import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.Relations;
import dev.kilnledger.units.quantity.TemperatureDifference;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/** Puts the figures of a run into words and lines. */
final class RunReport {
  private static final Source KILN = Source.user("as entered with the kiln");

  private final TransientKiln model;
  private final Kiln kiln;
  private final Profile profile;
  private final List<ChargeItem> charge;
  private final ProgrammeRun run;
  private final List<KilnPoint> coolingPoints;
  private final Amount<Time> cooling;

  RunReport(
      TransientKiln model,
      Kiln kiln,
      Profile profile,
      List<ChargeItem> charge,
      ProgrammeRun run,
      List<KilnPoint> coolingPoints) {
    this.model = model;
    this.kiln = kiln;
    this.profile = profile;
    this.charge = charge;
    this.run = run;
    this.coolingPoints = coolingPoints;
    this.cooling = TransientKiln.timeOf(coolingPoints);
  }

  KilnRun build() {
    List<Finding> findings =
        Stream.concat(
                Stream.of(reachesPeak(), follows(), cools(), opening(), powerFinding()),
                new SteadyWall(kiln).range(profile.peak()).stream())
            .toList();
    return KilnRun.builder()
        .addAllPoints(run.points())
        .addAllCoolingPoints(coolingPoints)
        .programmeAsRun(Profile.of(run.asRun()))
        .energy(balance(findings))
        .energySupplied(TransientKiln.kilowattHours(run.wall().energyIn()))
        .waited(Amounts.seconds(run.waited()).to(HOUR))
        .coolingToOpening(cooling)
        .addAllFindings(findings)
        .addCautions(Caution.HOT_WORK, Caution.ELECTRICAL_LOAD)
        .build();
  }

  private EnergyBalance balance(List<Finding> findings) {
    double start = profile.start().si();
    HeatedWall wall = run.whenPowerEnded();
    EnergyBalance.Builder balance =
        EnergyBalance.builder()
            .model(TransientKiln.MODEL)
            .poweredTime(Amounts.seconds(run.poweredUntil()).to(HOUR))
            .peakPower(Amounts.watts(run.peakPower()).to(KILOWATT))
            .addAllFindings(findings);
    String when = ", until the elements are off for good";
    Amount<Time> powered = Amounts.seconds(run.poweredUntil()).to(HOUR);
    balance.addLines(
        EnergyLine.builder()
            .use(EnergyLine.Use.WALL_LOSS)
            .subject(kiln.name())
            .energy(TransientKiln.kilowattHours(wall.energyLost()))
            .formula(
                "A x h x dT_mean x t, dT_mean of the skin above "
                    + model.ambientTemperature()
                    + when)
            .addInputs(
                Input.of("A", kiln.innerSurface(), KILN),
                Input.of("h", kiln.outsideFilm(), KILN),
                meanWarming(
                    wall.energyLost(),
                    kiln.innerSurface().si() * kiln.outsideFilm().si() * powered.si()),
                Input.of("t", powered, TransientKiln.MODEL))
            .source(TransientKiln.MODEL)
            .build());
    double[] stored = wall.stored(start);
    for (int i = 0; i < stored.length; i++) {
      WallLayer layer = kiln.wall().get(i);
      balance.addLines(
          EnergyLine.builder()
              .use(EnergyLine.Use.WALL_STORE)
              .subject(layer.material())
              .energy(TransientKiln.kilowattHours(stored[i]))
              .formula("A x rho x c x L x dT_mean, dT_mean of the layer above its start" + when)
              .addInputs(
                  Input.of("A", kiln.innerSurface(), KILN),
                  Input.of("rho", layer.density(), KILN),
                  Input.of("c", layer.heatCapacity(), KILN),
                  Input.of("L", layer.thickness(), KILN),
                  meanWarming(
                      stored[i],
                      kiln.innerSurface().si()
                          * layer.density().si()
                          * layer.heatCapacity().si()
                          * layer.thickness().si()))
              .source(TransientKiln.MODEL)
              .build());
    }
    Amount<TemperatureDifference> warming = Amounts.kelvinDifference(wall.chamber() - start);
    charge.forEach(
        item ->
            balance.addLines(
                EnergyLine.builder()
                    .use(EnergyLine.Use.CHARGE)
                    .subject(item.what())
                    .energy(
                        TransientKiln.kilowattHours(
                            item.mass().si() * item.heatCapacity().value().si() * warming.si()))
                    .formula("m x c x dT")
                    .addInputs(
                        item.massInput(),
                        item.heatCapacityInput(),
                        Input.of("dT", warming, TransientKiln.MODEL))
                    .source(item.heatCapacity().source())
                    .build()));
    return balance.build();
  }

  /** The mean difference of temperature that an energy stands for; none where nothing took it. */
  private static Input meanWarming(double joules, double joulesPerKelvin) {
    return Input.of(
        "dT_mean",
        Amounts.kelvinDifference(joulesPerKelvin == 0 ? 0 : joules / joulesPerKelvin),
        TransientKiln.MODEL);
  }

  private Finding powerFinding() {
    boolean limited = run.peakPower() >= kiln.power().si() * (1 - 1e-9);
    return Finding.builder()
        .code(EnergyFinding.POWER_WITHIN_RATING)
        .severity(limited ? WARNING : PASSED)
        .subject(kiln.name())
        .message(
            limited
                ? "the elements are at their full "
                    + kiln.power().format(KILOWATT, 2)
                    + ": the kiln is slower than the programme"
                : "the programme takes up to "
                    + Amounts.watts(run.peakPower()).format(KILOWATT, 2)
                    + " of "
                    + kiln.power().format(KILOWATT, 2))
        .measured(Amounts.watts(run.peakPower()).to(KILOWATT))
        .limit(kiln.power())
        .basis(TransientKiln.MODEL)
        .build();
  }

  private Finding reachesPeak() {
    Amount<Temperature> asked = profile.peak();
    Amount<Temperature> got = peakPoint().actual();
    Amount<TemperatureDifference> missing = Relations.difference(got, asked);
    boolean there = !missing.isGreaterThan(model.nearBand());
    return KilnFinding.REACHES_PEAK
        .about(kiln.name())
        .severity(there ? PASSED : STOP)
        .measured(got)
        .limit(asked)
        .basis(TransientKiln.MODEL)
        .message(
            "the programme asks "
                + asked.format(CELSIUS, 0)
                + " and the kiln gets to "
                + got.format(CELSIUS, 0)
                + (there ? "" : ": " + missing.format(KELVIN_DIFFERENCE, 0) + " short")
                + "; at full power it approaches "
                + model.ceiling(kiln).format(CELSIUS, 0)
                + (run.gaveUp() ? "; the controller waited a day in vain" : ""))
        .build();
  }

  private KilnPoint peakPoint() {
    return run.points().stream().max(Comparator.comparing(KilnPoint::actual)).orElseThrow();
  }

  private Finding follows() {
    KilnPoint worst = run.points().stream().max(Comparator.comparing(KilnPoint::lag)).orElseThrow();
    boolean keeps = !worst.lag().isGreaterThan(model.nearBand());
    return KilnFinding.FOLLOWS_PROGRAMME
        .about(kiln.name())
        .severity(keeps ? PASSED : WARNING)
        .measured(worst.lag())
        .limit(model.nearBand())
        .basis(TransientKiln.MODEL)
        .message(
            keeps
                ? "the kiln follows the programme on heating"
                : "the kiln is up to "
                    + worst.lag().format(KELVIN_DIFFERENCE, 0)
                    + " behind the programme, at "
                    + worst.actual().format(CELSIUS, 0)
                    + " after "
                    + worst.time().format(HOUR, 1)
                    + waiting())
        .build();
  }

  private String waiting() {
    return run.waited() == 0
        ? ""
        : "; the controller waits " + hours(run.waited()) + " in all and the firing takes longer";
  }

  private Finding cools() {
    KilnPoint worst = run.points().stream().min(Comparator.comparing(KilnPoint::lag)).orElseThrow();
    Amount<TemperatureDifference> above = worst.lag().negate();
    boolean keeps = !above.isGreaterThan(model.nearBand());
    return Finding.builder()
        .code(EnergyFinding.COOLS_AS_PROGRAMMED)
        .subject(kiln.name())
        .severity(keeps ? PASSED : NOTE)
        .measured(above)
        .limit(model.nearBand())
        .basis(TransientKiln.MODEL)
        .message(
            keeps
                ? "the kiln cools as programmed"
                : "the kiln cools more slowly than programmed: up to "
                    + above.format(KELVIN_DIFFERENCE, 0)
                    + " hotter, after "
                    + worst.time().format(HOUR, 1))
        .build();
  }

  private Finding opening() {
    boolean cold = cooling.si() == 0;
    boolean unknown = !cooling.isLessThan(TransientKiln.LONGEST_RUN);
    Severity severity = cold ? PASSED : unknown ? UNDETERMINED : NOTE;
    return KilnFinding.OPENING
        .about(kiln.name())
        .severity(severity)
        .measured(cooling)
        .limit(model.openingTemperature())
        .basis(Source.commonPractice("open a kiln only when it is cold"))
        .message(
            cold
                ? "the kiln is below "
                    + model.openingTemperature().format(CELSIUS, 0)
                    + " at the end of the programme"
                : "from the end of the programme the kiln cools for "
                    + (unknown ? "more than " : "")
                    + cooling.format(HOUR, 1)
                    + " until it is below "
                    + model.openingTemperature().format(CELSIUS, 0))
        .build();
  }

  private static String hours(double seconds) {
    return Amounts.seconds(seconds).to(HOUR).format(HOUR, 2);
  }
}
